package leadlamp.derive;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.facts.Value;
import leadlamp.record.Place;
import leadlamp.record.Statement;

/**
 * Words of the head: what its old gasket told, what was done to it since it was tested or welded, what its seats are of, and what a
 * record makes a question of. Of what nothing is told nothing is said.
 */
final class HeadWords {
    private static final String HEAD = "head";
    private static final String OLD_GASKET = "old head gasket";
    private static final String INSERT = "seat insert";
    private static final String CHAMBER = "chamber insert";

    private final Telling tells;
    private final Site site;
    private final List<Statement> signs;

    private HeadWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
        this.signs = tells.signs();
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("head clamp in question", List.of("torque", "boost", "peak pressure"));
        names.put("head test since work", List.of("after", "before cut", "before heat"));
        names.put("head test result", List.of("passed", "failed"));
        names.put("head weld in question", List.of("aluminium"));
        names.put("head fits since weld", List.of("after", "before"));
        names.put("head gasket since lift", List.of("laid anew"));
        names.put("old head gasket failure", List.of("blown", "washed out", "again"));
        names.put("old head gasket failure in question", List.of("told"));
        names.put("old head gasket bolts in question", List.of("read"));
        names.put("seat insert soft seat", List.of("plain iron", "parent iron"));
        names.put("seat insert soft seat in question", List.of("told"));
        names.put("seat insert lash in question", List.of("read"));
        names.put("seat insert bite in question", List.of("fitted", "read", "looked"));
        names.put("valve guide hold in question", List.of("fitted", "looked"));
        names.put("valve seat bearing in question", List.of("cut", "runout read", "width read"));
        names.put("chamber insert stand in question", List.of("tip"));
        names.put("chamber insert face in question", List.of("insert"));
        return names;
    }

    static void all(Telling tells) {
        HeadWords words = new HeadWords(tells);
        for (String head : tells.places("each head")) {
            words.clamp(head);
            words.tested(head);
            words.testResult(head);
            words.welded(head);
            words.oldGasket(head);
            words.lifted(head);
        }
        for (String valve : tells.places("each valve", "seat insert diameter", "head seat counterbore", "valve seat runout")) {
            words.seat(valve);
            words.guide(valve);
            words.truth(valve);
        }
        for (String cylinder : tells.places("each cylinder", "injector tip height", "chamber insert height")) {
            words.stand(cylinder);
        }
    }

    // --- clamp

    private void clamp(String head) {
        String what = "clamp in question";
        Optional<Statement> torque = over("target torque", "torque");
        tells.say(HEAD, head, what, "torque", torque);
        if (site.word("use", Place.ENGINE, "target torque").isEmpty()) {
            tells.say(HEAD, head, what, "boost", over("boost", "boost"));
        }
        tells.say(HEAD, head, what, "peak pressure", site.word("use", Place.ENGINE, "peak pressure").filter(s -> s.value().isPresent()));
    }

    private Optional<Statement> over(String use, String line) {
        Optional<Statement> asked = site.word("use", Place.ENGINE, use).filter(s -> s.value().isPresent());
        Optional<Statement> sheet = site.sheet("output", Place.ENGINE, line).filter(s -> s.value().isPresent());
        return asked.filter(s -> sheet.isPresent() && s.value().get().high() > sheet.get().value().get().high() * (1 + 1e-9));
    }

    // --- faces and gasket as they go together

    /** Whether a gasket was laid after the head came up again. */
    private void lifted(String head) {
        Optional<Statement> lifted = done("head lifted again", head);
        Optional<Statement> laid = done("head gasket laid", head);
        if (lifted.isPresent() && laid.isPresent() && !tells.before(laid.get(), lifted.get())) {
            tells.say("head gasket", head, "since lift", "laid anew", List.of(lifted.get().where(), laid.get().where()));
        }
    }

    /** The step as it was done last. */
    private Optional<Statement> done(String step, String head) {
        Optional<Statement> last = Optional.empty();
        for (Statement s : site.said("steps")) {
            if (s.what().equals(step) && List.of("done", "passed").contains(s.says()) && site.related(s.at(), head)
                    && (last.isEmpty() || !tells.before(s, last.get()))) {
                last = Optional.of(s);
            }
        }
        return last;
    }

    // --- what was done to it after it was tested

    private void tested(String head) {
        Statement test = null;
        for (Statement s : site.said("steps")) {
            if (s.what().equals("head pressure tested") && s.asides().containsKey("date") && site.related(s.at(), head)) {
                test = s;
            }
        }
        if (test == null) {
            return;
        }
        Optional<Statement> heat = work(head, List.of(HEAD), "weld", "straighten");
        Optional<Statement> cut = work(head, List.of(INSERT, "valve guide", "head bolt hole"), "press", "bore", "cut", "drill", "insert")
                .or(() -> work(head, List.of("valve seat"), "insert"));
        String what = "test since work";
        if (heat.isPresent() && tells.before(test, heat.get())) {
            tells.say(HEAD, head, what, "before heat", List.of(test.where(), heat.get().where()));
        } else if (cut.isPresent() && tells.before(test, cut.get())) {
            tells.say(HEAD, head, what, "before cut", List.of(test.where(), cut.get().where()));
        } else if (heat.or(() -> cut).filter(s -> tells.dated(s)).isPresent()) {
            tells.say(HEAD, head, what, "after", Optional.of(test));
        }
    }

    /** The last dated work of these kinds on the head's parts. */
    private Optional<Statement> work(String head, List<String> parts, String... by) {
        Statement last = null;
        for (Statement s : site.said("machining")) {
            if (parts.contains(s.what()) && List.of(by).contains(s.says()) && site.related(s.at(), head)
                    && (last == null || tells.before(last, s))) {
                last = s;
            }
        }
        return Optional.ofNullable(last);
    }

    /** Of several tests the last counts; where they bear no dates, the last that is written. */
    private void testResult(String head) {
        Statement last = null;
        for (Statement s : site.said("steps")) {
            boolean told = s.says().equals("passed") || s.says().equals("failed");
            if (s.what().equals("head pressure tested") && told && site.related(s.at(), head) && (last == null || !tells.before(s, last))) {
                last = s;
            }
        }
        if (last != null) {
            tells.say(HEAD, head, "test result", last.says(), Optional.of(last));
        }
    }

    private void welded(String head) {
        Optional<Statement> weld = work(head, List.of(HEAD), "weld");
        Optional<Statement> metal = Materials.word(site, head, HEAD);
        if (weld.isEmpty() || metal.filter(s -> s.says().equals("aluminium")).isEmpty()) {
            return;
        }
        tells.say(HEAD, head, "weld in question", "aluminium", weld);
        Optional<Statement> cut = work(head, List.of("head face"), tells.faceCuts());
        if (cut.filter(tells::dated).isEmpty() || !tells.dated(weld.get())) {
            tells.lack("head fits since weld", head, "machining head face");
        } else {
            boolean before = tells.before(cut.get(), weld.get());
            tells.say(HEAD, head, "fits since weld", before ? "before" : "after", List.of(weld.get().where(), cut.get().where()));
        }
    }

    // --- what the old gasket told

    private void oldGasket(String head) {
        Optional<Statement> blown = seen(OLD_GASKET, head, "blown", "burnt");
        Optional<Statement> failed = blown.or(() -> seen(OLD_GASKET, head, "washed out"));
        if (failed.isEmpty()) {
            return;
        }
        Optional<Statement> before = tells.past("head gasket leaked");
        tells.say(OLD_GASKET, head, "failure", before.isPresent() ? "again" : blown.isPresent() ? "blown" : "washed out", failed.get().told().orElse(""),
                before.isPresent() ? List.of(failed.get().where(), before.get().where()) : List.of(failed.get().where()));
        tells.say(OLD_GASKET, head, "failure in question", "told", failed);
        tells.sayBy(OLD_GASKET, head, "bolts in question", "read", tells.reading(Place.ENGINE, "head bolt loosening torque"));
    }

    private Optional<Statement> seen(String part, String place, String... wanted) {
        for (Statement s : signs) {
            if (s.form() == Statement.Form.SEEN && s.of().equals(part) && List.of(wanted).contains(s.what()) && site.related(s.at(), place)) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    // --- seats

    private void seat(String valve) {
        Optional<Statement> iron = site.word(INSERT, valve, "material").filter(s -> s.says().equals("cast iron"));
        Optional<Statement> parent = site.word("valve seat", valve, "material").filter(s -> s.says().equals("cast iron"));
        if (valve.contains("exhaust") && (iron.isPresent() || parent.isPresent())) {
            tells.say(INSERT, valve, "soft seat", iron.isPresent() ? "plain iron" : "parent iron", iron.or(() -> parent));
            tells.say(INSERT, valve, "soft seat in question", "told", iron.or(() -> parent));
            for (Value v : site.store.of("valve lash as found")) {
                if (v.at().equals(valve)) {
                    tells.sayBy(INSERT, valve, "lash in question", "read", Optional.of(v));
                }
            }
        }
        String what = "bite in question";
        tells.say(INSERT, valve, what, "fitted", tells.word(List.of(INSERT), valve, "state", "new"));
        tells.sayBy(INSERT, valve, what, "read", tells.reading(valve, "seat insert diameter", "head seat counterbore"));
        for (Statement s : signs) {
            if (s.of().equals(INSERT) && List.of("play", "moved", "cracked").contains(s.what()) && site.related(s.at(), valve)) {
                tells.say(INSERT, valve, what, "looked", Optional.of(s));
                break;
            }
        }
    }

    /** A guide is a question where it was fitted, and where somebody saw one that does not hold. */
    private void guide(String valve) {
        String guide = "valve guide";
        tells.say(guide, valve, "hold in question", "fitted", tells.word(List.of(guide), valve, "state", "new", "repaired", "second-hand"));
        tells.say(guide, valve, "hold in question", "looked", tells.seen(List.of(guide), valve, "moved", "play", "cracked", "broken"));
    }

    private void truth(String valve) {
        String seat = "valve seat";
        tells.say(seat, valve, "bearing in question", "cut", tells.machined(List.of(seat), valve, "cut", "grind", "turn"));
        tells.sayBy(seat, valve, "bearing in question", "runout read", tells.reading(valve, "valve seat runout"));
        tells.sayBy(seat, valve, "bearing in question", "width read", tells.reading(valve, "valve seat width"));
    }

    // --- what stands in the face of a diesel's head

    private void stand(String cylinder) {
        Optional<Statement> cut = tells.machined(List.of("head face"), Place.ENGINE, tells.faceCuts());
        boolean diesel = site.sheet("layout", Place.ENGINE, "fuel burns").filter(s -> s.says().equals("diesel")).isPresent()
                || site.sheet("layout", Place.ENGINE, "fuel injected").filter(s -> s.says().equals("direct")).isPresent();
        String what = "stand in question";
        Optional<Statement> washer = tells.word(List.of("injector washer"), cylinder, "state", "new");
        if (diesel) {
            tells.say(CHAMBER, cylinder, what, "tip", cut.or(() -> washer));
        }
        tells.sayBy(CHAMBER, cylinder, what, "tip", tells.reading(cylinder, "injector tip height"));
        if (site.sheet("layout", Place.ENGINE, "fuel injected").filter(s -> s.says().equals("indirect")).isPresent()) {
            tells.say(CHAMBER, cylinder, "face in question", "insert", cut);
        }
        tells.sayBy(CHAMBER, cylinder, "face in question", "insert", tells.reading(cylinder, "chamber insert height"));
    }
}

package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.calc.Threads;
import leadlamp.facts.Value;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.words.Part;
import leadlamp.words.Property;

/**
 * Words of rings, lips, plugs and of what shuts a dead passage: their rubber, their age, what they hold, how they were fitted, and
 * what a record makes a question of. Of a seal of which nothing is told nothing is said.
 */
final class SealWords {
    private static final List<String> KEPT = List.of("kept", "second-hand", "repaired");
    private static final List<String> SPENT = List.of("hard", "flattened", "cracked", "torn", "charred");
    private static final String RING = "sealing ring";
    private static final String LIP = "shaft seal";
    private static final String SEAL = "seal";
    private static final String PLUG = "plug or union";
    /** Parts that leave a pipe, a hose or a drilling open when they are taken off for good (common practice, no source). */
    private static final Set<String> WITH_WAYS = Set.of("oil cooler", "oil cooler thermostat", "oil heater", "oil line", "heater", "heater tap",
            "heat exchanger", "turbocharger", "turbo oil feed", "turbo oil drain", "turbo water line", "vacuum pump", "scavenge pump",
            "breather", "breather hose", "breather valve", "bleed point", "oil tank", "sea-water pump", "piston jet");
    /** Of these those that carry oil under pressure. */
    private static final Set<String> UNDER_PRESSURE = Set.of("oil cooler", "oil cooler thermostat", "oil heater", "oil line", "turbo oil feed",
            "vacuum pump", "piston jet");
    /** Longer than a lip is asked to rest, s (common practice, no source). */
    private static final double A_DAY = 86_400;
    private static final String[] DRESSED = {"polish", "hand"};

    private final Telling tells;
    private final Site site;
    private final List<Statement> signs;

    private SealWords(Telling tells) {
        this.tells = tells;
        this.site = tells.site;
        this.signs = tells.signs();
    }

    /** The words, as subject and property, and what each may say; an empty list where that is the record's own. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("sealing ring squeeze in question", List.of("read", "other make", "face cut"));
        names.put("sealing ring groove room in question", List.of("width read", "stretch read", "looked", "sealed"));
        names.put("ring seat in cut face", List.of("cut", "limit given"));
        names.put("shaft seal track in question", List.of("new seal", "read", "looked"));
        names.put("shaft seal fitting in question", List.of("told", "rested"));
        names.put("shaft seal fitted on sheet", List.of());
        names.put("shaft seal land dressing told", List.of("there"));
        names.put("shaft seal speed in question", List.of("rev limit", "rubber", "read"));
        names.put("shaft seal centre in question", List.of("swing read", "land read"));
        names.put("shaft seal centring in question", List.of("housing fitted"));
        names.put("shaft seal centring", List.of("done", "left out"));
        names.put("shaft seal facing in question", List.of("looked", "hand told", "form told"));
        names.put("shaft seal hand", List.of("right", "wrong"));
        names.put("shaft seal bore in question", List.of("size read", "looked", "depth read"));
        names.put("core plug grip in question", List.of("size read"));
        names.put("core plug form told", List.of("there"));
        names.put("seal rubber told", List.of());
        names.put("seal rubber in question", List.of("told", "heat"));
        names.put("seal holds", List.of("oil", "coolant", "fuel", "gas"));
        names.put("seal age in question", List.of("kept", "dated"));
        names.put("seal renewal", List.of("kept", "against sheet"));
        names.put("seal spring", List.of("springy", "gone"));
        names.put("plug or union thread against hole", List.of("same", "other", "taper in parallel", "parallel in taper"));
        names.put("plug or union thread told", List.of("there"));
        names.put("filter seat rings", List.of("one", "two"));
        names.put("filter seat ring in question", List.of("new filter", "looked"));
        names.put("ends shut", List.of("all", "fewer", "one missing"));
        names.put("ends in question", List.of("there"));
        names.put("way shut", List.of("dead", "still needed"));
        names.put("blank hold", List.of("fixed", "slips off"));
        return names;
    }

    static void all(Telling tells) {
        SealWords words = new SealWords(tells);
        for (String ring : tells.places("each sealing ring", "sealing ring section")) {
            words.ring(ring);
        }
        for (String lip : tells.places("each shaft seal", "seal land groove depth")) {
            words.lip(lip);
        }
        for (String seal : tells.places("each seal")) {
            words.seal(seal);
        }
        for (String plug : tells.places("each core plug", "core plug diameter")) {
            words.corePlug(plug);
        }
        for (String plug : tells.places("each screwed plug")) {
            words.thread(plug);
        }
        words.filterSeat();
        words.deleted();
    }

    // --- what is told of a seal, under whichever of its names

    /** A name of the sheet as the parts that it may be recorded as, each with where it then stands. */
    private List<PartsAged.Piece> pieces(String seal) {
        List<PartsAged.Piece> pieces = new ArrayList<>();
        PartsAged.piece(site, seal).ifPresent(p -> {
            pieces.add(p);
            pieces.add(new PartsAged.Piece(p.part(), seal));
        });
        for (String kind : List.of(RING, LIP, SEAL)) {
            pieces.add(new PartsAged.Piece(kind, seal));
        }
        return pieces;
    }

    private Optional<Statement> last(String seal, String what) {
        Statement last = null;
        for (PartsAged.Piece piece : pieces(seal)) {
            for (Statement s : site.said(piece.part())) {
                if (s.what().equals(what) && s.at().equals(piece.at())) {
                    last = s;
                }
            }
        }
        return Optional.ofNullable(last);
    }

    /** The sign that was seen on it; else the last that was looked for. */
    private Optional<Statement> sign(String seal, List<String> wanted) {
        Statement last = null;
        for (Statement s : signs) {
            if (!wanted.contains(s.what())) {
                continue;
            }
            for (PartsAged.Piece piece : pieces(seal)) {
                boolean it = s.of().equals(piece.part()) && s.at().equals(piece.at());
                if (it && (last == null || !seen(last) || seen(s))) {
                    last = s;
                }
            }
        }
        return Optional.ofNullable(last);
    }

    /** The same of a part that has one name: what was seen as found, and wiped off since, is no question. */
    private Optional<Statement> sign(String part, String place, String... wanted) {
        Statement last = null;
        for (Statement s : signs) {
            boolean it = s.of().equals(part) && List.of(wanted).contains(s.what()) && site.related(s.at(), place);
            if (it && (last == null || !seen(last) || seen(s))) {
                last = s;
            }
        }
        return Optional.ofNullable(last);
    }

    /** Looked for there at all, also as found: damage stays until somebody takes it away. */
    private Optional<Statement> ever(String part, String place, String... wanted) {
        return sign(part, place, wanted).or(() -> tells.looked(List.of(part), place, wanted));
    }

    private static boolean seen(Statement s) {
        return s.form() == Statement.Form.SEEN;
    }

    private static boolean known(Statement s) {
        return !s.says().equals("unknown");
    }

    private Optional<Value> here(String place, String... quantities) {
        return tells.reading(place, quantities).filter(v -> !v.at().equals(Place.ENGINE));
    }

    // --- rings

    private void ring(String ring) {
        squeeze(ring);
        String what = "groove room in question";
        tells.sayBy(RING, ring, what, "width read", here(ring, "ring seat width"));
        tells.sayBy(RING, ring, what, "stretch read", here(ring, "sealing ring inside diameter"));
        tells.say(RING, ring, what, "looked", sign("ring seat", ring, "left in"));
        tells.say(RING, ring, what, "sealed", last(ring, "fitted").filter(s -> s.says().equals("sealed")));
        Optional<Statement> face = site.sheet("seals", ring, "face");
        if (face.isPresent()) {
            Optional<Statement> cut = tells.machined(List.of(face.get().says()), Place.ENGINE, tells.faceCuts());
            tells.say("ring seat", ring, "in cut face", "cut", cut);
            boolean limited = false;
            for (LimitLine l : site.build.sheet().limits()) {
                limited |= l.quantity().equals("ring seat depth") && (l.at().isEmpty() || l.at().equals(ring));
            }
            if (limited) {
                tells.say("ring seat", ring, "in cut face", "limit given", cut);
            }
        }
    }

    private void squeeze(String ring) {
        String what = "squeeze in question";
        tells.sayBy(RING, ring, what, "read", here(ring, "sealing ring section", "ring seat depth"));
        boolean fresh = last(ring, "state").filter(s -> s.says().equals("new")).isPresent();
        tells.say(RING, ring, what, "other make", last(ring, "origin").filter(s -> fresh && !s.says().equals("maker's")));
        site.sheet("seals", ring, "face").ifPresent(face -> tells.say(RING, ring, what, "face cut",
                tells.machined(List.of(face.says()), Place.ENGINE, tells.faceCuts())));
    }

    // --- lips

    private void lip(String lip) {
        Optional<Statement> state = last(lip, "state").filter(s -> SealingWords.HERE.contains(s.says()));
        tells.say(LIP, lip, "track in question", "new seal", state);
        tells.sayBy(LIP, lip, "track in question", "read", here(lip, "seal land groove depth"));
        tells.say(LIP, lip, "track in question", "looked", ever("seal land", lip, "grooved", "smooth", "polished"));
        fitting(lip, state);
        tells.say(LIP, lip, "land dressing told", "there", ever("seal land", lip, "hand dressed").or(() -> tells.machined(List.of("seal land"), lip, DRESSED)));
        speed(lip);
        centre(lip, state);
        facing(lip);
        String what = "bore in question";
        tells.sayBy(LIP, lip, what, "size read", here(lip, "shaft seal diameter", "seal bore diameter"));
        tells.say(LIP, lip, what, "looked", ever("seal bore", lip, "pitted", "scored"));
        tells.sayBy(LIP, lip, what, "depth read", here(lip, "shaft seal depth"));
    }

    private void fitting(String lip, Optional<Statement> state) {
        Optional<Statement> wanted = site.sheet("seals", lip, "fitted");
        Optional<Statement> other = site.sheet("seals", lip, "rubber").filter(s -> rubber(lip).filter(r -> !r.says().equals(s.says())).isPresent());
        if (wanted.isPresent() && other.isEmpty()) {
            tells.say(LIP, lip, "fitted on sheet", wanted.get().says(), wanted);
        }
        Optional<Statement> told = last(lip, "fitted").or(() -> last(lip, "rubber")).or(() -> state.filter(s -> s.says().equals("new")));
        tells.say(LIP, lip, "fitting in question", "told", told);
        if (told.isPresent() && SealingWords.told(tells.value(lip, "lip rest time"), lip, A_DAY)) {
            tells.say(LIP, lip, "fitting in question", "rested", told);
        }
    }

    private void speed(String lip) {
        Optional<Statement> rubber = rubber(lip);
        boolean nitrile = rubber.filter(s -> s.says().equals("nitrile")).isPresent();
        boolean raised = raised();
        Optional<Statement> sheet = site.sheet("seals", lip, "rubber");
        boolean other = rubber.isPresent() && sheet.isPresent() && !rubber.get().says().equals(sheet.get().says());
        Optional<Value> land = here(lip, "seal land diameter");
        String what = "speed in question";
        if (raised && nitrile) {
            tells.say(LIP, lip, what, "rev limit", rubber);
        }
        if (other && (nitrile || land.isPresent())) {
            tells.say(LIP, lip, what, "rubber", rubber);
        }
        if (raised && land.isPresent()) {
            tells.sayBy(LIP, lip, what, "read", land);
        }
    }

    private boolean raised() {
        Optional<Statement> asked = site.word("use", Place.ENGINE, "rev limit").filter(s -> s.value().isPresent());
        Optional<Statement> sheet = site.sheet("output", Place.ENGINE, "rev limit").filter(s -> s.value().isPresent());
        return asked.isPresent() && sheet.isPresent() && asked.get().value().get().high() > sheet.get().value().get().high() * (1 + 1e-9);
    }

    private void centre(String lip, Optional<Statement> state) {
        String what = "centre in question";
        Optional<Value> swing = here(lip, "seal bore runout");
        tells.sayBy(LIP, lip, what, "swing read", swing);
        tells.sayBy(LIP, lip, what, "land read", here(lip, "seal land runout"));
        String joint = "rear seal housing to block";
        boolean bolted = lip.equals("rear crank seal") && site.places("each joint").orElse(List.of()).contains(joint)
                && site.sheet("joint", joint, "dowels").isEmpty() && tells.word(List.of("dowel"), joint, "state", "new", "kept").isEmpty();
        if (!bolted || state.isEmpty() || tells.reading(joint, "joint torque").isEmpty()) {
            return;
        }
        tells.say(LIP, lip, "centring in question", "housing fitted", state);
        Statement centred = null;
        for (Statement s : site.said("steps")) {
            if (s.what().equals("seal housing centred") && known(s)) {
                centred = s;
            }
        }
        if (swing.isPresent()) {
            tells.sayBy(LIP, lip, "centring", "done", swing);
        } else if (centred == null || !List.of("done", "passed", "left out").contains(centred.says())) {
            tells.lack("shaft seal centring", lip, "steps seal housing centred");
        } else {
            tells.say(LIP, lip, "centring", centred.says().equals("left out") ? "left out" : "done", Optional.of(centred));
        }
    }

    private void facing(String lip) {
        String what = "facing in question";
        tells.say(LIP, lip, what, "looked", sign(lip, List.of("wrong way round")));
        Optional<Statement> hand = last(lip, "rotation").filter(SealWords::known);
        Optional<Statement> turns = site.sheet("layout", Place.ENGINE, "turns");
        boolean rear = lip.equals("rear crank seal");
        if (hand.isPresent() && turns.isPresent() && (rear || lip.equals("front crank seal"))) {
            tells.say(LIP, lip, what, "hand told", hand);
            boolean same = hand.get().says().equals(turns.get().says());
            tells.say(LIP, lip, "hand", same != rear ? "right" : "wrong", hand.get().told().orElse(""),
                    List.of(hand.get().where(), turns.get().where()));
        }
        if (site.sheet("seals", lip, "form").isPresent()) {
            tells.say(LIP, lip, what, "form told", last(lip, "form"));
        }
    }

    // --- any seal

    private Optional<Statement> rubber(String seal) {
        return last(seal, "rubber").filter(SealWords::known).or(() -> site.sheet("seals", seal, "rubber"));
    }

    private void seal(String seal) {
        Optional<Statement> told = last(seal, "rubber");
        Optional<Statement> rubber = rubber(seal);
        tells.say(SEAL, seal, "rubber in question", "told", told);
        if (told.isPresent()) {
            tells.say(SEAL, seal, "rubber in question", "heat", site.word("use", Place.ENGINE, "running temperature"));
        }
        if (told.isPresent() && (!known(told.get()) || told.get().says().equals("rubber"))) {
            tells.lack("seal rubber told", seal, site.sheet("seals", seal, "kind").filter(s -> s.says().equals(LIP)).isPresent()
                    ? "shaft seal rubber" : "sealing ring rubber");
        } else {
            tells.say(SEAL, seal, "rubber told", rubber.map(Statement::says).orElse(""), rubber);
        }
        holds(seal);
        age(seal);
    }

    /** What it keeps in: the sheet's word, else what its name or kind says. */
    private void holds(String seal) {
        Optional<Statement> sheet = site.sheet("seals", seal, "holds");
        Optional<Statement> kind = site.sheet("seals", seal, "kind");
        String named = sheet.isPresent() ? "" : byName(seal);
        boolean lip = kind.filter(s -> s.says().equals(LIP)).isPresent() && !named.equals("coolant") && !named.equals("fuel");
        String says = sheet.map(Statement::says).orElse(lip ? "oil" : named);
        if (says.isEmpty()) {
            tells.lack("seal holds", seal, "sheet seals holds");
        } else {
            tells.say(SEAL, seal, "holds", says, sheet.or(() -> kind));
        }
    }

    /** The one fluid that its name speaks of; of a name that speaks of two nobody can say which side the rubber meets. */
    private String byName(String seal) {
        Set<String> fluids = fluids(seal);
        Set<String> named = fluids.isEmpty() ? ofParts(seal) : fluids;
        return named.size() == 1 ? named.iterator().next() : "";
    }

    /** The fluids that a name speaks of by whole words: a coil is no oil. */
    private Set<String> fluids(String seal) {
        Set<String> named = new LinkedHashSet<>();
        Property holds = site.words.property("worked out", "holds").orElseThrow();
        for (int from = 0; from < seal.length();) {
            int to = from;
            while (to < seal.length() && Character.isLetter(seal.charAt(to))) {
                to++;
            }
            String word = seal.substring(from, to);
            if (holds.values().containsKey(word)) {
                named.add(word);
            } else if (holds.also().containsKey(word)) {
                named.add(holds.also().get(word));
            }
            from = to + 1;
        }
        return named;
    }

    /** The fluids that are kept in by the parts that a name speaks of, each under any of its names: a pushrod tube by the pushrod. */
    private Set<String> ofParts(String seal) {
        Set<String> named = new LinkedHashSet<>();
        for (int from = 0; from >= 0 && from < seal.length(); from = after(seal, from)) {
            for (int to = seal.length(); to > from; to = seal.lastIndexOf(' ', to - 1)) {
                Optional<Part> part = site.words.part(seal.substring(from, to));
                if (part.isPresent() && !part.get().keepsIn().isEmpty()) {
                    named.add(part.get().keepsIn());
                }
            }
        }
        return named;
    }

    /** Where the next word begins; -1 after the last. */
    private static int after(String seal, int from) {
        int blank = seal.indexOf(' ', from);
        return blank < 0 ? -1 : blank + 1;
    }

    private void age(String seal) {
        Optional<Statement> state = last(seal, "state");
        Optional<Statement> old = state.filter(s -> KEPT.contains(s.says()));
        Optional<Statement> fresh = state.filter(s -> s.says().equals("new"));
        String what = "age in question";
        tells.say(SEAL, seal, what, "kept", old);
        if (fresh.isPresent() && last(seal, "age").or(() -> last(seal, "date made")).isPresent()) {
            tells.say(SEAL, seal, what, "dated", fresh);
        }
        if (old.isEmpty()) {
            return;
        }
        boolean renewed = false;
        for (PartsAged.Piece piece : pieces(seal)) {
            renewed |= site.sheet(piece.part(), Place.ENGINE, "renew always").isPresent();
        }
        tells.say(SEAL, seal, "renewal", renewed ? "against sheet" : "kept", old);
        Optional<Statement> spent = sign(seal, SPENT);
        if (spent.isEmpty()) {
            tells.lack("seal spring", seal, site.sheet("seals", seal, "kind").filter(s -> s.says().equals("ring")).isPresent()
                    ? "sealing ring flattened" : "shaft seal hard");
        } else {
            tells.say(SEAL, seal, "spring", seen(spent.get()) ? "gone" : "springy", spent);
        }
    }

    // --- plugs

    private void corePlug(String plug) {
        tells.sayBy("core plug", plug, "grip in question", "size read", here(plug, "core plug diameter", "block core plug hole"));
        if (site.sheet("plugs", plug, "form").isPresent()) {
            tells.say("core plug", plug, "form told", "there", site.word("core plug", plug, "form"));
        }
    }

    /** The thread of a plug beside that of its hole: as gauged, else as the sheet has it. */
    private void thread(String plug) {
        Optional<Statement> own = Optional.empty();
        for (String part : List.of("gallery plug", "core plug", "drain plug", PLUG)) {
            own = own.or(() -> site.word(part, plug, "thread").filter(s -> s.at().equals(plug) && known(s)));
        }
        Optional<Statement> hole = site.word("threaded hole", plug, "thread").filter(s -> s.at().equals(plug) && known(s))
                .or(() -> site.sheet("plugs", plug, "thread"));
        tells.say(PLUG, plug, "thread told", "there", own);
        if (own.isEmpty() || hole.isEmpty()) {
            return;
        }
        String has = own.get().says().toLowerCase(Locale.ROOT).strip();
        String wants = hole.get().says().toLowerCase(Locale.ROOT).strip();
        boolean same = has.equals(wants) || Threads.named(has).isPresent() && Threads.named(has).equals(Threads.named(wants))
                || PipeThread.fits(has, wants);
        boolean taper = taper(has);
        String says = same ? "same" : taper && !taper(wants) ? "taper in parallel" : !taper && taper(wants) ? "parallel in taper" : "other";
        tells.say(PLUG, plug, "thread against hole", says, own.get().told().orElse(""), List.of(own.get().where(), hole.get().where()));
    }

    private static boolean taper(String thread) {
        return thread.contains("taper") || PipeThread.named(thread).filter(PipeThread::taper).isPresent();
    }

    // --- filter

    private void filterSeat() {
        String seat = "filter seat";
        Optional<Statement> looked = sign(seat, Place.ENGINE, "left in");
        Optional<Statement> fresh = tells.word(List.of("oil filter"), Place.ENGINE, "state", "new");
        tells.say(seat, Place.ENGINE, "ring in question", "looked", looked);
        tells.say(seat, Place.ENGINE, "ring in question", "new filter", fresh);
        Optional<Statement> settles = looked.or(this::wiped);
        if (settles.isPresent()) {
            boolean two = seen(settles.get());
            tells.say(seat, Place.ENGINE, "rings", two ? "two" : "one", settles);
        } else if (fresh.isPresent()) {
            tells.lack("filter seat rings", Place.ENGINE, "filter seat left in");
        }
    }

    private Optional<Statement> wiped() {
        for (Statement s : site.said("steps")) {
            if (s.what().equals("faces wiped") && s.at().equals("filter seat") && (s.says().equals("done") || s.says().equals("passed"))) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    // --- what was taken off for good

    private void deleted() {
        for (String part : WITH_WAYS) {
            Set<String> places = new LinkedHashSet<>();
            for (Statement s : site.said(part)) {
                if (s.what().equals("state") && s.says().equals("deleted")) {
                    places.add(s.at());
                }
            }
            for (String at : places) {
                ends(part, at);
            }
        }
    }

    private void ends(String part, String at) {
        Optional<Statement> gone = site.word(part, at, "state");
        tells.say(part, at, "ends in question", "there", gone);
        String name = new PartsAged.Piece(part, at).name();
        double shut = 0;
        Statement missing = null;
        Statement form = null;
        Statement there = null;
        for (Statement s : site.said("blank")) {
            if (!s.at().equals(part) && !s.at().equals(name)) {
                continue;
            }
            if (s.what().equals("state")) {
                boolean off = SealingWords.GONE.contains(s.says());
                missing = off ? s : missing;
                there = off ? there : s;
                shut += off ? 0 : 1;
            } else if (s.what().equals("count") && s.value().isPresent()) {
                shut += s.value().get().low() - 1;
            } else if (s.what().equals("form") && known(s)) {
                form = form != null && slips(form) ? form : s;
            }
        }
        ends(part, at, shut, missing, there);
        if (there == null) {
            return;
        }
        tells.say(part, at, "way shut", needed(part) ? "still needed" : "dead", Optional.of(there));
        if (form != null) {
            tells.say(part, at, "blank hold", slips(form) && UNDER_PRESSURE.contains(part) ? "slips off" : "fixed", Optional.of(form));
        } else {
            tells.lack(part + " blank hold", at, "blank form");
        }
    }

    /** Whether the engine has no other way for what went by it. */
    private boolean needed(String part) {
        String[] here = SealingWords.HERE.toArray(new String[0]);
        return switch (part) {
            case "breather", "breather hose" -> tells.word(List.of("breather", "breather hose"), Place.ENGINE, "state", here).isEmpty();
            case "turbo oil drain" -> tells.word(List.of("turbocharger"), Place.ENGINE, "state", "deleted").isEmpty();
            case "bleed point" -> site.places("each bleed point").filter(p -> p.size() == 1).isPresent();
            default -> false;
        };
    }

    private static boolean slips(Statement form) {
        return form.says().equals("pressed") || form.says().equals("cap");
    }

    private void ends(String part, String at, double shut, Statement missing, Statement there) {
        String what = "ends shut";
        Optional<Statement> ends = site.word(part, at, "ends").filter(s -> s.value().isPresent());
        if (missing != null) {
            tells.say(part, at, what, "one missing", Optional.of(missing));
        } else if (there == null) {
            tells.lack(part + " " + what, at, "blank state");
        } else if (ends.isEmpty()) {
            tells.lack(part + " " + what, at, part + " ends");
        } else {
            tells.say(part, at, what, shut < ends.get().value().get().low() ? "fewer" : "all", there.told().orElse(""),
                    List.of(there.where(), ends.get().where()));
        }
    }
}

package leadlamp.guards;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.audit.RuleWords;
import leadlamp.audit.RulesFolder;
import leadlamp.audit.Way;
import leadlamp.build.RuleReader;
import leadlamp.words.Names;
import leadlamp.words.Part;
import leadlamp.words.PlaceWord;
import leadlamp.words.Property;
import leadlamp.words.Sign;
import leadlamp.words.Vocabulary;

/** Every word that a rule quotes is a word of the vocabulary, and one that may stand in that field. */
final class QuotedWords {
    private static final Set<String> STEP_SAYS = Set.of("done", "left out", "unknown", "passed", "failed", "not proved", "next",
            "planned");
    private static final Set<String> TORQUE_SAYS = Set.of("as found", "by hand", "not yet", "unknown");

    private final Vocabulary words;
    private final List<String> faults = new ArrayList<>();

    private QuotedWords(Vocabulary words) {
        this.words = words;
    }

    static List<String> faults(RulesFolder folder) {
        QuotedWords guard = new QuotedWords(folder.words());
        for (RuleReader.Read read : folder.rules().values()) {
            for (RuleReader.Rule rule : read.rules()) {
                for (int i = 0; i < rule.patterns().size(); i++) {
                    guard.pattern(rule, i);
                }
            }
        }
        return guard.faults;
    }

    private void pattern(RuleReader.Rule rule, int number) {
        Way.Pattern pattern = rule.patterns().get(number);
        List<RuleReader.Quoted> quoted = new ArrayList<>();
        rule.quoted().stream().filter(q -> q.pattern() == number).forEach(quoted::add);
        boolean named = true;
        for (String word : RuleWords.all(List.of(pattern))) {
            if (!word.startsWith("any ") && Names.resolve(word, words).isEmpty()) {
                named = false;
                faults.add(where(quoted, rule) + ": \"" + word + "\" is the name of no fact."
                        + Names.nearest(word, words).map(n -> " Nearest: " + n + ".").orElse(""));
            }
        }
        for (RuleReader.Quoted word : quoted) {
            switch (word.field()) {
                case "kind" -> kind(word, pattern);
                case "sign" -> oneOf(word, signs(), "is no sign");
                case "name" -> oneOf(word, words.conditions().keySet(), "is no condition");
                case "at" -> place(word);
                case "told" -> oneOf(word, values("any entry", "told by"), "is nobody who tells");
                case "gauge" -> oneOf(word, gauges(), "is no kind of gauge");
                case "says" -> {
                    if (named) {
                        says(word, pattern);
                    }
                }
                default -> {
                }
            }
        }
    }

    private static String where(List<RuleReader.Quoted> quoted, RuleReader.Rule rule) {
        for (String field : List.of("what", "sign", "of", "kind", "name")) {
            for (RuleReader.Quoted word : quoted) {
                if (word.field().equals(field)) {
                    return word.where() + ": " + word.rule();
                }
            }
        }
        return rule.where() + ": " + rule.rule().name();
    }

    private void oneOf(RuleReader.Quoted word, Collection<String> known, String what) {
        if (!known.contains(word.word())) {
            faults.add(word.where() + ": " + word.rule() + ": \"" + word.word() + "\" " + what + "."
                    + Vocabulary.nearest(word.word(), known).map(n -> " Nearest: " + n + ".").orElse(""));
        }
    }

    private void kind(RuleReader.Quoted word, Way.Pattern pattern) {
        Set<String> kinds = new TreeSet<>();
        for (Part part : words.parts()) {
            kinds.add(part.kind());
        }
        words.quantities().forEach(q -> kinds.add(q.kind()));
        kinds.add("joint");
        oneOf(word, kinds, "is no kind that a fact bears");
    }

    private void place(RuleReader.Quoted word) {
        Set<String> known = new TreeSet<>(Set.of("engine"));
        for (PlaceWord place : words.placeWords()) {
            known.add(place.name());
        }
        words.parts().forEach(p -> known.add(p.name()));
        if (known.contains(word.word()) || word.word().contains(" to ")) {
            return;
        }
        for (String one : word.word().split(" ")) {
            if (!known.contains(one) && !one.chars().allMatch(Character::isDigit) && !Set.of("main", "big", "end", "at").contains(one)) {
                oneOf(word, known, "is no place");
                return;
            }
        }
    }

    /** What the facts of this pattern may say; empty where anything may stand there. */
    private void says(RuleReader.Quoted word, Way.Pattern pattern) {
        Set<String> known = new TreeSet<>();
        boolean free = pattern.quoted("what").isEmpty();
        List<String> of = pattern.quoted("of").isEmpty() ? pattern.quoted("kind") : pattern.quoted("of");
        for (String one : of.isEmpty() ? List.of("") : of) {
            for (String what : pattern.quoted("what")) {
                free |= !says(pattern.fact(), one, what, known);
            }
        }
        if (of.equals(List.of("machining"))) {
            known.addAll(values("machining", "by"));
            free = false;
        } else if (of.equals(List.of("steps"))) {
            known.addAll(STEP_SAYS);
            free = false;
        }
        if (!free || !known.isEmpty()) {
            oneOf(word, known, "is nothing that it can say");
        }
    }

    /** Adds what may be said; false where the vocabulary lists no words. */
    private boolean says(String fact, String of, String what, Set<String> known) {
        int before = known.size();
        switch (of) {
            case "machining":
                known.addAll(what.indexOf(' ') > 0 && words.part(what).isEmpty() ? Set.of() : values("machining", "by"));
                break;
            case "steps":
                known.addAll(STEP_SAYS);
                break;
            case "observations":
                known.add("unknown");
                break;
            case "protection":
                protection(what, known);
                break;
            case "gauge":
                if (what.equals("kind")) {
                    known.addAll(gauges());
                } else {
                    known.addAll(values("gauges", what));
                    known.addAll(values("worked out of gauge", what));
                }
                break;
            case "joint":
                for (String section : List.of("fasteners", "threads", "worked out of joint", "sheet joints", "sheet joints gasket")) {
                    known.addAll(values(section, what.startsWith("gasket ") ? what.substring(7) : what));
                }
                if (what.equals("torque said")) {
                    known.addAll(TORQUE_SAYS);
                }
                if (what.equals("renew always")) {
                    known.add("bolts");
                }
                break;
            case "use", "build":
                known.addAll(values(of, what));
                known.addAll(values("worked out of " + of, what));
                if (of.equals("build") && what.equals("past")) {
                    known.addAll(words.events().keySet());
                }
                break;
            default:
                if (fact.equals("OnSheet")) {
                    sheet(of, what, known);
                }
                part(of, what, known);
        }
        if (known.size() > before) {
            known.add("unknown");
            return true;
        }
        return false;
    }

    private void protection(String what, Set<String> known) {
        Set<String> names = words.property("protection", "names").map(p -> p.values().keySet()).orElse(Set.of());
        if (names.contains(what)) {
            known.addAll(List.of("none", "fitted"));
            known.addAll(values("protection", "action"));
        } else {
            for (String name : names) {
                if (what.startsWith(name + " ")) {
                    known.addAll(values("protection", what.substring(name.length() + 1)));
                    known.addAll(values("worked out of protection", what));
                }
            }
        }
    }

    private void part(String of, String what, Set<String> known) {
        String part = of.endsWith(" as found") ? of.substring(0, of.length() - 9) : of;
        Optional<Property> property = words.property("parts", what);
        if (property.isPresent()) {
            known.addAll(property.get().values().keySet());
            property.get().perPart().forEach((one, values) -> {
                if (of.isEmpty() || one.equals(part) || words.part(part).filter(p -> p.kinds().contains(one)).isPresent()
                        || words.part(one).filter(p -> p.kinds().contains(part)).isPresent()) {
                    known.addAll(values.keySet());
                }
            });
        }
        known.addAll(values("worked out", what));
        known.addAll(values("measurements", what));
        if (what.equals("figure")) {
            known.addAll(List.of("good", "unknown", "not read"));
        }
        if (what.equals("two ways")) {
            known.addAll(List.of("agree", "differ"));
        }
        for (Sign sign : words.signs()) {
            if (what.startsWith(sign.name() + " ")) {
                String aside = what.substring(sign.name().length() + 1);
                known.addAll(aside.equals("as") ? List.of("found") : values("observations", aside));
            }
        }
    }

    private void sheet(String of, String what, Set<String> known) {
        if (what.equals("renew always")) {
            known.addAll(List.of("part", "bolts"));
        }
        if (of.equals(what)) {
            known.addAll(values("sheet", what));
        }
        if (of.equals("materials")) {
            known.addAll(values("parts", "material"));
        }
        known.addAll(values("sheet " + of, what));
        int blank = what.indexOf(' ');
        if (blank > 0) {
            known.addAll(values("sheet " + of + " " + what.substring(0, blank), what.substring(blank + 1)));
        }
        for (String section : List.of("gears", "plugs", "seals", "sensors", "joints")) {
            known.addAll(values("sheet " + section, what));
        }
    }

    private Collection<String> values(String section, String word) {
        return words.property(section, word).map(p -> p.values().keySet()).orElse(Set.of());
    }

    private Collection<String> gauges() {
        Set<String> kinds = new TreeSet<>();
        words.gauges().forEach(g -> kinds.add(g.name()));
        return kinds;
    }

    private Collection<String> signs() {
        Set<String> names = new TreeSet<>();
        words.signs().forEach(s -> names.add(s.name()));
        return names;
    }
}

package leadlamp.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.quantity.Estimate;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Quantity;

/**
 * Words that are worked out: an "or", a sum or a comparison that a rule or a page may only ask as a word. Each is said of a
 * subject as `WHAT`, in one of a few words; where its doubt leaves it open, nothing is said.
 */
final class SaidWords {
    private static final double TWICE = 2;
    private static final List<String> YES_NO = List.of("yes", "no");

    private final Site site;
    private final Consumer<String> need;
    private final List<Stated> said;
    private final Consumer<Missing> lacking;

    private SaidWords(Site site, Consumer<String> need, List<Stated> said, Consumer<Missing> lacking) {
        this.site = site;
        this.need = need;
        this.said = said;
        this.lacking = lacking;
    }

    /** All words that are worked out, as subject and property, and what each may say; an empty list where that is the sheet's own. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        for (String what : List.of("rev limit", "boost", "torque", "power", "compression", "ethanol")) {
            names.put("use " + what + " over sheet", YES_NO);
        }
        names.put("use fuel under sheet", YES_NO);
        names.put("use fuel over sheet", YES_NO);
        names.put("valve lift over sheet", YES_NO);
        names.put("valve spring load over sheet", YES_NO);
        names.put("two ways", List.of("agree", "differ"));
        names.put(Choose.CLASS_WANTED, List.of());
        names.put(Choose.CHOSEN_BY, List.of());
        names.put("class against wanted", List.of("same", "thinner", "thicker", "other"));
        names.putAll(Comparisons.names());
        names.putAll(InQuestion.names());
        names.putAll(BottomEndWords.names());
        names.putAll(FastenerWords.names());
        names.putAll(CamDriveWords.names());
        names.putAll(ValveGearQuestions.names());
        names.putAll(ValveGearWords.names());
        names.putAll(SealingWords.names());
        names.putAll(SealWords.names());
        names.putAll(HeadWords.names());
        names.putAll(HistoryWords.names());
        return names;
    }

    /** Works them out, those that one class knows together, and only where one of them is asked for. */
    static void all(Site site, Consumer<String> need, List<Stated> said, Consumer<Missing> lacking, Predicate<String> asked) {
        SaidWords words = new SaidWords(site, need, said, lacking);
        new Choose(site, need, said, lacking).all();
        if (any(Comparisons::names, asked)) {
            Comparisons.all(site, need, said, lacking);
        }
        Telling tells = new Telling(site, need, said, lacking);
        if (any(BottomEndWords::names, asked)) {
            BottomEndWords.all(tells);
        }
        if (any(InQuestion::names, asked)) {
            InQuestion.all(tells);
        }
        if (any(FastenerWords::names, asked)) {
            FastenerWords.all(tells);
        }
        if (any(CamDriveWords::names, asked)) {
            CamDriveWords.all(tells);
        }
        if (any(ValveGearQuestions::names, asked)) {
            ValveGearQuestions.all(tells);
        }
        if (any(ValveGearWords::names, asked)) {
            ValveGearWords.all(tells);
        }
        if (any(SealingWords::names, asked)) {
            SealingWords.all(tells);
        }
        if (any(SealWords::names, asked)) {
            SealWords.all(tells);
        }
        if (any(HeadWords::names, asked)) {
            HeadWords.all(tells);
        }
        if (any(HistoryWords::names, asked)) {
            HistoryWords.all(tells);
        }
        words.overSheet("rev limit", "rev limit", "output", "rev limit");
        words.overSheet("boost", "boost", "output", "boost");
        words.overSheet("torque", "target torque", "output", "torque");
        words.overSheet("power", "target power", "output", "power");
        words.overSheet("ethanol", "ethanol share", "fuelling", "ethanol rating");
        words.compression();
        words.octane();
        words.valueOverLimit("valve lift", "valve", "lift over sheet", "valve lift");
        words.valueOverLimit("valve spring seat load", "valve spring", "load over sheet", "");
    }

    private static boolean any(Supplier<Map<String, List<String>>> names, Predicate<String> asked) {
        if (asked == Derivation.EVERY) {
            return true;
        }
        for (String name : names.get().keySet()) {
            if (asked.test(name)) {
                return true;
            }
        }
        return false;
    }

    /** What is asked of the engine against the sheet's figure for it. */
    private void overSheet(String word, String use, String section, String line) {
        Optional<Statement> asked = site.word("use", Place.ENGINE, use).filter(s -> s.value().isPresent() && s.value().get().figure());
        if (asked.isEmpty()) {
            return;
        }
        Optional<Statement> sheet = site.sheet(section, Place.ENGINE, line).filter(s -> s.value().isPresent() && s.value().get().figure());
        String what = word + " over sheet";
        if (sheet.isEmpty()) {
            lacking.accept(new Missing("use " + what, Place.ENGINE, List.of("sheet " + section + " " + line)));
            return;
        }
        double over = asked.get().value().get().high() - sheet.get().value().get().high();
        boolean yes = over > 1e-9 * Math.abs(sheet.get().value().get().high());
        say("use", "use", Place.ENGINE, what, yes ? "yes" : "no", asked.get().told().orElse(""),
                asked.get().says() + " asked, sheet " + sheet.get().says(), List.of(asked.get().where(), sheet.get().where()));
    }

    /** The ratio worked out is above the sheet's by more than its doubt, in one cylinder or more. */
    private void compression() {
        need.accept("compression ratio");
        Optional<Statement> sheet = site.sheet("standard", Place.ENGINE, "compression ratio").filter(s -> s.value().isPresent());
        List<Value> ratios = new ArrayList<>();
        for (Value value : site.store.of("compression ratio")) {
            if (value.told().isEmpty() && value.low().isPresent()) {
                ratios.add(value);
            }
        }
        String what = "compression over sheet";
        if (sheet.isEmpty() || ratios.isEmpty()) {
            List<String> lacks = new ArrayList<>();
            if (sheet.isEmpty()) {
                lacks.add("sheet standard compression ratio");
            }
            if (ratios.isEmpty()) {
                lacks.add("compression ratio");
            }
            lacking.accept(new Missing("use " + what, Place.ENGINE, lacks));
            return;
        }
        double standard = sheet.get().value().get().high();
        Value highest = ratios.get(0);
        for (Value ratio : ratios) {
            highest = ratio.low().get().value() > highest.low().get().value() ? ratio : highest;
        }
        Estimate low = highest.low().get();
        boolean yes = low.value() - TWICE * low.standardUncertainty() > standard;
        List<Where> where = new ArrayList<>(highest.places());
        where.add(sheet.get().where());
        say("use", "use", Place.ENGINE, what, yes ? "yes" : "no", "", Figures.text(low.value(), highest.unit(), 2) + ", sheet "
                + sheet.get().says(), where);
    }

    /** The fuel's octane number against the least that the sheet asks, both by the research method or by the same word. */
    private void octane() {
        Optional<Statement> fuel = site.word("use", Place.ENGINE, "fuel");
        Optional<Statement> sheet = site.sheet("output", Place.ENGINE, "octane");
        int has = fuel.map(s -> number(s.says())).orElse(0);
        int wants = sheet.map(s -> number(s.says())).orElse(0);
        boolean alike = has > 0 && wants > 0 && letters(fuel.get().says()).equals(letters(sheet.get().says()));
        for (String way : List.of("under", "over")) {
            String what = "fuel " + way + " sheet";
            if (alike) {
                say("use", "use", Place.ENGINE, what, (way.equals("under") ? has < wants : has > wants) ? "yes" : "no",
                        fuel.get().told().orElse(""), fuel.get().says() + ", sheet " + sheet.get().says(),
                        List.of(fuel.get().where(), sheet.get().where()));
            } else {
                lacking.accept(new Missing("use " + what, Place.ENGINE, List.of(wants > 0 ? "use fuel" : "sheet output octane")));
            }
        }
    }

    private static int number(String text) {
        int number = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                number = Math.min(100_000, number * 10 + c - '0');
            } else if (number > 0) {
                break;
            }
        }
        return number;
    }

    private static String letters(String text) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLetter(text.charAt(i))) {
                letters.append(Character.toLowerCase(text.charAt(i)));
            }
        }
        return letters.toString();
    }

    /** A reading proven over the sheet's standard size or its most. */
    private void valueOverLimit(String quantity, String of, String what, String standard) {
        need.accept(quantity);
        Optional<Quantity> known = site.words.quantity(quantity);
        if (known.isEmpty()) {
            return;
        }
        for (Value value : List.copyOf(site.store.of(quantity))) {
            if (!value.of().equals(quantity) || value.low().isEmpty() || value.high().isEmpty() || Store.untold(value.at())) {
                continue;
            }
            double most = Double.NaN;
            List<Where> where = new ArrayList<>(value.places());
            if (!standard.isEmpty()) {
                Optional<Statement> line = site.sheet("standard", value.at(), standard).filter(s -> s.value().isPresent());
                most = line.map(s -> s.value().get().high()).orElse(Double.NaN);
                line.ifPresent(s -> where.add(s.where()));
            }
            for (var line : site.build.sheet().limits()) {
                if (line.quantity().equals(quantity) && (line.at().isEmpty() || site.store.covers(line.at(), value.at()))
                        && line.most().isPresent()) {
                    most = line.most().get().high();
                    where.add(line.line());
                }
            }
            if (Double.isNaN(most)) {
                continue;
            }
            Estimate low = value.low().get();
            boolean yes = low.value() - TWICE * low.standardUncertainty() > most;
            say(of, site.words.part(of).map(p -> p.kind()).orElse(of), value.at(), what, yes ? "yes" : "no", value.told(),
                    Figures.text(low.value(), value.unit(), value.figures()), where);
        }
    }

    private void say(String of, String kind, String at, String what, String says, String told, String sum, List<Where> where) {
        said.add(new Stated(of, kind, at, what, says, told, Map.of("sum", sum), List.copyOf(where)));
    }
}

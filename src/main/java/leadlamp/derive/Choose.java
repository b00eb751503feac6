package leadlamp.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Reading;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Part;
import leadlamp.words.Quantity;

/**
 * The class or size that the sheet's `choose` picks: by the band that a reading falls in, or by marks added together. A
 * reading whose ends, its doubt with them, fall in two bands picks none: that cannot be told.
 */
final class Choose {
    /** The property that says what was picked. */
    static final String CLASS_WANTED = "class wanted";
    /** The property that holds what was fitted against what was picked. */
    private static final String AGAINST_WANTED = "class against wanted";
    /** The property that says what the sheet picks by, so that an engine of one size is not asked. */
    static final String CHOSEN_BY = "chosen by";
    private static final double TWICE = 2;

    private final Site site;
    private final Consumer<String> need;
    private final List<Stated> said;
    private final Consumer<Missing> lacking;

    Choose(Site site, Consumer<String> need, List<Stated> said, Consumer<Missing> lacking) {
        this.site = site;
        this.need = need;
        this.said = said;
        this.lacking = lacking;
    }

    void all() {
        Optional<Node> section = site.build.sheet().below("choose");
        if (section.isEmpty() || !(section.get() instanceof Node.Fields parts)) {
            return;
        }
        for (Node.Field line : parts.fields()) {
            Optional<Part> part = site.words.part(line.key());
            if (part.isEmpty()) {
                continue;
            }
            List<Node> lines = line.value() instanceof Node.Items items ? items.items() : List.of(line.value());
            for (Node one : lines) {
                if (one instanceof Node.Fields fields) {
                    part(part.get(), fields);
                }
            }
        }
    }

    private void part(Part part, Node.Fields choice) {
        List<String> by = texts(choice.get("by"));
        if (by.isEmpty() || choice.get("lines").isEmpty() || !(choice.get("lines").get() instanceof Node.Items lines)) {
            return;
        }
        String narrowed = text(choice, "at");
        for (String place : places(part)) {
            if (!narrowed.isEmpty() && !Place.covers(narrowed, place)) {
                continue;
            }
            said.add(new Stated(part.name(), part.kind(), place, CHOSEN_BY, String.join(" + ", by), "", Map.of(), List.of(choice.where())));
            if (by.size() == 1 && site.words.quantity(by.get(0)).isPresent()) {
                byReading(part, place, site.words.quantity(by.get(0)).get(), text(choice, "take"), lines);
            } else {
                byMarks(part, place, by, lines);
            }
        }
    }

    private Set<String> places(Part part) {
        Set<String> places = new LinkedHashSet<>();
        if (part.group().equals(Place.ENGINE)) {
            places.add(Place.ENGINE);
            return places;
        }
        site.places(part.group()).ifPresent(places::addAll);
        if (places.isEmpty()) {
            for (Statement s : site.said(part.name())) {
                places.add(s.at());
            }
        }
        return places;
    }

    private void byReading(Part part, String place, Quantity quantity, String take, Node.Items lines) {
        need.accept(quantity.name());
        boolean ofAll = take.equals("greatest") || take.equals("least");
        Optional<Slot> slot = ofAll ? Take.every(quantity.name()).at(site, place) : Take.ends(quantity.name()).at(site, place);
        if (slot.isEmpty() && ofAll) {
            slot = single(quantity, place);
        }
        if (slot.isEmpty()) {
            lacks(part, place, quantity.name(), false);
            return;
        }
        Value picked = slot.get().values().get(0);
        for (Value value : slot.get().values()) {
            if (value.low().isEmpty() || value.high().isEmpty()) {
                lacks(part, place, quantity.name(), false);
                return;
            }
            boolean better = take.equals("least") ? value.low().get().value() < picked.low().get().value()
                    : value.high().get().value() > picked.high().get().value();
            picked = ofAll && better ? value : picked;
        }
        double low = picked.low().get().value() - TWICE * picked.low().get().standardUncertainty();
        double high = picked.high().get().value() + TWICE * picked.high().get().standardUncertainty();
        Optional<String> first = band(lines, low, quantity.dimension());
        Optional<String> last = band(lines, high, quantity.dimension());
        if (first.isEmpty() || !first.equals(last)) {
            lacks(part, place, quantity.name(), !first.equals(last));
            return;
        }
        String sum = (ofAll ? take + " " : "") + quantity.name() + " "
                + Figures.text(picked.high().map(Estimate::value).orElse(0.0), picked.unit(), picked.figures()) + ": " + first.get();
        // The greatest of a set is the builder's own only where he read them all.
        String told = Differences.told(slot.get().values());
        say(part, place, first.get(), told, sum, picked.places());
    }

    /** An engine of one cylinder has its greatest in the one reading. */
    private Optional<Slot> single(Quantity quantity, String place) {
        Optional<List<String>> group = site.places(quantity.group());
        if (group.isPresent() && group.get().size() == 1) {
            return Take.ends(quantity.name()).at(site, group.get().get(0));
        }
        return Optional.empty();
    }

    /** The class of the band: `from` is in it, `to` is not. */
    private static Optional<String> band(Node.Items lines, double si, Dimension dimension) {
        for (Node node : lines.items()) {
            if (node instanceof Node.Fields line) {
                double from = size(line, "from", dimension, Double.NEGATIVE_INFINITY);
                double to = size(line, "to", dimension, Double.POSITIVE_INFINITY);
                if (si >= from && si < to) {
                    return Optional.of(text(line, "choose"));
                }
            }
        }
        return Optional.empty();
    }

    private static double size(Node.Fields line, String key, Dimension dimension, double otherwise) {
        String text = text(line, key);
        if (text.isEmpty()) {
            return otherwise;
        }
        return Reading.read(text, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()
                ? read.written().low() : Double.NaN;
    }

    private void byMarks(Part part, String place, List<String> by, Node.Items lines) {
        int sum = 0;
        String told = "";
        List<Where> where = new ArrayList<>();
        StringBuilder marks = new StringBuilder();
        for (String mark : by) {
            String of = mark.endsWith(" class mark") ? mark.substring(0, mark.length() - " class mark".length()) : mark;
            Optional<Statement> stated = site.word(of, place, "class mark").filter(s -> wholeNumber(s.says()));
            if (stated.isEmpty()) {
                lacks(part, place, of + " class mark", false);
                return;
            }
            sum += Integer.parseInt(stated.get().says().strip());
            told = told.isEmpty() ? stated.get().told().orElse("") : told;
            where.add(stated.get().where());
            marks.append(marks.length() == 0 ? "" : " + ").append(of).append(' ').append(stated.get().says().strip());
        }
        for (Node node : lines.items()) {
            if (node instanceof Node.Fields line && text(line, "sum").equals(Integer.toString(sum))) {
                say(part, place, text(line, "choose"), told, marks + " = " + sum + ": " + text(line, "choose"), where);
                return;
            }
        }
        lacks(part, place, "sheet choose " + part.name(), false);
    }

    /** Without the class that is wanted nothing can be held against it. */
    private void lacks(Part part, String place, String reading, boolean coarse) {
        lacking.accept(new Missing(part.name() + " " + CLASS_WANTED, place, List.of(reading), coarse));
        lacking.accept(new Missing(part.name() + " " + AGAINST_WANTED, place, List.of(reading), coarse));
    }

    private void say(Part part, String place, String choice, String told, String sum, List<Where> where) {
        Map<String, String> asides = new TreeMap<>();
        asides.put("sum", sum);
        said.add(new Stated(part.name(), part.kind(), place, CLASS_WANTED, choice, told, Map.copyOf(asides), List.copyOf(where)));
        Optional<Statement> fitted = site.word(part.name(), place, "class mark").filter(s -> !s.says().equals("unknown"));
        if (fitted.isPresent()) {
            List<Where> both = new ArrayList<>(List.of(fitted.get().where()));
            Differences.join(both, where);
            asides.put(CLASS_WANTED, choice);
            said.add(new Stated(part.name(), part.kind(), place, AGAINST_WANTED, against(part, fitted.get().says(), choice),
                    fitted.get().told().orElse(told), Map.copyOf(asides), List.copyOf(both)));
        } else {
            lacking.accept(new Missing(part.name() + " " + AGAINST_WANTED, place, List.of(part.name() + " class mark")));
        }
    }

    /** The class fitted against the class wanted: same; of a gasket whose thicknesses the sheet gives, thinner or thicker; else other. */
    private String against(Part part, String fitted, String wanted) {
        if (fitted.equalsIgnoreCase(wanted)) {
            return "same";
        }
        for (String joint : site.build.sheet().names("joints")) {
            Optional<Node> gasket = site.build.sheet().below("joints", joint, "gasket");
            if (gasket.isPresent() && gasket.get() instanceof Node.Fields fields && text(fields, "part").equals(part.name())
                    && fields.get("thickness").isPresent() && fields.get("thickness").get() instanceof Node.Fields classes) {
                double has = size(classes, fitted, Dimension.LENGTH, Double.NaN);
                double wants = size(classes, wanted, Dimension.LENGTH, Double.NaN);
                if (has < wants) {
                    return "thinner";
                }
                if (has > wants) {
                    return "thicker";
                }
            }
        }
        return "other";
    }

    private static boolean wholeNumber(String text) {
        String words = text.strip();
        if (words.isEmpty() || words.length() > 4) {
            return false;
        }
        for (int i = 0; i < words.length(); i++) {
            if (words.charAt(i) < '0' || words.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    private static List<String> texts(Optional<Node> node) {
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get() instanceof Node.Scalar scalar) {
            return List.of(scalar.text());
        }
        List<String> texts = new ArrayList<>();
        if (node.get() instanceof Node.Items items) {
            for (Node item : items.items()) {
                if (item instanceof Node.Scalar scalar) {
                    texts.add(scalar.text());
                }
            }
        }
        return texts;
    }

    private static String text(Node.Fields fields, String key) {
        return fields.get(key).filter(Node.Scalar.class::isInstance).map(n -> ((Node.Scalar) n).text()).orElse("");
    }
}

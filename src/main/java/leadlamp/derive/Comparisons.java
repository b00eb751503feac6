package leadlamp.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import leadlamp.calc.BoltClass;
import leadlamp.calc.BoltLengths;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.Dates;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/**
 * Words of joints, gauges and protections that come of a comparison: a class against the sheet's, lengths against the sheet's
 * positions, a torque that is there or not, a step that hides a joint, a fall after the last check, a threshold of one figure.
 * Where the comparison is open, nothing is said and the reading that leaves it open is what is lacking.
 */
final class Comparisons {
    private static final double TWICE = 2;
    /** Thread that two classes are compared at where the joint's own is not told: they stand in the same order at any. */
    private static final double ANY_THREAD = 0.010;
    private static final String JOINT = "joint";

    private final Site site;
    private final Consumer<String> need;
    private final List<Stated> said;
    private final Consumer<Missing> lacking;
    private List<Statement> tightened;

    private Comparisons(Site site, Consumer<String> need, List<Stated> said, Consumer<Missing> lacking) {
        this.site = site;
        this.need = need;
        this.said = said;
        this.lacking = lacking;
    }

    /** The words, as subject and property, and what each may say. */
    static Map<String, List<String>> names() {
        Map<String, List<String>> names = new TreeMap<>();
        names.put("joint class against sheet", List.of("lower", "same", "higher", "not compared"));
        names.put("joint lengths against sheet", List.of("same", "other places", "other counts"));
        names.put("joint hiding step", List.of("next", "done", "later"));
        names.put("joint tightness", List.of("to torque", "not yet", "by hand", "as found"));
        names.put("gauge hurt since check", List.of("yes", "no"));
        names.put("protection low oil pressure cut shape", List.of("one figure", "with speed"));
        return names;
    }

    static void all(Site site, Consumer<String> need, List<Stated> said, Consumer<Missing> lacking) {
        Comparisons words = new Comparisons(site, need, said, lacking);
        for (String joint : Joints.joints(site, "each joint")) {
            words.boltClass(joint);
        }
        for (String joint : site.places("each joint with several lengths").orElse(List.of())) {
            words.lengths(joint);
        }
        Optional<HowFar> howFar = site.howFar();
        for (String joint : Joints.joints(site, "each joint with a torque")) {
            words.tightness(joint);
            howFar.ifPresent(far -> words.hidingStep(joint, far));
        }
        for (String gauge : site.build.gauges().keySet()) {
            words.hurt(gauge);
        }
        words.shapeOfCut();
    }

    // --- joints

    private void boltClass(String joint) {
        String what = "class against sheet";
        Optional<Statement> own = site.word(JOINT, joint, "class").filter(s -> !s.says().equals("unknown"));
        Optional<Statement> sheet = site.sheet(JOINT, joint, "class");
        if (own.isEmpty() || sheet.isEmpty()) {
            lack(JOINT, joint, what, own.isEmpty() ? "joint class" : "", sheet.isEmpty() ? "sheet joint class" : "");
            return;
        }
        String sum = own.get().says() + " fitted, sheet " + sheet.get().says();
        say(JOINT, joint, what, order(own.get().says(), sheet.get().says(), joint), told(own.get()), sum, own.get().where(),
                sheet.get().where());
    }

    /** Steel classes go by their least tensile strength; stainless steel and titanium are another matter than a class. */
    private String order(String own, String sheet, String joint) {
        if (own.equals(sheet)) {
            return "same";
        }
        double diameter = Joints.thread(site, joint).map(t -> t.diameter()).orElse(ANY_THREAD);
        Optional<BoltClass> has = BoltClass.named(own, diameter);
        Optional<BoltClass> wants = BoltClass.named(sheet, diameter);
        if (has.isEmpty() || wants.isEmpty() || own.startsWith("stainless") || sheet.startsWith("stainless")) {
            return "not compared";
        }
        return has.get().tensile() < wants.get().tensile() ? "lower" : "higher";
    }

    private void lengths(String joint) {
        String what = "lengths against sheet";
        need.accept("bolt free length");
        List<Value> fitted = new ArrayList<>();
        List<Double> wanted = new ArrayList<>();
        List<Where> where = new ArrayList<>();
        int positions = 0;
        boolean open = false;
        boolean apart = false;
        StringBuilder sum = new StringBuilder();
        for (Statement line : site.sheetLines(JOINT)) {
            if (!line.what().equals("length") || line.at().equals(joint) || !Place.covers(joint, line.at()) || line.value().isEmpty()) {
                continue;
            }
            positions++;
            Optional<Value> bolt = site.store.at("bolt free length", line.at()).filter(v -> v.at().equals(line.at()) && v.plain());
            if (bolt.isEmpty()) {
                open = true;
                continue;
            }
            double sheet = line.value().get().low();
            Estimate length = bolt.get().low().orElseThrow();
            fitted.add(bolt.get());
            wanted.add(sheet);
            where.addAll(bolt.get().places());
            where.add(line.where());
            switch (BoltLengths.held(length.value(), sheet, TWICE * length.standardUncertainty())) {
                case OPEN -> open = true;
                case OTHER -> {
                    apart = true;
                    sum.append(sum.length() == 0 ? "" : "; ").append(line.at().substring(joint.length() + 1)).append(": ")
                            .append(Figures.text(length.value(), bolt.get().unit(), bolt.get().figures())).append(", sheet ")
                            .append(line.says());
                }
                default -> {
                }
            }
        }
        if (positions == 0 || open || where.isEmpty()) {
            lack(JOINT, joint, what, positions == 0 ? "sheet joint lengths" : "joint lengths", "");
            return;
        }
        double[] has = new double[fitted.size()];
        double[] wants = new double[fitted.size()];
        for (int i = 0; i < has.length; i++) {
            has[i] = fitted.get(i).low().orElseThrow().value();
            wants[i] = wanted.get(i);
        }
        String says = !apart ? "same" : BoltLengths.sameCounts(has, wants) ? "other places" : "other counts";
        String told = Differences.told(fitted);
        say(JOINT, joint, what, says, told, sum.length() == 0 ? "each bolt has the sheet's length" : sum.toString(),
                where.toArray(new Where[0]));
    }

    /** What the record says of how tight any joint is, in its own order. */
    private List<Statement> tightened() {
        if (tightened == null) {
            tightened = new ArrayList<>();
            for (Statement s : site.build.statements()) {
                boolean torque = s.form() == Statement.Form.READ && s.of().equals("joint torque") && s.what().isEmpty()
                        && s.value().map(Written::figure).orElse(false);
                boolean word = s.form() == Statement.Form.STATED && s.of().equals(JOINT) && s.what().equals("torque said")
                        && !s.says().equals("unknown");
                if (torque || word) {
                    tightened.add(s);
                }
            }
        }
        return tightened;
    }

    /** A torque written down, or the word that stands in its place; of two entries the later. */
    private void tightness(String joint) {
        Statement last = null;
        for (Statement s : tightened()) {
            if (Place.covers(s.at(), joint) && (last == null || s.told().isEmpty() || last.told().isPresent())) {
                last = s;
            }
        }
        if (last == null) {
            lack(JOINT, joint, "tightness", "joint torque", "");
            return;
        }
        boolean torque = last.form() == Statement.Form.READ;
        say(JOINT, joint, "tightness", torque ? "to torque" : last.says(), told(last), torque ? last.value().get().text() : last.says(),
                last.where());
    }

    private void hidingStep(String joint, HowFar far) {
        String what = "hiding step";
        Optional<Statement> line = site.sheet(JOINT, joint, "hidden by");
        Optional<String> step = line.flatMap(s -> site.words.step(s.says())).map(s -> s.name());
        if (step.isEmpty() || !far.has(step.get())) {
            lack(JOINT, joint, what, "sheet joint hidden by", "");
            return;
        }
        Optional<String> stands = far.stands(step.get());
        if (stands.isEmpty()) {
            lack(JOINT, joint, what, far.isOpen(step.get()) ? "steps " + step.get() : "steps next", "");
            return;
        }
        List<Where> where = new ArrayList<>(far.lines(step.get()));
        where.add(line.get().where());
        say(JOINT, joint, what, stands.get(), "", "hidden by: " + step.get(), where.toArray(new Where[0]));
    }

    // --- gauges, protections

    private void hurt(String gauge) {
        Optional<Statement> dropped = site.word("gauge", gauge, "dropped").filter(s -> !s.says().equals("unknown"));
        if (dropped.isEmpty()) {
            return;
        }
        Optional<Statement> checked = site.word("gauge", gauge, "checked");
        Optional<Days> fell = days(dropped.get());
        Optional<Days> seen = checked.flatMap(this::days);
        String what = "hurt since check";
        if (fell.isEmpty() || seen.isEmpty()) {
            lack("gauge", gauge, what, fell.isEmpty() ? "gauge dropped" : "", seen.isEmpty() ? "gauge checked" : "");
            return;
        }
        boolean after = fell.get().first().isAfter(seen.get().last());
        boolean before = fell.get().last().isBefore(seen.get().first());
        if (!after && !before) {
            lack("gauge", gauge, what, "gauge dropped", "gauge checked");
            return;
        }
        say("gauge", gauge, what, after ? "yes" : "no", told(dropped.get()), "dropped " + dropped.get().says() + ", checked "
                + checked.get().says(), dropped.get().where(), checked.get().where());
    }

    /** First and last day that a date may mean. */
    private record Days(LocalDate first, LocalDate last) {
    }

    private Optional<Days> days(Statement dated) {
        Optional<Dates> read = Dates.read(dated.says());
        if (read.isPresent() && read.get().monthsAgo() >= 0) {
            int ago = read.get().monthsAgo();
            return site.today().map(today -> new Days(today.minusMonths(ago + 1L), today.minusMonths(ago)));
        }
        return read.map(d -> new Days(d.first(), d.last()));
    }

    private void shapeOfCut() {
        String cut = "low oil pressure cut";
        Optional<Statement> at = site.word("protection", Place.ENGINE, cut + " at").filter(s -> !s.says().equals("unknown"));
        Optional<String> shape = at.flatMap(s -> shape(s.says()));
        if (shape.isEmpty()) {
            lack("protection", Place.ENGINE, cut + " shape", "protection " + cut + " at", "");
            return;
        }
        say("protection", Place.ENGINE, cut + " shape", shape.get(), told(at.get()), at.get().says(), at.get().where());
    }

    /** One pressure, with its speed or without, holds for every speed; from two on the threshold follows speed. */
    private static Optional<String> shape(String text) {
        String[] points = text.split(",");
        for (String point : points) {
            String pressure = point.strip();
            String[] words = pressure.split(" ");
            if (words.length > 2 && words[0].equals("idle")) {
                pressure = pressure.substring(words[0].length()).strip();
            } else if (words.length > 3 && isSize(words[0] + " " + words[1], Dimension.SPEED)) {
                pressure = words[2] + " " + words[3];
            } else if (points.length > 1) {
                return Optional.empty();
            }
            if (!isSize(pressure, Dimension.PRESSURE)) {
                return Optional.empty();
            }
        }
        return Optional.of(points.length > 1 ? "with speed" : "one figure");
    }

    private static boolean isSize(String text, Dimension dimension) {
        return Reading.read(text, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure();
    }

    // ---

    private static String told(Statement s) {
        return s.told().orElse("");
    }

    private void lack(String of, String at, String what, String one, String other) {
        List<String> lacks = new ArrayList<>();
        if (!one.isEmpty()) {
            lacks.add(one);
        }
        if (!other.isEmpty()) {
            lacks.add(other);
        }
        lacking.accept(new Missing(of + " " + what, at, lacks));
    }

    private void say(String of, String at, String what, String says, String told, String sum, Where... where) {
        said.add(new Stated(of, of, at, what, says, told, Map.of("sum", sum), List.of(where)));
    }
}

package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.calc.Compression;
import leadlamp.calc.Gap;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.report.draw.Picture;
import leadlamp.report.draw.Window;

/** Works out what each head gasket that the sheet offers would give: the gap over the pistons, and the ratio. */
final class GasketsOnOffer {
    private static final String GAP = "piston to head gap";
    private static final String HEIGHT = "piston height";
    private static final String RATIO = "compression ratio";
    private static final String GASKET = "head gasket";
    /** What a finding may rest on for the choice of gasket to matter to it. */
    private static final List<String> HANG_ON_IT = List.of(GAP, "valve piston clearance corrected", "compression ratio over sheet", RATIO);

    private final Build build;
    private final List<Value> values;
    private final Map<String, List<Verdict>> verdicts;

    GasketsOnOffer(Build build, List<Value> values, Map<String, List<Verdict>> verdicts) {
        this.build = build;
        this.values = values;
        this.verdicts = verdicts;
    }

    /** Whether a finding hangs on the thickness of the gasket. */
    static boolean concerns(List<Verdict> concerned, List<Fact> facts) {
        for (Verdict verdict : concerned) {
            if (HANG_ON_IT.contains(verdict.of())) {
                return true;
            }
        }
        for (Fact fact : facts) {
            if (fact instanceof Stated stated && stated.of().equals(GASKET) && stated.what().startsWith("class ")) {
                return true;
            }
        }
        return false;
    }

    /** One gasket. */
    private record Offer(String name, Written thickness) {
    }

    /** From the least to the greatest of all cylinders. */
    private record Ends(double low, double high) {
    }

    /** The ratio, and of which cylinders where it is not of all. */
    private record Ratio(Ends ends, String of) {
    }

    Optional<Picture> picture() {
        List<Value> heights = own(HEIGHT);
        List<Offer> offers = heights.isEmpty() ? List.of() : offers();
        if (offers.size() < 2) {
            return Optional.empty();
        }
        Unit unit = heights.get(0).unit();
        int figures = heights.get(0).figures();
        double doubt = 0;
        for (Value height : heights) {
            doubt = Math.max(doubt, Math.max(Amounts.doubt(height.low()), Amounts.doubt(height.high())));
        }
        OptionalDouble least = limit(true);
        OptionalDouble most = limit(false);
        List<Window.Mark> marks = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (Offer offer : offers) {
            double thickness = offer.thickness().low();
            Ends gap = gap(thickness, heights);
            Window.Standing standing = standing(gap, doubt, least, most);
            String name = offer.name() + (said("class mark").equals(offer.name()) ? " (in the record)" : "");
            String text = offer.thickness().text();
            String note = "gap " + ends(unit.fromSi(gap.low()), unit.fromSi(gap.high()), figures) + " " + unit.word()
                    + ratio(thickness).map(known -> ", ratio " + ends(known.ends().low(), known.ends().high(), 2) + known.of()).orElse("");
            marks.add(new Window.Mark(name, unit.fromSi(gap.low()), unit.fromSi(gap.high()), doubt / unit.factor(), text, standing, note));
            said.add(name + ": " + text + ", " + standing.word() + ", " + note);
        }
        String limit = (least.isPresent() ? " Least gap " + Amounts.limit(least.getAsDouble(), unit, figures) + "." : "")
                + (most.isPresent() ? " Most " + Amounts.limit(most.getAsDouble(), unit, figures) + "." : "");
        return Optional.of(new Window("Gap and ratio with each head gasket on offer", String.join("; ", said) + "." + limit,
                List.copyOf(marks), written(least, unit), written(most, unit), text(least, unit, figures), text(most, unit, figures)));
    }

    private String said(String what) {
        for (Statement line : build.statements()) {
            if (line.of().equals(GASKET) && line.what().equals(what)) {
                return line.says();
            }
        }
        return "";
    }

    // --- what is on offer

    private List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        for (String joint : build.sheet().names("joints")) {
            Optional<Node> gasket = build.sheet().below("joints", joint, "gasket");
            if (gasket.isPresent() && gasket.get() instanceof Node.Fields fields
                    && fields.get("part").filter(part -> part instanceof Node.Scalar word && word.text().equals(GASKET)).isPresent()
                    && fields.get("thickness").isPresent() && fields.get("thickness").get() instanceof Node.Fields classes) {
                for (Node.Field line : classes.fields()) {
                    if (line.value() instanceof Node.Scalar text
                            && Reading.read(text.text(), Dimension.LENGTH, Optional.empty()) instanceof Reading.Read read
                            && read.written().figure()) {
                        offers.add(new Offer(line.key(), read.written()));
                    }
                }
            }
        }
        return offers;
    }

    // --- gap

    private Ends gap(double thickness, List<Value> heights) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Value height : heights) {
            double recess = at("head squish recess", height.at()).orElse(0);
            low = Math.min(low, Gap.pistonToHead(thickness, height.high().orElseThrow().value(), recess));
            high = Math.max(high, Gap.pistonToHead(thickness, height.low().orElseThrow().value(), recess));
        }
        return new Ends(low, high);
    }

    private static Window.Standing standing(Ends gap, double doubt, OptionalDouble least, OptionalDouble most) {
        boolean below = least.isPresent() && gap.low() + doubt < least.getAsDouble();
        boolean above = most.isPresent() && gap.high() - doubt > most.getAsDouble();
        if (below || above) {
            return Window.Standing.OUTSIDE;
        }
        boolean within = (least.isEmpty() || gap.low() - doubt >= least.getAsDouble())
                && (most.isEmpty() || gap.high() + doubt <= most.getAsDouble());
        return within && (least.isPresent() || most.isPresent()) ? Window.Standing.WITHIN : Window.Standing.UNDECIDED;
    }

    /** The limit that the gap was held against; where it was not worked out, the sheet's own. */
    private OptionalDouble limit(boolean least) {
        for (Verdict verdict : verdicts.getOrDefault(GAP, List.of())) {
            LimitUsed used = verdict.limit();
            return least ? used.least() : used.most();
        }
        for (LimitLine line : build.sheet().limits()) {
            if (line.quantity().equals(GAP) && line.where().isEmpty()) {
                Optional<Written> side = least ? line.least() : line.most();
                return side.isPresent() ? OptionalDouble.of(side.get().low()) : OptionalDouble.empty();
            }
        }
        return OptionalDouble.empty();
    }

    // --- ratio

    /** The ratio with this gasket, of the cylinders whose volumes and bore were all read. */
    private Optional<Ratio> ratio(double thickness) {
        Optional<Statement> stroke = build.sheet().statement("standard", Place.ENGINE, "stroke");
        if (stroke.isEmpty() || stroke.get().value().isEmpty()) {
            return Optional.empty();
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        List<String> places = new ArrayList<>();
        List<Value> chambers = own("combustion chamber volume");
        for (Value chamber : chambers) {
            String place = chamber.at();
            OptionalDouble bore = mean("cylinder bore", place);
            OptionalDouble gasketBore = at("head gasket bore", place);
            OptionalDouble height = at(HEIGHT, place);
            OptionalDouble crown = at("piston crown volume", place);
            if (bore.isEmpty() || gasketBore.isEmpty() || height.isEmpty() || crown.isEmpty()) {
                continue;
            }
            places.add(place);
            try {
                double ratio = Compression.ratioOf(bore.getAsDouble(), stroke.get().value().get().low(), middle(chamber),
                        gasketBore.getAsDouble(), thickness, height.getAsDouble(), crown.getAsDouble());
                low = Math.min(low, ratio);
                high = Math.max(high, ratio);
            } catch (IllegalArgumentException outOfRange) {
                return Optional.empty();
            }
        }
        return places.isEmpty() ? Optional.empty()
                : Optional.of(new Ratio(new Ends(low, high), places.size() == chambers.size() ? "" : " of " + Wording.places(places)));
    }

    private List<Value> own(String of) {
        List<Value> own = new ArrayList<>();
        for (Value value : values) {
            if (value.of().equals(of) && value.low().isPresent() && value.high().isPresent()) {
                own.add(value);
            }
        }
        return own;
    }

    private OptionalDouble at(String of, String place) {
        for (Value value : own(of)) {
            if (Place.related(value.at(), place)) {
                return OptionalDouble.of(middle(value));
            }
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble mean(String of, String place) {
        double sum = 0;
        int many = 0;
        for (Value value : own(of)) {
            if (Place.related(value.at(), place)) {
                sum += middle(value);
                many++;
            }
        }
        return many == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / many);
    }

    private static double middle(Value value) {
        return (value.low().orElseThrow().value() + value.high().orElseThrow().value()) / 2;
    }

    // --- text

    private static String ends(double low, double high, int figures) {
        String from = Amounts.number(low, figures);
        String to = Amounts.number(high, figures);
        return from.equals(to) ? from : from + " to " + to;
    }

    private static OptionalDouble written(OptionalDouble si, Unit unit) {
        return si.isPresent() ? OptionalDouble.of(unit.fromSi(si.getAsDouble())) : si;
    }

    private static String text(OptionalDouble si, Unit unit, int figures) {
        return si.isPresent() ? Amounts.limit(si.getAsDouble(), unit, figures) : "";
    }
}

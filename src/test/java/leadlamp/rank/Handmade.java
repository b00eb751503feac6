package leadlamp.rank;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import leadlamp.audit.Answer;
import leadlamp.audit.Check;
import leadlamp.audit.Finding;
import leadlamp.audit.Gap;
import leadlamp.audit.Likelihood;
import leadlamp.audit.Severity;
import leadlamp.audit.Way;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Seen;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.Node;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/** Answers made by hand, of an invented engine, for what stands after the audit. */
public final class Handmade {
    public static final Unit MM = new Unit("mm", Dimension.LENGTH, 0.001, 0);
    public static final String RECORD = "spring-rebuild.yaml";

    /** The words of the trade, as they stand in the tree. */
    public static final Vocabulary WORDS = words();

    private Handmade() {
    }

    private static Vocabulary words() {
        try {
            return Words.ofFolder(Path.of("rules", "vocabulary"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A check with one way, `form`, that needs one reading. */
    public static Check check(String id, String topic, Severity severity, Likelihood likelihood) {
        return check(id, topic, severity, likelihood, Map.of(), false, List.of(way("form")));
    }

    public static Check check(String id, String topic, Severity severity, Likelihood likelihood,
            Map<String, Integer> shifts, boolean person, List<Way> ways) {
        return new Check(id, topic, "Is " + id + " sound?", "engine", Map.of(), ways, severity, likelihood,
                new TreeMap<>(shifts), List.of("it works loose", "it breaks", "the engine stops"),
                "Fit a new one. Check its mate.", List.of("its mate", "its bolt"), "Look with a lamp.", person,
                person ? "Hot oil burns. The maker's manual and the rules of the workshop come first." : "",
                "What was easy to make seldom holds.", "common practice, no source", List.of(), Optional.empty());
    }

    public static Way way(String name) {
        return way(name, Optional.empty(), Optional.empty());
    }

    public static Way way(String name, Optional<Severity> severity, Optional<Likelihood> likelihood) {
        return new Way(name, List.of("cam gear pin form"), List.of(), "The pin of the {place} cam gear is {form}.",
                Map.of(), severity, likelihood, List.of());
    }

    public static Answer found(Check check, String at, Fact... evidence) {
        return found(check, at, check.ways().get(0).name(), evidence);
    }

    public static Answer found(Check check, String at, String way, Fact... evidence) {
        Ask ask = new Ask(check.id(), "", at);
        return new Answer.Found(check, ask,
                List.of(new Finding(ask, way, List.of(evidence), Map.of("form", "hollow"))), List.of());
    }

    public static Answer untold(Check check, String at, Gap... gaps) {
        return new Answer.CannotTell(check, new Ask(check.id(), "", at), List.of(gaps), false);
    }

    public static Answer later(Check check, String at, Gap... gaps) {
        return new Answer.CannotTell(check, new Ask(check.id(), "", at), List.of(gaps), true);
    }

    public static Answer clear(Check check, String at, Verdict... margins) {
        return new Answer.Clear(check, new Ask(check.id(), "", at), List.of(), List.of(margins));
    }

    /** A reading that is not recorded. */
    public static Gap missing(String reading, String... places) {
        return gap(Gap.Why.NOT_RECORDED, reading, OptionalDouble.empty(), places);
    }

    public static Gap gap(Gap.Why why, String reading, OptionalDouble outside, String... places) {
        return new Gap(why, reading, List.of(places), List.of(reading), outside, "", "form");
    }

    public static Stated stated(String of, String at, String what, String says, int line) {
        return new Stated(of, of, at, what, says, "", Map.of(), List.of(new Where(RECORD, line, 5)));
    }

    public static Seen seen(String of, String at, String sign, String told, int line) {
        return new Seen(of, of, at, sign, told, Map.of(), List.of(new Where(RECORD, line, 5)));
    }

    /** A length read, in mm, with its doubt at about 95 %. */
    public static Value read(String of, String at, double mm, int figures, double doubt, String gauge, int line) {
        Estimate estimate = new Estimate(mm / 1000, Dimension.LENGTH,
                new TreeMap<>(Map.of(gauge, doubt / 2 / 1000)));
        return new Value(of, of, at, Optional.of(estimate), Optional.of(estimate), MM, figures, gauge, false, "", "",
                Map.of(), List.of(new Where(RECORD, line, 5)));
    }

    public static LimitUsed limit(OptionalDouble leastMm, OptionalDouble mostMm, LimitUsed.Whose whose) {
        OptionalDouble least = leastMm.isPresent() ? OptionalDouble.of(leastMm.getAsDouble() / 1000) : leastMm;
        OptionalDouble most = mostMm.isPresent() ? OptionalDouble.of(mostMm.getAsDouble() / 1000) : mostMm;
        return new LimitUsed(least, most, whose, false, whose == LimitUsed.Whose.TRADE ? "common practice, no source"
                : "Tarn 12", "", whose == LimitUsed.Whose.TRADE ? Optional.empty()
                        : Optional.of(new Where("engines/tarn-12.yaml", 140, 3)));
    }

    /** A value proven below its least, in mm. */
    public static Verdict below(Value value, double leastMm, LimitUsed.Whose whose) {
        Verdict.Side side = new Verdict.Side(Verdict.Standing.OUTSIDE, 0.999, doubt(value), value.gauge());
        return new Verdict(value.of(), value.kind(), value.at(), Optional.of(side), Optional.empty(), value,
                limit(OptionalDouble.of(leastMm), OptionalDouble.empty(), whose));
    }

    /** A value proven within both its limits, in mm. */
    public static Verdict within(Value value, double leastMm, double mostMm) {
        Verdict.Side side = new Verdict.Side(Verdict.Standing.WITHIN, 0.001, doubt(value), value.gauge());
        return new Verdict(value.of(), value.kind(), value.at(), Optional.of(side), Optional.of(side), value,
                limit(OptionalDouble.of(leastMm), OptionalDouble.of(mostMm), LimitUsed.Whose.SHEET));
    }

    private static double doubt(Value value) {
        return 2 * value.low().orElseThrow().standardUncertainty();
    }

    /** A sheet with these lines, each as `of`, `at`, `what`, `says`. */
    public static EngineSheet sheet(String[]... lines) {
        List<Statement> statements = new ArrayList<>();
        int number = 10;
        for (String[] line : lines) {
            statements.add(new Statement(Statement.Form.ON_SHEET, line[0], line[1], line[2], line[3], Optional.empty(),
                    List.of(), Map.of(), Optional.empty(), new Where("engines/tarn-12.yaml", number++, 5),
                    line[2] + ": " + line[3]));
        }
        return new EngineSheet("engines/tarn-12.yaml", "Tarn 12", "invented for this example", statements, List.of(),
                new NoLayout(), new Node.Fields(List.of(), new Where("engines/tarn-12.yaml", 1, 1)), List.of());
    }

    public static Build.Accepted accepted(String check, String at) {
        return new Build.Accepted(check, at, "seen by two of us", "the builder", "2027-03-01",
                new Where(RECORD, 90, 5));
    }

    /** Last chances by check; none for the others. */
    public static Chances chances(Map<String, Chance> byCheck) {
        Map<String, Chance> known = new LinkedHashMap<>(byCheck);
        return answer -> known.getOrDefault(answer.check().id(), Chance.none());
    }

    private static final class NoLayout implements EngineSheet.Layout {
        @Override
        public Optional<List<String>> places(String group) {
            return Optional.empty();
        }

        @Override
        public List<String> names() {
            return List.of();
        }

        @Override
        public Map<String, String> cylinderNames() {
            return Map.of();
        }
    }
}

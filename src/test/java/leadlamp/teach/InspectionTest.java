package leadlamp.teach;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.audit.Audit;
import leadlamp.audit.Auditor;
import leadlamp.rank.RiskLevel;
import leadlamp.record.Build;
import leadlamp.record.RecordReader;
import leadlamp.record.Yaml;
import leadlamp.report.Report;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two engines looked at, from the first look to the last. Engines, sellers and figures are invented. */
class InspectionTest {
    private static final Vocabulary WORDS = Words.compiled();
    private static final Auditor AUDITOR = Auditor.compiled();
    private static final List<Look> LOOKS = Looks.compiled(WORDS);

    @TempDir
    private Path folder;

    /** What one visit adds: lines of each section. */
    private record Visit(String depth, Map<String, List<String>> adds) {
    }

    private static Visit visit(String depth, String... lines) {
        Map<String, List<String>> adds = new TreeMap<>();
        for (String line : lines) {
            int colon = line.indexOf(": ");
            adds.computeIfAbsent(line.substring(0, colon), s -> new ArrayList<>()).add(line.substring(colon + 2));
        }
        return new Visit(depth, adds);
    }

    /** The inspection after each visit; the first has seen nothing. */
    private List<Inspection> follow(String engine, List<Visit> visits) throws IOException {
        Files.createDirectories(folder.resolve("engines"));
        Files.copy(Path.of("sample-builds/engines", engine), folder.resolve("engines").resolve(engine),
                StandardCopyOption.REPLACE_EXISTING);
        Map<String, List<String>> sections = new TreeMap<>();
        List<Inspection> inspections = new ArrayList<>();
        for (int i = 0; i <= visits.size(); i++) {
            StringBuilder text = new StringBuilder("build: { name: a visit, purpose: buying }\nengine: engines/" + engine + "\n");
            sections.forEach((section, lines) -> {
                text.append(section).append(":\n");
                lines.forEach(line -> text.append("  - ").append(line).append('\n'));
            });
            Path record = folder.resolve("visit-" + i + ".yaml");
            Files.writeString(record, text);
            Build build = new RecordReader(WORDS).read(record).build().orElseThrow();
            assertThat(build.problems()).as(text.toString()).isEmpty();
            Audit audit = AUDITOR.audit(build);
            inspections.add(Inspection.of(audit, Report.of(audit, WORDS), LOOKS, WORDS));
            if (i < visits.size()) {
                visits.get(i).adds().forEach((section, lines) -> sections.computeIfAbsent(section, s -> new ArrayList<>())
                        .addAll(lines));
            }
        }
        return inspections;
    }

    private static final List<Visit> SIX_ON_A_PALLET = List.of(
            visit("by the car", "observations: { dipstick: metal, amount: light }", "observations: { oil filler cap: pale froth }",
                    "observations: { engine oil: clear, of: [coolant, fuel, pale froth, above its level] }",
                    "observations: { oil filler cap: clear, of: sludge }",
                    "measurements: { crankshaft end float: 0.12 mm, with: dial gauge }"),
            visit("cold start", "measurements: { engine time to pressure: 4 s }",
                    "observations: { exhaust: clear, of: smoke }"),
            visit("covers off", "measurements: { engine compression: [11.8, 12.0, 11.9, 11.7, 7.1, 11.9], unit: bar, state: hot }",
                    "measurements: { engine leak-down: [8, 7, 9, 8, 42, 8], unit: '%', state: hot }",
                    "observations: { oil filter: metal, amount: light }", "observations: { oil filter: clear, of: [sealant inside, plastic] }"),
            visit("covers off", "measurements: { engine compression wet: [12.6, 12.9, 12.7, 12.5, 11.2, 12.8], unit: bar }"),
            visit("borescope", "observations: { cylinder: scored, at: 5 }", "observations: { cylinder: clear, of: [glazed, rust band,"
                    + " scuffed, fine scratching], at: each }"));

    private static final List<Visit> THREE_KEPT_WELL = List.of(
            visit("by the car", "observations: { engine oil: clear, of: [coolant, fuel, pale froth, above its level, sludge] }",
                    "observations: { oil filler cap: clear, of: [pale froth, sludge] }", "observations: { dipstick: clear, of: metal }",
                    "observations: { crankshaft: turns freely }",
                    "observations: { crankshaft: clear, of: [tight, hard stop] }"),
            visit("covers off", "measurements: { engine compression: [13.1, 12.9, 13.2], unit: bar, state: hot }",
                    "measurements: { engine compression wet: [13.6, 13.5, 13.8], unit: bar }",
                    "measurements: { engine leak-down: [6, 7, 5], unit: '%', state: hot }",
                    "observations: { oil filter: clean }", "observations: { oil filter: clear, of: [metal, plastic, sealant inside] }"),
            visit("covers off", "observations: { core plug: clear, of: leak, at: each }", "observations: { water pump: clear, of: leak }",
                    "observations: { cylinder: clear, of: coolant, at: each }", "measurements: { water jacket test pressure: 1.1 bar }",
                    "measurements: { water jacket pressure fall: under 0.05 bar }"),
            visit("covers off", "observations: { timing belt: clear, of: [cracked, oil, teeth damaged], at: timing belt }",
                    "measurements: { timing belt deflection: 6 mm, at: timing belt }",
                    "parts: { timing belt: there, age: 2 years, at: timing belt }", "parts: { belt tensioner: there, age: 2 years }"),
            visit("drive off", "observations: { cam gear: one witness, at: each }",
                    "parts: { cam gear pin: kept, at: each, form: solid, origin: maker's }",
                    "observations: { crank gear: clear, of: hammered }", "observations: { crank key: clear, of: hammered }",
                    "observations: { crank nose: clear, of: fretting }"));

    @Test
    void of_a_six_with_metal_on_its_dipstick_the_advice_goes_from_the_stick_to_the_bore_of_the_fifth() throws IOException {
        List<Inspection> after = follow("moraine-27.yaml", SIX_ON_A_PALLET);

        assertThat(after.get(1).signs()).anyMatch(sign -> sign.startsWith("dipstick: metal"));
        assertThat(after.get(1).next().get(0).why()).contains("What was seen elsewhere has raised");
        assertThat(after.get(1).next().get(0).look().depth().reach()).isZero();
        assertThat(after.get(3).outside()).anyMatch(reading -> reading.startsWith("engine compression at cylinder 5: 7.1"));
        assertThat(reads(after.get(3))).anyMatch(read -> read.startsWith("Cylinder 5 stands apart"))
                .anyMatch(read -> read.startsWith("Nothing is read wet"));
        assertThat(reads(after.get(4))).anyMatch(read -> read.startsWith("Oil lifts cylinder 5") && read.endsWith("rings or bore leak."));
        assertThat(after.get(5).signs()).anyMatch(sign -> sign.startsWith("cylinder at cylinder 5: scored"));
        follows(after);
    }

    @Test
    void of_a_three_that_was_kept_well_nothing_stands_apart_and_the_unknown_is_still_told() throws IOException {
        List<Inspection> after = follow("tarn-12.yaml", THREE_KEPT_WELL);

        Inspection last = after.get(after.size() - 1);
        assertThat(last.signs()).isEmpty();
        assertThat(last.outside()).isEmpty();
        assertThat(reads(last)).anyMatch(read -> read.startsWith("No cylinder stands apart"))
                .noneMatch(read -> read.contains("stands apart:"));
        assertThat(last.open()).contains("cannot be told");
        assertThat(standing(last, "crank-compression")).isEqualTo(Inspection.Standing.ANSWERED);
        assertThat(standing(last, "gear-seats-and-pins")).isEqualTo(Inspection.Standing.ANSWERED);
        follows(after);
    }

    /** What is told after each visit stands in a file, to be read from the first look to the last. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"six-on-a-pallet", "three-kept-well"})
    // With -Dleadlamp.keep=true what is told is kept anew: read what has changed before you do.
    void what_is_told_after_each_visit_is_as_it_stands_in_its_file(String name) throws IOException {
        boolean six = name.startsWith("six");
        List<Visit> visits = six ? SIX_ON_A_PALLET : THREE_KEPT_WELL;
        List<Inspection> after = follow(six ? "moraine-27.yaml" : "tarn-12.yaml", visits);
        StringBuilder told = new StringBuilder();
        for (int i = 0; i < after.size(); i++) {
            told.append(i == 0 ? "=== before the first look\n" : "\n=== after look " + i + ", " + visits.get(i - 1).depth() + "\n");
            if (i > 0) {
                visits.get(i - 1).adds().forEach((section, lines) -> lines.forEach(line -> told.append("  ").append(section).append(": ")
                        .append(line).append('\n')));
            }
            told.append(sections(LookText.of(after.get(i), 100, false)));
        }

        Path kept = Path.of("src/test/resources/inspection", name + ".txt");
        if (Boolean.getBoolean("leadlamp.keep")) {
            Files.writeString(kept, told.toString());
        }
        assertThat(told.toString()).isEqualTo(Files.readString(kept));
    }

    /** What the advice is made of; the plan of all looks, and what each of them says, are left out. */
    private static String sections(String text) {
        StringBuilder kept = new StringBuilder();
        boolean keep = false;
        for (String line : text.split("\n", -1)) {
            if (!line.isEmpty() && !line.startsWith(" ")) {
                keep = line.startsWith("To reckon") || line.endsWith("across the cylinders") || line.startsWith("What stays unknown")
                        || line.startsWith("The look that is worth");
            }
            if (keep) {
                kept.append(line).append('\n');
            }
        }
        return kept.toString();
    }

    /** The advice never names a look that is answered, changes with what was seen, and the looks left grow fewer. */
    private static void follows(List<Inspection> after) {
        List<List<String>> advice = new ArrayList<>();
        for (Inspection one : after) {
            assertThat(one.next()).allSatisfy(next -> assertThat(standing(one, next.look().id()))
                    .isNotEqualTo(Inspection.Standing.ANSWERED));
            advice.add(one.next().stream().map(next -> next.look().id() + next.why()).toList());
            assertThat(LookText.of(one, 80, false).toLowerCase(java.util.Locale.ROOT)).doesNotContain("£", "$", "price", "bargain");
        }
        assertThat(new java.util.HashSet<>(advice)).hasSizeGreaterThan(2);
        for (int i = 1; i < after.size(); i++) {
            assertThat(after.get(i).count(Inspection.Standing.OPEN)).isLessThanOrEqualTo(after.get(i - 1).count(Inspection.Standing.OPEN));
        }
        Map<String, String> pages = new TreeMap<>();
        for (int i = 0; i < after.size(); i++) {
            pages.put(i + ".html", LookPage.of(after.get(i)));
        }
        Markup.holds(pages);
    }

    private static List<String> reads(Inspection inspection) {
        return inspection.tables().stream().flatMap(table -> table.reads().stream()).toList();
    }

    private static Inspection.Standing standing(Inspection inspection, String look) {
        return inspection.entries().stream().filter(e -> e.look().id().equals(look)).findFirst().orElseThrow().standing();
    }

    // --- the order of the next look

    @Property
    void more_to_settle_at_the_same_depth_never_comes_later(@ForAll @LongRange(min = 0, max = 100_000) long value,
            @ForAll @LongRange(min = 0, max = 1000) long more, @ForAll @IntRange(max = 8) int reach) {
        assertThat(new Worth(value + more, reach)).isLessThanOrEqualTo(new Worth(value, reach));
    }

    @Property
    void less_stripping_for_as_much_never_comes_later(@ForAll @LongRange(min = 0, max = 100_000) long value,
            @ForAll @IntRange(max = 8) int one, @ForAll @IntRange(max = 8) int other) {
        assertThat(new Worth(value, Math.min(one, other))).isLessThanOrEqualTo(new Worth(value, Math.max(one, other)));
    }

    @Property
    void the_order_is_one_order(@ForAll("worths") Worth a, @ForAll("worths") Worth b, @ForAll("worths") Worth c) {
        assertThat(Integer.signum(a.compareTo(b))).isEqualTo(-Integer.signum(b.compareTo(a)));
        if (a.compareTo(b) <= 0 && b.compareTo(c) <= 0) {
            assertThat(a).isLessThanOrEqualTo(c);
        }
    }

    @Provide
    Arbitrary<Worth> worths() {
        return Combinators.combine(Arbitraries.longs().between(0, 5000), Arbitraries.integers().between(0, 6)).as(Worth::new);
    }

    @Test
    void a_worse_question_a_lone_one_and_a_raised_event_each_count_for_more() {
        assertThat(Worth.question(RiskLevel.HIGH, false)).isGreaterThan(Worth.question(RiskLevel.SERIOUS, false));
        assertThat(Worth.question(RiskLevel.MEDIUM, true)).isGreaterThan(Worth.question(RiskLevel.MEDIUM, false));
        assertThat(Worth.raised(1)).isEqualTo(Worth.question(RiskLevel.HIGH, true));
        assertThat(Worth.raised(0)).isZero();
    }

    // --- tables made to mislead

    private List<String> reads(String... measurements) throws IOException {
        String[] lines = new String[measurements.length];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = "measurements: { " + measurements[i] + " }";
        }
        List<Inspection> after = follow("moraine-27.yaml", List.of(visit("covers off", lines)));
        return reads(after.get(1));
    }

    @Test
    void a_cylinder_above_the_rest_does_not_make_the_rest_low() throws IOException {
        assertThat(reads("engine compression: [11.9, 12.0, 11.9, 14.6, 12.0, 11.9], unit: bar, state: hot"))
                .anyMatch(read -> read.startsWith("Cylinder 4 stands above the rest")).noneMatch(read -> read.contains("stand apart"));
    }

    @Test
    void readings_that_fall_from_first_to_last_are_laid_to_the_battery_before_the_engine() throws IOException {
        assertThat(reads("engine compression: [12.6, 12.4, 12.2, 12.0, 11.8, 11.6], unit: bar, state: hot"))
                .anyMatch(read -> read.startsWith("The readings fall from the first cylinder to the last"));
        assertThat(reads("engine compression: [12.6, 12.2, 12.4, 12.0, 11.8, 11.6], unit: bar, state: hot"))
                .noneMatch(read -> read.startsWith("The readings fall"));
    }

    @Test
    void oil_in_the_low_cylinder_alone_tells_nothing_of_its_rings() throws IOException {
        assertThat(reads("engine compression: [11.8, 12.0, 11.9, 11.7, 7.1, 11.9], unit: bar, state: hot",
                "engine compression wet: 9.0 bar, at: 5")).anyMatch(read -> read.startsWith("Oil lifts cylinder 5")
                        && read.contains("none of its mates was read wet")).noneMatch(read -> read.endsWith("rings or bore leak."));
    }

    @Test
    void a_cylinder_that_pumps_little_and_leaks_no_more_than_its_mates_sends_one_to_its_valve_gear() throws IOException {
        assertThat(reads("engine compression: [11.8, 12.0, 11.9, 11.7, 7.1, 11.9], unit: bar, state: hot",
                "engine leak-down: [8, 7, 9, 8, 9, 8], unit: '%', state: hot")).anyMatch(read -> read.startsWith("Cylinder 5 is low, and holds"
                        + " air no worse"));
        assertThat(reads("engine compression: [11.8, 12.0, 11.9, 11.7, 11.9, 11.9], unit: bar, state: hot",
                "engine leak-down: [8, 7, 9, 8, 45, 8], unit: '%', state: hot")).anyMatch(read -> read.startsWith("Cylinder 5 leaks at rest"));
    }

    @Test
    void a_cylinder_read_twice_stands_once_and_one_read_as_a_bound_is_not_called_unread() throws IOException {
        assertThat(reads("engine compression: [11.8, 12.0, 11.9, 11.7, 11.8, 11.9], unit: bar, state: hot",
                "engine compression: 7.1 bar, at: 5, state: hot")).anyMatch(read -> read.startsWith("Cylinder 5 was read more than once"))
                        .anyMatch(read -> read.startsWith("Cylinder 5 stands apart"));
        assertThat(reads("engine compression: [11.8, 12.0, 11.9, 11.7], unit: bar, at: [1, 2, 3, 4], state: hot",
                "engine compression: under 2 bar, at: 5")).anyMatch(read -> read.startsWith("Cylinder 5 is not read to one figure"))
                        .anyMatch(read -> read.equals("Not read: cylinder 6."));
    }

    @Test
    void the_plan_goes_from_the_cheapest_look_to_the_dearest_and_every_word_of_it_is_known() throws IOException {
        Looks looks = Looks.of(Yaml.read(Path.of("rules/looks.yaml"), "rules/looks.yaml"), WORDS);

        assertThat(looks.problems()).isEmpty();
        assertThat(looks.looks()).hasSize(58).isEqualTo(LOOKS);
        assertThat(looks.looks()).extracting(look -> look.depth().reach()).isSorted();
        assertThat(looks.looks()).extracting(Look::id).doesNotHaveDuplicates();
    }

    @Test
    void a_fault_of_the_plan_is_told_with_its_line_and_the_nearest_word() {
        Looks looks = Looks.of(Yaml.text("""
                depths:
                  - { name: by the car, reach: 0, means: it stands }
                looks:
                  - id: stick
                    depth: by the car
                    look: Draw it.
                    question: Is it clean?
                    good: Clean.
                    bad: Not clean.
                    record: [engine oil coolantt]
                    tells: [oil starvd]
                """, "looks.yaml"), WORDS);

        assertThat(looks.problems()).extracting(p -> p.where().toString() + ": " + p.what() + p.nearest().orElse(""))
                .containsExactly("looks.yaml:10:14: \"engine oil coolantt\" is no word of a record.engine oil coolant",
                        "looks.yaml:11:13: \"oil starvd\" is no event of the past.oil starved");
    }

    @Test
    void what_is_to_be_written_down_can_be_read_as_a_record() throws IOException {
        Inspection sheet = follow("tarn-12.yaml", List.of()).get(0);
        List<String> write = sheet.entries().stream().filter(e -> e.look().id().equals("crank-compression")).findFirst().orElseThrow()
                .write();

        assertThat(write).containsExactly("measurements:",
                "  - { engine compression: [..., ..., ...], unit: bar, with: compression tester }",
                "  - { engine compression wet: [..., ..., ...], unit: bar, with: compression tester }");
        assertThat(sheet.entries()).noneMatch(e -> e.write().stream().anyMatch(line -> line.contains("chain tensioner")));
    }
}

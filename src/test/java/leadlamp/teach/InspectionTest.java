package leadlamp.teach;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.audit.Audit;
import leadlamp.audit.Auditor;
import leadlamp.record.Build;
import leadlamp.record.RecordReader;
import leadlamp.record.Yaml;
import leadlamp.report.Report;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
        Files.copy(Path.of("sample-builds/engines", engine), folder.resolve("engines").resolve(engine));
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

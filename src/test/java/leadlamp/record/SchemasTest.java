package leadlamp.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import leadlamp.words.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas that editors use, and the reader: both say yes to the same records and sheets, and no to the same. */
class SchemasTest {
    private static final Path SAMPLES = Path.of("sample-builds");
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final JsonSchema RECORD = schema(RecordSchema::write);
    private static final JsonSchema SHEET = schema(SheetSchema::write);
    private static final String FIRST = "# yaml-language-server: $schema=";

    @TempDir
    private Path folder;

    // --- both say yes

    @ParameterizedTest
    @MethodSource("records")
    void every_sample_record_is_sound_to_both(Path record) throws IOException {
        assertThat(Bench.READER.read(record).build().orElseThrow().problems()).isEmpty();
        assertThat(faults(RECORD, Files.readString(record))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void every_sample_sheet_is_sound_to_both(Path sheet) throws IOException {
        assertThat(Bench.READER.sheet(sheet).problems()).isEmpty();
        assertThat(faults(SHEET, Files.readString(sheet))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "- { gudgeon pins: kept, at: each }", "- { part: cam gear pin, state: new, at: intake }", "- { water pump: fitted, origin: oem }",
            "- { cam gear pin: kept, at: intake, form: hollow, told by: previous owner }", "- { head gasket: new, compressed thickness: 1.10 mm }"})
    void other_words_for_a_part_and_the_long_form_are_sound_to_both(String entry) throws IOException {
        same("parts:\n  " + entry, true);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"- { crankshaft end float: 0.14 mm, with: dial gauge }", "- { crankshaft end float: good }",
            "- { piston size: [79.96, 79.96, 79.97], unit: mm }", "- { piston height: under 0.05 mm, at: 1 }", "- { gallery plug count: 3 }",
            "- { head bolt free length: 98.2 mm, at: head to block 3 }", "- { of: piston, what: height, value: 0.04 mm, at: 2 }"})
    void values_in_all_their_forms_are_sound_to_both(String entry) throws IOException {
        same("measurements:\n  " + entry, true);
    }

    // --- both say no

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "measurments:                            | - { crankshaft end float: 0.14 mm }",
            "parts:                                  | - { cam gear pinn: new, at: each }",
            "parts:                                  | - { cam gear pin: newish, at: each }",
            "parts:                                  | - { cam gear pin: new, at: each, frm: solid }",
            "parts:                                  | - { cam gear pin: new, at: each, form: holow }",
            "parts:                                  | - { at: each, form: solid }",
            "parts:                                  | - { water pump: kept, age: soon }",
            "parts:                                  | water pump",
            "measurements:                           | - { crankshaft endfloat: 0.14 mm }",
            "measurements:                           | - { crankshaft end float: 0.14 }",
            "measurements:                           | - { crankshaft end float: fine }",
            "measurements:                           | - { piston height: [0.04, 0.06, 0.05] }",
            "measurements:                           | - { crankshaft end float: 0.14 mm, wth: dial gauge }",
            "observations:                           | - { sump: sparkly }",
            "observations:                           | - { sump: clear }",
            "observations:                           | - { sump: clear, of: [metl] }",
            "fasteners:                              | - { main cap to block: 55 N·m, threads: { thread-loker: medium } }",
            "fasteners:                              | - { main cap to block: 55 N·m, threads: { lubricant: butter } }",
            "fasteners:                              | - { main cap to block: tight }",
            "fasteners:                              | - { main cap to block: 55 N·m, lengths: 25 mm }",
            "steps:                                  | - { crankshaft layed: 2026-03-02 }",
            "steps:                                  | - { crankshaft laid: last week }",
            "steps:                                  | - next: sump fited",
            "machining:                              | - { block face: shaved }",
            "machining:                              | - { block face: mill, remved: 0.10 mm }",
            "use:                                    | duty: racing",
            "use:                                    | rev limt: 7200 rpm",
            "build:                                  | arrived: by lorry",
            "build:                                  | past: [overheatd]",
            "gauges:                                 | dial gauge: { kind: dial gage }",
            "gauges:                                 | dial gauge: { kind: dial gauge, checkd: 2026-01-05 }",
            "gauges:                                 | dial gauge: { kind: dial gauge, checked: soon }",
            "protection:                             | oil pressure cut: none",
            "protection:                             | rev cut: { at: 7200 rpm, action: explode }",
            "photos:                                 | pin: { of: cam gear pin }",
            "photos:                                 | pin: { file: pin.jpg, taken: 2026-01-05 }",
            "accepted:                               | - { check: trigger-disc-loose, who: the builder }",
            "accepted:                               | - { check: trigger-disc-loose, reason: x, who: y, until: someday }",
            "stage:                                  | head torqed"})
    void a_slip_in_a_record_is_one_to_both(String section, String line) throws IOException {
        same(section + "\n  " + line, false);
    }

    @Test
    void a_record_without_a_sheet_is_wrong_to_both() throws IOException {
        Path record = Files.writeString(folder.resolve("record.yaml"), "build:\n  name: no sheet\n");

        assertThat(Bench.READER.read(record).build().orElseThrow().problems()).isNotEmpty();
        assertThat(faults(RECORD, Files.readString(record))).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"layuot: { cylinders: 3 }", "layout: { cylindres: 3 }", "limits: { crankshaft endfloat: { most: 0.25 mm } }",
            "limits: { crankshaft end float: { mst: 0.25 mm } }", "limits: { crankshaft end float: 0.25 mm }",
            "joints: { main cap to block: { blots: 8 } }", "joints: { main cap to block: { stages: [tight] } }",
            "renew always: { parts: [head gaskt] }", "way round: { pistn: arrow to the belt end }", "oil: { grad: 5W-40 }"})
    void a_slip_in_a_sheet_is_one_to_both(String line) throws IOException {
        Path sheet = Files.writeString(folder.resolve("sheet.yaml"), "sheet: Slip 1, invented\n" + line + "\n");

        assertThat(Bench.READER.sheet(sheet).problems()).as("reader").isNotEmpty();
        assertThat(faults(SHEET, Files.readString(sheet))).as("schema").isNotEmpty();
    }

    // --- what an editor shows

    @Test
    void every_part_reading_and_step_stands_in_the_schema_with_its_meaning() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(written(RecordSchema::write));

        JsonNode parts = schema.at("/properties/parts/allOf/0/items/properties");
        Bench.WORDS.parts().forEach(part -> assertThat(parts.path(part.name()).path("description").asText()).isEqualTo(part.gloss()));
        JsonNode readings = schema.at("/properties/measurements/allOf/0/items/properties");
        Bench.WORDS.quantities().forEach(quantity -> assertThat(readings.has(quantity.name())).as(quantity.name()).isTrue());
        assertThat(schema.at("/definitions/step/anyOf/0/enum")).hasSize(Bench.WORDS.steps().size());
        assertThat(schema.at("/definitions/step/anyOf/0/enumDescriptions")).hasSize(Bench.WORDS.steps().size());
    }

    @Test
    void every_word_that_settles_a_part_is_known_by_its_spellings() {
        Set<String> parts = new TreeSet<>(Bench.WORDS.spellings(Vocabulary.Kind.PART).values());

        Bench.WORDS.parts().forEach(part -> assertThat(parts).contains(part.name()));
        Bench.WORDS.spellings(Vocabulary.Kind.PART).forEach((word, part) ->
                assertThat(Bench.WORDS.part(word).orElseThrow().name()).isEqualTo(part));
    }

    @Test
    void a_sample_that_names_a_schema_in_its_first_line_names_one_that_the_build_makes() throws IOException {
        List<Path> all = new ArrayList<>(records());
        all.addAll(sheets());
        int naming = 0;
        for (Path file : all) {
            String first = Files.readAllLines(file).get(0);
            if (first.startsWith(FIRST)) {
                naming++;
                Path named = file.getParent().resolve(first.substring(FIRST.length())).normalize();
                assertThat(named.toString()).as(file.toString()).isEqualTo("target/classes"
                        + (file.getParent().endsWith("engines") ? SheetSchema.RESOURCE : RecordSchema.RESOURCE));
            }
        }
        assertThat(naming).isGreaterThan(20);
    }

    // --- helpers

    private void same(String section, boolean sound) throws IOException {
        Files.writeString(folder.resolve("engine.yaml"), Bench.SHEET);
        Path record = Files.writeString(folder.resolve("record.yaml"), "engine: engine.yaml\n" + section + "\n");
        List<Problem> problems = Bench.READER.read(record).build().orElseThrow().problems();

        assertThat(problems.isEmpty()).as("reader: %s", problems).isEqualTo(sound);
        List<String> faults = faults(RECORD, Files.readString(record));
        assertThat(faults.isEmpty()).as("schema: %s", faults).isEqualTo(sound);
    }

    private static List<String> faults(JsonSchema schema, String yaml) throws IOException {
        List<String> faults = new ArrayList<>();
        schema.validate(YAML.readTree(yaml)).forEach(fault -> faults.add(fault.getInstanceLocation() + ": " + fault.getMessage().substring(0,
                Math.min(200, fault.getMessage().length()))));
        return faults.size() > 8 ? faults.subList(0, 8) : faults;
    }

    private interface Writing {
        void write(Vocabulary words, java.io.OutputStream out) throws IOException;
    }

    private static byte[] written(Writing writing) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            writing.write(Bench.WORDS, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static JsonSchema schema(Writing writing) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(new String(written(writing), java.nio.charset.StandardCharsets.UTF_8));
    }

    static List<Path> records() throws IOException {
        return yaml(SAMPLES);
    }

    static List<Path> sheets() throws IOException {
        return yaml(SAMPLES.resolve("engines"));
    }

    private static List<Path> yaml(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
    }
}

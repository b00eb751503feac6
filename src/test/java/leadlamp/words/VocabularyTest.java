package leadlamp.words;

import static leadlamp.words.Rules.WORDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VocabularyTest {
    private static final Path RULES = Path.of("rules/vocabulary");

    private static String quantity(String word) {
        return WORDS.quantity(word).map(Quantity::name).orElse("");
    }

    @Test
    void a_reading_is_known_by_its_name_by_a_synonym_of_its_part_and_by_other_words_for_the_reading() {
        assertThat(quantity("main journal diameter")).isEqualTo("main journal diameter");
        assertThat(quantity("conrod bend")).isEqualTo("connecting rod bend");
        assertThat(quantity("main bearing oil clearance")).isEqualTo("main bearing clearance");
        assertThat(quantity("mains oil clearance")).isEqualTo("main bearing clearance");
        assertThat(quantity("bore taper")).isEqualTo("cylinder taper");
        assertThat(quantity("piston rings gap")).isEqualTo("piston ring end gap");
        assertThat(quantity("ring gap")).isEqualTo("piston ring end gap");
        assertThat(quantity("oil pressure")).isEqualTo("engine oil pressure");
        assertThat(quantity("Main Journal Diameters")).isEqualTo("main journal diameter");
        assertThat(quantity("crank pin ovality")).isEqualTo("crankpin ovality");
        assertThat(quantity("squish clearance")).isEqualTo("piston to head gap");
    }

    @Test
    void what_may_be_read_of_a_kind_may_be_read_of_its_members_at_their_own_places() {
        Quantity bolt = WORDS.quantity("head bolt free length").orElseThrow();
        assertThat(bolt.name()).isEqualTo("head bolt free length");
        assertThat(bolt.of()).isEqualTo("head bolt");
        assertThat(bolt.kind()).isEqualTo("bolt free length");
        assertThat(bolt.group()).isEqualTo("each head bolt");
        assertThat(bolt.forms()).isEmpty();
        assertThat(bolt.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(quantity("cylinder head bolt length")).isEqualTo("head bolt free length");
        assertThat(WORDS.quantity("cam seal end float").map(Quantity::kind)).contains("shaft seal end float");
        assertThat(WORDS.quantity("main shell wall").map(Quantity::kind)).contains("shell wall");
        assertThat(WORDS.quantity("head bolt loosening torque").map(Quantity::kind)).contains("bolt loosening torque");
    }

    @Test
    void what_came_out_does_not_count_among_what_goes_in() {
        assertThat(WORDS.quantity("old timing belt width").map(Quantity::kind)).contains("old timing belt width");
        assertThat(WORDS.quantity("old friction disc thickness").map(Quantity::kind)).contains("old friction disc thickness");
    }

    @Test
    void a_reading_has_the_places_of_its_part_unless_it_says_otherwise() {
        Quantity bore = WORDS.quantity("cylinder bore").orElseThrow();
        assertThat(bore.group()).isEqualTo("each cylinder");
        assertThat(bore.forms()).containsExactly("NUMBER HEIGHT DIRECTION");
        assertThat(WORDS.quantity("valve lift").orElseThrow().forms()).isEmpty();
        assertThat(WORDS.quantity("engine compression").orElseThrow().group()).isEqualTo("each cylinder");
        assertThat(WORDS.quantity("piston groove width").orElseThrow().group()).isEqualTo("each piston ring");
        assertThat(WORDS.quantity("camshaft journal diameter").orElseThrow().group()).isEqualTo("each cam bearing");
        assertThat(WORDS.quantity("threaded hole depth").orElseThrow().forms()).containsExactly("NAME NUMBER");
        assertThat(WORDS.quantity("engine oil pressure").orElseThrow().forms()).containsExactly("main gallery", "far point");
    }

    @Test
    void a_word_that_means_two_things_settles_neither_and_names_both() {
        assertThat(WORDS.part("tensioner")).isEmpty();
        assertThat(WORDS.meanings("tensioner")).containsExactly("belt tensioner", "chain tensioner");
        assertThat(WORDS.quantity("oil clearance")).isEmpty();
        assertThat(WORDS.meanings("oil clearance")).containsExactlyInAnyOrder("main bearing clearance", "big-end bearing clearance");
        assertThat(WORDS.quantity("end float")).isEmpty();
        assertThat(WORDS.meanings("end float")).contains("crankshaft end float", "camshaft end float");
        assertThat(WORDS.quantity("valve clearance")).isEmpty();
        assertThat(WORDS.meanings("Valve Clearance")).containsExactly("valve lash", "valve piston clearance");
        assertThat(WORDS.part("cap").map(Part::name)).as("the kind itself").contains("cap");
        assertThat(WORDS.meanings("main journal diameter")).isEmpty();
        assertThat(WORDS.meanings("oil pressure")).as("it is the engine oil's").isEmpty();
    }

    @Test
    void a_part_is_known_by_synonym_and_plural_and_has_its_kinds() {
        assertThat(WORDS.part("conrods").map(Part::name)).contains("connecting rod");
        assertThat(WORDS.part("o-ring").map(Part::name)).contains("sealing ring");
        assertThat(WORDS.part("ECU").map(Part::name)).contains("controller");
        assertThat(WORDS.part("Woodruff key").map(Part::name)).contains("crank key");
        assertThat(WORDS.part("main shell").map(Part::kind)).contains("shell");
        assertThat(WORDS.part("crankshaft").map(Part::kind)).contains("crankshaft");
        assertThat(WORDS.part("flux capacitor")).isEmpty();
    }

    @Test
    void no_synonym_stands_under_two_parts_two_signs_two_steps_or_two_gauges() {
        Set<String> readings = new HashSet<>();
        WORDS.quantities().forEach(q -> readings.add(q.name()));
        for (Part part : WORDS.parts()) {
            assertThat(WORDS.part(part.name())).contains(part);
            assertThat(WORDS.meanings(part.name()).stream().filter(m -> !readings.contains(m))).as(part.name()).isEmpty();
        }
        for (Sign sign : WORDS.signs()) {
            assertThat(WORDS.sign(sign.name())).contains(sign);
        }
        for (Step step : WORDS.steps()) {
            assertThat(WORDS.step(step.name())).contains(step);
        }
        for (GaugeKind gauge : WORDS.gauges()) {
            assertThat(WORDS.gauge(gauge.name())).contains(gauge);
        }
        for (Quantity quantity : WORDS.quantities()) {
            assertThat(WORDS.quantity(quantity.name())).contains(quantity);
        }
    }

    @Test
    void units_and_dimensions_go_together_and_a_difference_of_temperatures_has_no_zero() {
        for (Quantity quantity : WORDS.quantities()) {
            assertThat(quantity.unit().dimension()).as(quantity.name()).isEqualTo(quantity.dimension());
            assertThat(Units.named(quantity.unit().word(), quantity.dimension())).as(quantity.name()).contains(quantity.unit());
        }
        Quantity margin = WORDS.quantity("boil margin").orElseThrow();
        assertThat(margin.dimension()).isEqualTo(Dimension.TEMPERATURE_DIFFERENCE);
        assertThat(margin.unit().offset()).isZero();
        assertThat(WORDS.quantity("coolant boiling point").orElseThrow().dimension()).isEqualTo(Dimension.TEMPERATURE);
    }

    @Test
    void properties_are_found_in_their_section_and_references_are_followed() {
        assertThat(WORDS.property("parts", "state").orElseThrow().values()).containsKeys("new", "kept", "scrapped");
        assertThat(WORDS.property("parts", "state").orElseThrow().also()).containsEntry("renewed", "new");
        assertThat(WORDS.property("parts", "form").orElseThrow().perPart().get("cam gear pin")).containsKeys("solid", "hollow");
        assertThat(WORDS.property("parts", "type").orElseThrow().perPart()).containsKey("head gasket");
        assertThat(WORDS.property("parts", "lubricant").orElseThrow().values()).containsKey("engine oil");
        assertThat(WORDS.property("threads", "under head").orElseThrow().values()).containsKey("moly paste");
        assertThat(WORDS.property("fasteners", "locking").orElseThrow().values()).containsKey("split pin");
        assertThat(WORDS.property("use", "note").orElseThrow().section()).isEqualTo("any entry");
        assertThat(WORDS.property("measurements", "speed").orElseThrow().takes()).isEqualTo("speed");
        assertThat(WORDS.property("parts", "thread-locker")).isEmpty();
        assertThat(WORDS.properties("threads").stream().map(Property::name)).startsWith("condition", "thread-locker", "lubricant");
    }

    @Test
    void the_lines_of_an_engine_sheet_are_sections_of_their_own() {
        assertThat(WORDS.property("sheet layout", "lash").orElseThrow().values()).containsOnlyKeys("solid", "hydraulic");
        assertThat(WORDS.property("layout", "lash")).isEqualTo(WORDS.property("sheet layout", "lash"));
        assertThat(WORDS.property("sheet layout fuel", "burns").orElseThrow().values()).containsKey("petrol");
        assertThat(WORDS.property("sheet joints", "class").orElseThrow().values()).containsKey("10.9");
        assertThat(WORDS.property("sheet joints threads", "lubricant").orElseThrow().values()).containsKey("dry");
        assertThat(WORDS.property("sheet joints", "into").orElseThrow().values()).containsKey("cast iron");
        assertThat(WORDS.property("sheet protection", "action").orElseThrow().values()).containsKey("cut");
        assertThat(WORDS.property("sheet seals", "rest")).isPresent();
        assertThat(WORDS.properties("sheet").stream().map(Property::name)).contains("sheet", "layout", "joints", "sensors");
        assertThat(WORDS.property("sheet layout", "lsh")).isEmpty();
    }

    @Test
    void signs_steps_gauges_events_and_places_are_there() {
        assertThat(WORDS.sign("loose").map(Sign::name)).contains("play");
        assertThat(WORDS.sign("clean").orElseThrow().rulesOut()).contains("metal", "grit");
        assertThat(WORDS.sign("play").orElseThrow().amount()).contains("at radius");
        assertThat(WORDS.step("head fitted").map(Step::name)).contains("head set down");
        assertThat(WORDS.step("timing drive fitted").orElseThrow().afterFor().get("overhead cam")).containsExactly("head torqued");
        assertThat(WORDS.step("engine assembled").orElseThrow().last()).isTrue();
        assertThat(WORDS.step("bought or refused").orElseThrow().dueAll()).isTrue();
        assertThat(WORDS.gauge("DTI").map(GaugeKind::name)).contains("dial gauge");
        assertThat(WORDS.events()).containsKey("over-revved");
        assertThat(WORDS.conditions()).containsEntry("valves clear pistons", true).containsEntry("rev limit raised", false);
        assertThat(WORDS.groups()).containsEntry("each cylinder", "NUMBER");
        assertThat(WORDS.placeSynonyms()).containsEntry("inlet", "intake").containsEntry("lh", "left").doesNotContainKey("across");
        assertThat(WORDS.placeWords().stream().map(PlaceWord::name)).contains("thrust", "front left", "six o'clock", "far point");
    }

    @Test
    void everything_that_refers_to_a_part_a_group_or_a_gauge_finds_it() {
        for (Quantity quantity : WORDS.quantities()) {
            assertThat(WORDS.groups()).as(quantity.name()).containsKey(quantity.group());
            quantity.gauge().ifPresent(gauge -> assertThat(WORDS.gauge(gauge)).as(quantity.name()).isPresent());
            assertThat(WORDS.quantity(quantity.kind())).as(quantity.name()).isPresent();
        }
        for (Part part : WORDS.parts()) {
            assertThat(WORDS.groups()).as(part.name()).containsKey(part.group());
        }
    }

    @Test
    void lookups_do_not_depend_on_the_language_of_the_machine() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(quantity("MAIN BEARING CLEARANCE")).isEqualTo("main bearing clearance");
            assertThat(WORDS.sign("PITTED").map(Sign::name)).contains("pitted");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void the_compiled_form_says_the_same_as_the_folder_of_every_word() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Words.compile(WORDS, out);
        Vocabulary compiled = new Lexicon(out.toByteArray());
        assertThat(compiled.parts()).containsExactlyElementsOf(WORDS.parts());
        assertThat(compiled.quantities()).containsExactlyElementsOf(WORDS.quantities());
        assertThat(compiled.signs()).containsExactlyElementsOf(WORDS.signs());
        assertThat(compiled.steps()).containsExactlyElementsOf(WORDS.steps());
        assertThat(compiled.gauges()).containsExactlyElementsOf(WORDS.gauges());
        assertThat(compiled.placeWords()).containsExactlyElementsOf(WORDS.placeWords());
        assertThat(compiled.groups()).isEqualTo(WORDS.groups());
        assertThat(compiled.events()).isEqualTo(WORDS.events());
        assertThat(compiled.conditions()).isEqualTo(WORDS.conditions());
        for (String word : everyWord()) {
            assertThat(compiled.part(word)).isEqualTo(WORDS.part(word));
            assertThat(compiled.quantity(word)).isEqualTo(WORDS.quantity(word));
            assertThat(compiled.sign(word)).isEqualTo(WORDS.sign(word));
            assertThat(compiled.step(word)).isEqualTo(WORDS.step(word));
            assertThat(compiled.gauge(word)).isEqualTo(WORDS.gauge(word));
            assertThat(compiled.meanings(word)).isEqualTo(WORDS.meanings(word));
            for (String section : List.of("parts", "fasteners", "threads", "use", "sheet layout", "sheet joints", "nonsense")) {
                assertThat(compiled.property(section, word)).isEqualTo(WORDS.property(section, word));
            }
        }
    }

    @Test
    void the_same_folder_gives_the_same_bytes() throws IOException {
        ByteArrayOutputStream one = new ByteArrayOutputStream();
        ByteArrayOutputStream other = new ByteArrayOutputStream();
        Words.compile(WORDS, one);
        Words.compile(Words.ofFolder(RULES), other);
        assertThat(other.toByteArray()).isEqualTo(one.toByteArray());
    }

    @Test
    void every_synonym_that_the_folder_lists_is_taken_or_says_what_it_may_mean() throws IOException {
        Map<String, Optional<?>> missing = new HashMap<>();
        take("parts.yaml", word -> WORDS.part(word).isPresent() || !WORDS.meanings(word).isEmpty(), missing);
        take("signs.yaml", word -> WORDS.sign(word).isPresent(), missing);
        take("steps.yaml", word -> WORDS.step(word).isPresent(), missing);
        take("gauges.yaml", word -> WORDS.gauge(word).isPresent(), missing);
        assertThat(missing).isEmpty();
    }

    private interface Taken {
        boolean is(String word);
    }

    private static void take(String file, Taken taken, Map<String, Optional<?>> missing) throws IOException {
        for (var line : Tree.read(RULES.resolve(file)).entrySet()) {
            Line of = new Line(file, line.getKey(), line.getValue());
            for (String word : Stream.concat(Stream.of(line.getKey()), of.list("also").stream()).toList()) {
                if (!taken.is(word)) {
                    missing.put(file + ": " + word, Optional.empty());
                }
            }
        }
    }

    private static Set<String> everyWord() throws IOException {
        Set<String> words = new HashSet<>();
        try (Stream<Path> files = Files.list(RULES)) {
            for (Path file : files.toList()) {
                collect(Tree.read(file), words);
            }
        }
        WORDS.parts().forEach(part -> words.add(part.name() + "s"));
        for (String what : List.of("free length", "wall", "bore", "clearance", "state")) {
            WORDS.parts().forEach(part -> words.add(part.name() + " " + what));
        }
        return words;
    }

    private static void collect(Object node, Set<String> words) {
        if (node instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                words.add(String.valueOf(key));
                collect(value, words);
            });
        } else if (node instanceof List<?> list) {
            list.forEach(item -> collect(item, words));
        } else {
            words.add(String.valueOf(node));
        }
    }

    @Test
    void a_face_goes_with_its_part_and_what_cutting_takes_away_is_told_by_the_words() {
        assertThat(WORDS.part("head face").map(Part::goesWith)).contains("head");
        assertThat(WORDS.part("valve seat").map(Part::goesWith)).contains("seat insert");
        assertThat(WORDS.part("head").map(Part::goesWith)).contains("");
        assertThat(WORDS.part("camshaft").map(Part::runsIn)).contains("cam bearing");
        Property by = WORDS.property("machining", "by").orElseThrow();
        assertThat(by.is("takes metal off", "mill")).isTrue();
        assertThat(by.is("takes metal off", "polish")).isFalse();
        assertThat(WORDS.property("parts", "state").orElseThrow().is("another part", "second-hand")).isTrue();
        assertThat(WORDS.property("parts", "state").orElseThrow().is("another part", "kept")).isFalse();
        assertThat(by.is("cuts a face", "turn")).isTrue();
        assertThat(by.is("cuts a face", "lap")).isFalse();
        assertThat(WORDS.property("parts", "state").orElseThrow().is("put in", "repaired")).isTrue();
        assertThat(WORDS.property("parts", "state").orElseThrow().is("put in", "kept")).isFalse();
        assertThat(WORDS.sign("cracked").orElseThrow().deep()).isTrue();
        assertThat(WORDS.sign("scored").orElseThrow().deep()).isFalse();
    }

    @Test
    void the_words_say_which_key_carries_a_part_round_and_which_fluid_a_seal_named_by_it_keeps_in() {
        assertThat(WORDS.part("crank gear").map(Part::keyedBy)).contains("crank key");
        assertThat(WORDS.part("flywheel").map(Part::keyedBy)).contains("flywheel key");
        assertThat(WORDS.part("cam gear").map(Part::keyedBy)).contains("");
        assertThat(WORDS.part("crank").map(Part::keepsIn)).contains("oil");
        assertThat(WORDS.part("liner").map(Part::keepsIn)).contains("coolant");
        assertThat(WORDS.part("carburettor").map(Part::keepsIn)).contains("fuel");
        assertThat(WORDS.part("head").map(Part::keepsIn)).contains("");
        assertThat(WORDS.property("worked out", "holds").orElseThrow().also()).containsEntry("water", "coolant").containsEntry("diesel", "fuel");
    }

    @Test
    void the_words_say_which_lines_of_a_sheet_are_sizes() {
        assertThat(WORDS.property("sheet", "standard").orElseThrow().sized()).containsEntry("length",
                List.of("bore", "stroke", "rod length", "block height", "thrust housing width", "valve centres", "case depth"))
                .containsEntry(Property.AS_READ, List.of(Property.EACH_LINE));
        assertThat(WORDS.property("sheet", "masses").orElseThrow().sized()).containsOnly(Map.entry("mass", List.of(Property.EACH_LINE)));
        assertThat(WORDS.property("sheet", "materials").orElseThrow().sized()).isEmpty();
    }

    @Test
    void a_fault_of_the_folder_names_its_file_and_what_is_wrong(@TempDir Path folder) throws IOException {
        assertThatThrownBy(() -> broken(folder, "parts.yaml", "each: each bank", "each: each bnk")).isInstanceOf(VocabularyException.class)
                .hasMessage("rules/vocabulary/parts.yaml: \"block face\" names \"each bnk\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "signs.yaml", "dented: {gloss", "dented: {glos"))
                .hasMessage("rules/vocabulary/signs.yaml: \"dented\" lacks \"gloss\".");
        assertThatThrownBy(() -> broken(folder, "steps.yaml", "after: [pistons fitted]", "after: [piston fitted]"))
                .hasMessage("rules/vocabulary/steps.yaml: \"rod caps tight\" names \"piston fitted\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "quantities.yaml", "cylinder chamfer: {of: cylinder, what: chamfer, dimension: length",
                "cylinder chamfer: {of: cylinder, what: chamfer, dimension: lenght"))
                .hasMessage("rules/vocabulary/quantities.yaml: \"cylinder chamfer\" names \"lenght\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "gauges.yaml", "radius gauge: {gloss", "radius gauge: {colour: red, gloss"))
                .hasMessage("rules/vocabulary/gauges.yaml: \"radius gauge\" has a key that is not known, \"colour\".");
        assertThatThrownBy(() -> broken(folder, "ambiguous.yaml", "pulley:", "pulley: [crank gear]\npulley:"))
                .hasMessageStartingWith("rules/vocabulary/ambiguous.yaml: cannot be read: ").hasMessageContaining("pulley");
        assertThatThrownBy(() -> broken(folder, "parts.yaml", "goes with: head", "goes with: hed"))
                .hasMessage("rules/vocabulary/parts.yaml: \"head face\" names \"hed\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "parts.yaml", "runs in: cam bearing", "runs in: cam baring"))
                .hasMessage("rules/vocabulary/parts.yaml: \"camshaft\" names \"cam baring\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "parts.yaml", "keyed by: trigger key", "keyed by: triger key"))
                .hasMessage("rules/vocabulary/parts.yaml: \"trigger disc\" names \"triger key\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "parts.yaml", "keeps in: fuel", "keeps in: fule"))
                .hasMessage("rules/vocabulary/parts.yaml: \"carburettor\" names \"fule\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "properties.yaml", "takes metal off: [mill,", "takes metal off: [mil,"))
                .hasMessage("rules/vocabulary/properties.yaml: \"machining: by\" names \"mil\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "properties.yaml", "sized: {torque: torque,", "sized: {torqe: torque,"))
                .hasMessage("rules/vocabulary/properties.yaml: \"sheet: output\" names \"torqe\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "properties.yaml", "roll pin: slotted", "roll pin: slottd"))
                .hasMessage("rules/vocabulary/properties.yaml: \"parts: form\" names \"slottd\", which is not there.");
        assertThatThrownBy(() -> broken(folder, "properties.yaml", "sized: {torque: torque,", "sized: {torque: tork,"))
                .hasMessage("rules/vocabulary/properties.yaml: \"sheet: output\" names \"tork\", which is not there.");
    }

    private static void broken(Path folder, String file, String right, String wrong) throws IOException {
        try (Stream<Path> files = Files.list(RULES)) {
            for (Path from : files.toList()) {
                String text = Files.readString(from);
                if (from.getFileName().toString().equals(file)) {
                    assertThat(text).contains(right);
                    text = text.replace(right, wrong);
                }
                Files.writeString(folder.resolve(from.getFileName().toString()), text);
            }
        }
        Words.ofFolder(folder);
    }
}

package leadlamp.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Nothing that a builder writes is lost in silence, and nothing that anybody writes breaks the reader. */
class NothingIsLostTest {
    private static final Path FULL = Path.of("sample-builds/full-sound-tarn-12.yaml");
    /** Sections whose keys are the builder's own names. */
    private static final Set<String> OWN_NAMES = Set.of("gauges", "photos");

    private final Yaml.File file = Yaml.read(FULL, "build.yaml");
    private final EngineSheet sheet = Bench.READER.sheet(Path.of("sample-builds/engines/tarn-12.yaml"));

    private Build build(Node.Fields tree) {
        return Bench.READER.build(tree, "build.yaml", file.lines(), List.of(), sheet, Fingerprint.NONE);
    }

    @Test
    void a_key_that_nobody_knows_is_always_said() {
        List<Node.Field> keys = new ArrayList<>();
        for (Node.Field section : file.tree().orElseThrow().fields()) {
            collect(section.value(), section.key(), keys);
        }
        assertThat(keys).hasSizeGreaterThan(1000);
        Random random = new Random(7);
        List<String> silent = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            Node.Field key = keys.get(random.nextInt(keys.size()));
            Build build = build((Node.Fields) renamed(file.tree().orElseThrow(), key));
            if (build.problems().isEmpty()) {
                silent.add(key.where() + " " + key.key());
            }
        }
        assertThat(silent).isEmpty();
    }

    private static void collect(Node node, String section, List<Node.Field> keys) {
        if (node instanceof Node.Items items) {
            items.items().forEach(i -> collect(i, section, keys));
        } else if (node instanceof Node.Fields fields) {
            for (Node.Field field : fields.fields()) {
                boolean own = OWN_NAMES.contains(section) && field.value() instanceof Node.Fields;
                boolean place = section.equals("lengths") || section.equals("limits");
                if (!own && !place) {
                    keys.add(field);
                }
                if (!field.key().equals("limits") && !field.key().equals("lengths")) {
                    collect(field.value(), field.key().equals("lengths") ? "lengths" : section, keys);
                }
            }
        }
    }

    private static Node renamed(Node node, Node.Field key) {
        if (node instanceof Node.Items items) {
            return new Node.Items(items.items().stream().map(i -> renamed(i, key)).toList(), items.where());
        }
        if (node instanceof Node.Fields fields) {
            return new Node.Fields(fields.fields().stream().map(f -> f == key ? new Node.Field("zzqq xk", f.where(), f.value())
                    : new Node.Field(f.key(), f.where(), renamed(f.value(), key))).toList(), fields.where());
        }
        return node;
    }

    @Test
    void a_record_cut_garbled_or_doubled_anywhere_is_read_or_refused_in_plain_words() throws IOException {
        String text = Files.readString(Path.of("sample-builds/hill-climb-three.yaml"));
        Random random = new Random(20260314);
        for (int i = 0; i < 150; i++) {
            String garbled = garbled(text, random);
            Yaml.File read = Yaml.text(garbled, "garbled.yaml");
            assertThat(read.tree().isPresent() || !read.problems().isEmpty()).isTrue();
            if (read.tree().isPresent()) {
                Build build = Bench.READER.build(read.tree().get(), "garbled.yaml", read.lines(), read.problems(), sheet, Fingerprint.NONE);
                for (Problem problem : build.problems()) {
                    assertThat(problem.what()).isNotBlank().doesNotContain("Exception", "null");
                }
            }
        }
    }

    private static String garbled(String text, Random random) {
        StringBuilder garbled = new StringBuilder(text);
        for (int n = 1 + random.nextInt(4); n > 0; n--) {
            int at = random.nextInt(garbled.length());
            switch (random.nextInt(6)) {
                case 0 -> garbled.deleteCharAt(at);
                case 1 -> garbled.insert(at, "{}[]:,-&*!|>'\"%@`#\t\n \u00b5\u20ac".charAt(random.nextInt(22)));
                case 2 -> garbled.setCharAt(at, (char) (' ' + random.nextInt(95)));
                case 3 -> garbled.insert(at, garbled.substring(at, Math.min(garbled.length(), at + random.nextInt(80))));
                case 4 -> garbled.delete(at, Math.min(garbled.length(), at + random.nextInt(40)));
                default -> garbled.setLength(Math.max(10, at));
            }
        }
        return garbled.toString();
    }
}

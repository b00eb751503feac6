package leadlamp.teach;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.record.Node;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.words.Names;
import leadlamp.words.Vocabulary;

/** The plan of looks, read from its page; whatever is wrong with the page is said when the project is built. */
public final class Looks {
    /** The page on the class path. */
    public static final String RESOURCE = "/leadlamp/looks.yaml";
    private static final List<String> KEYS = List.of("id", "depth", "look", "question", "good", "bad", "record", "tells", "caution",
            "basis");

    private final Yaml.File page;
    private final Vocabulary words;
    private final List<Look> looks = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Look.Depth> depths = new LinkedHashMap<>();

    private Looks(Yaml.File page, Vocabulary words) {
        this.page = page;
        this.words = words;
        problems.addAll(page.problems());
        page.tree().ifPresent(this::read);
    }

    /** Reads a page. */
    public static Looks of(Yaml.File page, Vocabulary words) {
        return new Looks(page, words);
    }

    /** The looks that the program carries. */
    public static List<Look> compiled(Vocabulary words) {
        try (InputStream in = Looks.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its looks, " + RESOURCE);
            }
            return of(Yaml.text(new String(in.readAllBytes(), StandardCharsets.UTF_8), "looks.yaml"), words).looks();
        } catch (IOException broken) {
            throw new IllegalStateException("the program's looks cannot be read, " + RESOURCE, broken);
        }
    }

    /** In the order of their depths, and within one as they stand. */
    public List<Look> looks() {
        return List.copyOf(looks);
    }

    /** What is wrong with the page. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void read(Node.Fields tree) {
        items(tree, "depths").forEach(this::depth);
        items(tree, "looks").forEach(this::look);
        looks.sort((a, b) -> Integer.compare(a.depth().order(), b.depth().order()));
    }

    private void depth(Node.Fields depth) {
        String name = text(depth, "name");
        String reach = text(depth, "reach");
        if (!reach.matches("[0-4]")) {
            problem(depth.where(), 0, "A depth has a `reach` from 0 to 4.", "", Optional.empty());
            return;
        }
        depths.put(name, new Look.Depth(depths.size(), name, Integer.parseInt(reach), text(depth, "means")));
    }

    private void look(Node.Fields look) {
        for (Node.Field field : look.fields()) {
            if (!KEYS.contains(field.key())) {
                unknown(field.where(), field.key(), "is no key of a look", KEYS);
            }
        }
        for (String key : List.of("id", "depth", "look", "question", "good", "bad")) {
            if (text(look, key).isEmpty()) {
                problem(look.where(), 0, "The look has no `" + key + "`.", "", Optional.empty());
            }
        }
        Look.Depth depth = depths.get(text(look, "depth"));
        if (depth == null) {
            look.get("depth").ifPresent(n -> unknown(n.where(), text(look, "depth"), "is no depth", depths.keySet()));
            return;
        }
        List<String> record = new ArrayList<>();
        for (Node.Scalar word : scalars(look, "record")) {
            record.add(word.text());
            if (Names.resolve(word.text(), words).isEmpty()) {
                problem(word.where(), word.text().length(), "\"" + word.text() + "\" is no word of a record.", "",
                        Names.nearest(word.text(), words));
            }
        }
        List<String> tells = new ArrayList<>();
        for (Node.Scalar event : scalars(look, "tells")) {
            tells.add(event.text());
            if (!words.events().containsKey(event.text())) {
                unknown(event.where(), event.text(), "is no event of the past", words.events().keySet());
            }
        }
        if (record.isEmpty()) {
            problem(look.where(), 0, "The look says nothing to write down.", "`record:` and the words.", Optional.empty());
        }
        String basis = text(look, "basis");
        looks.add(new Look(text(look, "id"), depth, text(look, "look"), text(look, "question"), text(look, "good"),
                text(look, "bad"), List.copyOf(record), List.copyOf(tells), text(look, "caution"),
                basis.isEmpty() ? Look.PRACTICE : basis));
    }

    private static List<Node.Fields> items(Node.Fields tree, String key) {
        List<Node.Fields> items = new ArrayList<>();
        tree.get(key).filter(Node.Items.class::isInstance).ifPresent(node -> ((Node.Items) node).items().forEach(item -> {
            if (item instanceof Node.Fields fields) {
                items.add(fields);
            }
        }));
        return items;
    }

    private static String text(Node.Fields fields, String key) {
        return fields.get(key).filter(Node.Scalar.class::isInstance).map(n -> ((Node.Scalar) n).text()).orElse("");
    }

    private static List<Node.Scalar> scalars(Node.Fields fields, String key) {
        List<Node.Scalar> scalars = new ArrayList<>();
        fields.get(key).filter(Node.Items.class::isInstance).ifPresent(node -> ((Node.Items) node).items().forEach(item -> {
            if (item instanceof Node.Scalar scalar) {
                scalars.add(scalar);
            }
        }));
        return scalars;
    }

    private void unknown(Where where, String word, String what, Collection<String> known) {
        problem(where, word.length(), "\"" + word + "\" " + what + ".", "", Vocabulary.nearest(word, known));
    }

    private void problem(Where where, int length, String what, String expected, Optional<String> nearest) {
        problems.add(new Problem(where, length, page.line(where.line()), what, expected, nearest, ""));
    }
}

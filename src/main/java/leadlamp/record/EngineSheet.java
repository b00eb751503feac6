package leadlamp.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import leadlamp.words.Part;

/**
 * An engine sheet: what is there and the maker's limits. Every line of it stands among the statements (ON_SHEET), as
 * `layout`/engine/lash: hydraulic, `standard`/engine/bore: 80.00 mm, `joint`/oil pump to block/torque: 23 N·m,
 * `cam gear pin`/intake/form: solid. What has more shape than a word (stages, positions, choose, order) is in the tree.
 *
 * @param file       its path, as the record names it
 * @param name       the engine's name
 * @param from       manual and page
 * @param statements its lines
 * @param limits     its limits
 * @param layout     the places that it gives
 * @param tree       the file itself
 * @param problems   what could not be taken
 */
public record EngineSheet(String file, String name, String from, List<Statement> statements, List<LimitLine> limits,
        Layout layout, Node.Fields tree, List<Problem> problems) {

    /** The word of one line: {@code word("layout", "engine", "lash")}. */
    public Optional<String> word(String of, String at, String what) {
        return statement(of, at, what).map(Statement::says);
    }

    /** One line. */
    public Optional<Statement> statement(String of, String at, String what) {
        for (Statement s : statements) {
            if (s.what().equals(what) && s.of().equals(of) && s.at().equals(at)) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    /** The tree below these keys: {@code below("joints", "head to block")}. */
    public Optional<Node> below(String... keys) {
        Optional<Node> node = Optional.of(tree);
        for (String key : keys) {
            node = node.orElse(null) instanceof Node.Fields under ? under.get(key) : Optional.empty();
        }
        return node;
    }

    /** Names under a section: {@code names("joints")}. */
    public List<String> names(String section) {
        if (!(below(section).orElse(null) instanceof Node.Fields under)) {
            return List.of();
        }
        List<String> names = new ArrayList<>(under.fields().size());
        for (Node.Field field : under.fields()) {
            names.add(field.key());
        }
        return names;
    }

    /** What the groups come to, so that readers need not know how. */
    public interface Layout {
        /**
         * The places of a group that the sheet gives: empty Optional where the sheet does not settle it, an empty list
         * where the sheet shows that there are none.
         */
        Optional<List<String>> places(String group);

        /** The places of one part: those of its group that are its own, as `front crank seal` among the shaft seals. */
        default Optional<List<String>> places(Part part) {
            return places(part.group());
        }

        /** Names that are places of their own (joints, sensors, plugs, seals, drives), with their synonyms resolved. */
        List<String> names();

        /**
         * The highest number that a bolt, stud or dowel of a joint can have, or one of a place of that joint. Empty where the
         * sheet does not count them.
         */
        default OptionalInt counted(String joint) {
            return OptionalInt.empty();
        }

        /** The sheet's own names of cylinders, word to number. */
        Map<String, String> cylinderNames();
    }
}

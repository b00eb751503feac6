package leadlamp.record;

import java.util.List;
import java.util.Optional;

/** A YAML file as a tree whose every part knows its place. Scalars are text: 8.8, 007 and yes stay as written. */
public sealed interface Node {
    Where where();

    /** One value, as text. */
    record Scalar(String text, Where where) implements Node {
    }

    /** A list. */
    record Items(List<Node> items, Where where) implements Node {
    }

    /** A map, its keys in their order. */
    record Fields(List<Field> fields, Where where) implements Node {
        /** The value of this key. */
        public Optional<Node> get(String key) {
            for (Field field : fields) {
                if (field.key().equals(key)) {
                    return Optional.of(field.value());
                }
            }
            return Optional.empty();
        }
    }

    /** One key and its value. */
    record Field(String key, Where where, Node value) {
    }
}

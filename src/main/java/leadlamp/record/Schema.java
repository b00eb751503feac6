package leadlamp.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pieces of a JSON Schema, put together as maps and lists. Draft 7, for that is what editors of YAML read. What a gloss says
 * stands as `description`, and beside a list of words as `enumDescriptions`, which editors show and validators pass over.
 */
final class Schema {
    static final String DRAFT = "http://json-schema.org/draft-07/schema#";
    /** A scalar as a reader of YAML may take it: the record's own reader takes all of them as text. */
    static final Map<String, Object> TEXT = of("type", List.of("string", "number", "boolean"));
    static final Map<String, Object> ANY = Map.of();
    static final Map<String, Object> EMPTY = of("type", "null");

    private Schema() {
    }

    static Map<String, Object> of(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return map;
    }

    static Map<String, Object> ref(String definition) {
        return of("$ref", "#/definitions/" + definition);
    }

    /** The same with a gloss; an own gloss beside a reference would be passed over. */
    static Map<String, Object> described(String gloss, Map<String, Object> schema) {
        return gloss.isEmpty() ? schema : of("description", gloss, "allOf", List.of(schema));
    }

    static Map<String, Object> anyOf(Object... schemas) {
        return of("anyOf", List.of(schemas));
    }

    static Map<String, Object> listOf(Map<String, Object> schema) {
        return of("type", "array", "items", schema);
    }

    /** One, or a list of them. */
    static Map<String, Object> oneOrMore(Map<String, Object> schema) {
        return anyOf(schema, listOf(schema));
    }

    static Map<String, Object> pattern(String pattern) {
        return of("type", "string", "pattern", pattern);
    }

    /** Words with their gloss. One that looks like a figure is taken as a figure too. */
    static Map<String, Object> words(Map<String, String> glossed) {
        List<Object> words = new ArrayList<>();
        List<String> glosses = new ArrayList<>();
        glossed.forEach((word, gloss) -> {
            words.add(word);
            glosses.add(gloss);
            if (!word.isEmpty() && "0123456789".indexOf(word.charAt(0)) >= 0) {
                try {
                    words.add(Double.valueOf(word));
                    glosses.add(gloss);
                } catch (NumberFormatException word8) {
                    // A word that only begins with a figure.
                }
            }
        });
        return of("enum", words, "enumDescriptions", glosses);
    }

    /** Lines of their own, each of a known name; nothing at all is taken for none. */
    static Map<String, Object> lines(Map<String, Object> properties) {
        return of("type", List.of("object", "null"), "properties", properties, "additionalProperties", false);
    }

    /** A pattern that matches one of the words, or its plural where that is wanted. */
    static String oneOf(Collection<String> words, boolean plural) {
        StringBuilder pattern = new StringBuilder("^(?:");
        String before = "";
        for (String word : words) {
            pattern.append(before);
            for (int i = 0; i < word.length(); i++) {
                char c = word.charAt(i);
                if ("\\^$.|?*+()[]{}/-".indexOf(c) >= 0) {
                    pattern.append('\\');
                }
                pattern.append(c);
            }
            before = "|";
        }
        return pattern.append(plural ? ")(?:s|es)?$" : ")$").toString();
    }

    static void write(Map<String, Object> schema, OutputStream out) throws IOException {
        DefaultIndenter indenter = new DefaultIndenter(" ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
            node(json, schema);
            json.writeRaw('\n');
        }
    }

    private static void node(JsonGenerator json, Object node) throws IOException {
        if (node instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName((String) entry.getKey());
                node(json, entry.getValue());
            }
            json.writeEndObject();
        } else if (node instanceof Collection<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                node(json, item);
            }
            json.writeEndArray();
        } else if (node instanceof Boolean is) {
            json.writeBoolean(is);
        } else if (node instanceof Integer number) {
            json.writeNumber(number);
        } else if (node instanceof Double number) {
            json.writeNumber(number);
        } else {
            json.writeString((String) node);
        }
    }
}

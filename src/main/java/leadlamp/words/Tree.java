package leadlamp.words;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A file of the vocabulary as maps, lists and text, keys in their order. Read by the build and by tests alone. */
final class Tree {
    private final String file;

    private Tree(String file) {
        this.file = file;
    }

    static Map<String, Object> read(Path path) throws IOException {
        Tree tree = new Tree(path.getFileName().toString());
        YAMLFactory factory = new YAMLFactory();
        try (Reader text = Files.newBufferedReader(path); JsonParser parser = factory.createParser(text)) {
            parser.enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new VocabularyException(tree.file, "does not begin with a word and a colon");
            }
            return tree.map(parser);
        } catch (JsonProcessingException unreadable) {
            throw new VocabularyException(tree.file, "cannot be read: " + unreadable.getOriginalMessage());
        }
    }

    private Map<String, Object> map(JsonParser parser) throws IOException {
        Map<String, Object> map = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            map.put(key, value(parser, key));
        }
        return map;
    }

    private Object value(JsonParser parser, String key) throws IOException {
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            return map(parser);
        }
        if (parser.currentToken() == JsonToken.START_ARRAY) {
            List<Object> list = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                list.add(value(parser, key));
            }
            return list;
        }
        if (parser.currentToken() == JsonToken.VALUE_NULL) {
            throw new VocabularyException(file, "\"" + key + "\" has no value");
        }
        return parser.getText();
    }
}

package leadlamp.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One line of a file of the vocabulary. What is not asked for by the time it is done is a key too many. */
final class Line {
    private final String file;
    private final String name;
    private final Object value;
    private final Set<String> asked = new HashSet<>();

    Line(String file, String name, Object value) {
        this.file = file;
        this.name = name;
        this.value = value;
    }

    @SuppressWarnings("unchecked")
    Map<String, Object> map() {
        if (!(value instanceof Map)) {
            throw new VocabularyException(file, "\"" + name + "\" should have words of its own under it");
        }
        return (Map<String, Object>) value;
    }

    List<String> list() {
        return texts(name, value);
    }

    Set<String> keys() {
        return map().keySet();
    }

    Line line(String key) {
        asked.add(key);
        return new Line(file, name + ": " + key, map().getOrDefault(key, Map.of()));
    }

    String text(String key) {
        String text = text(key, null);
        if (text == null) {
            throw new VocabularyException(file, "\"" + name + "\" lacks \"" + key + "\"");
        }
        return text;
    }

    String text(String key, String otherwise) {
        asked.add(key);
        Object text = map().get(key);
        if (text != null && !(text instanceof String)) {
            throw new VocabularyException(file, "\"" + name + "\" should have one word under \"" + key + "\"");
        }
        return text == null ? otherwise : (String) text;
    }

    int number(String key) {
        String text = text(key);
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException none) {
            throw new VocabularyException(file, "\"" + name + "\" should have a whole number under \"" + key + "\"");
        }
    }

    boolean flag(String key) {
        return text(key, "false").equals("true");
    }

    /** A list, or one word that stands for a list of one; empty where the key is not there. */
    List<String> list(String key) {
        asked.add(key);
        return texts(key, map().getOrDefault(key, List.of()));
    }

    void done() {
        for (String key : map().keySet()) {
            if (!asked.contains(key)) {
                throw new VocabularyException(file, "\"" + name + "\" has a key that is not known, \"" + key + "\"");
            }
        }
    }

    private List<String> texts(String key, Object of) {
        if (of instanceof String text) {
            return List.of(text);
        }
        if (!(of instanceof List<?> items)) {
            throw new VocabularyException(file, "\"" + name + "\" should have a list under \"" + key + "\"");
        }
        List<String> texts = new ArrayList<>();
        for (Object item : items) {
            texts.add(String.valueOf(item));
        }
        return List.copyOf(texts);
    }
}

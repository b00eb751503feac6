package leadlamp.judge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;
import leadlamp.record.LimitLine;
import leadlamp.record.Node;
import leadlamp.record.Place;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/**
 * One file of the trade's limits. The form is that of the sheet's `limits`, and each line has `kind` (limit, or reason to look),
 * `basis`, and may have `for`, the words that must hold.
 */
final class LimitsFile {
    private final List<LimitLine> lines = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private final Vocabulary words;

    private LimitsFile(Vocabulary words) {
        this.words = words;
    }

    static LimitsFile read(Path file, String name, Vocabulary words) {
        LimitsFile limits = new LimitsFile(words);
        Yaml.File yaml = Yaml.read(file, name);
        for (Problem problem : yaml.problems()) {
            limits.faults.add(problem.where() + ": " + problem.what());
        }
        yaml.tree().ifPresent(limits::all);
        return limits;
    }

    List<LimitLine> lines() {
        return lines;
    }

    List<String> faults() {
        return faults;
    }

    private void all(Node.Fields tree) {
        for (Node.Field field : tree.fields()) {
            Optional<Quantity> quantity = words.quantity(field.key());
            if (quantity.isEmpty()) {
                List<String> names = new ArrayList<>();
                words.quantities().forEach(q -> names.add(q.name()));
                faults.add(field.where() + ": \"" + field.key() + "\" is no quantity of the vocabulary."
                        + Vocabulary.nearest(field.key(), names).map(n -> " Nearest: " + n + ".").orElse(""));
                continue;
            }
            for (Node line : field.value() instanceof Node.Items items ? items.items() : List.of(field.value())) {
                if (line instanceof Node.Fields fields) {
                    one(quantity.get(), fields);
                } else {
                    faults.add(line.where() + ": a limit wants `least` or `most`, `kind` and `basis`.");
                }
            }
        }
    }

    private void one(Quantity quantity, Node.Fields fields) {
        Map<String, String> texts = new HashMap<>();
        Map<String, String> asides = new TreeMap<>();
        Map<String, String> where = new TreeMap<>();
        for (Node.Field field : fields.fields()) {
            switch (field.key()) {
                case "at", "times", "when", "kind", "basis", "standard", "least", "most", "either way" ->
                    texts.put(field.key(), flat(field.value()));
                case "for", "where" -> {
                    if (field.value() instanceof Node.Fields said) {
                        said.fields().forEach(word -> where.put(word.key(), flat(word.value())));
                    } else {
                        faults.add(field.where() + ": `" + field.key() + "` wants words, as { use duty: road }.");
                    }
                }
                case "span", "at radius", "speed", "oil temperature", "temperature", "note" -> asides.put(field.key(), flat(field.value()));
                default -> faults.add(field.where() + ": \"" + field.key() + "\" is no word of a limit.");
            }
        }
        String kind = texts.getOrDefault("kind", "");
        if (!kind.equals("limit") && !kind.equals("reason to look")) {
            faults.add(fields.where() + ": the " + quantity.name() + " wants its `kind`: limit, or reason to look.");
        }
        if (texts.getOrDefault("basis", "").isBlank()) {
            faults.add(fields.where() + ": the " + quantity.name() + " has no `basis`. A number of the trade says where it comes from.");
        }
        boolean share = texts.containsKey("times");
        if (share && words.quantity(texts.get("times")).isEmpty()) {
            faults.add(fields.where() + ": `times` names no quantity: \"" + texts.get("times") + "\".");
        }
        Optional<Written> least = size(quantity, "least", texts, share, fields.where());
        Optional<Written> most = size(quantity, "most", texts, share, fields.where());
        Optional<Written> standard = size(quantity, "standard", texts, false, fields.where());
        Optional<Written> way = size(quantity, "either way", texts, false, fields.where());
        if (standard.isPresent() && way.isPresent()) {
            double middle = standard.get().low();
            double half = Math.abs(way.get().low() - way.get().unit().offset());
            least = Optional.of(at(middle - half, standard.get()));
            most = Optional.of(at(middle + half, standard.get()));
        }
        if (least.isEmpty() && most.isEmpty()) {
            faults.add(fields.where() + ": the " + quantity.name() + " has neither `least` nor `most`.");
        }
        lines.add(new LimitLine(quantity.name(), Place.inOrder(texts.getOrDefault("at", "")), standard, least, most,
                texts.getOrDefault("times", ""), texts.getOrDefault("when", ""), Collections.unmodifiableMap(where),
                Collections.unmodifiableMap(asides), !kind.equals("limit"), texts.getOrDefault("basis", ""), fields.where()));
    }

    private static Written at(double si, Written like) {
        return new Written(Written.Form.PLAIN, si, si, like.unit(), like.figures(), like.text());
    }

    private Optional<Written> size(Quantity quantity, String key, Map<String, String> texts, boolean share, Where where) {
        String text = texts.get(key);
        if (text == null) {
            return Optional.empty();
        }
        Reading.Result result = Reading.read(text, share ? Dimension.SHARE : quantity.dimension(), Optional.empty());
        if (result instanceof Reading.Read read && read.written().figure()) {
            return Optional.of(read.written());
        }
        faults.add(where + ": \"" + text + "\" is no size of the " + quantity.name() + "."
                + (result instanceof Reading.Unread unread ? " " + unread.what() : ""));
        return Optional.empty();
    }

    static String flat(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        if (node instanceof Node.Items items) {
            StringBuilder flat = new StringBuilder();
            for (Node item : items.items()) {
                flat.append(flat.length() == 0 ? "" : ", ").append(flat(item));
            }
            return flat.toString();
        }
        return "";
    }
}

package leadlamp.record;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.words.Vocabulary;

/**
 * Reads a file of the trade's numbers (`rules/<topic>/limits.yaml`): the form of the sheet's `limits`, with `kind` (limit or
 * reason to look), `basis`, and `for`, the words that must hold for the line.
 */
public final class TradeLines {
    private TradeLines() {
    }

    /** The lines of one file; what is wrong with them is added to the problems. */
    public static List<LimitLine> read(Path path, String name, Vocabulary words, List<Problem> problems) {
        Yaml.File file = Yaml.read(path, name);
        Complaints complaints = new Complaints(file.lines());
        complaints.take(file.problems());
        List<LimitLine> lines = new ArrayList<>();
        for (Node.Field quantity : file.tree().map(Node.Fields::fields).orElse(List.of())) {
            List<Node> maps = quantity.value() instanceof Node.Items items ? items.items() : List.of(quantity.value());
            for (Node map : maps) {
                if (map instanceof Node.Fields fields) {
                    line(quantity, fields, words, complaints).ifPresent(lines::add);
                } else {
                    complaints.add(map.where(), 0, "A limit wants `least` or `most`.", "As { most: 0.05 mm, kind: reason to look, basis: ... }.",
                            Optional.empty(), "");
                }
            }
        }
        problems.addAll(complaints.all());
        return lines;
    }

    private static Optional<LimitLine> line(Node.Field quantity, Node.Fields fields, Vocabulary words, Complaints complaints) {
        List<Node.Field> plain = new ArrayList<>();
        Map<String, String> holds = new TreeMap<>();
        String kind = "";
        String basis = "";
        for (Node.Field field : fields.fields()) {
            if (field.key().equals("kind")) {
                kind = SheetReader.flat(field.value());
            } else if (field.key().equals("basis")) {
                basis = SheetReader.flat(field.value());
            } else if (field.key().equals("for") && field.value() instanceof Node.Fields words2) {
                words2.fields().forEach(f -> holds.put(f.key(), SheetReader.flat(f.value())));
            } else {
                plain.add(field);
            }
        }
        if (!kind.equals("limit") && !kind.equals("reason to look")) {
            complaints.add(fields.where(), 0, "A trade's number says what it is.", "`kind: limit` or `kind: reason to look`.", Optional.empty(), "");
            return Optional.empty();
        }
        if (basis.isBlank()) {
            complaints.add(fields.where(), 0, "A trade's number says where it comes from.",
                    "`basis:` and the source, or \"common practice, no source\", or 'from memory: STANDARD'.", Optional.empty(), "");
            return Optional.empty();
        }
        Node.Field alone = new Node.Field(quantity.key(), quantity.where(), new Node.Fields(List.copyOf(plain), fields.where()));
        List<LimitLine> read = SheetReader.limitLines(alone, basis, words, complaints);
        if (read.isEmpty()) {
            return Optional.empty();
        }
        LimitLine line = read.get(0);
        Map<String, String> where = new TreeMap<>(line.where());
        where.putAll(holds);
        return Optional.of(new LimitLine(line.quantity(), line.at(), line.standard(), line.least(), line.most(), line.times(), line.when(),
                java.util.Collections.unmodifiableMap(where), line.asides(), kind.equals("reason to look"), basis, line.line()));
    }
}

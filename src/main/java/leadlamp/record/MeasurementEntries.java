package leadlamp.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Statement.Form;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Entries under `measurements`: a value, a row or a table. */
final class MeasurementEntries extends EntryReader {
    MeasurementEntries(Gathered gathered) {
        super(gathered);
    }

    void measured(Node.Fields entry) {
        Subject subject = subject(entry, "of", "value", "values");
        if (subject == null) {
            return;
        }
        String word = subject.word();
        if (entry.fields().get(0).key().equals("of") && entry.get("what").isPresent()) {
            word = word + " " + SheetReader.flat(entry.get("what").get());
        }
        Optional<Quantity> known = words.quantity(word);
        if (known.isEmpty()) {
            noQuantity(word, subject.where());
            return;
        }
        Quantity quantity = known.get();
        Optional<Unit> unit = unit(entry, quantity);
        if (unit == null) {
            return;
        }
        Rest rest = rest(entry, subject, "measurements", quantity.name(), List.of("measurements", "measurements aside"));
        Optional<String> as = rest.says("as");
        String mark = as.isEmpty() || as.get().equals("left") ? "" : "as " + as.get();
        List<String> with = gaugesOf(entry.get("with"));
        Cells cells = cells(entry, subject, quantity);
        for (Cell cell : cells.cells()) {
            cell(quantity, cell, unit, mark, with, rest);
        }
    }

    private record Cell(List<String> at, Node.Scalar text) {
    }

    private record Cells(List<Cell> cells) {
    }

    private void cell(Quantity quantity, Cell cell, Optional<Unit> unit, String mark, List<String> with, Rest rest) {
        String text = cell.text().text();
        Reading.Result result = Reading.read(text, quantity.dimension(), unit);
        if (result instanceof Reading.Unread unread) {
            Where at = SheetReader.moved(cell.text().where(), unread.offset());
            complaints.add(at, unread.length(), unread.what(), unread.expected(), unread.nearest(),
                    "The rest of the entry was read; checks that need this " + quantity.name() + " say \"cannot tell\".");
            cell.at().forEach(p -> gathered.leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, mark)));
            return;
        }
        Written written = ((Reading.Read) result).written();
        String of = mark.isEmpty() ? quantity.name() : quantity.name() + " " + mark;
        for (String place : cell.at()) {
            if (!written.figure()) {
                String says = switch (written.form()) {
                    case GOOD -> "good";
                    case NOT_READ -> "not read";
                    default -> "unknown";
                };
                state(of, place, "figure", says, Optional.empty(), rest.asides(), rest.told(), cell.text().where());
                continue;
            }
            gathered.statements.add(new Statement(Form.READ, quantity.name(), place, mark, "", Optional.of(written), with, rest.asides(),
                    rest.told(), cell.text().where(), complaints.line(cell.text().where())));
            for (Said said : rest.said()) {
                if (said.what().equals("state")) {
                    state(of, place, said.what(), said.says(), Optional.empty(), Map.of(), rest.told(), said.where());
                }
            }
        }
    }

    private Cells cells(Node.Fields entry, Subject subject, Quantity quantity) {
        List<Cell> cells = new ArrayList<>();
        Node value = subject.value();
        if (value instanceof Node.Scalar scalar) {
            if (scalar.text().isEmpty()) {
                complaints.add(subject.where(), subject.word().length(), "No value stands after \"" + quantity.name() + "\".",
                        "A figure with its unit, or `not read`.", Optional.empty(), "The entry was left out.");
                return new Cells(cells);
            }
            if (scalar.text().contains(",") && entry.fields().get(0).key().equals("of")) {
                return row(entry, subject, quantity, split(scalar));
            }
            List<String> at = entry.get("at").isEmpty() ? together(quantity) : List.of();
            if (at.isEmpty()) {
                at = places.read(entry.get("at"), quantity.group(), quantity.name(), subject.where());
            }
            if (!at.isEmpty()) {
                cells.add(new Cell(at, scalar));
            }
            return new Cells(cells);
        }
        if (value instanceof Node.Items items) {
            return row(entry, subject, quantity, items.items());
        }
        Node.Fields table = (Node.Fields) value;
        List<Node.Scalar> columns = table.get("at").map(SheetReader::scalars).orElse(List.of());
        for (Node.Field row : table.fields()) {
            if (row.key().equals("at")) {
                continue;
            }
            List<Node> values = row.value() instanceof Node.Items items ? items.items() : List.of(row.value());
            if (columns.isEmpty() && values.size() == 1 && values.get(0) instanceof Node.Scalar single) {
                List<String> at = places.read(Optional.of(new Node.Scalar(row.key(), row.where())), quantity.group(), quantity.name(), row.where());
                if (!at.isEmpty()) {
                    cells.add(new Cell(at, single));
                }
                continue;
            }
            if (values.size() != columns.size()) {
                complaints.add(row.where(), row.key().length(), "Row " + row.key() + " has " + values.size() + " values and the table has "
                        + columns.size() + " columns.", "One value for each place at the head of the table.", Optional.empty(),
                        "The row was left out; checks that need it say \"cannot tell\".");
                List<String> at = places.one(row.key(), places.of(quantity.group()), quantity.group());
                at.forEach(p -> gathered.leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, "")));
                continue;
            }
            for (int i = 0; i < values.size(); i++) {
                if (!(values.get(i) instanceof Node.Scalar scalar)) {
                    continue;
                }
                String place = row.key() + " " + columns.get(i).text();
                List<String> at = places.one(place, places.of(quantity.group()), quantity.group());
                if (at.isEmpty()) {
                    at = places.read(Optional.of(new Node.Scalar(place, columns.get(i).where())), quantity.group(), quantity.name(), row.where());
                }
                if (!at.isEmpty()) {
                    cells.add(new Cell(at, scalar));
                }
            }
        }
        return new Cells(cells);
    }

    /**
     * Where a reading without a place is of all together: a count is of the engine, a washer's thickness of its joint. Empty
     * where each place has its own.
     */
    private List<String> together(Quantity quantity) {
        List<String> known = places.of(quantity.group()).orElse(List.of());
        if (known.size() < 2) {
            return List.of();
        }
        if (quantity.dimension() == Dimension.COUNT) {
            return List.of(Place.ENGINE);
        }
        for (String joint : gathered.joints) {
            boolean all = true;
            for (String place : known) {
                all &= place.startsWith(joint + " ");
            }
            if (all) {
                return List.of(joint);
            }
        }
        return List.of();
    }

    private static List<Node> split(Node.Scalar scalar) {
        List<Node> items = new ArrayList<>();
        String text = scalar.text();
        int blank = text.lastIndexOf(' ');
        String unit = blank > text.lastIndexOf(',') + 1 ? text.substring(blank) : "";
        for (String part : text.split(",")) {
            String one = part.strip();
            items.add(new Node.Scalar(one.indexOf(' ') < 0 ? one + unit : one, scalar.where()));
        }
        return items;
    }

    private Cells row(Node.Fields entry, Subject subject, Quantity quantity, List<Node> values) {
        List<Cell> cells = new ArrayList<>();
        List<String> at;
        if (entry.get("at").isPresent()) {
            at = places.read(entry.get("at"), quantity.group(), quantity.name(), subject.where());
            if (at.isEmpty()) {
                return new Cells(cells);
            }
        } else {
            Optional<List<String>> known = places.of(quantity.group());
            if (known.isEmpty()) {
                complaints.add(subject.where(), subject.word().length(), "The engine sheet does not say how many there are, so the places"
                        + " of this row are not known.", "Write the places: `at: [1, 2, 3]`.", Optional.empty(), "The row was left out.");
                return new Cells(cells);
            }
            at = known.get();
        }
        if (at.size() != values.size()) {
            complaints.add(subject.value().where(), 0, values.size() + " values stand here for " + at.size() + " places.",
                    "Places of this row: " + Complaints.some(at), Optional.empty(),
                    "The row was left out; checks that need " + quantity.name() + " say \"cannot tell\".");
            at.forEach(p -> gathered.leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, "")));
            return new Cells(cells);
        }
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i) instanceof Node.Scalar scalar) {
                cells.add(new Cell(List.of(at.get(i)), scalar));
            }
        }
        return new Cells(cells);
    }

    /** The row's or table's own unit; null where it is wrong, which has then been said. */
    private Optional<Unit> unit(Node.Fields entry, Quantity quantity) {
        Optional<Node> node = entry.get("unit");
        if (node.isEmpty()) {
            return Optional.empty();
        }
        String text = SheetReader.flat(node.get());
        Optional<Unit> unit = Units.named(text, quantity.dimension());
        if (unit.isEmpty()) {
            boolean other = Units.named(text).isPresent();
            complaints.add(node.get().where(), text.length(), other ? "\"" + text + "\" is no unit of " + article(quantity.dimension().word()) + "."
                    : "\"" + text + "\" is no unit that is known.", "Units of " + article(quantity.dimension().word()) + ": "
                    + Complaints.some(Units.words(quantity.dimension())), Vocabulary.nearest(text, Units.words(quantity.dimension())),
                    "The entry was left out; checks that need " + quantity.name() + " say \"cannot tell\".");
            places.of(quantity.group()).orElse(List.of(Place.ENGINE)).forEach(p ->
                    gathered.leftOut.add(new Statement.Key(Form.READ, quantity.name(), p, "")));
            return null;
        }
        return unit;
    }

    private static String article(String word) {
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }
}

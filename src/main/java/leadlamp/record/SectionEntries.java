package leadlamp.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.quantity.Written;
import leadlamp.words.Property;
import leadlamp.words.Step;

/** Sections that are lines with names: build, use, stage, gauges, protection, photos; and what is accepted. */
final class SectionEntries extends EntryReader {
    private static final List<String> PHOTO = List.of("file", "of", "at", "date", "note");

    SectionEntries(Gathered gathered) {
        super(gathered);
    }

    void lines(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        for (Node.Field line : fields.fields()) {
            if (section.key().equals("build") && line.key().equals("name")) {
                gathered.name = SheetReader.flat(line.value());
                continue;
            }
            if (line.key().equals("note")) {
                continue;
            }
            Optional<Property> property = words.property(section.key(), line.key());
            if (property.isEmpty()) {
                noProperty(line, section.key(), List.of(section.key()), "The line was left out.");
                continue;
            }
            String what = property.get().name();
            boolean events = section.key().equals("build") && what.equals("past");
            for (Node.Scalar item : SheetReader.scalars(line.value())) {
                if (events && !item.text().equals("none told")) {
                    if (words.events().containsKey(item.text())) {
                        state(section.key(), Place.ENGINE, what, item.text(), Optional.empty(), Map.of(), Optional.empty(), item.where());
                    } else {
                        complaints.unknown(item.where(), item.text(), "\"" + item.text() + "\" is nothing that the past is told in.",
                                words.events().keySet(), "What an engine may have been through: ", "It was left out.");
                    }
                } else {
                    value(property.get(), item, "", section.key() + " " + what, "").ifPresent(v -> state(section.key(), Place.ENGINE,
                            what, v.says(), v.value(), Map.of(), Optional.empty(), item.where()));
                }
            }
        }
    }

    void stage(Node value) {
        for (Node.Scalar item : SheetReader.scalars(value)) {
            Optional<Step> step = words.step(item.text());
            if (step.isPresent()) {
                gathered.stage.add(step.get().name());
                state("stage", Place.ENGINE, step.get().name(), "done", Optional.empty(), Map.of(), Optional.empty(), item.where());
            } else {
                noStep(item.text(), item.where(), "The stage was left out.");
            }
        }
    }

    void gauges(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        for (Node.Field line : fields.fields()) {
            if (line.value() instanceof Node.Fields said) {
                gauge(line.key(), said, line.where());
            } else {
                complaints.add(line.where(), line.key().length(), "Nothing is said of the gauge \"" + line.key() + "\".",
                        "As { kind: micrometer, resolution: 0.001 mm, checked: 2026-02-11 }.", Optional.empty(), "The gauge was left out.");
            }
        }
    }

    private void gauge(String gauge, Node.Fields said, Where where) {
        List<String> kinds = new ArrayList<>();
        Map<String, Written> sizes = new HashMap<>();
        Map<String, String> asides = new TreeMap<>();
        Optional<String> setWith = Optional.empty();
        for (Node.Field line : said.fields()) {
            String key = line.key();
            if (key.equals("kind")) {
                for (Node.Scalar kind : SheetReader.scalars(line.value())) {
                    Optional<leadlamp.words.GaugeKind> known = words.gauge(kind.text());
                    if (known.isPresent()) {
                        kinds.add(known.get().name());
                        state("gauge", gauge, "kind", known.get().name(), Optional.empty(), Map.of(), Optional.empty(), kind.where());
                    } else {
                        complaints.unknown(kind.where(), kind.text(), "\"" + kind.text() + "\" is no kind of gauge.", gaugeNames(),
                                "Kinds: ", "The rest of the gauge was read.");
                    }
                }
                continue;
            }
            Optional<Property> property = words.property("gauges", key);
            if (property.isEmpty() && !key.equals("note")) {
                noProperty(line, "a gauge", List.of("gauges"), "The rest of the gauge was read.");
                continue;
            }
            String text = SheetReader.flat(line.value());
            if (key.equals("note")) {
                asides.put(key, text);
                continue;
            }
            Optional<Written> value = Optional.empty();
            if (Set.of("resolution", "doubt", "range", "repeats", "ratio", "period", "uses").contains(key)) {
                value = anySize(text);
                if (value.isEmpty()) {
                    complaints.add(line.value().where(), text.length(), "\"" + text + "\" is no size of a gauge.",
                            "A figure with its unit, as 0.001 mm" + (key.equals("range") ? ", here from ... to ..." : "") + ".",
                            Optional.empty(), "The rest of the gauge was read.");
                    continue;
                }
                sizes.put(key, value.get());
            } else if (Set.of("checked", "dropped").contains(key) && Dates.read(text).isEmpty()) {
                noDate(text, line.value().where(), "The rest of the gauge was read.");
                continue;
            }
            if (key.equals("set with")) {
                setWith = Optional.of(text);
            }
            asides.put(key, text);
            state("gauge", gauge, key, text, value, Map.of(), Optional.empty(), line.where());
        }
        gathered.gauges.put(gauge, new Gauge(gauge, List.copyOf(kinds), Optional.ofNullable(sizes.get("resolution")),
                Optional.ofNullable(sizes.get("doubt")), Optional.ofNullable(sizes.get("range")),
                Optional.ofNullable(sizes.get("repeats")), setWith, Collections.unmodifiableMap(asides), where));
    }

    void protection(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        Set<String> known = words.property("protection", "names").map(p -> p.values().keySet()).orElse(Set.of());
        for (Node.Field line : fields.fields()) {
            if (line.key().equals("note")) {
                continue;
            }
            if (!known.isEmpty() && !known.contains(line.key())) {
                complaints.unknown(line.where(), line.key(), "\"" + line.key() + "\" is nothing that guards an engine.", known,
                        "It may be: ", "The line was left out.");
                continue;
            }
            if (!(line.value() instanceof Node.Fields said)) {
                state("protection", Place.ENGINE, line.key(), SheetReader.flat(line.value()), Optional.empty(), Map.of(),
                        Optional.empty(), line.value().where());
                continue;
            }
            state("protection", Place.ENGINE, line.key(), "fitted", Optional.empty(), Map.of(), Optional.empty(), line.where());
            for (Node.Field word : said.fields()) {
                if (word.key().equals("note")) {
                    continue;
                }
                Optional<Property> property = words.property("protection", word.key());
                if (property.isEmpty()) {
                    noProperty(word, line.key(), List.of("protection"), "The rest of the line was read.");
                    continue;
                }
                String text = SheetReader.flat(word.value());
                Optional<Written> value = word.value() instanceof Node.Scalar ? anySize(text) : Optional.empty();
                if (!property.get().values().isEmpty()) {
                    Optional<Said> said2 = value(property.get(), new Node.Scalar(text, word.value().where()), "", line.key(), "");
                    if (said2.isEmpty()) {
                        continue;
                    }
                    text = said2.get().says();
                }
                state("protection", Place.ENGINE, line.key() + " " + property.get().name(), text, value, Map.of(), Optional.empty(),
                        word.value().where());
            }
        }
    }

    void photos(Node.Field section) {
        if (!(section.value() instanceof Node.Fields fields)) {
            wantsLines(section);
            return;
        }
        for (Node.Field line : fields.fields()) {
            if (line.value() instanceof Node.Fields said && SheetReader.text(said, "file").isPresent()) {
                for (Node.Field word : said.fields()) {
                    if (!PHOTO.contains(word.key())) {
                        complaints.unknown(word.where(), word.key(), "\"" + word.key() + "\" is nothing that a photograph can have.", PHOTO,
                                "It can have: ", "The rest of the line was read.");
                    }
                }
                gathered.photos.add(new Build.Photo(line.key(), SheetReader.text(said, "file").get(), SheetReader.text(said, "of"),
                        SheetReader.text(said, "at"), SheetReader.text(said, "date"), line.where()));
            } else {
                complaints.add(line.where(), line.key().length(), "The photograph \"" + line.key() + "\" names no file.",
                        "As { file: photos/pin.jpg, of: cam gear pin, at: intake }.", Optional.empty(), "It was left out.");
            }
        }
    }

    void accepted(Node.Fields entry) {
        Map<String, String> said = new HashMap<>();
        for (Node.Field field : entry.fields()) {
            if (!Set.of("check", "at", "reason", "who", "until", "note").contains(field.key())) {
                complaints.unknown(field.where(), field.key(), "\"" + field.key() + "\" is nothing that an accepted finding can have.",
                        List.of("check", "at", "reason", "who", "until", "note"), "It can have: ", "The rest was read.");
            }
            said.put(field.key(), SheetReader.flat(field.value()));
        }
        String until = said.getOrDefault("until", "");
        if (!until.isEmpty() && Dates.read(until).isEmpty()) {
            noDate(until, entry.get("until").orElseThrow().where(), "The entry was left out.");
            return;
        }
        if (!said.containsKey("check") || !said.containsKey("reason") || !said.containsKey("who")) {
            complaints.add(entry.where(), 0, "An accepted finding wants `check`, `reason` and `who`.",
                    "As { check: ..., at: intake, reason: ..., who: the builder, until: 2027-03-01 }.", Optional.empty(),
                    "The entry was left out: nothing is accepted by it.");
            return;
        }
        gathered.accepted.add(new Build.Accepted(said.get("check"), said.getOrDefault("at", Place.ENGINE), said.get("reason"),
                said.get("who"), until, entry.where()));
    }
}

package leadlamp.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.words.Part;
import leadlamp.words.Step;

/** Entries under `steps`: done and when, left out, next or planned. */
final class StepEntries extends EntryReader {
    private static final Set<String> RESULTS = Set.of("passed", "failed", "not proved");

    StepEntries(Gathered gathered) {
        super(gathered);
    }

    void step(Node.Fields entry) {
        Node.Field first = entry.fields().get(0);
        if (first.key().equals("next") || first.key().equals("planned")) {
            for (Node.Scalar item : SheetReader.scalars(first.value())) {
                Optional<Step> step = words.step(item.text());
                if (step.isPresent()) {
                    state("steps", Place.ENGINE, step.get().name(), first.key(), Optional.empty(), Map.of(), Optional.empty(), item.where());
                } else {
                    noStep(item.text(), item.where(), "It was left out.");
                }
            }
            return;
        }
        Subject subject = subject(entry, "done", "date");
        if (subject == null) {
            return;
        }
        Optional<Step> step = words.step(subject.word());
        if (step.isEmpty()) {
            noStep(subject.word(), subject.where(), "The entry was left out.");
            return;
        }
        String date = subject.scalar().text();
        String says = "done";
        if (date.equals("left out") || date.equals("unknown")) {
            says = date;
        } else if (RESULTS.contains(date)) {
            // How it came out, where the day is usually written: no failed test is to be taken as done.
            says = date;
            date = "";
        } else if (date.equals("done") || date.isEmpty() && !(subject.value() instanceof Node.Fields)) {
            date = "";
        } else if (Dates.read(date).isEmpty()) {
            noDate(date, subject.value().where(), "The step was taken as done, its date as not known.");
            date = "";
        }
        Rest rest = rest(entry, subject, "steps", step.get().name(), List.of("steps"));
        Map<String, String> asides = new TreeMap<>(rest.asides());
        if (!date.isEmpty() && says.equals("done")) {
            asides.put("date", date);
        }
        for (Said said : rest.said()) {
            asides.put(said.what(), said.says());
            if (said.what().equals("result") && says.equals("done")) {
                says = said.says();
            }
        }
        List<String> at = new ArrayList<>();
        if (entry.get("at").isPresent()) {
            at.addAll(places.read(entry.get("at"), "engine", step.get().name(), subject.where()));
        } else if (entry.get("of").isPresent()) {
            for (Node.Scalar item : SheetReader.scalars(entry.get("of").get())) {
                at.add(words.part(item.text()).map(Part::name).orElse(item.text()));
            }
        } else {
            at.add(Place.ENGINE);
        }
        for (String place : at) {
            state("steps", place, step.get().name(), says, Optional.empty(), Collections.unmodifiableMap(asides), rest.told(), subject.where());
        }
    }
}

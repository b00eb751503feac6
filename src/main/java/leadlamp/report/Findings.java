package leadlamp.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import leadlamp.record.Place;
import leadlamp.report.ReportModel.Evidence;
import leadlamp.report.ReportModel.Finding;
import leadlamp.report.ReportModel.Item;
import leadlamp.report.draw.Picture;

/** Tells what is found of one check alike at several places once. Twelve valves are not twelve pages. */
final class Findings {
    /** More sentences than this, and one more, are not read. */
    private static final int MOST_TEXTS = 4;

    private Findings() {
    }

    /** Neighbours in the ranking that differ in their places and figures alone are one. */
    static List<Finding> of(String list, List<Item> items) {
        List<Finding> findings = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= items.size(); i++) {
            if (i == items.size() || !alike(items.get(from), items.get(i))) {
                findings.add(finding(list, findings.size() + 1, items.subList(from, i)));
                from = i;
            }
        }
        return List.copyOf(findings);
    }

    private static boolean alike(Item one, Item other) {
        return one.check().equals(other.check()) && one.risk().equals(other.risk())
                && one.certainty().equals(other.certainty()) && one.ways().equals(other.ways())
                && one.weighing().equals(other.weighing()) && one.byWhen().equals(other.byWhen())
                && one.accepted().isPresent() == other.accepted().isPresent()
                && (one.accepted().isEmpty()
                        || one.accepted().get().where().compareTo(other.accepted().get().where()) == 0);
    }

    private static Finding finding(String list, int number, List<Item> items) {
        List<String> places = new ArrayList<>();
        for (Item item : items) {
            places.add(item.place());
        }
        String said = Wording.together(places);
        return new Finding(list + "-" + number, number, said.isEmpty() ? items.get(0).place() : said,
                texts(items), evidence(items), once(items, Item::sums),
                once(items, Item::measures),
                Wording.gaps(because(items)), new Later<>(() -> pictures(items)),
                List.copyOf(items));
    }

    /** Sentences that differ in their place alone are one; of many that differ in their figures as well the worst few. */
    private static List<String> texts(List<Item> items) {
        Map<String, Set<String>> alike = new LinkedHashMap<>();
        for (Item item : ordered(items)) {
            String sentence = item.text();
            String bare = item.at().equals(Place.ENGINE) || item.at().isEmpty() ? sentence : sentence.replace(item.at(), "");
            alike.computeIfAbsent(bare, b -> new LinkedHashSet<>()).add(sentence);
        }
        List<String> told = new ArrayList<>();
        for (Set<String> same : alike.values()) {
            if (told.size() < MOST_TEXTS || alike.size() == MOST_TEXTS + 1) {
                told.add(same.iterator().next() + (same.size() == 1 ? ""
                        : " The same at " + Report.count(same.size() - 1, "more place", "more places") + "."));
            }
        }
        if (told.size() < alike.size()) {
            told.add("And so at " + (alike.size() - told.size()) + " more places, with their own figures.");
        }
        return List.copyOf(told);
    }

    /** As they stand; where more sentences are than are read, what is farthest outside its limit first. */
    private static List<Item> ordered(List<Item> items) {
        if (items.size() <= MOST_TEXTS + 1) {
            return items;
        }
        List<Item> ordered = new ArrayList<>(items);
        ordered.sort((one, other) -> Float.compare(one.room(), other.room()));
        return ordered;
    }

    private static List<String> once(List<Item> items, Function<Item, Collection<String>> texts) {
        Set<String> once = new LinkedHashSet<>();
        for (Item item : items) {
            once.addAll(texts.apply(item));
        }
        return List.copyOf(once);
    }

    static List<ReportModel.Because> because(List<Item> items) {
        List<ReportModel.Because> because = new ArrayList<>();
        for (Item item : items) {
            because.addAll(item.because());
        }
        return because;
    }

    private static List<Evidence> evidence(List<Item> items) {
        if (items.size() == 1) {
            return items.get(0).evidence();
        }
        Map<String, Evidence> once = new LinkedHashMap<>();
        for (Item item : items) {
            for (Evidence line : item.evidence()) {
                once.putIfAbsent(line.where().file() + ':' + line.where().line() + ' ' + line.says(), line);
            }
        }
        return List.copyOf(once.values());
    }

    private static List<Picture> pictures(List<Item> items) {
        Map<String, Picture> once = new TreeMap<>();
        List<Picture> pictures = new ArrayList<>();
        for (Item item : items) {
            for (Picture picture : item.pictures()) {
                if (once.putIfAbsent(picture.title() + picture.text(), picture) == null) {
                    pictures.add(picture);
                }
            }
        }
        return List.copyOf(pictures);
    }
}

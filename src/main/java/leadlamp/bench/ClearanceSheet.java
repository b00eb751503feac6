package leadlamp.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.audit.Audit;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.LimitLine;
import leadlamp.record.Place;
import leadlamp.report.Amounts;
import leadlamp.report.Page;
import leadlamp.report.Wording;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** The readings to take, each with its limit: those that are taken filled in, and room for the pencil beside the others. */
final class ClearanceSheet {
    /** Of more spots than this of one place the least and the greatest are told. */
    private static final int MOST_SPOTS = 2;

    private final Audit audit;
    private final Build build;
    private final Vocabulary words;

    ClearanceSheet(Audit audit, Vocabulary words) {
        this.audit = audit;
        this.build = audit.build();
        this.words = words;
    }

    void write(Page page) {
        Map<String, List<LimitLine>> byQuantity = new LinkedHashMap<>();
        for (LimitLine limit : build.sheet().limits()) {
            byQuantity.computeIfAbsent(limit.quantity(), q -> new ArrayList<>()).add(limit);
        }
        page.raw("<div class=\"cards\">\n");
        for (Map.Entry<String, List<LimitLine>> one : byQuantity.entrySet()) {
            quantity(page, one.getKey(), one.getValue());
        }
        page.raw("</div>\n");
        if (byQuantity.isEmpty()) {
            page.raw("<p>The engine sheet has no limits. Copy them from the manual before you measure.</p>\n");
        }
    }

    private void quantity(Page page, String name, List<LimitLine> limits) {
        Optional<Quantity> quantity = words.quantity(name);
        page.raw("<section class=\"card\">\n").element("<h2>", name, "</h2>");
        quantity.ifPresent(q -> page.element("<p class=\"soft\">", q.gloss() + q.gauge().map(g -> "; usual gauge: " + g).orElse(""), "</p>"));
        for (LimitLine limit : limits) {
            page.element("<p>", "Limit: " + said(limit), "</p>");
        }
        boolean workedOut = quantity.filter(q -> q.derived() && q.gauge().isEmpty()).isPresent();
        if (workedOut) {
            page.element("<p>", "Nothing to read here: it is worked out from " + String.join(", ", quantity.get().from()) + ".", "</p>");
        }
        readings(page, name, quantity, workedOut);
        page.raw("</section>\n");
    }

    private static String said(LimitLine limit) {
        List<String> parts = new ArrayList<>();
        limit.standard().map(Written::text).ifPresent(t -> parts.add("standard " + t));
        limit.least().map(Written::text).ifPresent(t -> parts.add("least " + t));
        limit.most().map(Written::text).ifPresent(t -> parts.add("most " + t));
        if (!limit.times().isEmpty()) {
            parts.add("times " + limit.times());
        }
        if (!limit.at().isEmpty()) {
            parts.add("at " + limit.at());
        }
        if (!limit.when().isEmpty()) {
            parts.add("when " + limit.when());
        }
        limit.where().forEach((word, says) -> parts.add("where " + word + " is " + says));
        limit.asides().forEach((word, says) -> parts.add(word + " " + says));
        return String.join(", ", parts);
    }

    private void readings(Page page, String of, Optional<Quantity> quantity, boolean workedOut) {
        List<String> places = quantity.flatMap(q -> build.sheet().layout().places(q.group())).filter(p -> !p.isEmpty())
                .orElse(List.of(Place.ENGINE));
        List<String[]> rows = new ArrayList<>();
        for (String place : places) {
            String read = read(of, place);
            if (!workedOut || !read.isEmpty()) {
                rows.add(new String[] {place.equals(Place.ENGINE) ? "engine" : Wording.place("", place), read});
            }
        }
        if (rows.isEmpty()) {
            return;
        }
        page.raw("<table>\n<thead><tr><th scope=\"col\">Where</th><th scope=\"col\">In the record</th>"
                + (workedOut ? "" : "<th scope=\"col\">At the bench</th>") + "</tr></thead>\n<tbody>\n");
        for (String[] row : rows) {
            page.raw("<tr><th scope=\"row\">").text(row[0]).raw("</th><td>").text(row[1]).raw("</td>")
                    .raw(workedOut ? "" : "<td class=\"write\"></td>").raw("</tr>\n");
        }
        page.raw("</tbody>\n</table>\n");
    }

    /** What was read there, and how it stands against its limit. */
    private String read(String of, String place) {
        List<String> read = new ArrayList<>();
        List<Value> spots = new ArrayList<>();
        for (Value value : audit.values()) {
            if (value.of().equals(of) && Place.covers(place, value.at())) {
                spots.add(value);
                String longer = value.at().equals(place) || place.equals(Place.ENGINE) ? "" : value.at() + ": ";
                read.add(longer + Amounts.of(value));
            }
        }
        if (spots.size() > MOST_SPOTS && spots.stream().allMatch(Value::plain)) {
            spots.sort((one, other) -> Double.compare(one.low().orElseThrow().value(), other.low().orElseThrow().value()));
            read = List.of("from " + Amounts.of(spots.get(0)) + " to " + Amounts.of(spots.get(spots.size() - 1)) + " at " + spots.size()
                    + " spots");
        }
        for (Verdict verdict : audit.verdicts()) {
            if (verdict.of().equals(of) && verdict.at().equals(place) && !read.isEmpty()) {
                return String.join("; ", read) + ", " + Wording.standing(verdict);
            }
        }
        return String.join("; ", read);
    }
}

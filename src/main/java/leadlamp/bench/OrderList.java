package leadlamp.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.audit.Audit;
import leadlamp.facts.Fact;
import leadlamp.facts.Stated;
import leadlamp.facts.Value;
import leadlamp.record.Build;
import leadlamp.record.Node;
import leadlamp.report.Amounts;
import leadlamp.report.Page;
import leadlamp.report.ReportModel;
import leadlamp.report.Wording;

/** What to order: what is missing, what is renewed with its companions, and the sizes that the readings ask for. */
final class OrderList {
    /** How the names of worked-out sizes end that say what to buy. */
    private static final List<String> SIZES = List.of(" thickness needed", " thinnest", " thickest", " for ratio");

    private final Audit audit;
    private final Build build;
    private final ReportModel report;
    /** Part to place to its state, in the record's order. */
    private final Map<String, Map<String, String>> states = new TreeMap<>();
    private final Map<String, String> ages = new TreeMap<>();

    OrderList(Audit audit, ReportModel report) {
        this.audit = audit;
        this.build = audit.build();
        this.report = report;
        for (Fact fact : audit.facts()) {
            if (fact instanceof Stated stated && stated.what().equals("state")) {
                states.computeIfAbsent(stated.of(), p -> new LinkedHashMap<>()).put(stated.at(), stated.says());
            } else if (fact instanceof Stated stated && stated.what().equals("age")) {
                ages.put(stated.of() + '\n' + stated.at(), stated.says());
            }
        }
    }

    void write(Page page) {
        list(page, "Missing", missing(), "The record names no part that is missing.");
        list(page, "Sizes and classes to ask for", sizes(),
                "Nothing can be worked out: the sheet has no table, or a reading is missing. Measure first, then order.");
        report.gasket().forEach(page::picture);
        list(page, "Changed together", companions(), "The sheet names no parts that share a belt.");
        list(page, "Renewed at every build, by the sheet", renewed(), "The sheet names none.");
        list(page, "What the findings ask for", findings(), "Nothing was found.");
    }

    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        states.forEach((part, places) -> places.forEach((at, state) -> {
            if (state.equals("missing")) {
                missing.add(Wording.subject(part, at));
            }
        }));
        return missing;
    }

    private List<String> sizes() {
        List<String> sizes = new ArrayList<>();
        for (Fact fact : audit.facts()) {
            if (fact instanceof Stated stated && stated.what().equals("class wanted")) {
                sizes.add(Wording.subject(stated.of(), stated.at()) + ": " + stated.says() + thickness(stated));
            }
        }
        for (Value value : audit.values()) {
            if (value.derived() && SIZES.stream().anyMatch(value.of()::endsWith)) {
                sizes.add(Wording.subject(value.of(), value.at()) + ": " + Amounts.of(value) + " (" + value.sum() + ")");
            }
        }
        return sizes;
    }

    /** The thickness that goes with the class, where the sheet gives it. */
    private String thickness(Stated wanted) {
        for (String joint : build.sheet().names("joints")) {
            Optional<Node> thickness = build.sheet().below("joints", joint, "gasket", "thickness");
            boolean ofIt = build.sheet().below("joints", joint, "gasket", "part")
                    .filter(part -> part instanceof Node.Scalar word && word.text().equals(wanted.of())).isPresent();
            if (ofIt && thickness.isPresent() && thickness.get() instanceof Node.Fields classes
                    && classes.get(wanted.says()).filter(Node.Scalar.class::isInstance).isPresent()) {
                return ", " + ((Node.Scalar) classes.get(wanted.says()).get()).text();
            }
        }
        return "";
    }

    /** Each drive's belt and what shares it: new over old is a job done twice. */
    private List<String> companions() {
        List<String> companions = new ArrayList<>();
        for (String drive : build.sheet().names("drive")) {
            List<String> shared = items("drive", drive, "shares the belt");
            if (!shared.isEmpty()) {
                shared.add(0, drive);
            }
            for (String companion : shared) {
                companions.add(companion + ": " + state(companion));
            }
        }
        return companions;
    }

    private List<String> renewed() {
        List<String> renew = new ArrayList<>();
        for (String part : items("renew always", "parts")) {
            renew.add(part + ": " + state(part));
        }
        for (String joint : items("renew always", "bolts of")) {
            String each = build.sheet().word("joint", joint, "each").map(e -> ", for each " + e).orElse("");
            renew.add("bolts of " + joint + build.sheet().below("joints", joint, "bolts").filter(Node.Scalar.class::isInstance)
                    .map(n -> ": " + ((Node.Scalar) n).text()).orElse("") + build.sheet().below("joints", joint, "thread")
                    .filter(Node.Scalar.class::isInstance).map(n -> " of " + ((Node.Scalar) n).text()).orElse("") + each);
        }
        return renew;
    }

    /** What the record says of it; a part with its place is one word, as `belt idler low`. */
    private String state(String part) {
        Map<String, String> places = states.getOrDefault(part, Map.of());
        String age = ages.getOrDefault(part + "\nengine", "");
        if (places.isEmpty()) {
            for (Map.Entry<String, Map<String, String>> one : states.entrySet()) {
                for (Map.Entry<String, String> place : one.getValue().entrySet()) {
                    if (place.getKey().equals(part) || (one.getKey() + " " + place.getKey()).equals(part)) {
                        places = Map.of(place.getKey(), place.getValue());
                        age = ages.getOrDefault(one.getKey() + '\n' + place.getKey(), "");
                    }
                }
            }
        }
        if (places.isEmpty()) {
            return "not in the record; order it, or write down what is there";
        }
        boolean fresh = places.values().stream().allMatch(state -> state.equals("new") || state.equals("ready"));
        String says = String.join(", ", new java.util.TreeSet<>(places.values()));
        return fresh ? "there, " + says : "recorded as " + says + (age.isEmpty() ? "" : ", " + age + " old") + "; order it";
    }

    private List<String> findings() {
        List<String> findings = new ArrayList<>();
        for (ReportModel.Finding finding : report.findings()) {
            findings.add(finding.lead().todo() + " (" + finding.lead().check() + ", " + finding.places() + ")");
        }
        return findings;
    }

    private List<String> items(String... keys) {
        List<String> items = new ArrayList<>();
        build.sheet().below(keys).filter(Node.Items.class::isInstance).map(Node.Items.class::cast)
                .ifPresent(list -> list.items().forEach(item -> {
                    if (item instanceof Node.Scalar word) {
                        items.add(word.text());
                    }
                }));
        return items;
    }

    private static void list(Page page, String title, List<String> texts, String none) {
        page.raw("<h2>").text(title).raw("</h2>\n");
        if (texts.isEmpty()) {
            page.element("<p>", none, "</p>");
            return;
        }
        page.raw("<table>\n<thead><tr><th scope=\"col\" class=\"tick\">Done</th><th scope=\"col\">What</th></tr></thead>\n<tbody>\n");
        for (String text : texts) {
            page.raw("<tr><td class=\"tick\"></td><td>").text(text).raw("</td></tr>\n");
        }
        page.raw("</tbody>\n</table>\n");
    }
}

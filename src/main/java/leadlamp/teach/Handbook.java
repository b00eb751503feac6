package leadlamp.teach;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlamp.audit.Check;
import leadlamp.audit.Way;
import leadlamp.report.Page;
import leadlamp.report.Topics;
import leadlamp.words.Vocabulary;

/**
 * The whole trade knowledge as pages to browse and to print: an index that can be searched, a page a topic with its
 * lessons, the looks at a second-hand engine, and the words. All of it is made from the rules that an audit runs.
 */
public final class Handbook {
    private static final String KIND = "Leadlamp: handbook";
    static final String FIRST = "The maker's manual, the rules of the place and licensed practice come before"
            + " anything said here. Engines, builds and figures of the examples are invented.";
    private static final String MADE = "the rules, their cases and the vocabulary of this Leadlamp";
    /** Shows the entries that hold every word typed; without it the whole index stands there. */
    private static final String SEARCH = """

            (function () {
              var box = document.getElementById('find');
              var told = document.getElementById('told');
              var entries = Array.prototype.slice.call(document.querySelectorAll('[data-find]'));
              var parts = Array.prototype.slice.call(document.querySelectorAll('section[data-part]'));
              document.getElementById('search').hidden = false;
              function show() {
                var words = box.value.toLowerCase().split(/\\s+/).filter(Boolean);
                var left = 0;
                entries.forEach(function (entry) {
                  var text = entry.getAttribute('data-find');
                  var fits = words.every(function (word) { return text.indexOf(word) >= 0; });
                  entry.hidden = !fits;
                  left += fits ? 1 : 0;
                });
                parts.forEach(function (part) {
                  part.hidden = !part.querySelector('[data-find]:not([hidden])');
                });
                told.textContent = words.length ? left + ' of ' + entries.length + ' lessons' : entries.length + ' lessons';
              }
              box.addEventListener('input', show);
              show();
            })();
            """;

    private final List<Lesson> lessons;
    private final Vocabulary words;
    private final Map<String, List<Lesson>> byTopic = new TreeMap<>();

    private Handbook(List<Lesson> lessons, Vocabulary words) {
        this.lessons = lessons;
        this.words = words;
        for (Lesson lesson : lessons) {
            byTopic.computeIfAbsent(lesson.check().topic(), t -> new ArrayList<>()).add(lesson);
        }
    }

    /** The lessons of all checks, by id. */
    public static List<Lesson> lessons(Examples examples) {
        examples.book().cases().stream().map(c -> c.build()).distinct().forEach(examples::base);
        return examples.auditor().checks().parallelStream().map(check -> Lesson.of(check, examples)).toList();
    }

    /** The pages, by the name of their file. */
    public static Map<String, String> pages(List<Lesson> lessons, List<Look> looks, Vocabulary words) {
        Handbook book = new Handbook(lessons, words);
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("index.html", book.index());
        book.byTopic.forEach((topic, own) -> pages.put(topic + ".html", book.topic(topic, own)));
        pages.put("looks.html", LookPage.plan(looks, words, MADE));
        pages.put("words.html", book.words());
        return pages;
    }

    // --- the index

    private String index() {
        Page page = new Page();
        page.begin("Handbook", KIND, "What wrecks an engine, and how to see it in time", SEARCH);
        page.element("<p class=\"facts\">", FIRST, "</p>");
        page.raw("</header>\n<main id=\"main\">\n<p id=\"search\" hidden><label for=\"find\">Search the lessons</label> "
                + "<input id=\"find\" type=\"search\" autocomplete=\"off\"> <span id=\"told\" role=\"status\"></span></p>\n");
        page.raw("<nav aria-label=\"Pages\">\n<ul>\n");
        byTopic.forEach((topic, own) -> page.raw("<li><a href=\"" + topic + ".html\">").text(Topics.said(topic))
                .raw("</a>: " + own.size() + (own.size() == 1 ? " lesson" : " lessons") + "</li>\n"));
        page.raw("<li><a href=\"looks.html\">Looks at an engine with an unknown past</a></li>\n");
        page.raw("<li><a href=\"words.html\">Words of a record</a></li>\n</ul>\n</nav>\n");
        byTopic.forEach((topic, own) -> {
            page.raw("<section data-part aria-labelledby=\"of-" + topic + "\">\n<h2 id=\"of-" + topic + "\">")
                    .text(Topics.said(topic)).raw("</h2>\n<ul>\n");
            for (Lesson lesson : own) {
                page.raw("<li data-find=\"").text(find(lesson)).raw("\"><a href=\"" + topic + ".html#" + lesson.check().id()
                        + "\">").text(lesson.check().question()).raw("</a> ").element("<span class=\"soft\">",
                        lesson.check().id() + (lesson.check().person() ? "; can hurt somebody" : ""), "</span>").raw("</li>\n");
            }
            page.raw("</ul>\n</section>\n");
        });
        return page.end(MADE, "").toString().replace("</footer>\n", "</footer>\n<script>" + SEARCH + "</script>\n");
    }

    private static String find(Lesson lesson) {
        Check check = lesson.check();
        List<String> texts = new ArrayList<>(List.of(check.id().replace('-', ' '), check.id(), check.question(), check.topic(),
                check.todo(), check.teaches(), check.settleWith()));
        texts.addAll(check.chain());
        lesson.wants().forEach(want -> texts.add(want.word()));
        return String.join(" ", texts).toLowerCase(Locale.ROOT);
    }

    // --- a topic

    private String topic(String topic, List<Lesson> own) {
        Page page = new Page();
        page.begin(Topics.said(topic) + ": handbook", KIND, Topics.said(topic));
        page.element("<p class=\"facts\">", FIRST, "</p>");
        page.raw("<p><a href=\"index.html\">All topics</a></p>\n</header>\n<main id=\"main\" class=\"sheet\">\n");
        page.raw("<nav aria-label=\"Lessons of this topic\">\n<ul>\n");
        own.forEach(lesson -> page.raw("<li><a href=\"#" + lesson.check().id() + "\">").text(lesson.check().question())
                .raw("</a></li>\n"));
        page.raw("</ul>\n</nav>\n");
        own.forEach(lesson -> write(lesson, page));
        return page.end(MADE, "").toString();
    }

    /** A lesson as an article of a page. */
    static void write(Lesson lesson, Page page) {
        Check check = lesson.check();
        page.raw("<article aria-labelledby=\"" + check.id() + "\">\n<h2 id=\"" + check.id() + "\">").text(check.question())
                .raw("</h2>\n<p><span class=\"level " + lesson.level().word().toLowerCase(Locale.ROOT) + "\">"
                        + lesson.level().word() + "</span> ")
                .raw(check.person() ? "<span class=\"person\">can hurt somebody</span> " : "").raw("<span class=\"soft\">")
                .text(check.id() + "; asked of " + check.askedOf()).raw("</span></p>\n");
        page.element("<p class=\"standing\">", check.teaches(), "</p>");
        page.raw("<h3>How it wrecks an engine</h3>\n<ol>\n");
        check.chain().forEach(link -> page.element("<li>", link, "</li>"));
        page.raw("</ol>\n").element("<p>", lesson.weight(), "</p>");
        page.raw("<h3>How to settle it</h3>\n").element("<p>", check.settleWith(), "</p>");
        wants(lesson, page);
        shown(lesson.wrong().size() > 1 ? "Wrong, on the numbers of examples" : "Wrong, on the numbers of an example",
                lesson.wrong(), page);
        shown("Near misses: these are sound", lesson.near(), page);
        shown("Not enough to tell", lesson.open(), page);
        page.raw("<h3>What to do</h3>\n").element("<p>", check.todo(), "</p>");
        if (!check.alsoCheck().isEmpty()) {
            page.raw("<p>Also look at:</p>\n<ul>\n");
            check.alsoCheck().forEach(also -> page.element("<li>", also, "</li>"));
            page.raw("</ul>\n");
        }
        if (!check.caution().isEmpty()) {
            page.raw("<h3>Caution</h3>\n").element("<p>", check.caution(), "</p>");
        }
        page.raw("<h3>Based on</h3>\n").element("<p>", lesson.basis(), "</p>").raw("</article>\n");
    }

    private static void wants(Lesson lesson, Page page) {
        if (lesson.wants().isEmpty()) {
            return;
        }
        page.raw("<div class=\"wide\"><table>\n<thead><tr><th scope=\"col\">What is wanted</th><th scope=\"col\">How</th>"
                + "<th scope=\"col\">Gauge</th></tr></thead>\n<tbody>\n");
        for (Measuring.Want want : lesson.wants()) {
            page.raw("<tr><th scope=\"row\">").text(want.word()).raw("</th><td>").text(LessonText.upper(want.how()))
                    .raw("</td><td>").text(want.gauge()).raw("</td></tr>\n");
        }
        page.raw("</tbody>\n</table></div>\n");
    }

    private static void shown(String title, List<Lesson.Shown> all, Page page) {
        if (all.isEmpty()) {
            return;
        }
        page.element("<h3>", title, "</h3>");
        for (Lesson.Shown one : all) {
            page.element("<h4>", LessonText.upper(one.name()), "</h4>").raw("<dl>\n");
            lines("In the sound build", one.before(), page);
            lines("Here", one.says(), page);
            lines("The sheet says", one.sheet(), page);
            texts("Not recorded", one.erased(), page);
            texts("What comes of it", one.answer(), page);
            lines("The sum", one.sums(), page);
            texts("Reading and limit", one.against(), page);
            page.raw("</dl>\n");
        }
    }

    private static void lines(String label, List<String> lines, Page page) {
        if (!lines.isEmpty()) {
            page.raw("<dt>" + label + "</dt>\n<dd><pre>").text(lines.get(0));
            lines.subList(1, lines.size()).forEach(line -> page.raw("\n").text(line));
            page.raw("</pre></dd>\n");
        }
    }

    private static void texts(String label, List<String> texts, Page page) {
        if (!texts.isEmpty()) {
            page.raw("<dt>" + label + "</dt>\n");
            texts.forEach(text -> page.element("<dd>", text, "</dd>"));
        }
    }

    // --- the words

    private String words() {
        Page page = new Page();
        page.begin("Words: handbook", KIND, "Words of a record");
        page.element("<p class=\"facts\">", "The same words stand in the record, the rules and the report.", "</p>");
        page.raw("<p><a href=\"index.html\">All topics</a></p>\n</header>\n<main id=\"main\" class=\"sheet\">\n");
        Map<String, TreeSet<String>> asked = asked();
        Measuring measuring = new Measuring(words);
        List<Entry> parts = new ArrayList<>();
        words.parts().forEach(p -> parts.add(new Entry(p.name(), p.gloss(), "")));
        List<Entry> readings = new ArrayList<>();
        words.quantities().forEach(q -> readings.add(new Entry(q.name(), q.gloss() + (q.from().isEmpty() ? ""
                : "; worked out from " + String.join(", ", q.from())), q.gauge().map(measuring::gauge).orElse(""))));
        List<Entry> signs = new ArrayList<>();
        words.signs().forEach(s -> signs.add(new Entry(s.name(), s.gloss(), "")));
        List<Entry> steps = new ArrayList<>();
        words.steps().forEach(s -> steps.add(new Entry(s.name(), s.gloss(), "")));
        List<Entry> gauges = new ArrayList<>();
        words.gauges().forEach(g -> gauges.add(new Entry(g.name(), g.gloss(), "usual doubt " + g.doubt() + ", " + g.basis())));
        part(page, "Parts", parts, asked);
        part(page, "Readings", readings, asked);
        part(page, "Signs", signs, asked);
        part(page, "Steps", steps, asked);
        part(page, "Gauges", gauges, asked);
        return page.end(MADE, "").toString();
    }

    private record Entry(String word, String gloss, String more) {
    }

    /** Word of a need, a blank before and behind it, to the checks that ask about it. */
    private Map<String, TreeSet<String>> asked() {
        Map<String, TreeSet<String>> asked = new TreeMap<>();
        for (Lesson lesson : lessons) {
            for (Way way : lesson.check().ways()) {
                List<String> needs = new ArrayList<>(way.needs());
                needs.addAll(way.heeds());
                for (String need : needs) {
                    asked.computeIfAbsent(" " + need + " ", n -> new TreeSet<>()).add(lesson.check().id());
                }
            }
        }
        return asked;
    }

    private void part(Page page, String title, Collection<Entry> entries, Map<String, TreeSet<String>> asked) {
        Map<String, Entry> sorted = new TreeMap<>();
        entries.forEach(entry -> sorted.put(entry.word(), entry));
        Map<String, Lesson> byId = new TreeMap<>();
        lessons.forEach(lesson -> byId.put(lesson.check().id(), lesson));
        page.raw("<section aria-labelledby=\"words-" + title.toLowerCase(Locale.ROOT) + "\">\n<h2 id=\"words-"
                + title.toLowerCase(Locale.ROOT) + "\">" + title + "</h2>\n<dl>\n");
        for (Entry entry : sorted.values()) {
            page.element("<dt>", entry.word(), "</dt>");
            page.raw("<dd>").text(LessonText.upper(entry.gloss())).text(entry.more().isEmpty() ? "" : "; " + entry.more());
            TreeSet<String> checks = new TreeSet<>();
            String word = " " + entry.word() + " ";
            asked.forEach((need, own) -> {
                if (need.contains(word)) {
                    checks.addAll(own);
                }
            });
            String before = ". Asked about by ";
            for (String id : checks) {
                page.raw(before).raw("<a href=\"" + byId.get(id).check().topic() + ".html#" + id + "\">").text(id).raw("</a>");
                before = ", ";
            }
            page.raw("</dd>\n");
        }
        page.raw("</dl>\n</section>\n");
    }

    /** Whether a need speaks of a word: the whole word stands in it. */
    public static boolean speaks(String need, String word) {
        return (" " + need + " ").contains(" " + word + " ");
    }
}

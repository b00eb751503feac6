package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import leadlamp.audit.Audit;
import leadlamp.audit.Past;
import leadlamp.bench.BenchSheets;
import leadlamp.past.Teller;
import leadlamp.report.HtmlWriter;
import leadlamp.report.Photographs;
import leadlamp.report.ReportModel;
import leadlamp.report.StoryPage;
import leadlamp.teach.LookPage;
import leadlamp.teach.SomeLessons;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every page of every sample, of the past, of the looks and of the handbook, opened as its reader opens it: on a phone, at the
 * desk, on paper, by keyboard, in the dark. A page is opened once; each test reads what was seen of one matter.
 */
class PagesInABrowserTest {
    private static final int PHONE = 360;
    /** A4 less its margins of 15 mm, at 96 pixels an inch. */
    private static final int PAPER = 680;
    private static final int TAB = 9;
    private static final int ENTER = 13;
    /** What the page is wider than the window by, what of it sticks out, and what of a drawing is cut off. */
    private static final String LOOK = """
            window.wide = () => {
              const w = document.documentElement.clientWidth;
              if (document.documentElement.scrollWidth <= w) return [];
              return ['page ' + document.documentElement.scrollWidth, ...[...document.querySelectorAll('body *')]
                .filter(e => e.getBoundingClientRect().right > w + 1)
                .map(e => e.tagName + ': ' + e.textContent.slice(0, 60)).slice(0, 8)];
            };
            window.cut = () => [...document.querySelectorAll('svg')].flatMap(svg => {
              const box = svg.viewBox.baseVal;
              return [...svg.querySelectorAll('text')].filter(t => {
                const b = t.getBBox();
                return b.width > 0 && (b.x < box.x - 1 || b.x + b.width > box.x + box.width + 1
                  || b.y < box.y - 1 || b.y + b.height > box.y + box.height + 1);
              }).map(t => 'cut off in a drawing: ' + t.textContent);
            }).slice(0, 4);
            window.hidden = () => [...document.querySelectorAll('.wide')].filter(e => e.scrollWidth > e.clientWidth + 1)
              .map(e => 'what scrolls is cut off: ' + e.textContent.slice(0, 60));
            window.lost = () => [...document.querySelectorAll('.first a')].map(a => a.getAttribute('href'))
              .filter(to => { const e = document.querySelector(to); return !e || !e.open; }).map(to => 'leads nowhere: ' + to);
            window.openAll = () => document.querySelectorAll('details').forEach(d => d.open = true);
            window.wanted = () => [...document.querySelectorAll('a, summary, input')].filter(e => e.checkVisibility());
            window.listen = () => {
              window.reached = new Set();
              document.addEventListener('focusin', e => window.reached.add(e.target));
              return window.wanted().length + document.querySelectorAll('.wide').length;
            };
            window.unreached = () => window.wanted().filter(e => !window.reached.has(e))
              .map(e => 'not reached by keyboard: ' + e.tagName + ' ' + e.textContent.slice(0, 60));
            """;
    /** Rows of a list or table, entries and lessons come from one loop: what a few of them lack, all lack. */
    private static final String A_FEW = """
            for (const parent of document.querySelectorAll('main, main *')) {
              const seen = {};
              for (const child of [...parent.children]) {
                seen[child.tagName] = (seen[child.tagName] || 0) + 1;
                if (seen[child.tagName] > 6) child.remove();
              }
            }
            """;
    /** Of so many pages of a kind, the fullest, the colours are looked at too; that takes most of the time. */
    private static final int COLOURED = 1;
    /** Of so many pages of a kind, the fullest, all the rest that keeps a reader out is looked for. */
    private static final int LOOKED_AT = 2;

    @TempDir
    private static Path folder;
    private static Browser browser;

    private static final List<String> COMPLAINTS = new ArrayList<>();
    private static final List<String> TOO_WIDE = new ArrayList<>();
    private static final List<String> UNREACHED = new ArrayList<>();
    private static final List<String> LOST = new ArrayList<>();
    private static final List<String> KEPT_OUT = new ArrayList<>();
    private static final Set<String> KINDS = new LinkedHashSet<>();
    private static int opened;

    @BeforeAll
    static void open_every_page() throws IOException {
        // Where all is proved it must be there; a builder's own machine may lack it.
        assumeTrue(Browser.there() || "wanted".equals(System.getenv("LEADLAMP_BROWSER")), "no Chromium on this machine");
        write();
        browser = Browser.start();
        String axe = Browser.axe();
        Set<Path> coloured = fullest(COLOURED);
        Set<Path> lookedAt = fullest(LOOKED_AT);
        for (Path page : html(folder)) {
            open(page);
            if (lookedAt.contains(page)) {
                lookClosely(page, axe, coloured.contains(page));
            }
        }
    }

    /** Each record is audited once; the pages are those of the commands. */
    private static void write() throws IOException {
        Desk desk = new Desk();
        Past past = Past.compiled();
        List<Path> records = new ArrayList<>(AuditCommandTest.samples());
        records.add(hostile());
        records.parallelStream().forEach(record -> write(desk, past, record));
        for (Path sheet : files(Path.of("sample-builds/engines"), ".yaml")) {
            keep("look/engine-" + name(sheet), LookPage.of(desk.inspection(desk.sheet(sheet))));
        }
        SomeLessons.PAGES.forEach((name, page) -> keep("handbook/" + name, page));
        // A report held against an earlier answer.
        command("audit", "sample-builds/full-sound-tarn-12.yaml", "--as", "json", "--out", at("old.json"));
        command("audit", "sample-builds/hill-climb-three.yaml", "--as", "html", "--since", at("old.json"), "--out", at("report/since.html"));
    }

    private static void write(Desk desk, Past past, Path record) {
        Desk.Done done = desk.audit(record);
        Audit audit = done.audit().orElseThrow();
        ReportModel report = done.report().orElseThrow().photos(Photographs.of(audit.build(), record));
        keep("report/" + name(record), HtmlWriter.page(report));
        keep("look/" + name(record), LookPage.of(desk.inspection(done)));
        keep("past/" + name(record), StoryPage.of(Teller.story(audit, past), audit.build()));
        BenchSheets.of(audit, report, desk.words()).forEach((name, page) -> keep("sheets/" + name(record).replace(".html", "/") + name, page));
    }

    private static String name(Path record) {
        return record.getFileName().toString().replace(".yaml", ".html");
    }

    private static void keep(String name, String page) {
        try {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.writeString(folder.resolve(name), page);
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    private static void open(Path page) throws IOException {
        opened++;
        KINDS.add(kind(page));
        browser.look(PHONE, 740, "light", "screen");
        browser.open(page);
        browser.eval(LOOK);
        told(TOO_WIDE, page, "on a phone", browser.eval("[...wide(), ...cut()]"));
        told(LOST, page, "first things", browser.eval("lost()"));
        told(TOO_WIDE, page, "on a phone, all open", browser.eval("openAll(), [...wide(), ...cut()]"));
        browser.press("Tab", TAB, "", browser.eval("listen()").asInt());
        told(UNREACHED, page, "all open", browser.eval("unreached()"));
        browser.look(PAPER, 1000, "light", "print");
        told(TOO_WIDE, page, "on paper", browser.eval("[...wide(), ...hidden()]"));
        browser.complaints().forEach(complaint -> COMPLAINTS.add(folder.relativize(page) + ": " + complaint));
    }

    private static void lookClosely(Path page, String axe, boolean coloured) throws IOException {
        browser.look(PHONE, 740, "light", "screen");
        browser.eval(A_FEW);
        browser.eval(axe);
        told(KEPT_OUT, page, "by day", browser.eval(violations(coloured ? "" : "rules: { 'color-contrast': { enabled: false } },")));
        if (coloured) {
            browser.look(PHONE, 740, "dark", "screen");
            told(KEPT_OUT, page, "in the dark", browser.eval(violations("runOnly: ['color-contrast', 'link-in-text-block'],")));
        }
    }

    private static String violations(String options) {
        return "axe.run(document, { " + options + " resultTypes: ['violations'], preload: false }).then(r => r.violations.map(v => v.id"
                + " + ': ' + v.nodes.length + ', as ' + v.nodes[0].html.slice(0, 200) + ' ' + v.nodes[0].failureSummary))";
    }

    @AfterAll
    static void stop() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void every_kind_of_page_was_opened() throws IOException {
        assertThat(KINDS).contains("report", "look", "past", "handbook", "clearances", "first-start", "hand-over", "order-list",
                "tightening");
        assertThat(opened).isGreaterThan(7 * AuditCommandTest.samples().size());
    }

    @Test
    void no_page_complains() {
        assertThat(COMPLAINTS).isEmpty();
    }

    @Test
    void no_page_is_wider_than_a_phone_or_the_paper_and_no_drawing_is_cut() {
        assertThat(TOO_WIDE).isEmpty();
    }

    @Test
    void nothing_keeps_a_reader_out_by_day_or_in_the_dark() {
        assertThat(KEPT_OUT).isEmpty();
    }

    @Test
    void the_keyboard_alone_reaches_everything_that_can_be_opened_or_followed() {
        assertThat(UNREACHED).isEmpty();
    }

    @Test
    void each_of_the_first_things_to_do_leads_to_an_open_entry() {
        assertThat(LOST).isEmpty();
    }

    @Test
    void the_keyboard_alone_opens_and_shuts_a_finding() throws IOException {
        browser.look(1000, 800, "light", "screen");
        browser.open(folder.resolve("report/hill-climb-three.html"));
        browser.eval("document.querySelectorAll('details').forEach(d => d.open = false); document.querySelector('#found-1 summary').focus()");
        browser.press("Enter", ENTER, "\r", 1);
        assertThat(browser.eval("document.querySelector('#found-1').open").asBoolean()).isTrue();
        browser.press("Enter", ENTER, "\r", 1);
        assertThat(browser.eval("document.querySelector('#found-1').open").asBoolean()).isFalse();
    }

    @Test
    void the_search_of_the_handbook_leaves_the_lessons_that_hold_every_word() throws IOException {
        browser.open(folder.resolve("handbook/index.html"));
        int all = browser.eval("document.querySelectorAll('[data-find]:not([hidden])').length").asInt();
        browser.eval("const box = document.getElementById('find'); box.value = 'gear pin'; box.dispatchEvent(new Event('input'))");
        int left = browser.eval("document.querySelectorAll('[data-find]:not([hidden])').length").asInt();
        assertThat(left).isBetween(1, all / 4);
        assertThat(browser.eval("document.getElementById('told').textContent").asText()).isEqualTo(left + " of " + all + " lessons");
    }

    @Test
    void what_a_record_holds_of_scripts_and_markup_does_nothing() throws IOException {
        List<Path> pages = html(folder).stream().filter(page -> page.toString().contains("hostile")).toList();
        assertThat(pages).hasSize(8);
        for (Path page : pages) {
            browser.open(page);
            assertThat(browser.eval("document.querySelectorAll('script, b, iframe, form').length").asInt()).as(page.toString()).isZero();
            assertThat(browser.eval("window.harm === undefined").asBoolean()).as(page.toString()).isTrue();
            assertThat(browser.eval("document.body.textContent.includes('<script>window.harm=1</script>')").asBoolean())
                    .as(page.toString()).isTrue();
        }
    }

    /** A record that would do harm. */
    private static Path hostile() throws IOException {
        Path where = Files.createDirectories(folder.resolve("record"));
        Files.copy(Path.of("sample-builds/engines/tarn-12.yaml"), where.resolve("engine.yaml"));
        String harm = "<script>window.harm=1</script><b>\u202E" + "very-long-name".repeat(40) + "\"'><img src=x onerror=window.harm=1>";
        return Files.writeString(where.resolve("hostile.yaml"), ("build:\n  name: '%1$s'\nengine: engine.yaml\n"
                + "gauges:\n  '%1$s': { kind: click wrench, range: from 5 to 120 N·m }\n"
                + "observations:\n  - { trigger disc: play, note: '%1$s', photo: p }\n"
                + "parts:\n  - { cam gear pin: kept, at: intake, form: hollow, origin: '%1$s' }\n"
                + "photos:\n  p: { file: '%1$s', of: trigger disc }\n"
                + "accepted:\n  - { check: trigger-disc-loose, reason: '%1$s', who: '%1$s' }\n").formatted(harm.replace("'", "''")));
    }

    @Test
    void every_page_prints_on_A4() throws IOException {
        for (String page : List.of("report/hill-climb-three.html", "sheets/hill-climb-three/tightening.html")) {
            browser.look(1000, 800, "light", "print");
            browser.open(folder.resolve(page));
            String pdf = new String(browser.print(), StandardCharsets.ISO_8859_1);
            assertThat(pdf).as(page).startsWith("%PDF").contains("/MediaBox [0 0 594.95996 841.91998]");
        }
    }

    // --- helpers

    private static String at(String name) {
        return folder.resolve(name).toString();
    }

    private static void told(List<String> faults, Path page, String how, JsonNode found) {
        found.forEach(one -> faults.add(folder.relativize(page) + " " + how + ": " + one.asText()));
    }

    /** A page's folder says its kind; of a sheet, its own name does. */
    private static String kind(Path page) {
        Path inside = folder.relativize(page);
        return inside.startsWith("sheets") ? inside.getFileName().toString().replace(".html", "") : inside.getName(0).toString();
    }

    private static Set<Path> fullest(int many) throws IOException {
        Map<String, List<Path>> kinds = new LinkedHashMap<>();
        for (Path page : html(folder)) {
            kinds.computeIfAbsent(kind(page), k -> new ArrayList<>()).add(page);
        }
        Set<Path> fullest = new LinkedHashSet<>();
        kinds.values().forEach(pages -> pages.stream().sorted(Comparator.comparing((Path page) -> -page.toFile().length())).limit(many)
                .forEach(fullest::add));
        return fullest;
    }

    private static List<Path> html(Path under) throws IOException {
        return files(under, ".html");
    }

    private static List<Path> files(Path under, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(under)) {
            return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }
}

package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page of every sample, opened as its reader opens it: on a phone, at the desk, on paper, by keyboard, in the dark. */
@Tag("browser")
class PagesInABrowserTest {
    private static final int PHONE = 360;
    /** A4 less its margins of 15 mm, at 96 pixels an inch. */
    private static final int PAPER = 680;
    private static final int TAB = 9;
    private static final int ENTER = 13;
    /** What the page itself is wider than the window by, and what of it sticks out. */
    private static final String WIDE = "(() => { const w = document.documentElement.clientWidth;"
            + " if (document.documentElement.scrollWidth <= w) return [];"
            + " return ['page ' + document.documentElement.scrollWidth, ...[...document.querySelectorAll('body *')]"
            + ".filter(e => e.getBoundingClientRect().right > w + 1).map(e => e.tagName + ': ' + e.textContent.slice(0, 60)).slice(0, 8)]; })()";
    /** Rows of a list or table come from one loop: what a dozen of them lack, all lack. */
    private static final String A_DOZEN = "document.querySelectorAll('ul, ol, tbody, dl').forEach(list =>"
            + " [...list.children].slice(8).forEach(row => row.remove()));"
            + " document.querySelectorAll('section').forEach(s => [...s.querySelectorAll(':scope > details')].slice(4).forEach(d => d.remove()));"
            + " document.querySelectorAll('main').forEach(m => [...m.querySelectorAll('.card')].slice(4).forEach(c => c.remove()))";
    private static final String OPEN_ALL = "document.querySelectorAll('details').forEach(d => d.open = true)";

    @TempDir
    private static Path folder;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        // Where all is proved it must be there; a builder's own machine may lack it.
        assumeTrue(Browser.there() || "true".equals(System.getenv("CI")), "no Chromium on this machine");
        assertThat(command("audit", "sample-builds", "--as", "html", "--out", folder.resolve("reports").toString()).err()).isEmpty();

        // A record that would do harm, and one with an earlier answer to be held against.
        hostile(folder.resolve("hostile"));
        command("audit", "sample-builds/full-sound-tarn-12.yaml", "--as", "json", "--out", folder.resolve("old.json").toString());
        command("audit", "sample-builds/hill-climb-three.yaml", "--as", "html", "--since", folder.resolve("old.json").toString(), "--out",
                folder.resolve("reports/since.html").toString());
        for (Path sample : AuditCommandTest.samples()) {
            String name = sample.getFileName().toString().replace(".yaml", "");
            command("sheets", sample.toString(), "--out", folder.resolve(name).toString());
        }
        browser = Browser.start();
    }

    @AfterAll
    static void stop() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void no_page_complains_or_is_wider_than_a_phone_or_the_paper() throws IOException {
        List<String> faults = new ArrayList<>();
        for (Path page : pages()) {
            browser.look(PHONE, 740, "light", "screen");
            browser.open(page);
            told(faults, page, "on a phone", browser.eval(WIDE));
            browser.eval(OPEN_ALL);
            told(faults, page, "on a phone, all open", browser.eval(WIDE));
            browser.look(PAPER, 1000, "light", "print");
            told(faults, page, "on paper", browser.eval(WIDE));
            browser.complaints().forEach(complaint -> faults.add(page + " complains: " + complaint));
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void nothing_keeps_a_reader_out_by_day_or_in_the_dark() throws IOException {
        String axe = Browser.axe();
        List<String> faults = new ArrayList<>();
        // The sheets of one build are made as those of another; those of three unlike ones stand for all.
        List<Path> looked = new ArrayList<>(reports());
        for (String build : List.of("hostile", "hill-climb-three", "full-sound-osier-18", "withy-8-by-one-page")) {
            looked.addAll(html(folder.resolve(build)));
        }
        for (Path page : looked) {
            browser.look(PHONE, 740, "light", "screen");
            browser.open(page);
            browser.eval(OPEN_ALL);
            browser.eval(A_DOZEN);
            browser.eval(axe);
            told(faults, page, "by day", browser.eval(violations("{ rules: { 'color-contrast': { enabled: false } } }")));
        }
        // Colours come from one sheet of styles; to look at each dot of them takes most of the time.
        for (String page : List.of("reports/since.html", "hostile/report.html", "hill-climb-three/tightening.html",
                "hill-climb-three/order-list.html", "hill-climb-three/hand-over.html")) {
            browser.look(PHONE, 740, "light", "screen");
            browser.open(folder.resolve(page));
            browser.eval(OPEN_ALL);
            browser.eval(A_DOZEN);
            browser.eval(axe);
            for (String scheme : List.of("light", "dark")) {
                browser.look(PHONE, 740, scheme, "screen");
                told(faults, folder.resolve(page), scheme, browser.eval(violations("{ runOnly: ['color-contrast', 'link-in-text-block'] }")));
            }
        }
        assertThat(faults).isEmpty();
    }

    private static String violations(String options) {
        return "axe.run(document, " + options + ").then(r => r.violations.map(v => v.id + ': ' + v.nodes.length + ', as '"
                + " + v.nodes[0].html.slice(0, 200) + ' ' + v.nodes[0].failureSummary))";
    }

    @Test
    void the_keyboard_alone_reaches_and_opens_every_finding_and_question() throws IOException {
        for (Path page : reports()) {
            browser.look(1000, 800, "light", "screen");
            browser.open(page);
            browser.eval("document.querySelectorAll('details').forEach(d => d.open = false)");
            int many = browser.eval("document.querySelectorAll('a, summary').length").asInt();
            TreeSet<String> reached = new TreeSet<>();
            for (int i = 0; i < many; i++) {
                browser.press("Tab", TAB, "");
                String at = browser.eval("document.activeElement.tagName === 'SUMMARY' ? document.activeElement.parentElement.id : ''")
                        .asText();
                if (at.startsWith("found-") || at.startsWith("settle-") || at.startsWith("accepted-")) {
                    if (reached.isEmpty()) {
                        browser.press("Enter", ENTER, "\r");
                        assertThat(browser.eval("document.activeElement.parentElement.open").asBoolean()).as("%s %s", page, at).isTrue();
                        browser.press("Enter", ENTER, "\r");
                    }
                    reached.add(at);
                }
            }
            List<String> all = new ArrayList<>();
            browser.eval("[...document.querySelectorAll('details[id]')].map(d => d.id)").forEach(id -> all.add(id.asText()));
            assertThat(reached).as(page.toString()).containsAll(all);
        }
    }

    @Test
    void each_of_the_first_things_to_do_leads_to_an_open_entry() throws IOException {
        for (Path page : reports()) {
            browser.look(PHONE, 740, "light", "screen");
            browser.open(page);
            JsonNode lost = browser.eval("[...document.querySelectorAll('.first a')].map(a => document.querySelector("
                    + "a.getAttribute('href'))).filter(e => !e || !e.open).length");
            assertThat(lost.asInt()).as(page.toString()).isZero();
        }
    }

    @Test
    void what_a_record_holds_of_scripts_and_markup_does_nothing() throws IOException {
        for (Path page : html(folder.resolve("hostile"))) {
            browser.look(PHONE, 740, "light", "screen");
            browser.open(page);
            assertThat(browser.eval("document.querySelectorAll('script, b, iframe, form').length").asInt()).as(page.toString()).isZero();
            assertThat(browser.eval("window.harm === undefined").asBoolean()).as(page.toString()).isTrue();
            assertThat(browser.eval("document.body.textContent.includes('<script>window.harm=1</script>')").asBoolean()
                    || !page.toString().contains("report")).as(page.toString()).isTrue();
        }
    }

    private static void hostile(Path where) throws IOException {
        Files.createDirectories(where);
        Files.copy(Path.of("sample-builds/engines/tarn-12.yaml"), where.resolve("engine.yaml"));
        String harm = "<script>window.harm=1</script><b>\u202E" + "very-long-name".repeat(40) + "\"'><img src=x onerror=window.harm=1>";
        Path record = Files.writeString(where.resolve("record.yaml"), "build:\n  name: '" + harm.replace("'", "''") + "'\nengine: engine.yaml\n"
                + "gauges:\n  '" + harm.replace("'", "''") + "': { kind: click wrench, range: from 5 to 120 N·m }\n"
                + "observations:\n  - { trigger disc: play, note: '" + harm.replace("'", "''") + "', photo: p }\n"
                + "parts:\n  - { cam gear pin: kept, at: intake, form: hollow, origin: '" + harm.replace("'", "''") + "' }\n"
                + "photos:\n  p: { file: '" + harm.replace("'", "''") + "', of: trigger disc }\n"
                + "accepted:\n  - { check: trigger-disc-loose, reason: '" + harm.replace("'", "''") + "', who: '" + harm.replace("'", "''") + "' }\n");
        command("audit", record.toString(), "--as", "html", "--out", where.resolve("report.html").toString());
        command("sheets", record.toString(), "--out", where.toString());
    }

    @Test
    void every_page_prints_on_A4() throws IOException {
        for (Path page : List.of(folder.resolve("reports/hill-climb-three.html"),
                folder.resolve("hill-climb-three/tightening.html"))) {
            browser.look(1000, 800, "light", "screen");
            browser.open(page);
            String pdf = new String(browser.print(), StandardCharsets.ISO_8859_1);
            assertThat(pdf).as(page.toString()).startsWith("%PDF").contains("/MediaBox [0 0 594.95996 841.91998]");
        }
    }

    // --- helpers

    private static void told(List<String> faults, Path page, String how, JsonNode found) {
        found.forEach(one -> faults.add(folder.relativize(page) + " " + how + ": " + one.asText()));
    }

    private static List<Path> reports() throws IOException {
        return html(folder.resolve("reports"));
    }

    private static List<Path> pages() throws IOException {
        return html(folder);
    }

    private static List<Path> html(Path under) throws IOException {
        try (Stream<Path> files = Files.walk(under)) {
            return files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
        }
    }
}

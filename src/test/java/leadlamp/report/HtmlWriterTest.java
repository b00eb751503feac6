package leadlamp.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HtmlWriterTest {
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z0-9]+)([^>]*?)(/?)>");
    private static final Set<String> VOID = Set.of("meta", "br", "hr", "img", "input", "link");

    @ParameterizedTest
    @MethodSource("pages")
    void every_element_is_closed_where_it_was_opened(String page) {
        String body = page.substring(page.indexOf("<html")).replaceAll("(?s)<style>.*?</style>", "");
        Deque<String> open = new ArrayDeque<>();
        Matcher tag = TAG.matcher(body);
        while (tag.find()) {
            if (tag.group(1).equals("/")) {
                assertThat(open.pop()).isEqualTo(tag.group(2));
            } else if (tag.group(4).isEmpty() && !VOID.contains(tag.group(2))) {
                open.push(tag.group(2));
            }
        }
        assertThat(open).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void it_needs_neither_network_nor_script(String page) {
        assertThat(page).doesNotContain("<script", "src=", "@import", "url(", "http:", "https:", "onclick");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_name_is_given_once_and_every_link_meets_one(String page) {
        List<String> names = all(page, " id=\"([^\"]*)\"");
        assertThat(new HashSet<>(names)).hasSameSizeAs(names);
        assertThat(names).containsAll(all(page, "href=\"#([^\"]*)\""));
        assertThat(names).containsAll(all(page, "aria-labelledby=\"([^\"]*)\""));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_picture_has_words_for_whoever_does_not_see_it(String page) {
        assertThat(all(page, "<svg[^>]*role=\"img\"[^>]*><title>([^<]+)</title>")).hasSameSizeAs(all(page, "(<svg )"));
    }

    @Test
    void the_first_screen_is_what_stands_before_the_next_step() {
        assertThat(HtmlWriter.page(Example.report())).containsSubsequence("<h1>Hill-climb three, spring rebuild</h1>",
                "Before timing drive fitted: 3 findings to put right", "<ol class=\"first\">", "href=\"#found-1\"",
                "<h2 id=\"found\">");
    }

    @Test
    void a_finding_opens_to_line_sum_chain_what_to_do_and_by_when() {
        assertThat(HtmlWriter.page(Example.report())).containsSubsequence("<details id=\"found-1\" open>", "<summary>",
                "The pin of the intake cam gear is hollow.", "Rests on", "spring-rebuild.yaml:31:5",
                "Cause to harm", "What to do", "Also look at", "By when", "Why this level", "Based on",
                "</details>");
    }

    @Test
    void text_from_a_record_stays_text() {
        String page = HtmlWriter.page(Example.report("<b>.yaml", Example.NASTY, true));

        assertThat(page).doesNotContain("<script", "\u001B", "\u009B", "\u202E", "<b>")
                .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; \\u001B[31mred");
    }

    @Test
    void a_level_is_a_word_wherever_it_is_a_look() {
        assertThat(all(HtmlWriter.page(Example.report()), "<span class=\"level high\">([^<]*)</span>"))
                .isNotEmpty().allMatch("High"::equals);
    }

    static List<String> pages() {
        return List.of(HtmlWriter.page(Example.report()), HtmlWriter.page(Example.quiet()),
                HtmlWriter.page(Example.report("a.yaml", Example.NASTY, false)));
    }

    private static List<String> all(String page, String pattern) {
        return Pattern.compile(pattern).matcher(page).results().map(m -> m.group(1)).toList();
    }
}

package leadlamp.teach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What holds of every page: it is well formed, its names are given once, its links arrive, and it asks for nothing from outside. */
final class Markup {
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z0-9]+)([^>]*?)(/?)>");
    private static final Set<String> VOID = Set.of("meta", "br", "hr", "img", "input", "link");

    private Markup() {
    }

    static void holds(Map<String, String> pages) {
        Map<String, Set<String>> names = new TreeMap<>();
        pages.forEach((file, page) -> names.put(file, new HashSet<>(all(page, " id=\"([^\"]*)\""))));
        pages.forEach((file, page) -> {
            closed(file, page);
            assertThat(names.get(file)).as(file).hasSameSizeAs(all(page, " id=\"([^\"]*)\""));
            assertThat(page).as(file).doesNotContain("src=", "@import", "url(", "http:", "https:", "onclick");
            assertThat(all(page, "(<h1>)")).as(file).hasSize(1);
            for (String label : all(page, "aria-labelledby=\"([^\"]*)\"")) {
                assertThat(names.get(file)).as(file).contains(label);
            }
            for (String link : all(page, "href=\"([^\"]*)\"")) {
                int hash = link.indexOf('#');
                String target = hash < 0 ? link : hash == 0 ? file : link.substring(0, hash);
                assertThat(names).as(file + " to " + link).containsKey(target);
                if (hash >= 0) {
                    assertThat(names.get(target)).as(file + " to " + link).contains(link.substring(hash + 1));
                }
            }
        });
    }

    private static void closed(String file, String page) {
        String body = page.substring(page.indexOf("<html")).replaceAll("(?s)<style>.*?</style>", "")
                .replaceAll("(?s)<script>.*?</script>", "");
        Deque<String> open = new ArrayDeque<>();
        Matcher tag = TAG.matcher(body);
        while (tag.find()) {
            if (tag.group(1).equals("/")) {
                assertThat(open.pop()).as(file).isEqualTo(tag.group(2));
            } else if (tag.group(4).isEmpty() && !VOID.contains(tag.group(2))) {
                open.push(tag.group(2));
            }
        }
        assertThat(open).as(file).isEmpty();
    }

    static List<String> all(String page, String pattern) {
        return Pattern.compile(pattern).matcher(page).results().map(m -> m.group(1)).toList();
    }
}

package leadlamp.audit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.record.Problem;
import leadlamp.words.Carried;
import leadlamp.words.Vocabulary;

/** Where the pages of the checks come from: the folder `rules/` when they are compiled, their compiled form ever after. */
public final class CheckPages {
    /** The compiled form on the class path. */
    public static final String RESOURCE = "/leadlamp/checks.bin";
    /** The full build that a case changes where it names none. */
    public static final String USUAL_BUILD = "full-sound-tarn-12.yaml";

    private CheckPages() {
    }

    /** What the rules match, read off their syntax trees by whoever compiles them. */
    @FunctionalInterface
    public interface Patterns {
        /**
         * The patterns of the rules of one file.
         *
         * @param rule the rule file that stands beside a page
         * @return way (or the condition's own name) to the patterns of its rule
         */
        Map<String, List<Way.Pattern>> of(Path rule);
    }

    /**
     * All pages of a folder.
     *
     * @param checks     pages of checks, by id
     * @param conditions pages of conditions, by name
     * @param cases      of all pages, in the order of pages and lines
     * @param problems   all that is wrong on all pages, in the order of the files
     */
    public record Pages(List<Check> checks, List<ConditionPage> conditions, List<Case> cases, List<Problem> problems) {
    }

    /**
     * Reads every page of a folder.
     *
     * @param rules    folder with a folder a topic, and `conditions`
     * @param patterns what the rules match
     */
    public static Pages ofFolder(Path rules, Vocabulary words, Patterns patterns) throws IOException {
        List<Check> checks = new ArrayList<>();
        List<ConditionPage> conditions = new ArrayList<>();
        List<Case> cases = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        Map<String, Path> seen = new TreeMap<>();
        for (Path topic : listed(rules, "")) {
            String name = topic.getFileName().toString();
            if (!Files.isDirectory(topic) || name.equals("vocabulary") || name.equals("past")) {
                continue;
            }
            for (Path page : listed(topic, ".yaml")) {
                if (page.getFileName().toString().equals("limits.yaml")) {
                    continue;
                }
                String file = rules.getFileName() + "/" + name + "/" + page.getFileName();
                PageReader reader = new PageReader(page, file, name, words, patterns);
                if (name.equals("conditions")) {
                    reader.condition().ifPresent(conditions::add);
                } else {
                    reader.check().ifPresent(checks::add);
                    Path twin = seen.put(reader.id(), page);
                    if (twin != null) {
                        reader.refuse("Two pages have this name; the other is " + twin.getParent().getFileName() + "/"
                                + twin.getFileName() + ".", "One check, one page.");
                    }
                }
                cases.addAll(reader.cases());
                problems.addAll(reader.problems());
            }
        }
        checks.sort((a, b) -> a.id().compareTo(b.id()));
        conditions.sort((a, b) -> a.name().compareTo(b.name()));
        return new Pages(List.copyOf(checks), List.copyOf(conditions), List.copyOf(cases), List.copyOf(problems));
    }

    /** What lies in a folder, by name. */
    private static List<Path> listed(Path folder, String ending) throws IOException {
        List<Path> paths = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                if (path.getFileName().toString().endsWith(ending)) {
                    paths.add(path);
                }
            }
        }
        Collections.sort(paths);
        return paths;
    }

    /** Writes the compiled form. The same pages give the same bytes. */
    public static void compile(Collection<Check> checks, Collection<ConditionPage> conditions, Vocabulary words,
            OutputStream out) throws IOException {
        Compiled.write(checks, conditions, needs(checks, conditions, words), out);
    }

    private static Collection<Need> needs(Collection<Check> checks, Collection<ConditionPage> conditions,
            Vocabulary words) {
        Map<String, Need> needs = new TreeMap<>();
        for (Check check : checks) {
            take(check.applies().keySet(), words, needs);
            for (Way way : check.ways()) {
                take(way.needs(), words, needs);
                take(way.heeds(), words, needs);
                take(way.applies().keySet(), words, needs);
            }
        }
        for (ConditionPage page : conditions) {
            take(page.reads(), words, needs);
            take(page.settledBy(), words, needs);
        }
        return needs.values();
    }

    private static void take(Collection<String> from, Vocabulary words, Map<String, Need> needs) {
        for (String word : from) {
            Optional<Need> need = needs.containsKey(word) ? Optional.empty() : Need.of(word, words);
            need.ifPresent(n -> needs.put(word, n));
        }
    }

    /** The pages that the program carries. */
    static Compiled compiled() {
        return Loaded.PAGES;
    }

    private static final class Loaded {
        private static final Compiled PAGES = new Compiled(Carried.bytes(RESOURCE));
    }
}

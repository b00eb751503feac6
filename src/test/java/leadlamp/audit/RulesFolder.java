package leadlamp.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import leadlamp.build.RuleReader;
import leadlamp.judge.TradeLimits;
import leadlamp.record.Problem;
import leadlamp.record.RecordReader;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/** A folder of trade knowledge as it stands, read and ready to audit with, before anything of it is compiled. */
public final class RulesFolder {
    private final Path rules;
    private final Vocabulary words;
    private final Map<String, RuleReader.Read> read = new TreeMap<>();
    private final CheckPages.Pages pages;
    private final Past past;
    private final Auditor auditor;
    private final TradeLimits trade;
    private final Map<String, Auditor> ofOne = new ConcurrentHashMap<>();
    private final RecordReader records;

    private static final class Project {
        private static final Path FOLDER = Path.of(System.getProperty("leadlamp.rules", "rules"));
        private static final RulesFolder ONE = of(FOLDER, FOLDER.resolve("vocabulary"));
    }

    private RulesFolder(Path rules, Path vocabulary) throws IOException {
        this.rules = rules;
        this.words = Words.ofFolder(vocabulary);
        this.pages = CheckPages.ofFolder(rules, words, this::patterns);
        for (Path topic : folders(rules)) {
            for (Path file : files(topic, ".drl")) {
                read(file);
            }
        }
        List<RulebaseRule> all = new ArrayList<>();
        read.values().forEach(r -> r.rules().forEach(rule -> all.add(rule.rule())));
        this.trade = TradeLimits.ofFolder(rules, words);
        this.past = Past.of(PastPages.ofFolder(rules, words));
        this.auditor = Auditor.of(words, pages, Rulebase.of(all), trade, past);
        this.records = new RecordReader(words);
    }

    /** The project's own folder, read once. */
    public static RulesFolder project() {
        return Project.ONE;
    }

    /** Any folder, with a vocabulary from elsewhere. */
    public static RulesFolder of(Path rules, Path vocabulary) {
        try {
            return new RulesFolder(rules, vocabulary);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private RuleReader.Read read(Path file) {
        String name = rules.relativize(file).toString();
        RuleReader.Read known = read.get(name);
        if (known == null) {
            try {
                known = RuleReader.read("rules/" + name, Files.readString(file, StandardCharsets.UTF_8));
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
            read.put(name, known);
        }
        return known;
    }

    private Map<String, List<Way.Pattern>> patterns(Path file) {
        Map<String, List<Way.Pattern>> patterns = new TreeMap<>();
        for (RuleReader.Rule rule : read(file).rules()) {
            String name = rule.rule().sets() ? rule.rule().check() : rule.rule().way();
            patterns.computeIfAbsent(name, n -> new ArrayList<>()).addAll(rule.patterns());
        }
        return patterns;
    }

    /** Folders of topics and of conditions. */
    public static List<Path> folders(Path rules) {
        List<Path> folders = new ArrayList<>();
        for (Path path : files(rules, "")) {
            String name = path.getFileName().toString();
            if (Files.isDirectory(path) && !name.equals("vocabulary") && !name.equals("past")) {
                folders.add(path);
            }
        }
        return folders;
    }

    /** What lies in a folder, by name. */
    public static List<Path> files(Path folder, String ending) {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                if (path.getFileName().toString().endsWith(ending)) {
                    files.add(path);
                }
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        files.sort(null);
        return files;
    }

    public Path path() {
        return rules;
    }

    public Vocabulary words() {
        return words;
    }

    /** Each rule file with what was read of it. */
    public Map<String, RuleReader.Read> rules() {
        return read;
    }

    public List<Check> checks() {
        return pages.checks();
    }

    public List<ConditionPage> conditions() {
        return pages.conditions();
    }

    public List<Case> cases() {
        return pages.cases();
    }

    public List<Problem> problems() {
        return pages.problems();
    }

    public Auditor auditor() {
        return auditor;
    }

    /** An auditor that asks this check alone, which takes a tenth of the time. */
    Auditor auditor(Check check) {
        return ofOne.computeIfAbsent(check.id(), id -> {
            List<RulebaseRule> its = new ArrayList<>();
            read.values().forEach(r -> r.rules().forEach(rule -> {
                if (rule.rule().sets() || rule.rule().check().equals(id)) {
                    its.add(rule.rule());
                }
            }));
            return Auditor.ofOne(check, pages.conditions(), words, Rulebase.of(its), trade, past);
        });
    }

    public RecordReader records() {
        return records;
    }
}

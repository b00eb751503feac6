package leadlamp.build;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlamp.audit.Case;
import leadlamp.audit.Casebook;
import leadlamp.audit.CheckPages;
import leadlamp.audit.PastFile;
import leadlamp.audit.PastPages;
import leadlamp.audit.RulebaseFile;
import leadlamp.audit.RulebaseRule;
import leadlamp.audit.Way;
import leadlamp.judge.TradeLimits;
import leadlamp.judge.TradeLimits;
import leadlamp.record.Problem;
import leadlamp.record.RecordSchema;
import leadlamp.record.SheetSchema;
import leadlamp.record.Where;
import leadlamp.record.Where;
import leadlamp.record.Yaml;
import leadlamp.teach.Looks;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;

/**
 * The build step: compiles the trade knowledge under `rules/` into what the jar carries. It does nothing where neither the
 * knowledge nor a class changed since it last ran.
 */
public final class CompileKnowledge {
    private static final List<String> MADE = List.of(Words.RESOURCE, CheckPages.RESOURCE, RulebaseFile.RESOURCE,
            TradeLimits.RESOURCE, Casebook.RESOURCE, Looks.RESOURCE, PastFile.RESOURCE, PastFile.RULES, RecordSchema.RESOURCE,
            SheetSchema.RESOURCE);

    /** What to do about faults: stop, which is usual, or only tell them and leave out what cannot be read. */
    private static final String FAULTS = "leadlamp.faults";

    private CompileKnowledge() {
    }

    /**
     * Compiles.
     *
     * @param arguments the folder of the rules, and the folder of the classes, into which it goes
     */
    public static void main(String[] arguments) throws IOException {
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        Path rules = Path.of(arguments[0]);
        Path classes = Path.of(arguments[1]);
        Path mark = classes.resolveSibling("knowledge.sha256");
        String now = digest(rules, classes);
        if (Files.exists(mark) && Files.readString(mark).equals(now)
                && MADE.stream().allMatch(made -> Files.exists(classes.resolve(made.substring(1))))) {
            return;
        }
        Files.deleteIfExists(mark);
        List<Problem> faults = compile(rules, classes);
        if (faults.isEmpty()) {
            Files.writeString(mark, now);
        } else if (System.getProperty(FAULTS, "stop").equals("tell")) {
            System.out.println(RuleReader.told(faults));
        } else {
            throw new IllegalArgumentException("The rules and pages have faults:\n" + RuleReader.told(faults));
        }
    }

    /** Compiles whether or not anything changed, leaving out what has faults, and gives those back. */
    static List<Problem> compile(Path rules, Path classes) throws IOException {
        Files.createDirectories(classes.resolve("leadlamp"));
        Vocabulary words = Words.ofFolder(rules.resolve("vocabulary"));
        try (OutputStream out = Files.newOutputStream(classes.resolve(Words.RESOURCE.substring(1)))) {
            Words.compile(words, out);
        }
        List<Problem> faults = new ArrayList<>();
        List<RulebaseRule> all = new ArrayList<>();
        Map<Path, Map<String, List<Way.Pattern>>> patterns = new TreeMap<>();
        for (Path file : files(rules, ".drl")) {
            String name = rules.getFileName() + "/" + rules.relativize(file).toString().replace('\\', '/');
            RuleReader.Read read = RuleReader.read(name, Files.readString(file));
            faults.addAll(read.faults());
            read.rules().forEach(rule -> all.add(rule.rule()));
            patterns.put(file, RuleReader.patterns(read));
        }
        CheckPages.Pages pages = CheckPages.ofFolder(rules, words, file -> patterns.getOrDefault(file, Map.of()));
        faults.addAll(pages.problems());
        TradeLimits limits = TradeLimits.none();
        try {
            limits = TradeLimits.ofFolder(rules, words);
        } catch (IllegalArgumentException wrong) {
            faults.add(new Problem(new Where(rules.getFileName().toString(), 0, 0), 0, "", "Limits have faults:\n"
                    + wrong.getMessage(), "", Optional.empty(), ""));
        }
        PastPages past = PastPages.ofFolder(rules, words);
        faults.addAll(past.problems());
        try (OutputStream pagesOut = Files.newOutputStream(classes.resolve(PastFile.RESOURCE.substring(1)));
                OutputStream rulesOut = Files.newOutputStream(classes.resolve(PastFile.RULES.substring(1)))) {
            past.compile(pagesOut, rulesOut);
        }
        try (OutputStream out = Files.newOutputStream(classes.resolve(RulebaseFile.RESOURCE.substring(1)))) {
            RulebaseFile.write(all, out);
        }
        try (OutputStream out = Files.newOutputStream(classes.resolve(CheckPages.RESOURCE.substring(1)))) {
            CheckPages.compile(pages.checks(), pages.conditions(), words, out);
        }
        try (OutputStream out = Files.newOutputStream(classes.resolve(TradeLimits.RESOURCE.substring(1)))) {
            limits.compile(out);
        }
        try (OutputStream out = Files.newOutputStream(classes.resolve(TradeLimits.RESOURCE.substring(1)))) {
            limits.compile(out);
        }
        try (OutputStream out = Files.newOutputStream(classes.resolve(Casebook.RESOURCE.substring(1)))) {
            Casebook.compile(pages.cases(), builds(rules, pages.cases()), out);
        }
        faults.addAll(looks(rules, words, classes));
        Files.createDirectories(classes.resolve("leadlamp/schema"));
        try (OutputStream out = Files.newOutputStream(classes.resolve(RecordSchema.RESOURCE.substring(1)))) {
            RecordSchema.write(words, out);
        }
        try (OutputStream out = Files.newOutputStream(classes.resolve(SheetSchema.RESOURCE.substring(1)))) {
            SheetSchema.write(words, out);
        }
        System.out.println("Compiled " + all.size() + " rules, " + pages.checks().size() + " checks and "
                + pages.conditions().size() + " conditions");
        return faults;
    }

    private static TradeLimits limits(Path rules, Vocabulary words, List<Problem> faults) throws IOException {
        try {
            return TradeLimits.ofFolder(rules, words);
        } catch (IllegalArgumentException wrong) {
            faults.add(new Problem(new Where(rules.getFileName().toString(), 0, 0), 0, "", wrong.getMessage(), "", Optional.empty(), ""));
            return TradeLimits.none();
        }
    }

    /** Reads the plan of looks, so that its faults are told, and puts it where the program finds it. */
    private static List<Problem> looks(Path rules, Vocabulary words, Path classes) throws IOException {
        Path page = rules.resolve("looks.yaml");
        Path made = classes.resolve(Looks.RESOURCE.substring(1));
        if (!Files.exists(page)) {
            Files.writeString(made, "looks: []\n");
            return List.of();
        }
        Files.copy(page, made, StandardCopyOption.REPLACE_EXISTING);
        return Looks.of(Yaml.read(page, rules.getFileName() + "/looks.yaml"), words).problems();
    }

    /** The full builds that the cases change, and all engine sheets beside them, by their path below their folder. */
    private static Map<String, String> builds(Path rules, List<Case> cases) throws IOException {
        Map<String, String> builds = new TreeMap<>();
        Path folder = builds(rules);
        if (Files.isDirectory(folder)) {
            for (Path file : files(folder, ".yaml")) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (name.startsWith("engines/") || cases.stream().anyMatch(c -> c.build().equals(name))) {
                    builds.put(name, Files.readString(file));
                }
            }
        }
        return builds;
    }

    private static Path builds(Path rules) {
        return rules.resolveSibling("sample-builds");
    }

    /** All files below a folder with this ending, in an order that is the same on every machine. */
    static List<Path> files(Path folder, String ending) throws IOException {
        TreeMap<String, Path> sorted = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(path -> path.getFileName().toString().endsWith(ending) && Files.isRegularFile(path))
                    .forEach(path -> sorted.put(folder.relativize(path).toString().replace('\\', '/'), path));
        }
        return List.copyOf(sorted.values());
    }

    private static String digest(Path rules, Path classes) throws IOException {
        MessageDigest digest;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
        for (Path folder : List.of(rules, builds(rules), classes)) {
            if (!Files.isDirectory(folder)) {
                continue;
            }
            for (Path file : files(folder, folder.equals(classes) ? ".class" : "")) {
                digest.update(folder.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
                digest.update(Files.readAllBytes(file));
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}

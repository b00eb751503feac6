package leadlamp.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leadlamp.audit.Rulebase;
import leadlamp.audit.RulebaseFields;
import leadlamp.audit.RulebaseRule;
import leadlamp.audit.Way;
import leadlamp.record.Problem;
import leadlamp.record.Where;
import leadlamp.words.Vocabulary;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.GlobalDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * Reads a file of rules by its syntax tree. A rule may say little, on purpose, and what it may not say is a fault with its
 * place: a misspelt word in a rule would otherwise compile and never fire.
 */
public final class RuleReader {
    private static final String FIND = "findings.found( drools.getMatch() );";
    private static final String HOLD = "conditions.holds( drools.getMatch() );";

    private final String file;
    private final String text;
    private final String name;
    private final boolean sets;
    private final List<Rule> rules = new ArrayList<>();
    private final List<Problem> faults = new ArrayList<>();

    private RuleReader(String file, String text) {
        this.file = file;
        this.text = text.replace("\r\n", "\n");
        String plain = file.replace('\\', '/');
        int slash = plain.lastIndexOf('/');
        String last = plain.substring(slash + 1);
        this.name = last.endsWith(".drl") ? last.substring(0, last.length() - 4) : last;
        this.sets = folder(plain, slash).equals("conditions");
    }

    /**
     * What a file says.
     *
     * @param rules  its rules, those with a fault left out
     * @param faults what it may not say, in its order
     */
    public record Read(List<Rule> rules, List<Problem> faults) {
    }

    /**
     * One rule with all that a guard may want of it.
     *
     * @param rule     the rule, taken apart
     * @param where    where it begins
     * @param patterns its patterns, as a way of the check carries them
     * @param quoted   each word it quotes, with its place
     */
    public record Rule(RulebaseRule rule, Where where, List<Way.Pattern> patterns, List<Quoted> quoted) {
    }

    /**
     * One quoted word of a rule.
     *
     * @param where   where the word itself begins, its quotation mark left out
     * @param rule    the rule's name
     * @param fact    name of the fact
     * @param field   the field it stands for
     * @param word    the word
     * @param negated whether it stands under `not`
     * @param pattern number of its pattern among the rule's patterns, from 0, the Ask left out
     */
    public record Quoted(Where where, String rule, String fact, String field, String word, boolean negated, int pattern) {
    }

    /**
     * Reads one file. Files in a folder `conditions` set conditions; all others belong to the check of their name.
     *
     * @param file its path as it is to be named
     * @param text what stands in it
     */
    public static Read read(String file, String text) {
        RuleReader reader = new RuleReader(file, text);
        reader.read();
        reader.faults.sort((one, other) -> one.where().compareTo(other.where()));
        return new Read(List.copyOf(reader.rules), List.copyOf(reader.faults));
    }

    private static String folder(String path, int slash) {
        if (slash < 0) {
            return "";
        }
        String before = path.substring(0, slash);
        return before.substring(before.lastIndexOf('/') + 1);
    }

    private void read() {
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        PackageDescr tree;
        try {
            tree = parser.parse(false, text);
        } catch (DroolsParserException e) {
            fault(0, 0, "This is no file of rules: " + e.getMessage(), "", Optional.empty());
            return;
        }
        if (parser.hasErrors()) {
            for (DroolsError error : parser.getErrors()) {
                int[] lines = error.getLines();
                int line = lines.length > 0 && lines[0] > 0 ? lines[0] : 1;
                fault(startOf(line), 0, "The rule language does not take this: " + error.getMessage(), "", Optional.empty());
            }
            return;
        }
        head(tree);
        Set<String> names = new HashSet<>();
        for (RuleDescr rule : tree.getRules()) {
            if (!names.add(rule.getName())) {
                fault(at(rule), 4, "There are two rules \"" + rule.getName() + "\".", "Each way has one rule.", Optional.empty());
            }
            rule(rule);
        }
        if (tree.getRules().isEmpty()) {
            fault(0, 0, "There is no rule here.", "", Optional.empty());
        }
    }

    private void head(PackageDescr tree) {
        String plain = file.replace('\\', '/');
        int slash = plain.lastIndexOf('/');
        String wanted = "leadlamp.rules." + folder(plain, slash).replace('-', '_');
        if (!wanted.equals(tree.getName())) {
            fault(Math.max(0, text.indexOf("package")), 7, "The package is " + tree.getName() + ".",
                    "The folder calls for: package " + wanted + ";", Optional.empty());
        }
        tree.getImports().forEach(line -> {
            if (!line.getTarget().equals("leadlamp.facts.*")) {
                fault(at(line), 6, "Rules import facts only.", "import leadlamp.facts.*;", Optional.empty());
            }
        });
        String kind = sets ? "leadlamp.audit.Conditions" : "leadlamp.audit.Findings";
        String global = sets ? "conditions" : "findings";
        for (GlobalDescr line : tree.getGlobals()) {
            if (!line.getType().equals(kind) || !line.getIdentifier().equals(global)) {
                fault(at(line), 6, "This global is not for here.", "global " + kind + " " + global + ";", Optional.empty());
            }
        }
        if (tree.getGlobals().isEmpty()) {
            fault(0, 0, "The global is missing.", "global " + kind + " " + global + ";", Optional.empty());
        }
        if (!tree.getFunctions().isEmpty() || !tree.getFunctionImports().isEmpty() || !tree.getTypeDeclarations().isEmpty()
                || !tree.getEnumDeclarations().isEmpty() || !tree.getAttributes().isEmpty()) {
            fault(0, 0, "Functions, declared types and attributes have no place in a file of rules.",
                    "package, import, global, and rules.", Optional.empty());
        }
    }

    private void rule(RuleDescr tree) {
        int before = faults.size();
        int start = at(tree);
        if (tree.isQuery()) {
            fault(start, 5, "A query has no place in a file of rules.", "", Optional.empty());
            return;
        }
        String title = tree.getName();
        int colon = title.indexOf(": ");
        String owner = colon < 0 ? title : title.substring(0, colon);
        String way = colon < 0 ? "" : title.substring(colon + 2);
        if (sets) {
            if (!owner.replace(' ', '-').equals(name)) {
                fault(start, 4, "The rule is called \"" + title + "\".",
                        "It sets the condition of its file: \"" + name.replace('-', ' ') + "\" or that, a colon and which way.",
                        Optional.empty());
            }
        } else if (!owner.equals(name) || way.isBlank()) {
            fault(start, 4, "The rule is called \"" + title + "\".", "Its name is `check: way`, as \"" + name + ": form\".",
                    Optional.empty());
        }
        tree.getAttributes().values().forEach(attribute -> fault(
                Math.max(start, text.lastIndexOf(attribute.getName(), at(attribute))), attribute.getName().length(),
                "`" + attribute.getName() + "` has no place in a rule.",
                "Rules only find; where order matters, a stage is missing before them.", Optional.empty()));
        if (tree.getParentName() != null) {
            fault(start, 4, "`extends` has no place in a rule.", "", Optional.empty());
        }
        consequence(tree, start);
        Clauses clauses = new Clauses(title);
        clauses.read(tree.getLhs(), start);
        if (faults.size() == before) {
            rules.add(new Rule(new RulebaseRule(owner, way, sets, List.copyOf(clauses.clauses)), where(start),
                    List.copyOf(clauses.patterns), List.copyOf(clauses.quoted)));
        }
    }

    private void consequence(RuleDescr tree, int start) {
        String line = sets ? HOLD : FIND;
        String written = String.valueOf(tree.getConsequence()).strip();
        if (!squeezed(written).equals(squeezed(line)) || !tree.getNamedConsequences().isEmpty()) {
            int then = tree.getConsequenceLine() > 0 ? startOf(tree.getConsequenceLine()) : start;
            fault(Math.min(then, text.length()), 0, "What follows `then` is always one line.", line, Optional.empty());
        }
    }

    private static String squeezed(String code) {
        return code.replace(" ", "").replace("\t", "").replace("\n", "");
    }

    private void fault(int offset, int length, String what, String expected, Optional<String> nearest) {
        int begin = text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1;
        if (offset == 0) {
            begin = 0;
        }
        int end = text.indexOf('\n', begin);
        faults.add(new Problem(where(offset), length, text.substring(begin, end < 0 ? text.length() : end), what, expected,
                nearest, ""));
    }

    private Where where(int offset) {
        int line = 1;
        int begin = 0;
        for (int i = 0; i < offset && i < text.length(); i++) {
            if (text.charAt(i) == '\n') {
                line++;
                begin = i + 1;
            }
        }
        return new Where(file, line, offset - begin + 1);
    }

    private int startOf(int line) {
        int begin = 0;
        for (int i = 1; i < line; i++) {
            int next = text.indexOf('\n', begin);
            if (next < 0) {
                return begin;
            }
            begin = next + 1;
        }
        return begin;
    }

    private int at(BaseDescr part) {
        if (part.getStartCharacter() >= 0) {
            return part.getStartCharacter();
        }
        return part.getLine() > 0 ? startOf(part.getLine()) + Math.max(0, part.getColumn()) : 0;
    }

    /** The part of one rule between `when` and `then`. */
    private final class Clauses {
        private final String title;
        private final List<RulebaseRule.Clause> clauses = new ArrayList<>();
        private final List<Way.Pattern> patterns = new ArrayList<>();
        private final List<Quoted> quoted = new ArrayList<>();
        private final Set<String> bound = new HashSet<>();
        private final Set<String> within = new HashSet<>();
        private final Set<String> here = new HashSet<>();

        Clauses(String title) {
            this.title = title;
        }

        void read(AndDescr all, int start) {
            boolean first = true;
            for (BaseDescr part : flat(all)) {
                RulebaseRule.Sort sort = part instanceof NotDescr ? RulebaseRule.Sort.NOT
                        : part instanceof ExistsDescr ? RulebaseRule.Sort.EXISTS : RulebaseRule.Sort.THERE;
                List<BaseDescr> parts = sort == RulebaseRule.Sort.THERE ? List.of(part)
                        : flat((ConditionalElementDescr) part);
                List<RulebaseRule.Match> matches = new ArrayList<>();
                within.clear();
                for (BaseDescr pattern : parts) {
                    if (pattern instanceof PatternDescr fact) {
                        pattern(fact, sort, first).ifPresent(matches::add);
                    } else {
                        fault(at(pattern), 0, "A rule has no " + called(pattern) + ".",
                                "Facts, `not` and `exists`. Two alternatives are two rules, each with its own sentence.",
                                Optional.empty());
                    }
                    first = false;
                }
                if (matches.size() == parts.size() && !matches.isEmpty()) {
                    clauses.add(new RulebaseRule.Clause(sort, List.copyOf(matches)));
                }
            }
            if (first) {
                fault(start, 4, "The rule asks for nothing.", "", Optional.empty());
            }
        }

        private List<BaseDescr> flat(ConditionalElementDescr of) {
            List<BaseDescr> parts = new ArrayList<>();
            for (Object part : of.getDescrs()) {
                if (part instanceof AndDescr and) {
                    parts.addAll(flat(and));
                } else {
                    parts.add((BaseDescr) part);
                }
            }
            return parts;
        }

        private String called(BaseDescr part) {
            String called = part.getClass().getSimpleName().replace("Descr", "").toLowerCase(Locale.ROOT);
            return called.equals("not") || called.equals("exists") ? "`" + called + "` within another" : "`" + called + "`";
        }

        private Optional<RulebaseRule.Match> pattern(PatternDescr tree, RulebaseRule.Sort sort, boolean first) {
            int before = faults.size();
            int start = at(tree);
            String fact = tree.getObjectType();
            if (tree.getSource() != null) {
                fault(start, fact.length(), "`from`, `accumulate` and the like have no place in a rule.",
                        "What must be worked out is a derived value.", Optional.empty());
                return Optional.empty();
            }
            if (!RulebaseFields.facts().contains(fact)) {
                fault(start, fact.length(), "There is no fact \"" + fact + "\".", "One of: "
                        + String.join(", ", RulebaseFields.facts()) + ".", Vocabulary.nearest(fact, RulebaseFields.facts()));
                return Optional.empty();
            }
            askFirst(fact, start, sort, first);
            if (fact.equals("NotSeen")) {
                fault(start, fact.length(), "No rule matches NotSeen.", "A sign looked for and not there meets a need, no more.",
                        Optional.empty());
            }
            if (sets && fact.equals("Condition")) {
                fault(start, fact.length(), "A condition does not rest on another: they are worked out together.",
                        "Ask for the facts behind it.", Optional.empty());
            }
            String variable = tree.getIdentifier() == null ? "" : tree.getIdentifier();
            if (!variable.isEmpty()) {
                name(variable, start);
            }
            List<RulebaseRule.Test> tests = new ArrayList<>();
            for (BaseDescr constraint : tree.getDescrs()) {
                if (constraint instanceof ExprConstraintDescr expression) {
                    new Constraint(expression, fact, sort).read(tests);
                } else {
                    fault(at(constraint), 0, "A pattern takes its constraints apart by commas.", "", Optional.empty());
                }
            }
            (sort == RulebaseRule.Sort.THERE ? bound : within).addAll(here);
            here.clear();
            if (first && !sets && tests.stream().noneMatch(this::asksItsCheck)) {
                fault(start, fact.length(), "The Ask does not name its check.", "Ask( check == \"" + name + "\", $place : at )",
                        Optional.empty());
            }
            if (faults.size() > before) {
                return Optional.empty();
            }
            if (!fact.equals("Ask")) {
                patterns.add(forTheWay(fact, sort, tests));
            }
            return Optional.of(new RulebaseRule.Match(fact, variable, List.copyOf(tests)));
        }

        private void askFirst(String fact, int start, RulebaseRule.Sort sort, boolean first) {
            if (sets) {
                if (fact.equals("Ask")) {
                    fault(start, 3, "A condition is of the whole build and asked nowhere.", "Facts of the record and sheet.",
                            Optional.empty());
                }
            } else if (first != fact.equals("Ask") || first && sort != RulebaseRule.Sort.THERE) {
                fault(start, fact.length(), "A rule begins with its Ask, and has one.",
                        "Ask( check == \"" + name + "\", $place : at )", Optional.empty());
            }
        }

        private boolean asksItsCheck(RulebaseRule.Test test) {
            return test instanceof RulebaseRule.Test.Says says && says.field().equals("check")
                    && says.words().equals(List.of(name));
        }

        private void name(String variable, int start) {
            if (!variable.startsWith("$")) {
                fault(start, variable.length(), "A name that a rule gives begins with a dollar.", "$" + variable, Optional.empty());
            }
            if (bound.contains(variable) || within.contains(variable) || !here.add(variable)) {
                fault(start, variable.length(), variable + " is named twice.", "Ask for the same word by: field == " + variable,
                        Optional.empty());
            }
        }

        private Way.Pattern forTheWay(String fact, RulebaseRule.Sort sort, List<RulebaseRule.Test> tests) {
            Map<String, List<String>> words = new LinkedHashMap<>();
            List<String> flags = new ArrayList<>();
            String places = "";
            for (RulebaseRule.Test test : tests) {
                if (test instanceof RulebaseRule.Test.Says says) {
                    words.merge(says.field(), says.words(), (one, other) -> one.stream().filter(other::contains).toList());
                } else if (test instanceof RulebaseRule.Test.Flag flag) {
                    flags.add(flag.flag());
                } else if (test instanceof RulebaseRule.Test.Same same && same.field().equals("at")) {
                    places = "at == " + same.variable();
                } else if (test instanceof RulebaseRule.Test.Tie tie) {
                    places = tie.tie() + "( " + tie.variable() + " )";
                }
            }
            return new Way.Pattern(fact, sort == RulebaseRule.Sort.NOT, words, List.copyOf(flags), places);
        }

        /** One constraint between two commas of a pattern. */
        private final class Constraint {
            private final ExprConstraintDescr tree;
            private final String fact;
            private final RulebaseRule.Sort sort;
            private final List<Token> tokens = new ArrayList<>();
            private int at;

            Constraint(ExprConstraintDescr tree, String fact, RulebaseRule.Sort sort) {
                this.tree = tree;
                this.fact = fact;
                this.sort = sort;
            }

            void read(List<RulebaseRule.Test> tests) {
                int start = at(tree);
                split(start, start + tree.getExpression().length());
                if (!constraint(tests)) {
                    fault(start, tree.getExpression().length(), "A rule does not say `" + tree.getExpression().strip() + "`.",
                            expected(), Optional.empty());
                }
            }

            private String expected() {
                for (Token token : tokens) {
                    switch (token.text) {
                        case "!=", "!":
                            return "Name the wrong words: says in ( ... ). `!=` would fire on `unknown` as well.";
                        case "||", "or":
                            return "Two alternatives are two rules, or words of one list: says in ( ... ).";
                        case "&&", "and":
                            return "A comma parts two constraints.";
                        default:
                    }
                    if (token.number) {
                        return "No number stands in a rule. Limits live in the sheet and in limits.yaml, words in quotation marks.";
                    }
                }
                return "field == \"word\", field in ( \"word\", ... ), field == $name, $name : field, a flag ("
                        + String.join(", ", RulebaseFields.flags(fact)) + "), or " + String.join(", ", RulebaseFields.ties())
                        + " with ( $place ).";
            }

            private boolean constraint(List<RulebaseRule.Test> tests) {
                String variable = "";
                if (tokens.size() > 2 && tokens.get(0).text.startsWith("$") && tokens.get(1).text.equals(":")) {
                    variable = tokens.get(0).text;
                    at = 2;
                }
                if (at >= tokens.size() || !tokens.get(at).word) {
                    return false;
                }
                Token field = tokens.get(at++);
                if (!variable.isEmpty()) {
                    if (!isField(field)) {
                        return true;
                    }
                    name(variable, tokens.get(0).start);
                    tests.add(new RulebaseRule.Test.Name(variable, field.text));
                    if (at == tokens.size()) {
                        return true;
                    }
                }
                if (at == tokens.size()) {
                    return flag(field, tests);
                }
                String sign = tokens.get(at++).text;
                return switch (sign) {
                    case "==" -> same(field, tests);
                    case "in" -> in(field, tests);
                    case "(" -> tie(field, tests);
                    default -> false;
                };
            }

            private boolean isField(Token field) {
                List<String> known = RulebaseFields.words(fact);
                if (!known.contains(field.text)) {
                    fault(field.start, field.text.length(), "\"" + field.text + "\" is no word of " + article(fact) + ".",
                            article(fact) + " has: " + String.join(", ", known) + ".", Vocabulary.nearest(field.text, known));
                    return false;
                }
                return true;
            }

            private String article(String noun) {
                return ("AO".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
            }

            private boolean flag(Token field, List<RulebaseRule.Test> tests) {
                List<String> known = RulebaseFields.flags(fact);
                if (!known.contains(field.text)) {
                    fault(field.start, field.text.length(), "\"" + field.text + "\" is nothing that is so or not so of "
                            + article(fact) + ".", known.isEmpty() ? "" : "One of: " + String.join(", ", known) + ".",
                            Vocabulary.nearest(field.text, known));
                } else {
                    tests.add(new RulebaseRule.Test.Flag(field.text));
                }
                return true;
            }

            private boolean same(Token field, List<RulebaseRule.Test> tests) {
                if (at != tokens.size() - 1) {
                    return false;
                }
                Token other = tokens.get(at);
                if (other.quoted) {
                    if (isField(field)) {
                        tests.add(new RulebaseRule.Test.Says(field.text, List.of(quote(field, other))));
                    }
                    return true;
                }
                if (!other.text.startsWith("$")) {
                    return false;
                }
                if (isField(field) && isBound(other)) {
                    tests.add(new RulebaseRule.Test.Same(field.text, other.text));
                }
                return true;
            }

            private boolean isBound(Token variable) {
                if (!bound.contains(variable.text) && !within.contains(variable.text)) {
                    fault(variable.start, variable.text.length(), "Nothing before this names " + variable.text + ".",
                            bound.isEmpty() ? "" : "Named so far: " + String.join(", ", new TreeSet<>(bound)) + ".",
                            Vocabulary.nearest(variable.text, bound));
                    return false;
                }
                return true;
            }

            private boolean in(Token field, List<RulebaseRule.Test> tests) {
                List<String> words = new ArrayList<>();
                if (at >= tokens.size() || !tokens.get(at).text.equals("(") || tokens.get(at).quoted) {
                    return false;
                }
                do {
                    at++;
                    if (at >= tokens.size() || !tokens.get(at).quoted) {
                        return false;
                    }
                    words.add(quote(field, tokens.get(at++)));
                } while (at < tokens.size() && tokens.get(at).text.equals(",") && !tokens.get(at).quoted);
                if (at != tokens.size() - 1 || !tokens.get(at).text.equals(")")) {
                    return false;
                }
                if (isField(field)) {
                    tests.add(new RulebaseRule.Test.Says(field.text, List.copyOf(words)));
                }
                return true;
            }

            private String quote(Token field, Token word) {
                if (!fact.equals("Ask")) {
                    quoted.add(new Quoted(where(word.start + 1), title, fact, field.text, word.text,
                            sort == RulebaseRule.Sort.NOT, patterns.size()));
                }
                return word.text;
            }

            private boolean tie(Token field, List<RulebaseRule.Test> tests) {
                if (at != tokens.size() - 2 || !tokens.get(at + 1).text.equals(")") || !tokens.get(at).text.startsWith("$")) {
                    return false;
                }
                if (!RulebaseFields.ties().contains(field.text)) {
                    fault(field.start, field.text.length(), "A fact is not tied to a place by \"" + field.text + "\".",
                            "One of: " + String.join(", ", RulebaseFields.ties()) + ".",
                            Vocabulary.nearest(field.text, RulebaseFields.ties()));
                } else if (isBound(tokens.get(at))) {
                    tests.add(new RulebaseRule.Test.Tie(field.text, tokens.get(at).text));
                }
                return true;
            }

            /** Takes the text apart; comments are passed over. */
            private void split(int from, int to) {
                int i = from;
                while (i < to) {
                    char c = text.charAt(i);
                    if (Character.isWhitespace(c)) {
                        i++;
                    } else if (text.startsWith("//", i)) {
                        int end = text.indexOf('\n', i);
                        i = end < 0 ? to : end;
                    } else if (text.startsWith("/*", i)) {
                        int end = text.indexOf("*/", i);
                        i = end < 0 ? to : end + 2;
                    } else if (c == '"' || c == '\'') {
                        int end = text.indexOf(c, i + 1);
                        end = end < 0 || end >= to ? to - 1 : end;
                        tokens.add(new Token(text.substring(i + 1, end), i, c == '"', false, false));
                        i = end + 1;
                    } else if (Character.isJavaIdentifierStart(c)) {
                        int end = i + 1;
                        while (end < to && Character.isJavaIdentifierPart(text.charAt(end))) {
                            end++;
                        }
                        tokens.add(new Token(text.substring(i, end), i, false, true, false));
                        i = end;
                    } else if (Character.isDigit(c)) {
                        int end = i + 1;
                        while (end < to && (Character.isDigit(text.charAt(end)) || text.charAt(end) == '.')) {
                            end++;
                        }
                        tokens.add(new Token(text.substring(i, end), i, false, false, true));
                        i = end;
                    } else {
                        int end = i + 1 < to && "==!=&&||<=>=".contains(text.substring(i, i + 2)) && c != '(' ? i + 2 : i + 1;
                        tokens.add(new Token(text.substring(i, end), i, false, false, false));
                        i = end;
                    }
                }
            }
        }
    }

    /** One sign or word of a constraint. */
    private record Token(String text, int start, boolean quoted, boolean word, boolean number) {
    }

    /**
     * The patterns of the rules of one file, by way; those of a condition all by its name.
     *
     * @throws IllegalArgumentException if the file has a fault
     */
    public static Map<String, List<Way.Pattern>> patterns(Path file) {
        Read read;
        try {
            read = read(file.toString(), Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (!read.faults.isEmpty()) {
            throw new IllegalArgumentException(told(read.faults));
        }
        return patterns(read);
    }

    static Map<String, List<Way.Pattern>> patterns(Read read) {
        Map<String, List<Way.Pattern>> patterns = new LinkedHashMap<>();
        for (Rule rule : read.rules) {
            String name = rule.rule.sets() ? rule.rule.check() : rule.rule.way();
            patterns.computeIfAbsent(name, n -> new ArrayList<>()).addAll(rule.patterns);
        }
        return patterns;
    }

    /** The rules of several files as a rulebase; a fault in one of them is an error that names all. */
    public static Rulebase rulebase(Map<String, String> textByFile) {
        List<RulebaseRule> rules = new ArrayList<>();
        List<Problem> faults = new ArrayList<>();
        textByFile.forEach((file, text) -> {
            Read read = read(file, text);
            read.rules.forEach(rule -> rules.add(rule.rule));
            faults.addAll(read.faults);
        });
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(told(faults));
        }
        return Rulebase.of(rules);
    }

    /** Faults as lines of text. */
    static String told(Collection<Problem> faults) {
        StringBuilder lines = new StringBuilder();
        for (Problem fault : faults) {
            lines.append(fault.where()).append(": ").append(fault.what());
            if (!fault.expected().isEmpty()) {
                lines.append("\n    Expected: ").append(fault.expected());
            }
            fault.nearest().ifPresent(word -> lines.append("\n    Nearest word: ").append(word));
            lines.append('\n');
        }
        return lines.toString();
    }
}

package leadlamp.audit;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlamp.facts.Fact;
import leadlamp.words.Carried;

/**
 * All rules in one file of numbers and words, made when the project is built. Which rules can fire on the facts at hand is
 * told from the numbers; only those are taken apart again, so that an audit pays for few of them.
 */
public final class RulebaseFile {
    /** Where the build step puts it and the audit looks for it. */
    public static final String RESOURCE = "/leadlamp/rules.bin";

    private static final int SAYS = 0;
    private static final int SAME = 1;
    private static final int FLAG = 2;
    private static final int TIE = 3;
    private static final int NAME = 4;
    private static final RulebaseRule.Sort[] SORTS = RulebaseRule.Sort.values();
    private static final RulebaseRule.Stage[] STAGES = RulebaseRule.Stage.values();

    private final String text;
    private final int[] ends;
    private final String[] words;
    private final char[] code;

    private RulebaseFile(String text, int[] ends, char[] code) {
        this.text = text;
        this.ends = ends;
        this.words = new String[ends.length];
        this.code = code;
    }

    /** Writes rules. The same rules in the same order give the same bytes. */
    public static void write(List<RulebaseRule> rules, OutputStream to) throws IOException {
        Map<String, Integer> words = new LinkedHashMap<>();
        List<Integer> code = new ArrayList<>();
        for (RulebaseRule rule : rules) {
            int start = code.size();
            code.add(0);
            code.add(rule.stage().ordinal());
            code.add(number(rule.check(), words));
            code.add(number(rule.way(), words));
            code.add(rule.clauses().size());
            for (RulebaseRule.Clause clause : rule.clauses()) {
                code.add(clause.sort().ordinal());
                code.add(clause.matches().size());
                for (RulebaseRule.Match match : clause.matches()) {
                    write(match, words, code);
                }
            }
            code.set(start, code.size() - start);
        }
        StringBuilder text = new StringBuilder();
        DataOutputStream out = new DataOutputStream(to);
        out.writeInt(words.size());
        for (String word : words.keySet()) {
            text.append(word);
            out.writeInt(text.length());
        }
        out.writeInt(code.size());
        for (int number : code) {
            if (number > Character.MAX_VALUE) {
                throw new IllegalArgumentException("Too many words in the rules: " + words.size());
            }
            out.writeChar(number);
        }
        out.write(text.toString().getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    private static void write(RulebaseRule.Match match, Map<String, Integer> words, List<Integer> code) {
        code.add(RulebaseFields.fact(match.fact()));
        code.add(number(match.bound(), words));
        code.add(match.tests().size());
        for (RulebaseRule.Test test : match.tests()) {
            if (test instanceof RulebaseRule.Test.Says says) {
                code.add(SAYS);
                code.add(RulebaseFields.word(says.field()));
                code.add(says.words().size());
                says.words().forEach(word -> code.add(number(word, words)));
            } else if (test instanceof RulebaseRule.Test.Same same) {
                code.add(SAME);
                code.add(RulebaseFields.word(same.field()));
                code.add(number(same.variable(), words));
            } else if (test instanceof RulebaseRule.Test.Flag flag) {
                code.add(FLAG);
                code.add(RulebaseFields.flag(flag.flag()));
            } else if (test instanceof RulebaseRule.Test.Tie tie) {
                code.add(TIE);
                code.add(RulebaseFields.tie(tie.tie()));
                code.add(number(tie.variable(), words));
            } else if (test instanceof RulebaseRule.Test.Name name) {
                code.add(NAME);
                code.add(RulebaseFields.word(name.field()));
                code.add(number(name.variable(), words));
            }
        }
    }

    private static int number(String word, Map<String, Integer> words) {
        Integer known = words.get(word);
        if (known == null) {
            known = words.size();
            words.put(word, known);
        }
        return known;
    }

    /** The rules compiled with the project. */
    static RulebaseFile compiled() {
        return compiled(RESOURCE);
    }

    /** Rules compiled with the project that lie there. */
    static RulebaseFile compiled(String resource) {
        return read(Carried.bytes(resource));
    }

    /** The given rules, by way of the same bytes. */
    static RulebaseFile of(List<RulebaseRule> rules) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            write(rules, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return read(bytes.toByteArray());
    }

    private static RulebaseFile read(byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        int[] ends = new int[buffer.getInt()];
        buffer.asIntBuffer().get(ends);
        buffer.position(buffer.position() + 4 * ends.length);
        char[] code = new char[buffer.getInt()];
        buffer.asCharBuffer().get(code);
        int start = buffer.position() + 2 * code.length;
        return new RulebaseFile(new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8), ends, code);
    }

    /** The word of this number. Threads may both make it; they make the same. */
    private String word(int number) {
        String word = words[number];
        if (word == null) {
            word = text.substring(number == 0 ? 0 : ends[number - 1], ends[number]);
            words[number] = word;
        }
        return word;
    }

    /** The rules that stand there. */
    List<RulebaseRule> rules(List<Integer> places) {
        List<RulebaseRule> rules = new ArrayList<>(places.size());
        for (int at : places) {
            rules.add(rule(at));
        }
        return rules;
    }

    /**
     * What can come of some facts.
     *
     * @param rules where the rules stand that can fire on them
     * @param facts those of the facts that some pattern of those rules can match, in their order
     */
    record Chosen(List<Integer> rules, List<Fact> facts) {
    }

    /**
     * The rules of a stage that can fire on these facts: for each of their patterns that asks for a fact there is one with
     * all its quoted words. Whether the places suit is left to the rule.
     */
    Chosen canFire(boolean sets, Collection<? extends Fact> facts) {
        return canFire(sets ? RulebaseRule.Stage.CONDITION : RulebaseRule.Stage.CHECK, facts);
    }

    Chosen canFire(RulebaseRule.Stage stage, Collection<? extends Fact> facts) {
        ByWord known = new ByWord(facts);
        List<Integer> rules = new ArrayList<>();
        Set<Fact> wanted = Collections.newSetFromMap(new IdentityHashMap<>());
        for (int at = 0; at < code.length; at += code[at]) {
            if (code[at + 1] == stage.ordinal() && canFire(at, known)) {
                rules.add(at);
                want(at, known, wanted);
            }
        }
        List<Fact> inOrder = new ArrayList<>(wanted.size());
        for (Fact fact : facts) {
            if (wanted.contains(fact)) {
                inOrder.add(fact);
            }
        }
        return new Chosen(rules, inOrder);
    }

    private void want(int rule, ByWord known, Set<Fact> wanted) {
        int at = rule + 5;
        for (int clause = 0; clause < code[rule + 4]; clause++) {
            int matches = code[at + 1];
            at += 2;
            for (int match = 0; match < matches; match++) {
                for (Fact fact : narrowed(at, known)) {
                    if (suits(fact, at)) {
                        wanted.add(fact);
                    }
                }
                at = afterMatch(at);
            }
        }
    }

    private boolean canFire(int rule, ByWord known) {
        int at = rule + 5;
        for (int clause = 0; clause < code[rule + 4]; clause++) {
            boolean there = code[at] != RulebaseRule.Sort.NOT.ordinal();
            int matches = code[at + 1];
            at += 2;
            for (int match = 0; match < matches; match++) {
                if (there && !isThere(at, known)) {
                    return false;
                }
                at = afterMatch(at);
            }
        }
        return true;
    }

    /** Whether there is a fact with all the quoted words of the pattern. */
    private boolean isThere(int match, ByWord known) {
        for (Fact fact : narrowed(match, known)) {
            if (suits(fact, match)) {
                return true;
            }
        }
        return false;
    }

    /** The facts among which those that suit the pattern are. */
    private List<Fact> narrowed(int match, ByWord known) {
        List<Fact> facts = known.of(code[match]);
        int test = match + 3;
        for (int i = 0; i < code[match + 2] && !facts.isEmpty(); i++) {
            if (code[test] == SAYS && code[test + 2] == 1) {
                List<Fact> narrow = known.of(code[match], code[test + 1], word(code[test + 3]));
                if (narrow.size() < facts.size()) {
                    facts = narrow;
                }
            }
            test = afterTest(test);
        }
        return facts;
    }

    private boolean suits(Fact fact, int match) {
        int test = match + 3;
        for (int i = 0; i < code[match + 2]; i++) {
            if (code[test] == SAYS) {
                String says = RulebaseFields.read(fact, code[test + 1]);
                boolean one = false;
                for (int j = 0; j < code[test + 2] && !one; j++) {
                    one = word(code[test + 3 + j]).equals(says);
                }
                if (!one) {
                    return false;
                }
            } else if (code[test] == FLAG && !RulebaseFields.holds(fact, code[test + 1])) {
                return false;
            }
            test = afterTest(test);
        }
        return true;
    }

    private int afterMatch(int match) {
        int at = match + 3;
        for (int i = 0; i < code[match + 2]; i++) {
            at = afterTest(at);
        }
        return at;
    }

    private int afterTest(int test) {
        return switch (code[test]) {
            case SAYS -> test + 3 + code[test + 2];
            case FLAG -> test + 2;
            default -> test + 3;
        };
    }

    private RulebaseRule rule(int rule) {
        List<RulebaseRule.Clause> clauses = new ArrayList<>();
        int at = rule + 5;
        for (int i = 0; i < code[rule + 4]; i++) {
            RulebaseRule.Sort sort = SORTS[code[at]];
            int matches = code[at + 1];
            at += 2;
            List<RulebaseRule.Match> all = new ArrayList<>();
            for (int j = 0; j < matches; j++) {
                all.add(match(at));
                at = afterMatch(at);
            }
            clauses.add(new RulebaseRule.Clause(sort, all));
        }
        return new RulebaseRule(word(code[rule + 2]), word(code[rule + 3]), STAGES[code[rule + 1]], clauses);
    }

    private RulebaseRule.Match match(int match) {
        List<RulebaseRule.Test> tests = new ArrayList<>();
        int at = match + 3;
        for (int i = 0; i < code[match + 2]; i++) {
            tests.add(test(at));
            at = afterTest(at);
        }
        return new RulebaseRule.Match(RulebaseFields.facts().get(code[match]), word(code[match + 1]), tests);
    }

    private RulebaseRule.Test test(int test) {
        int about = code[test + 1];
        switch (code[test]) {
            case SAYS:
                List<String> says = new ArrayList<>();
                for (int i = 0; i < code[test + 2]; i++) {
                    says.add(word(code[test + 3 + i]));
                }
                return new RulebaseRule.Test.Says(RulebaseFields.word(about), says);
            case SAME:
                return new RulebaseRule.Test.Same(RulebaseFields.word(about), word(code[test + 2]));
            case FLAG:
                return new RulebaseRule.Test.Flag(RulebaseFields.flag(about));
            case TIE:
                return new RulebaseRule.Test.Tie(RulebaseFields.tie(about), word(code[test + 2]));
            default:
                return new RulebaseRule.Test.Name(word(code[test + 2]), RulebaseFields.word(about));
        }
    }

    /** The facts by kind of fact, and by the words that narrow them most. */
    private static final class ByWord {
        private final List<List<Fact>> byFact = new ArrayList<>();
        private final List<Map<String, List<Fact>>> byOf = new ArrayList<>();

        ByWord(Collection<? extends Fact> facts) {
            for (int i = 0; i < RulebaseFields.facts().size(); i++) {
                byFact.add(new ArrayList<>());
                byOf.add(new HashMap<>());
            }
            for (Fact fact : facts) {
                int type = RulebaseFields.fact(fact);
                byFact.get(type).add(fact);
                String key = RulebaseFields.read(fact, key(type));
                List<Fact> same = byOf.get(type).get(key);
                if (same == null) {
                    same = new ArrayList<>();
                    byOf.get(type).put(key, same);
                }
                same.add(fact);
            }
        }

        /** The field that narrows a kind of fact most. */
        private static int key(int type) {
            return switch (type) {
                case 0 -> 6;
                case 7 -> 7;
                case 8 -> 4;
                default -> 0;
            };
        }

        List<Fact> of(int type) {
            return byFact.get(type);
        }

        List<Fact> of(int type, int field, String word) {
            if (field != key(type)) {
                return byFact.get(type);
            }
            List<Fact> same = byOf.get(type).get(word);
            return same == null ? List.of() : same;
        }
    }
}

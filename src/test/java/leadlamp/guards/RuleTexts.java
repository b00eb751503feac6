package leadlamp.guards;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leadlamp.audit.RulesFolder;
import leadlamp.build.RuleReader;
import leadlamp.record.Problem;

/** What a rule may not say, read off its text: no order control, no match on what rules found, no number, no arithmetic. */
final class RuleTexts {
    private static final Set<String> ORDER = Set.of("salience", "modify", "update", "delete", "retract", "insert",
            "insertLogical", "eval", "from", "accumulate", "collect", "forall", "query", "extends", "lock", "active", "dialect",
            "duration", "timer", "calendars", "entry", "Finding", "Findings.class", "Answer", "or");
    private static final Set<String> HYPHENED = Set.of("no-loop", "agenda-group", "activation-group", "ruleflow-group",
            "lock-on-active", "auto-focus", "date-effective", "date-expires");

    private RuleTexts() {
    }

    /** All that the reader of rules refuses, and what the text says beyond. */
    static List<String> faults(RulesFolder folder) {
        List<String> faults = new ArrayList<>();
        for (RuleReader.Read read : folder.rules().values()) {
            for (Problem fault : read.faults()) {
                faults.add(fault.where() + ": " + fault.what() + " " + fault.expected());
            }
        }
        for (var topic : RulesFolder.folders(folder.path())) {
            for (var file : RulesFolder.files(topic, ".drl")) {
                faults.addAll(of(folder.path().relativize(file).toString(), Files.text(file)));
            }
        }
        return faults;
    }

    /** Of one text. */
    static List<String> of(String file, String text) {
        List<String> faults = new ArrayList<>();
        int line = 1;
        boolean condition = false;
        int at = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '\n') {
                line++;
                at++;
            } else if (c == '"') {
                int end = text.indexOf('"', at + 1);
                at = end < 0 ? text.length() : end + 1;
            } else if (text.startsWith("//", at)) {
                int end = text.indexOf('\n', at);
                at = end < 0 ? text.length() : end;
            } else if (Character.isLetter(c) || c == '$') {
                int end = at;
                while (end < text.length() && (Character.isLetterOrDigit(text.charAt(end)) || "_-$.".indexOf(text.charAt(end)) >= 0)) {
                    end++;
                }
                String word = text.substring(at, end);
                condition = word.equals("when") || condition && !word.equals("then");
                if (condition && ORDER.contains(word) || HYPHENED.contains(word) || word.equals("salience")) {
                    faults.add(file + ":" + line + ": `" + word + "` has no place in a rule");
                }
                at = end;
            } else {
                if (condition && Character.isDigit(c)) {
                    faults.add(file + ":" + line + ": a number stands in a rule");
                    while (at < text.length() && Character.isLetterOrDigit(text.charAt(at))) {
                        at++;
                    }
                    continue;
                }
                if (condition && ("+*/<>".indexOf(c) >= 0 || text.startsWith("!=", at))) {
                    faults.add(file + ":" + line + ": `" + c + "` has no place in a rule");
                }
                at++;
            }
        }
        return faults;
    }
}

package leadlamp.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.words.Vocabulary;

/** What was typed after a command: its words, and its options in either form, `--as json` or `--as=json`. */
final class Arguments {
    private final List<String> words = new ArrayList<>();
    private final Map<String, String> options = new TreeMap<>();

    private Arguments() {
    }

    /**
     * Takes them apart.
     *
     * @param typed   what was typed after the command
     * @param options name of each option to what it wants after it; empty where it stands alone
     */
    static Arguments of(List<String> typed, Map<String, String> options) throws Complaint {
        Arguments arguments = new Arguments();
        boolean plain = false;
        for (int i = 0; i < typed.size(); i++) {
            String word = typed.get(i);
            if (plain || !word.startsWith("-") || word.equals("-")) {
                arguments.words.add(word);
            } else if (word.equals("--")) {
                plain = true;
            } else {
                int equals = word.indexOf('=');
                String name = equals < 0 ? word : word.substring(0, equals);
                String wanted = options.get(name);
                if (wanted == null) {
                    throw unknown("option", name, options.keySet());
                }
                String value = "";
                if (!wanted.isEmpty() && equals < 0) {
                    if (i + 1 == typed.size()) {
                        throw new Complaint(name + " wants " + wanted + " after it.");
                    }
                    value = typed.get(++i);
                } else if (equals >= 0) {
                    if (wanted.isEmpty()) {
                        throw new Complaint(name + " stands alone and takes nothing after it.");
                    }
                    value = word.substring(equals + 1);
                }
                if (arguments.options.put(name, value) != null) {
                    throw new Complaint(name + " stands twice.");
                }
            }
        }
        return arguments;
    }

    static Complaint unknown(String what, String word, Collection<String> known) {
        String nearest = Vocabulary.nearest(word, known).map(n -> " Did you mean " + n + "?").orElse("");
        return new Complaint("There is no " + what + " " + Say.quoted(word) + "." + nearest + " Known: "
                + String.join(", ", known) + ".");
    }

    List<String> words() {
        return words;
    }

    boolean has(String option) {
        return options.containsKey(option);
    }

    Optional<String> value(String option) {
        return Optional.ofNullable(options.get(option));
    }

    /** The one word that is wanted. */
    String one(String what) throws Complaint {
        if (words.isEmpty()) {
            throw new Complaint("Which " + what + "? Name it after the command.");
        }
        if (words.size() > 1) {
            throw new Complaint("One " + what + " at a time, please; " + words.size() + " were named.");
        }
        return words.get(0);
    }
}

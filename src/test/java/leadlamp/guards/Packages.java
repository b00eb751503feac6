package leadlamp.guards;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One way through the house, and no way back: a package names only packages that stand before it. */
final class Packages {
    private static final List<String> ORDER = List.of("quantity", "calc", "words", "record", "facts", "derive", "judge",
            "audit", "past", "rank", "report", "bench", "teach", "cli");
    private static final Pattern NAMED = Pattern.compile("\\bleadlamp\\.([a-z]+)\\.[A-Za-z*]");
    private static final Pattern OWN = Pattern.compile("(?m)^package leadlamp\\.([a-z]+)");

    private Packages() {
    }

    static List<String> faults(Path sources) {
        List<String> faults = new ArrayList<>();
        for (Path file : Files.below(sources, ".java")) {
            String text = withoutComments(Files.text(file));
            Matcher own = OWN.matcher(text);
            if (!own.find()) {
                continue;
            }
            String here = own.group(1);
            Matcher named = NAMED.matcher(text);
            while (named.find()) {
                String other = named.group(1);
                if (!here.equals(other) && !here.equals("build") && (other.equals("build")
                        || ORDER.contains(other) && ORDER.contains(here) && ORDER.indexOf(other) > ORDER.indexOf(here))) {
                    faults.add(sources.relativize(file) + " names leadlamp." + other + ", which stands after " + here);
                }
            }
        }
        return faults;
    }

    private static String withoutComments(String text) {
        return text.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("//[^\n]*", "").replaceAll("\"(\\\\.|[^\"\\\\\n])*\"", "\"\"");
    }
}

package leadlamp.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import leadlamp.audit.Check;
import leadlamp.audit.Way;
import leadlamp.rank.RiskLevel;

/** Writes the page of a check as text: what it asks, how it wrecks an engine, how to settle it, what to do. */
public final class LessonWriter {
    private static final int LABEL = 12;

    private LessonWriter() {
    }

    /** The page of one check. */
    public static String page(Check check, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        out.strong(check.question());
        out.wrap("", 0, check.id() + ", " + Topics.said(check.topic()).toLowerCase(Locale.ROOT) + "; asked of "
                + check.askedOf() + ".");
        out.blank();
        out.wrap("", 0, check.teaches());
        out.title("How it wrecks an engine");
        for (String link : check.chain()) {
            out.wrap("  - ", 4, link);
        }
        out.wrap("  ", 2, check.severity().word() + " and " + check.likelihood().word() + ": "
                + RiskLevel.of(check.severity(), check.likelihood()).word() + "." + shifts(check));
        out.title("How to settle it");
        out.wrap("  ", 2, check.settleWith());
        for (Way way : check.ways()) {
            out.wrap("  - ", 4, way.name() + ": wants " + Wording.join(way.needs())
                    + (way.heeds().isEmpty() ? "." : "; heeds " + Wording.join(way.heeds()) + "."));
        }
        out.title("What to do");
        out.wrap("  ", 2, check.todo());
        for (String also : check.alsoCheck()) {
            out.wrap("  - ", 4, "also look at: " + also);
        }
        if (!check.caution().isEmpty()) {
            out.title(check.person() ? "Caution: it can hurt somebody" : "Caution");
            out.wrap("  ", 2, check.caution());
        }
        out.title("Based on");
        out.wrap("  ", 2, check.basis());
        return out.toString();
    }

    /** Up and down, by name, so that the page reads the same whatever order it was written in. */
    private static String shifts(Check check) {
        List<String> up = new ArrayList<>();
        List<String> down = new ArrayList<>();
        for (Map.Entry<String, Integer> shift : new TreeMap<>(check.shifts()).entrySet()) {
            (shift.getValue() > 0 ? up : down).add(shift.getKey());
        }
        return (up.isEmpty() ? "" : " One step likelier with: " + Wording.join(up) + ".")
                + (down.isEmpty() ? "" : " One step less with: " + Wording.join(down) + ".");
    }

    /** What a word means, and the checks that ask about it. */
    public static String word(String word, String gloss, Collection<Check> checks, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        out.strong(word);
        if (!gloss.isEmpty()) {
            out.wrap("", 0, Character.toUpperCase(gloss.charAt(0)) + gloss.substring(1) + ".");
        }
        out.title(checks.isEmpty() ? "No check asks about it yet" : "Checks that ask about it");
        for (Check check : checks) {
            out.wrap("  ", 4, check.id() + ": " + check.question());
        }
        return out.toString();
    }
}

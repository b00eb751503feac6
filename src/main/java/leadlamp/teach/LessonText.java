package leadlamp.teach;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import leadlamp.audit.Check;
import leadlamp.report.Sheet;
import leadlamp.report.Topics;

/** Writes a lesson for a terminal. */
public final class LessonText {
    private LessonText() {
    }

    /** The lesson. */
    public static String of(Lesson lesson, int width, boolean colour) {
        Check check = lesson.check();
        Sheet out = new Sheet(width, colour);
        out.strong(check.question());
        out.wrap("", 0, check.id() + ", " + Topics.said(check.topic()).toLowerCase(Locale.ROOT) + "; asked of "
                + check.askedOf() + ".");
        out.blank();
        out.wrap("", 0, check.teaches());
        out.title("How it wrecks an engine");
        int link = 1;
        for (String text : check.chain()) {
            out.wrap("  " + link++ + ". ", 5, text);
        }
        out.wrap("  ", 2, lesson.weight());
        out.title("How to settle it");
        out.wrap("  ", 2, check.settleWith());
        for (Measuring.Want want : lesson.wants()) {
            out.wrap("  - ", 4, want.word() + (want.how().isEmpty() ? "" : ": " + want.how()) + "."
                    + (want.gauge().isEmpty() ? "" : " Gauge: " + want.gauge() + "."));
        }
        shown(out, lesson.wrong().size() > 1 ? "Wrong, on the numbers of examples" : "Wrong, on the numbers of an example",
                lesson.wrong());
        shown(out, "Near misses: these are sound", lesson.near());
        shown(out, "Not enough to tell", lesson.open());
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
        out.wrap("  ", 2, lesson.basis());
        out.blank();
        out.wrap("", 0, Handbook.FIRST);
        return out.toString();
    }

    private static void shown(Sheet out, String title, List<Lesson.Shown> all) {
        if (all.isEmpty()) {
            return;
        }
        out.title(title);
        for (Lesson.Shown one : all) {
            out.wrap("  - ", 4, upper(one.name()) + ".");
            lines(out, "sound", one.before());
            lines(out, "here", one.says());
            lines(out, "sheet", one.sheet());
            for (String erased : one.erased()) {
                out.wrap("      not recorded: ", 8, erased);
            }
            one.answer().forEach(text -> out.wrap("      says: ", 12, text));
            one.sums().forEach(text -> out.wrap("      sum: ", 11, text));
            one.against().forEach(text -> out.wrap("      reading: ", 15, text));
        }
    }

    private static void lines(Sheet out, String label, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            out.wrap(i == 0 ? "      " + label + ": " : "        ", 10, lines.get(i));
        }
    }

    static String upper(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** What a word means, how it is read, and the checks that ask about it. */
    public static String word(String word, String gloss, String gauge, Collection<Check> checks, int width, boolean colour) {
        Sheet out = new Sheet(width, colour);
        out.strong(word);
        if (!gloss.isEmpty()) {
            out.wrap("", 0, upper(gloss) + ".");
        }
        if (!gauge.isEmpty()) {
            out.wrap("", 0, "Usual gauge: " + gauge + ".");
        }
        out.title(checks.isEmpty() ? "No check asks about it yet" : "Checks that ask about it");
        for (Check check : checks) {
            out.wrap("  ", 4, check.id() + ": " + check.question());
        }
        return out.toString();
    }
}

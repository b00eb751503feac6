package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import leadlamp.record.Problem;

/** A problem of a record as text: what and where, the line with what is meant underlined, what was expected. */
public final class ProblemText {
    private static final String INDENT = "    ";
    private static final String CUT = "...";
    /** How much of a very long line is shown, and how much of it before what is meant. */
    private static final int MOST = 100;
    private static final int BEFORE = 40;

    private ProblemText() {
    }

    /** As it is printed, line by line. */
    public static List<String> block(Problem problem) {
        List<String> lines = new ArrayList<>();
        lines.add(Plain.of(problem.where() + ": " + problem.what()));
        if (!problem.line().isEmpty()) {
            quote(problem, lines);
        }
        String expected = expected(problem);
        if (!expected.isEmpty()) {
            lines.add("  " + expected);
        }
        if (!problem.rest().isEmpty()) {
            lines.add("  " + Plain.of(problem.rest()));
        }
        return lines;
    }

    /** In one line, without the place. */
    public static String message(Problem problem) {
        StringBuilder text = new StringBuilder(problem.what());
        String expected = expected(problem);
        if (!expected.isEmpty()) {
            text.append(' ').append(expected);
        }
        if (!problem.rest().isEmpty()) {
            text.append(' ').append(problem.rest());
        }
        return Plain.of(text.toString());
    }

    private static String expected(Problem problem) {
        String nearest = problem.nearest().isPresent() ? "Nearest word: " + problem.nearest().get() + "." : "";
        String expected = problem.expected();
        return Plain.of(nearest.isEmpty() || expected.isEmpty() ? nearest + expected : nearest + " " + expected);
    }

    private static void quote(Problem problem, List<String> lines) {
        String line = problem.line();
        int start = 0;
        while (start < line.length() && Character.isWhitespace(line.charAt(start))) {
            start++;
        }
        int end = line.length();
        while (end > start && Character.isWhitespace(line.charAt(end - 1))) {
            end--;
        }
        int meant = Math.max(start, Math.min(problem.where().column() - 1, end));
        int until = Math.max(meant, Math.min(meant + problem.length(), end));
        boolean cutBefore = false;
        boolean cutAfter = false;
        if (end - start > MOST) {
            if (meant - start > BEFORE) {
                start = whole(line, meant - BEFORE);
                cutBefore = true;
            }
            if (end - start > MOST) {
                end = whole(line, start + MOST);
                cutAfter = true;
            }
            until = Math.min(until, end);
        }
        String before = (cutBefore ? CUT : "") + Plain.of(line.substring(start, meant));
        String what = Plain.of(line.substring(meant, until));
        lines.add(INDENT + before + what + Plain.of(line.substring(until, end)) + (cutAfter ? CUT : ""));
        if (!what.isEmpty()) {
            lines.add(INDENT + " ".repeat(columns(before)) + "~".repeat(columns(what)));
        }
    }

    /** A pair of halves is one character and is not cut through. */
    private static int whole(String line, int at) {
        return Character.isLowSurrogate(line.charAt(at)) ? at - 1 : at;
    }

    private static int columns(String text) {
        return text.codePointCount(0, text.length());
    }
}

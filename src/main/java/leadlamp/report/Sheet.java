package leadlamp.report;

import leadlamp.rank.RiskLevel;

/** Lines of a terminal: wrapped at its width, coloured where it has colours, and steered by nothing from a record. */
public final class Sheet {
    /** Narrower than this nothing can be read; wider lines tire the eye. */
    private static final int NARROWEST = 40;
    private static final int WIDEST = 110;
    private static final String BOLD = "\u001B[1m";
    private static final String PLAIN = "\u001B[0m";

    private final StringBuilder out = new StringBuilder(8192);
    private final int width;
    private final int cut;
    private final boolean colour;

    public Sheet(int width, boolean colour) {
        this.width = Math.max(NARROWEST, Math.min(WIDEST, width));
        this.cut = Math.max(NARROWEST, width);
        this.colour = colour;
    }

    public void blank() {
        out.append('\n');
    }

    public void title(String title) {
        blank();
        strong(title);
    }

    public void strong(String text) {
        if (colour) {
            out.append(BOLD);
        }
        wrap("", 0, text);
        if (colour) {
            out.insert(out.length() - 1, PLAIN);
        }
    }

    /** The first line of a finding: its number, its level and the rest. */
    public void level(String before, RiskLevel level, String after) {
        int start = out.length();
        wrap(before, before.length(), level.word() + after);
        if (colour) {
            int at = start + before.length();
            out.insert(at + level.word().length(), PLAIN);
            out.insert(at, paint(level));
        }
    }

    private static String paint(RiskLevel level) {
        return switch (level) {
            case HIGH -> "\u001B[1;31m";
            case SERIOUS -> "\u001B[1;33m";
            case MEDIUM -> "\u001B[1;36m";
            default -> BOLD;
        };
    }

    /** A line of a file, as it is. */
    public void verbatim(String line) {
        out.append(Plain.of(line)).append('\n');
    }

    /** One line, cut where the terminal ends. */
    public void cut(String line) {
        String text = Plain.of(line);
        if (text.codePointCount(0, text.length()) > cut) {
            text = text.substring(0, text.offsetByCodePoints(0, cut - 3)) + "...";
        }
        out.append(text).append('\n');
    }

    /** Wraps the text after what stands before it; the further lines are set in by so many columns. */
    public void wrap(String before, int indent, String raw) {
        String text = Plain.of(raw);
        out.append(before);
        int column = before.length();
        boolean fresh = true;
        int at = 0;
        while (at < text.length()) {
            int end = text.indexOf(' ', at);
            end = end < 0 ? text.length() : end;
            int columns = text.codePointCount(at, end);
            if (!fresh && column + 1 + columns > width) {
                out.append('\n').append(" ".repeat(indent));
                column = indent;
                fresh = true;
            }
            if (!fresh) {
                out.append(' ');
                column++;
            }
            while (column + columns > width && columns > 0) {
                int room = Math.max(1, width - column);
                int cut = text.offsetByCodePoints(at, Math.min(room, columns));
                out.append(text, at, cut);
                columns = text.codePointCount(cut, end);
                at = cut;
                if (columns > 0) {
                    out.append('\n').append(" ".repeat(indent));
                    column = indent;
                } else {
                    column = width;
                }
            }
            out.append(text, at, end);
            column += columns;
            fresh = false;
            at = end + 1;
        }
        out.append('\n');
    }

    @Override
    public String toString() {
        return out.toString();
    }
}

package leadlamp.record;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A date as a builder writes it, read as its ends: `2026-03-14`, `2026-03`, `2026`, `spring 2026`; or `4 months ago`, which
 * counts back from the latest date of the record.
 *
 * @param first    first day that it may be; for one counted back, months before the latest date, as a day of nothing
 * @param last     last day that it may be
 * @param monthsAgo months before the latest date of the record; -1 for a plain date
 */
public record Dates(LocalDate first, LocalDate last, int monthsAgo) {
    private static final Map<String, Integer> SEASONS = Map.of("spring", 3, "summer", 6, "autumn", 9);

    /** Reads a date; empty where the text is none. */
    public static Optional<Dates> read(String text) {
        String words = text.strip().toLowerCase(Locale.ROOT);
        try {
            if (digits(words, "dddd-dd-dd")) {
                LocalDate day = LocalDate.of(number(words, 0, 4), number(words, 5, 7), number(words, 8, 10));
                return Optional.of(new Dates(day, day, -1));
            }
            if (digits(words, "dddd-dd")) {
                YearMonth month = YearMonth.of(number(words, 0, 4), number(words, 5, 7));
                return Optional.of(new Dates(month.atDay(1), month.atEndOfMonth(), -1));
            }
            if (digits(words, "dddd")) {
                int year = Integer.parseInt(words);
                return Optional.of(new Dates(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31), -1));
            }
        } catch (DateTimeException none) {
            return Optional.empty();
        }
        int blank = words.indexOf(' ');
        if (blank > 0 && digits(words.substring(blank + 1), "dddd")) {
            int year = Integer.parseInt(words.substring(blank + 1));
            String season = words.substring(0, blank);
            if (season.equals("winter")) {
                return Optional.of(new Dates(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31), -1));
            }
            Integer month = SEASONS.get(season);
            if (month != null) {
                return Optional.of(new Dates(LocalDate.of(year, month, 1),
                        YearMonth.of(year, month + 2).atEndOfMonth(), -1));
            }
        }
        if (words.endsWith(" ago")) {
            String[] parts = words.split(" ");
            if (parts.length == 3 && !parts[0].isEmpty() && digits(parts[0], "d".repeat(parts[0].length()))
                    && parts[0].length() < 4) {
                int count = Integer.parseInt(parts[0]);
                int months = parts[1].startsWith("month") ? count : parts[1].startsWith("year") ? 12 * count : -1;
                if (months >= 0) {
                    return Optional.of(new Dates(LocalDate.EPOCH, LocalDate.EPOCH, months));
                }
            }
        }
        return Optional.empty();
    }

    private static int number(String text, int from, int to) {
        return Integer.parseInt(text, from, to, 10);
    }

    private static boolean digits(String text, String shape) {
        if (text.length() != shape.length()) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            boolean digit = text.charAt(i) >= '0' && text.charAt(i) <= '9';
            if (shape.charAt(i) == 'd' ? !digit : text.charAt(i) != shape.charAt(i)) {
                return false;
            }
        }
        return true;
    }
}

package leadlamp.words;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/** Edit distance with swapped neighbours; a word is near when at most a third of its letters differ. */
final class Nearest {
    private Nearest() {
    }

    static Optional<String> of(String word, Collection<String> words) {
        String wanted = word.toLowerCase(Locale.ROOT).strip();
        String best = null;
        int least = Math.max(1, Math.min((wanted.length() + 1) / 3, 4)) + 1;
        for (String candidate : new TreeSet<>(words)) {
            if (Math.abs(candidate.length() - wanted.length()) < least) {
                int distance = distance(wanted, candidate, least);
                if (distance < least) {
                    least = distance;
                    best = candidate;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static int distance(String a, String b, int enough) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            int row = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int d = Math.min(Math.min(now[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d = Math.min(d, before[j - 2] + 1);
                }
                now[j] = d;
                row = Math.min(row, d);
            }
            if (row >= enough) {
                return enough;
            }
            int[] spare = before;
            before = last;
            last = now;
            now = spare;
        }
        return last[b.length()];
    }
}

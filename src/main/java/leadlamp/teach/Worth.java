package leadlamp.teach;

import leadlamp.rank.RiskLevel;

/**
 * What a look is worth: the worst that hides behind it times how much it settles, for the stripping that it costs. Each open
 * question counts by its risk level, a level twice the next lower one, and in full where the look settles it by itself, by half
 * where it wants something beside it. What a bad sign elsewhere has raised counts as a question of the worst level that the look
 * settles. Each depth of stripping costs twice the one before. These are an order of work, common practice and no source; no
 * probability is meant, and the figure is never shown.
 *
 * @param value what it settles, in halves of the lowest level
 * @param reach how deep one must go for it
 */
record Worth(long value, int reach) implements Comparable<Worth> {
    private static final int WHOLE = 2;
    private static final int HALF = 1;

    /** What one open question adds. */
    static long question(RiskLevel level, boolean alone) {
        return ((long) (alone ? WHOLE : HALF)) << (RiskLevel.values().length - 1 - level.ordinal());
    }

    /** What so many raised events add. */
    static long raised(int many) {
        return many * question(RiskLevel.values()[0], true);
    }

    /** The one worth more comes first; of two worth the same, the one that costs less. */
    @Override
    public int compareTo(Worth other) {
        int shared = Math.min(reach, other.reach);
        int order = Long.compare(other.value << (reach - shared), value << (other.reach - shared));
        return order != 0 ? order : Integer.compare(reach, other.reach);
    }
}

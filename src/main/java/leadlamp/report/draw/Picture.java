package leadlamp.report.draw;

/** A picture of a report. What it shows is worked out before; here it is only drawn. */
public interface Picture {
    /** What it is of, in a few words. */
    String title();

    /** The same in words, for whoever does not see it. */
    String text();

    /** The drawing, to stand inside a page; its colours are those of the page. */
    String svg();
}

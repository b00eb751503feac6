package leadlamp.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlamp.rank.RiskLevel;
import leadlamp.record.Fingerprint;
import leadlamp.record.Where;
import leadlamp.report.draw.Picture;

/**
 * A report, whole: whatever a writer prints stands here, worked out. Texts are as they are read; making them harmless
 * for a terminal or a page is the writer's part.
 *
 * @param heading   what was audited
 * @param standing  what stands between this engine and its next step
 * @param tally     how much of each
 * @param found     what was found, worst first
 * @param findings  the same, what is found of one check alike at several places told once
 * @param accepted  what was found and the builder lives with
 * @param lived     the same, told once
 * @param open      what cannot be told and is due now, worst first
 * @param groups    those of them that the work told of reached, each once, under what would settle most
 * @param beyond    the others likewise: of parts that were closed before and on which the record tells of no work
 * @param advice    the one reading or look that settles most; absent where nothing is open
 * @param later     what cannot be told and is not due yet
 * @param clear     what is clear, by topic, check and place
 * @param topics    the same, a line a topic
 * @param leftOut   what the reader could not take
 * @param remarks   what the reader of the report must know beside: an acceptance that accepts nothing
 * @param worked    what was worked out
 * @param matrix    the findings in the risk matrix; absent where there are none
 * @param ladder    the steps with their last chances; absent where the steps are not known
 * @param cautions  what always stands
 * @param limits    what Leadlamp does not know
 * @param gasket    gap and ratio with each gasket on offer, one picture; none where the sheet offers none or the pistons were not read
 * @param photos    the photographs that the record names, where the form of the report can show them
 * @param since     what became of an earlier answer; absent where there is none to hold this one against
 */
public record ReportModel(Heading heading, Standing standing, Tally tally, List<Item> found, List<Finding> findings,
        List<Item> accepted, List<Finding> lived, List<Item> open, List<Group> groups, List<Group> beyond, Optional<Advice> advice, List<Item> later, List<ClearItem> clear,
        List<Topic> topics, List<LeftOut> leftOut, List<String> remarks, List<Worked> worked,
        Optional<Picture> matrix, Optional<Picture> ladder, List<String> cautions, List<String> limits,
        List<Picture> gasket, List<Photo> photos, Optional<Since> since) {

    /** The same report with photographs to show. */
    public ReportModel photos(List<Photo> shown) {
        return new ReportModel(heading, standing, tally, found, findings, accepted, lived, open, groups, beyond, advice, later, clear, topics,
                leftOut, remarks, worked, matrix, ladder, cautions, limits, gasket, shown, since);
    }

    /** The same report, held against an earlier answer. */
    public ReportModel since(Since earlier) {
        return new ReportModel(heading, standing, tally, found, findings, accepted, lived, open, groups, beyond, advice, later, clear, topics,
                leftOut, remarks, worked, matrix, ladder, cautions, limits, gasket, photos, Optional.of(earlier));
    }

    /**
     * What was audited.
     *
     * @param name      what the builder calls it
     * @param file      the record
     * @param bytes     SHA-256 of its bytes
     * @param sheet     the engine's name
     * @param sheetFile the engine sheet
     * @param sheetFrom manual and page that it was copied from
     * @param stage     the furthest steps done
     * @param next      the step that comes next, or the steps that may
     */
    public record Heading(String name, String file, Fingerprint bytes, String sheet, String sheetFile, String sheetFrom,
            List<String> stage, List<String> next) {
    }

    /**
     * What stands between this engine and its next step.
     *
     * @param sentence in one sentence
     * @param first    the first things to do, in their order
     * @param putRight all that was found and must be put right before that step, worst first
     */
    public record Standing(String sentence, List<First> first, List<Finding> putRight) {
    }

    /**
     * One of the first things to do.
     *
     * @param mark   risk level, or how many questions it settles
     * @param person whether it can hurt somebody
     * @param text   what it is
     * @param todo   what to do about it; empty where the text says so
     * @param anchor where the report says more; empty where it is for a record that holds nothing yet
     */
    public record First(String mark, boolean person, String text, String todo, String anchor) {
    }

    /**
     * How much of each, one a check and place.
     *
     * @param text the same in a line, what was found counted as it is told
     */
    public record Tally(int found, int high, int serious, int medium, int low, int person, int accepted, int open,
            int later, int clear, int leftOut, String text) {
    }

    /**
     * One answer that is found or cannot be told.
     *
     * @param check      id of the check
     * @param topic      its topic
     * @param question   what was asked
     * @param of         the part, joint or reading asked of; may be empty
     * @param at         the place as it is written in a record
     * @param place      the same, said
     * @param outcome    found or cannot tell
     * @param ways       the ways that found; empty where it cannot be told
     * @param risk       its level; of a question that is open, the level it would have
     * @param weighing   how the level came about, a sentence each
     * @param certainty  proven or inferred; absent where it cannot be told
     * @param person     whether it can hurt somebody
     * @param lastChance the step that closes it; absent where none does
     * @param byWhen     the same as a sentence
     * @param text       what is wrong, or why it cannot be told
     * @param evidence   the lines that it rests on
     * @param sums       the sums redone, each in one line
     * @param measures   each value against its limit, with whose limit it is
     * @param chain      from cause to harm
     * @param todo       what to do
     * @param alsoCheck  what else to check
     * @param settleWith how to settle it at the bench
     * @param caution    where it can hurt somebody
     * @param teaches    what there is to learn
     * @param basis      what it is based on
     * @param accepted   by whom and until when the builder lives with it
     * @param because    why it cannot be told
     * @param room       of the figure that is farthest outside its limit how far, below 0, as a share of the window; 0 where none is
     * @param pictures   its pictures
     */
    public record Item(String check, String topic, String question, String of, String at,
            String place, Outcome outcome, List<String> ways, Optional<RiskLevel> risk, List<String> weighing,
            Optional<String> certainty, boolean person, Optional<String> lastChance, String byWhen, String text,
            List<Evidence> evidence, List<String> sums, List<String> measures, List<String> chain, String todo,
            List<String> alsoCheck, String settleWith, String caution, String teaches, String basis,
            Optional<Acceptance> accepted, List<Because> because, float room, List<Picture> pictures) {
    }

    /**
     * What was found of one check at one place, or alike at several.
     *
     * @param anchor   its name within the report: `found-1`
     * @param number   its number in its list
     * @param places   its places, said
     * @param texts    what is wrong, each sentence once
     * @param evidence the lines of all places, each once
     * @param sums     the sums of all places
     * @param measures the values of all places
     * @param open     what is still open of its other ways, each once
     * @param pictures the pictures of all places, each quantity once
     * @param items    its items; what is not told above is the same in all of them
     */
    public record Finding(String anchor, int number, String places, List<String> texts, List<Evidence> evidence,
            List<String> sums, List<String> measures, List<String> open, List<Picture> pictures, List<Item> items) {
        /** That which is the same at all places. */
        public Item lead() {
            return items.get(0);
        }
    }

    /** The three outcomes. */
    public enum Outcome {
        FOUND("found"), CLEAR("clear"), CANNOT_TELL("cannot tell");

        private final String word;

        Outcome(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** A line of the record or the sheet, and what it says. */
    public record Evidence(Where where, String says) {
    }

    /** By whom, why and until when a finding is lived with. */
    public record Acceptance(String reason, String who, String until, Where where) {
    }

    /**
     * Why it cannot be told.
     *
     * @param why      the kind of gap
     * @param need     the word that is wanted
     * @param places   where
     * @param readings what would settle it
     * @param outside  probability of being outside where it was measured
     * @param way      the way that needs it
     * @param text     the same as a sentence
     */
    public record Because(String why, String need, List<String> places, List<String> readings, OptionalDouble outside,
            String way, String text) {
    }

    /**
     * Open questions that one thing would settle.
     *
     * @param todo   what to do, as an order
     * @param at     where; empty for the engine as a whole
     * @param gauge  the gauge that is usual for it; empty where none is
     * @param how    how the page of the worst question says to settle it
     * @param also   what some of them want beside it
     * @param asked   the questions, a check a line, worst first
     * @param reasons why they cannot be told
     * @param odds    those of the reasons that give a chance of being outside
     * @param items   the questions, each at its place
     */
    public record Group(String todo, String at, String gauge, String how, List<String> also, List<Question> asked,
            List<String> reasons, List<String> odds, List<Item> items) {
    }

    /**
     * One check whose question is open.
     *
     * @param risk   level that it would have at the worst of its places
     * @param person whether it can hurt somebody
     * @param places where it is open; empty for the engine as a whole
     */
    public record Question(String check, String question, Optional<RiskLevel> risk, boolean person, String places) {
    }

    /**
     * The one reading or look that settles the most and worst open questions.
     *
     * @param todo    what to do, as an order
     * @param at      where; empty for the engine as a whole
     * @param gauge   the gauge that is usual for it; empty where none is
     * @param reach   what has to come off to get at it
     * @param how     how the page of the worst question says to settle it
     * @param because why this one, a sentence each
     */
    public record Advice(String todo, String at, String gauge, String reach, String how, List<String> because) {
    }

    /** One answer that is clear. The text holds its margins. */
    public record ClearItem(String check, String topic, String of, String at, String place,
            Optional<String> lastChance, boolean person, String text, List<Evidence> evidence) {
    }

    /**
     * What is clear in a topic.
     *
     * @param topic   the topic
     * @param clear   how many answers
     * @param closest the value that comes closest to its limit; empty where nothing was measured
     */
    public record Topic(String topic, int clear, String closest, List<ClearItem> items) {
    }

    /**
     * What the reader could not take.
     *
     * @param message in one line
     * @param block   line by line, with the text of the line and what is meant underlined
     */
    public record LeftOut(Where where, String message, List<String> block) {
    }

    /**
     * A value that was worked out.
     *
     * @param text    with doubt and unit
     * @param low     low end in its unit, with its decimals; empty where it is open
     * @param high    high end likewise
     * @param doubt   expanded doubt, in its unit
     * @param verdict within, below, above or undecided; empty where there is no limit
     * @param least   least allowed, in its unit; empty where there is none
     * @param most    most allowed, likewise
     * @param whose   whose limit it is: sheet, supplier or trade
     * @param basis   where the limit comes from
     */
    public record Worked(String of, String at, String text, String low, String high, String doubt, String unit,
            String sum, String verdict, String least, String most, String whose, String basis) {
    }

    /**
     * What became of an earlier answer.
     *
     * @param file     the earlier answer
     * @param bytes    SHA-256 of the record that it was given to
     * @param sentence how much is new, worse and settled
     * @param told     the changes as they are read, those of one check that say the same once
     * @param fresh    found now, and not before
     * @param worse    heavier than before, accepted no longer, or clear before and to be told no longer
     * @param settled  found or open before, and now clear, accepted, found no longer or asked no longer
     * @param before   what each answer was, by {@link #key}
     */
    public record Since(String file, String bytes, String sentence, List<Told> told, List<Change> fresh, List<Change> worse,
            List<Change> settled, Map<String, String> before) {
        /** An answer is known again by what was asked and where, never by its line. */
        static String key(String check, String of, String at) {
            return check + '\n' + of + '\n' + at;
        }
    }

    /**
     * One answer that is another than it was.
     *
     * @param was what it was: found, clear, cannot tell ...
     * @param now what it is
     */
    public record Change(String check, String of, String at, String was, String now) {
    }

    /**
     * Changes as they are read.
     *
     * @param kind   new, worse or settled
     * @param text   which check, where, and what it was
     * @param anchor where the report says more; empty where it does not
     */
    public record Told(String kind, String text, String anchor) {
    }

    /**
     * A photograph that the record names.
     *
     * @param anchor  its name within the report: `photo-1`
     * @param caption what the record says of it
     * @param alt     the same for whoever does not see it
     * @param data    the picture, small and without its hidden data, as a reference that holds it; empty where it cannot be shown
     * @param width   of the small picture, in pixels
     * @param height  likewise
     * @param problem why it cannot be shown; empty where it can
     * @param lines   the lines of the record that it belongs to
     */
    public record Photo(String anchor, String caption, String alt, String data, int width, int height, String problem,
            List<Evidence> lines) {
    }
}

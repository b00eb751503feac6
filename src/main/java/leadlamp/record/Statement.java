package leadlamp.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Written;

/**
 * One thing that a record or sheet says, of one subject at one place. `at: each` makes one for each place; those of one
 * entry share their line ({@code where}), so a figure said of several places (`least 3 mm, at: each`) can be put together
 * again. A maker's figure in a part's entry (`compressed thickness: 1.10 mm`) is a READ whose only gauge is `label`; a size
 * of a part that has run, which no box gives, is a READ of no gauge with the aside {@link #OF_PART}. The torque of a joint is a READ of `joint torque`; a size told beside a sign (`amount: 0.8 mm`) is a STATED word of the part
 * (`play amount`) with its value; a step is STATED of `steps` with its date under the aside `date`.
 *
 * @param form   what kind of thing is said
 * @param of     subject: a part, a joint's word `joint`, a quantity, a section (`use`, `steps`), a gauge's word `gauge`
 * @param at     the place, whole (`main 3`, `oil pump to block`, `engine`)
 * @param what   the property or the sign (`form`, `state`, `scuffed`); for a READ its mark: empty, `as found` or `as trial`
 * @param says   the word said (`hollow`); empty for a READ; for a SIGN empty
 * @param value  the value, for READ and for a word that is a size (a part's diameter, a sheet's length)
 * @param gauges names of the record's gauges or kinds, for READ
 * @param asides what it was taken at: `state` hot, `speed` 3000 rpm, `span` ...; in the record's own words
 * @param told   who told it, where it is not the builder's own knowledge
 * @param where  its line
 * @param text   the entry's line as written, for the reader of the report
 */
public record Statement(Form form, String of, String at, String what, String says, Optional<Written> value,
        List<String> gauges, Map<String, String> asides, Optional<String> told, Where where, String text) {

    /** The aside of a figure that stands in a part's entry and was read of that part. */
    public static final String OF_PART = "of the part";
    /** The gauge of a maker's figure. */
    public static final String LABEL = "label";

    /** Whether it is a figure of a part's entry, which a reading goes before. */
    public boolean inPartsEntry() {
        return gauges.equals(List.of(LABEL)) || asides.containsKey(OF_PART);
    }

    /** What kind of thing a statement says. */
    public enum Form {
        /** A word said of a part, joint, section, gauge: Stated. */
        STATED,
        /** A value read: Value. */
        READ,
        /** A sign seen: Seen. */
        SEEN,
        /** A sign looked for and not there: NotSeen. */
        NOT_SEEN,
        /** A line of the engine sheet: OnSheet, with a value where the line is a size. */
        ON_SHEET
    }

    /** What this statement is about; a later one of the same key takes its place when a case changes a record. */
    public record Key(Form form, String of, String at, String what) {
        // Written by hand: what the compiler makes of a record costs milliseconds at its first call.
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && form == key.form && of.equals(key.of) && at.equals(key.at) && what.equals(key.what);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * (31 * form.ordinal() + of.hashCode()) + at.hashCode()) + what.hashCode();
        }
    }

    public Key key() {
        return new Key(form == Form.NOT_SEEN ? Form.SEEN : form, of, at, what);
    }
}

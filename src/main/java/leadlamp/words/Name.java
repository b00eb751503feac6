package leadlamp.words;

/**
 * What a check's `needs`, `heeds` and `applies` and a condition's `reads` name: one word of the record or of the engine
 * sheet, made from the fields of the fact that carries it. {@code of} and {@code what} are those fields.
 */
public sealed interface Name {
    /** The fact's subject; a reading, a section, `joint`; with ` as found` where it was marked so. */
    String of();

    /** The fact's property, sign or mark of a place; empty for a value and a condition. */
    String what();

    /** A word of a part: `cam gear pin form`, `piston as found state`. */
    record PartWord(String of, String what) implements Name {
    }

    /** A sign at a part: `piston skirt scuffed`. */
    record SignOf(String of, String what) implements Name {
    }

    /** An aside of a sign: `piston skirt scuffed pattern`, `piston skirt polished as`. */
    record SignAside(String of, String sign, String aside) implements Name {
        @Override
        public String what() {
            return sign + " " + aside;
        }
    }

    /**
     * A value: `crankpin diameter`, `cylinder bore as found`.
     *
     * @param mark `as found`, `as trial` or empty
     */
    record QuantityName(String quantity, String mark) implements Name {
        @Override
        public String of() {
            return mark.isEmpty() ? quantity : quantity + " " + mark;
        }

        @Override
        public String what() {
            return "";
        }
    }

    /** What a reading was taken at, or what was said in place of a figure: `crankpin diameter state`, `... figure`. */
    record ReadingAside(String of, String what) implements Name {
    }

    /** A line of the engine sheet: `sheet layout lash`, `sheet joint lubricant`, `sheet standard bore`. */
    record SheetWord(String of, String what) implements Name {
    }

    /** A word of a section: `use duty`, `steps valve leak tested`, `machining block face`, `gauge kind`. */
    record SectionWord(String of, String what) implements Name {
    }

    /** A word of a joint's entry: `joint lubricant`, `joint torque said`. */
    record JointWord(String what) implements Name {
        @Override
        public String of() {
            return "joint";
        }
    }

    /** The torque of a joint. */
    record JointTorque() implements Name {
        @Override
        public String of() {
            return "joint torque";
        }

        @Override
        public String what() {
            return "";
        }
    }

    /** A word of whatever a check's group runs over: `any part origin`, `any reading`, `any sign`, `any step`. */
    record AnyWord(String of, String what) implements Name {
    }

    /** A named condition of the whole build: `condition wet liners`. */
    record ConditionName(String of) implements Name {
        @Override
        public String what() {
            return "";
        }
    }
}

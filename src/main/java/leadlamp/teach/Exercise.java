package leadlamp.teach;

import java.util.List;
import java.util.Map;

/**
 * An invented record with faults in it.
 *
 * @param id     what its answers name it by: the first figures of the SHA-256 of the record
 * @param seed   by which it is made again
 * @param topic  of its faults; empty where they are of any
 * @param record the text of the record
 * @param files  the engine sheet, by its path beside the record
 * @param faults what was planted
 */
public record Exercise(String id, long seed, String topic, String record, Map<String, String> files, List<Fault> faults) {
    /** What the record is called in its folder. */
    public static final String RECORD = "record.yaml";
    /** What the answer file is called in its folder. */
    public static final String ANSWERS = "answers.yaml";
    private static final int ROWS = 2;

    /**
     * A planted fault.
     *
     * @param check  the check that finds it
     * @param name   what happened, in the words of the case that it was taken from
     * @param places where the check finds it
     * @param says   the sentences of the audit
     * @param lines  lines of the record that show it
     */
    record Fault(String check, String name, List<String> places, List<String> says, List<Integer> lines) {
    }

    /** The answer file, laid out for the apprentice. */
    public String answers() {
        StringBuilder text = new StringBuilder("""
                # What would you stop for in record.yaml, and why? An entry for each thing; take away and add entries as you need them.
                #   line:  the line of record.yaml that shows it
                #   check: the name of the check, where you know it (leadlamp why CHECK); one of line and check is enough
                #   at:    where: a cylinder, a bearing, a joint
                #   why:   what is wrong and how it wrecks the engine, in your own words; nobody marks this but you
                # Then type: leadlamp mark answers.yaml
                """);
        text.append("exercise: ").append(id).append("   # says which record this belongs to; leave it\n");
        text.append("apprentice: ''\nstop for:\n");
        for (int i = 0; i < faults.size() + ROWS; i++) {
            text.append("  - { line: '', check: '', at: '', why: '' }\n");
        }
        return text.toString();
    }
}

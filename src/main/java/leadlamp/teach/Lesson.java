package leadlamp.teach;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.audit.Case;
import leadlamp.audit.Check;
import leadlamp.audit.Expected;
import leadlamp.audit.Gap;
import leadlamp.audit.Way;
import leadlamp.rank.RiskLevel;
import leadlamp.report.ReportModel;
import leadlamp.report.Wording;

/**
 * A check as a lesson.
 *
 * @param check the check
 * @param wants what must be read or seen, and with what
 * @param wrong a case of each way that is wrong, worked
 * @param near  cases near to it that are sound
 * @param open  cases in which it cannot be told
 */
public record Lesson(Check check, List<Measuring.Want> wants, List<Shown> wrong, List<Shown> near, List<Shown> open) {
    private static final int NEAR = 4;
    private static final int OPEN = 3;
    /** How a clear answer begins that holds nothing against a limit. */
    private static final String NOTHING = "Nothing found";

    /**
     * A case as it is shown.
     *
     * @param name   what happened
     * @param says   what the record says
     * @param sheet  what the engine sheet says, where the case is about that
     * @param erased what is not recorded
     * @param before what stands there in the sound build
     * @param answer what the audit says of it, place by place
     * @param sums   the sums, worked on these numbers
     * @param against each value against its limit
     */
    record Shown(String name, List<String> says, List<String> sheet, List<String> erased, List<String> before,
            List<String> answer, List<String> sums, List<String> against) {
    }

    /** Makes the lesson of a check. */
    public static Lesson of(Check check, Examples examples) {
        List<Case> cases = examples.book().of(check.id());
        List<Shown> wrong = new ArrayList<>();
        Set<Case> used = new LinkedHashSet<>();
        for (Way way : check.ways()) {
            for (Case one : cases) {
                if (foundBy(one, way.name())) {
                    if (used.add(one)) {
                        wrong.add(shown(examples.work(one)));
                    }
                    break;
                }
            }
        }
        List<Shown> near = new ArrayList<>();
        List<Shown> open = new ArrayList<>();
        for (Case one : cases) {
            if (near.size() < NEAR && all(one, Expected.IsClear.class) && !says(one)) {
                near.add(one.change().get("measurements").isPresent() ? sound(examples.work(one)) : plain(one, "Clear."));
            } else if (open.size() < OPEN && some(one, Expected.Untold.class)) {
                open.add(plain(one, untold(one)));
            }
        }
        return new Lesson(check, new Measuring(examples.words()).of(check), List.copyOf(wrong), List.copyOf(near),
                List.copyOf(open));
    }

    /** How bad and how likely it is, and what makes it likelier. */
    String weight() {
        List<String> up = new ArrayList<>();
        List<String> down = new ArrayList<>();
        for (Map.Entry<String, Integer> shift : new TreeMap<>(check.shifts()).entrySet()) {
            (shift.getValue() > 0 ? up : down).add(shift.getKey());
        }
        return check.severity().word() + " and " + check.likelihood().word() + ": " + level().word() + "."
                + (up.isEmpty() ? "" : " One step likelier with: " + Wording.join(up) + ".")
                + (down.isEmpty() ? "" : " One step less likely with: " + Wording.join(down) + ".");
    }

    RiskLevel level() {
        return RiskLevel.of(check.severity(), check.likelihood());
    }

    /** What it rests on, as a sentence. */
    String basis() {
        String basis = LessonText.upper(check.basis());
        return basis.endsWith(".") ? basis : basis + ".";
    }

    private static boolean says(Case one) {
        return one.change().fields().isEmpty() && one.sheet().fields().isEmpty();
    }

    private static boolean foundBy(Case one, String way) {
        for (Expected expected : one.expect().values()) {
            if (expected instanceof Expected.FoundBy found && found.ways().contains(way)) {
                return true;
            }
        }
        return false;
    }

    private static boolean all(Case one, Class<? extends Expected> kind) {
        return one.expect().values().stream().allMatch(kind::isInstance);
    }

    private static boolean some(Case one, Class<? extends Expected> kind) {
        return one.expect().values().stream().anyMatch(kind::isInstance);
    }

    private static String untold(Case one) {
        Set<String> said = new LinkedHashSet<>();
        for (Expected expected : one.expect().values()) {
            if (expected instanceof Expected.Untold untold) {
                List<String> why = new ArrayList<>();
                untold.gaps().forEach(gap -> why.add(why(gap)));
                said.add("Cannot tell: " + String.join("; ", why) + ".");
            }
        }
        return String.join(" ", said);
    }

    /** Why it cannot be told, to somebody who meets the words for the first time. */
    private static String why(Gap.Why gap) {
        return switch (gap) {
            case NOT_RECORDED -> "it is not recorded, and the step after which it can no longer be got is behind or next";
            case LEFT_OUT -> "the step that would have told it was left out";
            case UNKNOWN -> "it was looked for, and the answer is not known";
            case FIGURE_NOT_KEPT -> "the record says that it was good, and the figure was not kept";
            case ONE_SIDE_ONLY -> "what was read proves one side of the limit alone";
            case WHICH_ONE_NOT_TOLD -> "nobody wrote which one of them it is";
            case ONLY_TOLD -> "somebody told it, and nobody who builds here has read it";
            case AS_FOUND_ONLY -> "it was read on the part as it came, not on what goes in";
            case NOT_READABLE -> "what was written cannot be read";
            case TOO_COARSE -> "the doubt of the reading is wider than the room that is left to the limit; a finer gauge settles it";
            case NO_LIMIT -> "neither sheet nor trade gives a limit for it";
            case SHEET_SILENT -> "the engine sheet is silent on it";
            case DUE_LATER -> "it is not recorded yet, and there is time: the step that closes it lies ahead";
        };
    }

    private static Shown plain(Case one, String answer) {
        return new Shown(one.name(), Examples.says(one), Examples.sheet(one), one.erase(), List.of(), List.of(answer),
                List.of(), List.of());
    }

    /** A near miss that was measured says how much room is left. */
    private static Shown sound(Examples.Worked worked) {
        Set<String> against = new LinkedHashSet<>();
        for (ReportModel.Topic topic : worked.report().topics()) {
            for (ReportModel.ClearItem item : topic.items()) {
                if (item.text().contains(";") && !item.text().startsWith(NOTHING) && worked.example().expect().containsKey(item.at())) {
                    against.add(item.text());
                }
            }
        }
        return new Shown(worked.example().name(), worked.says(), worked.sheet(), worked.example().erase(), worked.before(),
                List.of("Clear."), List.of(), List.copyOf(against));
    }

    private static Shown shown(Examples.Worked worked) {
        Set<String> answer = new LinkedHashSet<>();
        Set<String> sums = new LinkedHashSet<>();
        Set<String> against = new LinkedHashSet<>();
        for (ReportModel.Item item : worked.report().found()) {
            if (item.check().equals(worked.example().of())) {
                answer.add(item.text());
                sums.addAll(item.sums());
                against.addAll(item.measures());
            }
        }
        return new Shown(worked.example().name(), worked.says(), worked.sheet(), worked.example().erase(), worked.before(),
                List.copyOf(answer), List.copyOf(sums), List.copyOf(against));
    }
}

package leadlamp.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlamp.audit.Check;
import leadlamp.audit.Likelihood;
import leadlamp.audit.Severity;
import leadlamp.audit.Way;

/**
 * How heavy one way of a check weighs in this build, and why.
 *
 * @param way        the way
 * @param severity   the way's, else the page's; at a joint the sheet's `harm if it lets go` in place of both
 * @param ofTheJoint whether the severity is that of the joint
 * @param usual      the likelihood as the page gives it
 * @param likelihood the likelihood here
 * @param shifts     conditions that hold and that the page heeds
 * @param level      the cell of the matrix
 */
public record Weight(String way, Severity severity, boolean ofTheJoint, Likelihood usual, Likelihood likelihood,
        List<Shift> shifts, RiskLevel level) {

    static Weight of(Check check, Way way, Optional<Severity> joint, Set<String> conditions) {
        Severity severity = joint.or(way::severity).orElse(check.severity());
        Likelihood usual = way.likelihood().orElse(check.likelihood());
        List<Shift> shifts = new ArrayList<>();
        boolean up = false;
        boolean down = false;
        for (Map.Entry<String, Integer> shift : new TreeMap<>(check.shifts()).entrySet()) {
            if (shift.getValue() != 0 && conditions.contains(shift.getKey())) {
                shifts.add(new Shift(shift.getKey(), Integer.signum(shift.getValue())));
                up |= shift.getValue() > 0;
                down |= shift.getValue() < 0;
            }
        }
        Likelihood here = moved(usual, (down ? 1 : 0) - (up ? 1 : 0));
        return new Weight(way.name(), severity, joint.isPresent(), usual, here, List.copyOf(shifts),
                RiskLevel.of(severity, here));
    }

    /** One step at most, and never as far as Eliminated: no condition takes a hazard away. */
    private static Likelihood moved(Likelihood usual, int by) {
        if (usual == Likelihood.ELIMINATED) {
            return usual;
        }
        int last = Likelihood.IMPROBABLE.ordinal();
        return Likelihood.values()[Math.max(0, Math.min(last, usual.ordinal() + by))];
    }
}

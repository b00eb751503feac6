package leadlamp.derive;

import java.util.List;
import java.util.Optional;
import leadlamp.calc.Material;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** How much a piston grows, by its form and its alloy: silicon decides. */
final class PistonAlloys {
    /** The form and alloy that a maker's piston has where the sheet says nothing; common practice, no source. */
    static final String USUAL_FORM = "cast";
    static final String USUAL_ALLOY = "middle silicon";
    /** The assumed heat, for a sum in words. */
    static final String RISE = Math.round(WorkingHeat.SKIRT_RISE) + " K";

    private PistonAlloys() {
    }

    /** Of the piston that goes in; both its form and its alloy must be told. */
    static Take fitted() {
        String name = "expansion of piston";
        return Take.by(name, "piston alloy", (site, place) -> {
            Optional<Statement> form = site.word("piston", place, "form");
            Optional<Statement> alloy = site.word("piston", place, "alloy");
            return form.isEmpty() || alloy.isEmpty() ? Optional.empty() : of(name, place, form.get().says(), alloy.get().says(),
                    List.of(form.get().where(), alloy.get().where()));
        });
    }

    /** Of the maker's own piston: as the sheet has it, else as most are. */
    static Take ofSheet() {
        String name = "expansion of the sheet's piston";
        return Take.by(name, (site, place) -> of(name, place, form(site), alloy(site), List.of()));
    }

    static String form(Site site) {
        return site.sheet("layout", Place.ENGINE, "pistons").map(Statement::says).orElse(USUAL_FORM);
    }

    static String alloy(Site site) {
        return site.sheet("layout", Place.ENGINE, "piston alloy").map(Statement::says).orElse(USUAL_ALLOY);
    }

    private static Optional<Value> of(String name, String place, String form, String alloy, List<Where> where) {
        return Material.named(form + " piston, " + alloy)
                .map(m -> Site.exact(name, place, m.expansion(), Materials.PER_KELVIN, 1, where));
    }
}

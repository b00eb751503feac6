package leadlamp.derive;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import leadlamp.calc.Material;
import leadlamp.calc.WorkingHeat;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Unit;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;
import leadlamp.record.Where;

/** Figures of a part's metal, from the word that record or sheet has for it; each with the doubt of a family's round figure. */
final class Materials {
    static final Unit PER_KELVIN = new Unit("1e-6/K", Dimension.NUMBER, 1e-6, 0);
    static final Unit KELVIN = new Unit("K", Dimension.TEMPERATURE_DIFFERENCE, 1, 0);
    private static final Unit DENSITY = new Unit("kg/m3", Dimension.MASS_PER_VOLUME, 1, 0);
    /** Standard uncertainty of a modulus or density of a kind of metal, as a share; common practice, no source. */
    private static final double MODULUS_DOUBT = 0.015;
    private static final Unit GIGAPASCAL = Units.named("GPa").orElseThrow();

    private Materials() {
    }

    /** The word for a part's metal: the record's own, else the sheet's, of the part or of the first other that it is one with. */
    static Optional<Statement> word(Site site, String place, String... parts) {
        for (String part : parts) {
            Optional<Statement> own = site.word(part, place, "material").filter(s -> !s.says().equals("unknown"));
            if (own.isPresent()) {
                return own;
            }
            Optional<Statement> sheet = site.sheet("materials", "engine", part);
            if (sheet.isPresent()) {
                return sheet;
            }
        }
        return Optional.empty();
    }

    private static Optional<Material> metal(Site site, String place, String part, Statement word) {
        if (part.equals("piston") && word.says().equals("aluminium")) {
            boolean forged = site.word("piston", place, "form").map(s -> s.says().equals("forged")).orElse(false);
            return Material.named(forged ? "forged piston alloy" : "cast piston alloy");
        }
        return Material.named(word.says());
    }

    /** Expansion of a part. */
    static Take expansion(String... parts) {
        String name = "expansion of " + parts[0];
        return Take.by(name, (site, place) -> word(site, place, parts).flatMap(word -> metal(site, place, parts[0], word)
                .map(m -> Site.doubtful(name, place, m.expansion(), m.expansionDoubt() / Math.sqrt(3), name, PER_KELVIN, 1,
                        List.of(word.where())))));
    }

    /** Modulus of a part. */
    static Take modulus(String... parts) {
        String name = "modulus of " + parts[0];
        return Take.by(name, (site, place) -> word(site, place, parts).flatMap(word -> metal(site, place, parts[0], word)
                .map(m -> Site.doubtful(name, place, m.modulus(), m.modulus() * MODULUS_DOUBT, name, GIGAPASCAL, 0,
                        List.of(word.where())))));
    }

    /** Density of a part. */
    static Take density(String... parts) {
        String name = "density of " + parts[0];
        return Take.by(name, (site, place) -> word(site, place, parts).flatMap(word -> metal(site, place, parts[0], word)
                .map(m -> Site.doubtful(name, place, m.density(), m.density() * MODULUS_DOUBT, name, DENSITY, 0, List.of(word.where())))));
    }

    /** A figure of the metal that every bolt or ring is made of where nothing else is said. */
    static Take boltModulus() {
        return Take.by("modulus of bolt steel", (site, place) -> steel().map(m -> Site.doubtful("modulus of bolt steel", place,
                m.modulus(), m.modulus() * MODULUS_DOUBT, "modulus of bolt steel", GIGAPASCAL, 0, List.of())));
    }

    /** The expansion of bolt or ring steel, which no sheet gives. */
    static Take steelExpansion(String what) {
        String name = "expansion of " + what;
        return Take.by(name, (site, place) -> steel().map(m -> Site.doubtful(name, place, m.expansion(),
                m.expansionDoubt() / Math.sqrt(3), name, PER_KELVIN, 1, List.of())));
    }

    private static Optional<Material> steel() {
        return Material.named("steel");
    }

    /** A rise of heat that is assumed, with a wide doubt. */
    static Take rise(String name, double rise) {
        return Take.by(name, (site, place) -> Optional.of(assumed(name, place, rise)));
    }

    private static Value assumed(String name, String place, double rise) {
        TreeMap<String, Double> doubt = Take.doubt("assumed " + name, rise * WorkingHeat.DOUBT / 2);
        Optional<Estimate> end = Optional.of(new Estimate(rise, Dimension.TEMPERATURE_DIFFERENCE, doubt));
        return new Value(name, name, place, end, end, KELVIN, 0, "", false, "", "", java.util.Map.of(), List.<Where>of());
    }
}

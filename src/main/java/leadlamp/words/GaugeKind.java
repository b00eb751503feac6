package leadlamp.words;

/** A kind of gauge and the doubt taken where nothing else is said: about 95 %, as written. */
public record GaugeKind(String name, String gloss, String doubt, String basis) {
}

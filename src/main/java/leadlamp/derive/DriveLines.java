package leadlamp.derive;

import java.util.List;
import java.util.Optional;
import leadlamp.calc.Drives;
import leadlamp.facts.Value;
import leadlamp.quantity.Units;
import leadlamp.record.Statement;
import leadlamp.record.Where;
import leadlamp.words.Listed;

/** Lines of the sheet on the drive that turns the camshafts. */
final class DriveLines {
    private DriveLines() {
    }

    /** The name of the drive of the camshafts. */
    static Optional<String> ofCamshafts(Site site) {
        for (Statement s : site.sheetLines("drive")) {
            if (s.what().equals("drives") && s.says().equals("camshafts")) {
                return Optional.of(s.at());
            }
        }
        return Optional.empty();
    }

    static Optional<Statement> line(Site site, String drive, String what) {
        for (Statement s : site.sheetLines("drive")) {
            if (s.at().equals(drive) && s.what().equals(what)) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    /** The belt or chain whose route or line has the tensioner of this name. */
    static Optional<String> ofTensioner(Site site, String name) {
        for (Statement s : site.sheetLines("drive")) {
            if (!s.what().equals("route")) {
                continue;
            }
            for (String on : Listed.in(s.says())) {
                if (on.equals(name) || on.equals("belt tensioner " + name) || on.equals("chain tensioner " + name)) {
                    return Optional.of(s.at());
                }
            }
        }
        for (Statement s : site.sheetLines("drive")) {
            if (s.what().equals("kind") && name.equals(s.says() + " tensioner")) {
                return Optional.of(s.at());
            }
        }
        return Optional.empty();
    }

    /** Belt, chain or gear. */
    static String kind(Site site, String drive) {
        return line(site, drive, "kind").map(Statement::says).orElse("");
    }

    /** A size of the camshafts' drive. */
    static Take ofCamDrive(String what) {
        return Take.by("sheet drive " + what, (site, place) -> ofCamshafts(site).flatMap(drive -> line(site, drive, what))
                .flatMap(s -> Site.written("sheet drive " + what, place, s)));
    }

    /** A size of the drive at its own place. */
    static Take ofDrive(String what) {
        return Take.by("sheet drive " + what, (site, place) -> line(site, place, what).flatMap(s -> Site.written("sheet drive " + what, place, s)));
    }

    static Take runAngle() {
        return ofCamDrive("run angle");
    }

    /** Teeth of the cam gear: as counted on it, else as the sheet's drive or gear line has them. */
    static Optional<Value> camTeeth(Site site, String name, String place) {
        Optional<Value> counted = site.store.at("cam gear teeth", place);
        if (counted.isPresent()) {
            return counted;
        }
        Optional<Statement> line = ofCamshafts(site).flatMap(drive -> line(site, drive, "teeth cam gear"));
        if (line.isEmpty()) {
            line = site.sheet("cam gear", place, "teeth");
        }
        return line.flatMap(s -> Site.written(name, place, s));
    }

    static Take camTeeth() {
        return Take.by("sheet drive teeth", (site, place) -> camTeeth(site, "sheet drive teeth", place));
    }

    /** Teeth of another part of a drive. */
    static Take teeth(String part) {
        return Take.by("teeth of " + part, (site, place) -> {
            Optional<Statement> line = line(site, place, "teeth " + part);
            return line.flatMap(s -> Site.written("teeth of " + part, place, s));
        });
    }

    /** Pitch radius of a cam gear on a belt or chain; a gear drive has none that a skim would move. */
    static Take pitchRadius() {
        return Take.by("pitch radius of the cam gear", (site, place) -> {
            Optional<String> drive = ofCamshafts(site);
            Optional<Value> teeth = camTeeth(site, "teeth", place);
            Optional<Statement> pitch = drive.flatMap(d -> line(site, d, "pitch")).filter(s -> s.value().isPresent());
            if (drive.isEmpty() || teeth.isEmpty() || pitch.isEmpty() || teeth.get().low().isEmpty()) {
                return Optional.empty();
            }
            int count = (int) Math.round(teeth.get().low().get().value());
            double size = pitch.get().value().get().high();
            String kind = kind(site, drive.get());
            if (count < 1 || size <= 0 || !kind.equals("belt") && !kind.equals("chain")) {
                return Optional.empty();
            }
            double radius = kind.equals("belt") ? Drives.beltPitchRadius(count, size) : Drives.chainPitchRadius(count, size);
            List<Where> where = List.of(pitch.get().where());
            return Optional.of(Site.exact("pitch radius of the cam gear", place, radius, Units.named("mm").orElseThrow(), 2, where));
        });
    }
}

package leadlamp.derive;

import java.util.Optional;
import leadlamp.facts.Value;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Reading;
import leadlamp.quantity.Written;

/** What a reading was taken at, as a figure: its span, radius, speed, heat. */
final class Asides {
    private Asides() {
    }

    /** The aside as a value without doubt of its own. */
    static Optional<Value> size(String name, String place, Value reading, String key) {
        return written(reading.asides().get(key), dimension(key)).map(w -> {
            Optional<Estimate> low = Optional.of(Estimate.exact(w.low(), w.unit().dimension()));
            Optional<Estimate> high = w.low() == w.high() ? low : Optional.of(Estimate.exact(w.high(), w.unit().dimension()));
            return new Value(name, name, place, low, high, w.unit(), w.figures(), "", false, "", reading.told(), java.util.Map.of(),
                    reading.places());
        });
    }

    /** A figure in words, where it is one with both ends. */
    static Optional<Written> written(String text, Dimension dimension) {
        if (text == null || text.isEmpty()) {
            return Optional.empty();
        }
        return Reading.read(text, dimension, Optional.empty()) instanceof Reading.Read read && read.written().figure()
                && !Double.isInfinite(read.written().low()) && !Double.isInfinite(read.written().high())
                ? Optional.of(read.written()) : Optional.empty();
    }

    static Dimension dimension(String key) {
        return switch (key) {
            case "span", "at radius", "at lift" -> Dimension.LENGTH;
            case "speed" -> Dimension.SPEED;
            case "oil temperature", "temperature", "room temperature" -> Dimension.TEMPERATURE;
            case "force" -> Dimension.FORCE;
            case "for" -> Dimension.TIME;
            case "at angle", "lean" -> Dimension.ANGLE;
            case "pressure" -> Dimension.PRESSURE;
            case "links" -> Dimension.COUNT;
            default -> Dimension.NUMBER;
        };
    }
}

package leadlamp.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlamp.quantity.Written;

/**
 * A gauge of the record, as written under `gauges`. Dates and counts stand among its statements (`gauge`, its name).
 *
 * @param kinds      names of gauges.yaml; several where used together
 * @param resolution smallest step
 * @param doubt      from the certificate, 95 %; a length or a share
 * @param range      marked range
 * @param repeats    spread of repeated readings
 * @param setWith    another gauge of the record, or a kind
 */
public record Gauge(String name, List<String> kinds, Optional<Written> resolution, Optional<Written> doubt,
        Optional<Written> range, Optional<Written> repeats, Optional<String> setWith, Map<String, String> asides,
        Where where) {
}

package leadlamp.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A build record, read against its engine sheet.
 *
 * @param file       its path
 * @param name       what the builder calls it
 * @param sheet      its engine sheet
 * @param statements all that it says, `at: each` taken apart; in the file's order
 * @param limits     limits that came with parts
 * @param gauges     its gauges
 * @param stage      the furthest steps done
 * @param accepted   findings that the builder lives with
 * @param photos     its photographs
 * @param problems   what could not be taken, of record and sheet, in the order of the files
 * @param leftOut    keys of statements that stand in the record but could not be read (`not readable`)
 * @param bytes      SHA-256 of the record's bytes
 */
public record Build(String file, String name, EngineSheet sheet, List<Statement> statements, List<LimitLine> limits,
        Map<String, Gauge> gauges, List<String> stage, List<Accepted> accepted, List<Photo> photos,
        List<Problem> problems, List<Statement.Key> leftOut, Fingerprint bytes) {

    /** One entry under `accepted`. */
    public record Accepted(String check, String at, String reason, String who, String until, Where where) {
    }

    /** One entry under `photos`. */
    public record Photo(String name, String file, Optional<String> of, Optional<String> at, Optional<String> date,
            Where where) {
    }
}

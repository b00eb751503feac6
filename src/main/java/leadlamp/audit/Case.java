package leadlamp.audit;

import java.util.List;
import java.util.Map;
import leadlamp.record.Node;
import leadlamp.record.Where;

/**
 * One case of a page: a small change to a full build, and what comes of it.
 *
 * @param of     the check or condition whose page it stands on
 * @param name   what happened, in the builder's words
 * @param build  file of the full build that it changes
 * @param change what the record says instead, in the record's own form
 * @param sheet  what the engine sheet says instead, in the sheet's form
 * @param erase  words taken away, as `cam gear pin form at intake`
 * @param expect place to what the page's own check answers there
 * @param also   other check to place to what it answers
 * @param file   the page, as messages call it
 * @param where  where the case begins
 */
public record Case(String of, String name, String build, Node.Fields change, Node.Fields sheet, List<String> erase,
        Map<String, Expected> expect, Map<String, Map<String, Expected>> also, String file, Where where) {
    @Override
    public String toString() {
        return of + ": " + name;
    }
}

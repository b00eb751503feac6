package leadlamp.cli;

import java.util.List;

/** What can be typed. */
final class Help {
    static final List<String> COMMANDS = List.of("audit", "next", "sheets", "begin", "why", "look", "exercise", "mark", "past", "schema", "help", "version");

    static final String TEXT = """
            Leadlamp reads an engine build record and says what is wrong, what is clear, and what cannot be told.

              leadlamp audit RECORD...    the ranked risk report of each record; a folder is all records in it
                  --as FORM               terminal (as it is), html, json or sarif
                  --out FILE or FOLDER    write it there; several records want a folder
                  --at-least LEVEL        status 1 from this risk level on: High (as it is), Serious, Medium, Low
                  --brief                 one line a finding
                  --all                   every open question, also of parts on which the record tells of no work
                  --since OLD.json        also what is new, worse and settled since an earlier answer, kept by --as json
              leadlamp next RECORD        what to settle before the next step, and which reading settles most
              leadlamp sheets RECORD      sheets for the bench: tightening, clearances, order list, first start, hand-over
                  --out FOLDER            write them there
              leadlamp begin ENGINE       a new record for an engine sheet, laid out and ready to fill in
                  --out FILE              write it there; never over a file that is there
              leadlamp why CHECK          the lesson of a check: how it wrecks an engine, how to measure it, the sum worked
              leadlamp why WORD           what a word of a record means, and which checks ask about it
              leadlamp why --all          the handbook of all checks, as pages to browse, to search and to print
                  --out FOLDER            write it there
              leadlamp look ENGINE        looks at an engine with an unknown past, cheapest first, to print for the visit
              leadlamp look RECORD        after the visit: what was seen, what stays unknown, which look is worth its effort
                  --as FORM               terminal (as it is) or html
                  --out FILE              write it there
              leadlamp exercise           an invented record with faults in it, and an answer file laid out
                  --out FOLDER            write it there
                  --topic TOPIC           faults of this topic alone; --faults N, how many (3 as it is)
                  --seed N                the same number gives the same exercise
                  --class N               a set of N, each in its folder, with a key for the teacher
                  --practice FILE         what is due in this file comes first
              leadlamp mark ANSWERS       marks an answer file; a folder is a class, in one table
                  --practice FILE         keep what was found and missed there, and when it comes again
              leadlamp past RECORD        what probably happened to the engine before, and the damage that follows
                  --as FORM               terminal (as it is), html or json
                  --out FILE or FOLDER    write it there
                  --steps                 each step of the reasoning
              leadlamp schema NAME        a JSON Schema: answer or past (of --as json), record or sheet (for an editor)
              leadlamp help               this
              leadlamp version            which Leadlamp this is

            Status of audit: 0 nothing found at or above the level; 1 something found; 2 a record could not be audited
            in full, with the reason. What cannot be told leaves it at 0: that is no word that the engine is sound.

            The maker's manual, the rules of the place and licensed practice come before anything said here.
            """;

    private Help() {
    }
}

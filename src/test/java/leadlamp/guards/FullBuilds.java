package leadlamp.guards;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlamp.audit.Answer;
import leadlamp.audit.CaseRunner;
import leadlamp.audit.RulesFolder;

/** The builds that cases stand on. */
final class FullBuilds {
    private FullBuilds() {
    }

    /** Their files. */
    static List<String> files(Path builds) {
        List<String> files = new ArrayList<>();
        for (Path file : RulesFolder.files(builds, ".yaml")) {
            if (file.getFileName().toString().startsWith("full-sound-")) {
                files.add(file.getFileName().toString());
            }
        }
        return files;
    }

    /** Everything that is asked of a full build is clear, and rests on something, or is due later; and all of it could be read. */
    static List<String> faults(CaseRunner.Base base) {
        List<String> faults = new ArrayList<>();
        base.audit().problems().forEach(p -> faults.add(p.where() + ": " + p.what()));
        CaseRunner.byQuestion(base.audit()).forEach((question, answer) -> {
            boolean later = answer instanceof Answer.CannotTell open && open.later();
            if (!(answer instanceof Answer.Clear) && !later) {
                faults.add(question + " is " + CaseRunner.told(answer));
            }
            if (answer instanceof Answer.Clear clear && clear.grounds().isEmpty() && clear.margins().isEmpty()) {
                faults.add(question + " is clear, and rests on nothing that anybody wrote");
            }
        });
        return faults;
    }
}

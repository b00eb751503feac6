package leadlamp.audit;

import java.nio.file.Path;
import java.util.List;

/**
 * The rule writer's quick loop: reads the rules as they stand, runs the cases of the named topics or checks, and says what
 * is not as it should be. Nothing is compiled first.
 */
public final class TryCases {
    private TryCases() {
    }

    /** @param arguments topics (`cam-drive`) or checks (`cam-gear-pin-hollow`); all where none is named */
    public static void main(String[] arguments) {
        RulesFolder folder = RulesFolder.project();
        folder.rules().values().forEach(r -> r.faults().forEach(f -> System.out.println(f.where() + ": " + f.what() + " "
                + f.expected())));
        folder.problems().forEach(p -> System.out.println(p.where() + ": " + p.what() + " " + p.expected()
                + p.nearest().map(n -> " Nearest word: " + n + ".").orElse("")));
        CaseRunner runner = new CaseRunner(folder, Path.of("sample-builds"));
        List<String> wanted = List.of(arguments);
        List<Case> cases = folder.cases().stream().filter(c -> wanted.isEmpty() || wanted.contains(c.of())
                || wanted.contains(c.file().split("/")[1])).toList();
        List<List<String>> said = cases.parallelStream().map(c -> runner.run(c).wrong()).toList();
        int wrong = 0;
        for (int i = 0; i < cases.size(); i++) {
            if (!said.get(i).isEmpty()) {
                wrong++;
                System.out.println(cases.get(i).where() + ": " + cases.get(i).name());
                said.get(i).forEach(line -> System.out.println("    " + line));
            }
        }
        System.out.println(cases.size() + " cases, " + wrong + " not as expected");
        System.exit(wrong == 0 ? 0 : 1);
    }
}

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
        int run = 0;
        int wrong = 0;
        for (Case example : folder.cases()) {
            String topic = example.file().split("/")[1];
            if (wanted.isEmpty() || wanted.contains(example.of()) || wanted.contains(topic)) {
                run++;
                List<String> said = runner.run(example);
                if (!said.isEmpty()) {
                    wrong++;
                    System.out.println(example.where() + ": " + example.name());
                    said.forEach(line -> System.out.println("    " + line));
                }
            }
        }
        System.out.println(run + " cases, " + wrong + " not as expected");
        System.exit(wrong == 0 ? 0 : 1);
    }
}

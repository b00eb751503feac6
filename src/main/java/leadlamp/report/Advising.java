package leadlamp.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlamp.audit.Severity;
import leadlamp.rank.Chance;
import leadlamp.rank.Next;
import leadlamp.rank.Ranked;
import leadlamp.rank.Want;
import leadlamp.record.EngineSheet;
import leadlamp.record.Statement;
import leadlamp.report.ReportModel.Advice;
import leadlamp.words.Part;
import leadlamp.words.Quantity;
import leadlamp.words.Vocabulary;

/** Says which one reading or look settles most, and why it is this one. */
final class Advising {
    /** What has to come off, by the strip level of the vocabulary. */
    private static final List<String> STRIP = List.of("nothing has to come off", "covers off", "one side open",
            "head, gearbox or engine out", "crankshaft and pistons out");
    private static final String HOURS = "hours";
    /** From this level on the sheet's hours are worth telling. */
    private static final int LONG = 2;

    private final EngineSheet sheet;
    private final Vocabulary words;
    private final Wording wording;

    Advising(EngineSheet sheet, Vocabulary words, Wording wording) {
        this.sheet = sheet;
        this.words = words;
        this.wording = wording;
    }

    Optional<Advice> advice(Next next) {
        if (next.best().isEmpty()) {
            return Optional.empty();
        }
        Next.Choice choice = next.best().get();
        List<String> because = new ArrayList<>();
        because.add(worth(choice, "It"));
        next.second().ifPresent(second -> because.add("The next best is: " + wording.want(second.want(), second.details()) + ". "
                + worth(second, "That")));
        return Optional.of(new Advice(wording.want(choice.want(), choice.details()), Wording.places(choice.places()),
                wording.gauge(choice.want()), reach(choice), worst(choice).check().settleWith(),
                List.copyOf(because)));
    }

    private static Ranked worst(Next.Choice choice) {
        return choice.settles().isEmpty() ? choice.helps().get(0) : choice.settles().get(0);
    }

    private static String worth(Next.Choice choice, String it) {
        StringBuilder text = new StringBuilder(it);
        if (choice.settles().isEmpty()) {
            text.append(" settles no question by itself");
        } else {
            text.append(" settles ").append(Report.count(choice.settles().size(), "open question", "open questions"))
                    .append(" by itself (").append(harms(choice)).append(')');
        }
        if (!choice.helps().isEmpty()) {
            text.append(", and ").append(choice.helps().size()).append(choice.settles().isEmpty() ? "" : " more")
                    .append(choice.helps().size() == 1 ? " wants" : " want").append(" it beside something else");
        }
        return text.append('.').toString();
    }

    private static String harms(Next.Choice choice) {
        List<String> harms = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            int many = choice.settles(severity);
            if (many > 0) {
                harms.add(many + " " + severity.word());
            }
        }
        return String.join(", ", harms);
    }

    // --- how long it takes to get at

    private String reach(Next.Choice choice) {
        if (choice.want().how() == Want.How.SHEET) {
            return "the engine's manual, and no spanner";
        }
        Optional<Part> part = choice.want().how() == Want.How.LOOK ? words.part(choice.want().word())
                : part(choice.want().word());
        Chance chance = worst(choice).chance();
        if (part.isEmpty()) {
            return "";
        }
        int level = Math.max(0, Math.min(STRIP.size() - 1, part.get().strip()));
        if (chance.standing() != Chance.Standing.PASSED) {
            return chance.step().isEmpty() ? "no step closes it in; on a closed engine: " + STRIP.get(level)
                    : "open until " + chance.step() + "; after that: " + STRIP.get(level) + hours(level);
        }
        return "closed in since " + chance.step() + ": " + STRIP.get(level) + hours(level);
    }

    private Optional<Part> part(String word) {
        Optional<Quantity> quantity = words.quantity(word);
        if (quantity.isPresent()) {
            return words.part(quantity.get().of());
        }
        for (int at = word.lastIndexOf(' '); at > 0; at = word.lastIndexOf(' ', at - 1)) {
            Optional<Part> part = words.part(word.substring(0, at));
            if (part.isPresent()) {
                return part;
            }
        }
        return Optional.empty();
    }

    private String hours(int level) {
        List<String> hours = new ArrayList<>();
        for (Statement line : sheet.statements()) {
            if (line.of().equals(HOURS)) {
                hours.add(line.what() + " " + line.says());
            }
        }
        return level < LONG || hours.isEmpty() ? "" : " (hours of the sheet: " + String.join(", ", hours) + ")";
    }
}

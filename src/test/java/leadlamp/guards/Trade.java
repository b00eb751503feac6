package leadlamp.guards;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import leadlamp.audit.RulesFolder;
import leadlamp.facts.LimitUsed;
import leadlamp.facts.Value;
import leadlamp.facts.Verdict;
import leadlamp.judge.Judge;
import leadlamp.judge.TradeLimits;
import leadlamp.quantity.Dimension;
import leadlamp.quantity.Estimate;
import leadlamp.quantity.Units;
import leadlamp.quantity.Written;
import leadlamp.record.Build;
import leadlamp.record.EngineSheet;
import leadlamp.record.LimitLine;
import leadlamp.record.TradeLines;
import leadlamp.record.Where;
import leadlamp.words.Quantity;

/** The trade's numbers: each names its basis, and each yields to the engine sheet. */
final class Trade {
    private static final Where SHEET = new Where("a sheet", 1, 1);

    private Trade() {
    }

    static List<String> basis(RulesFolder folder) {
        List<String> faults = new ArrayList<>();
        for (LimitLine line : lines(folder)) {
            if (!RulesAndPages.basis(line.basis())) {
                faults.add(line.line() + ": " + line.quantity() + " names no basis: \"" + line.basis() + "\"");
            }
            if (line.basis().startsWith("common practice") && !line.reason()) {
                faults.add(line.line() + ": " + line.quantity() + " rests on common practice alone, and is called a limit");
            }
        }
        return faults;
    }

    /** Holds a value of each limited quantity against a sheet that is silent and one that is not. */
    static List<String> yields(RulesFolder folder, Build build) {
        List<String> faults = new ArrayList<>();
        TradeLimits trade = limits(folder);
        for (LimitLine line : lines(folder)) {
            String name = line.quantity();
            Quantity quantity = folder.words().quantity(name).orElseThrow();
            Value value = value(quantity, line.at().isEmpty() ? "engine" : line.at());
            Optional<Verdict> told = verdict(value, with(build, List.of(size(quantity))), folder, trade);
            if (told.isEmpty() || told.get().limit().whose() != LimitUsed.Whose.SHEET) {
                faults.add(line.line() + ": " + name + " is held against the trade's number though the sheet has one");
            }
            Optional<Verdict> silent = verdict(value, with(build, List.of()), folder, trade);
            if (silent.isPresent() && silent.get().limit().whose() != LimitUsed.Whose.TRADE) {
                faults.add(line.line() + ": " + name + " is held against " + silent.get().limit().whose() + " on a silent sheet");
            }
        }
        return faults;
    }

    /** The lines of every `limits.yaml`. */
    static List<LimitLine> lines(RulesFolder folder) {
        List<LimitLine> lines = new ArrayList<>();
        for (Path topic : RulesFolder.folders(folder.path())) {
            for (Path file : RulesFolder.files(topic, "limits.yaml")) {
                lines.addAll(TradeLines.read(file, folder.path().relativize(file).toString(), folder.words(), new ArrayList<>()));
            }
        }
        return lines;
    }

    private static Optional<Verdict> verdict(Value value, Build build, RulesFolder folder, TradeLimits trade) {
        return Judge.judge(List.of(value), List.of(), build, folder.words(), trade).stream()
                .filter(v -> v.at().equals(value.at())).findFirst();
    }

    private static Value value(Quantity quantity, String at) {
        SortedMap<String, Double> none = new TreeMap<>();
        Estimate one = new Estimate(1, quantity.dimension(), none);
        return new Value(quantity.name(), quantity.kind(), at, Optional.of(one), Optional.of(one), quantity.unit(), 2, "", false,
                "", "", Map.of(), List.of(SHEET));
    }

    private static LimitLine size(Quantity quantity) {
        Written least = written(quantity.dimension(), 0.5);
        Written most = written(quantity.dimension(), 2);
        return new LimitLine(quantity.name(), "", Optional.empty(), Optional.of(least), Optional.of(most), "", "", Map.of(),
                Map.of(), false, "the engine sheet", SHEET);
    }

    private static Written written(Dimension dimension, double si) {
        return new Written(Written.Form.PLAIN, si, si, Units.si(dimension), 1, String.valueOf(si));
    }

    private static Build with(Build build, List<LimitLine> limits) {
        EngineSheet s = build.sheet();
        EngineSheet sheet = new EngineSheet(s.file(), s.name(), s.from(), List.of(), limits, s.layout(),
                new leadlamp.record.Node.Fields(List.of(), SHEET), List.of());
        return new Build(build.file(), build.name(), sheet, List.of(), List.of(), Map.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), leadlamp.record.Fingerprint.NONE);
    }

    static TradeLimits limits(RulesFolder folder) {
        try {
            return TradeLimits.ofFolder(folder.path(), folder.words());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}

package leadlamp.timing;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import leadlamp.audit.Audit;
import leadlamp.audit.Auditor;
import leadlamp.record.Build;
import leadlamp.record.RecordReader;
import leadlamp.words.Vocabulary;
import leadlamp.words.Words;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What one record costs once everything is loaded and compiled: as in a folder of many. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class WarmAudit {
    /** A file of sample-builds. */
    @Param({"hill-climb-three.yaml", "full-sound-tarn-12.yaml"})
    public String record;

    private Path file;
    private RecordReader reader;
    private Auditor auditor;
    private Build build;

    @Setup
    public void load() {
        file = Path.of("sample-builds", record);
        Vocabulary words = Words.compiled();
        reader = new RecordReader(words);
        auditor = Auditor.compiled();
        build = reader.read(file).build().orElseThrow();
    }

    /** Reading alone. */
    @Benchmark
    public RecordReader.Result read() {
        return reader.read(file);
    }

    /** Auditing alone. */
    @Benchmark
    public Audit audit() {
        return auditor.audit(build);
    }

    /** Both. */
    @Benchmark
    public Audit readAndAudit() {
        return auditor.audit(reader.read(file).build().orElseThrow());
    }
}

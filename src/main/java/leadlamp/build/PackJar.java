package leadlamp.build;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import leadlamp.cli.Launcher;

/**
 * Makes of the jar with all classes the one that a user starts. Its classes and those of the libraries are made ready for a quick
 * start; then all of them are laid into the jar as one file, beside the class that starts them.
 */
public final class PackJar {
    private static final String CLASS = ".class";
    private static final String LAUNCHER = "leadlamp/cli/Launcher";

    private PackJar() {
    }

    /** @param arguments the jar, which is put in place of itself */
    public static void main(String[] arguments) throws IOException {
        Path jar = Path.of(arguments[0]);
        Map<String, byte[]> files = new LinkedHashMap<>();
        Map<String, LocalDateTime> times = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new BufferedInputStream(Files.newInputStream(jar)))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (!entry.isDirectory()) {
                    files.put(entry.getName(), in.readAllBytes());
                    times.put(entry.getName(), entry.getTimeLocal());
                }
            }
        }
        files.putAll(SpellOut.in(files));
        files.putAll(ToldAhead.of(files));
        files.putAll(TakeDirectly.in(files));
        LocalDateTime other = times.values().iterator().next();
        ByteArrayOutputStream program = new ByteArrayOutputStream();
        zip(files, times, other, program);
        Map<String, byte[]> outer = new LinkedHashMap<>();
        files.forEach((name, bytes) -> {
            if (name.startsWith(LAUNCHER) || name.equals("META-INF/MANIFEST.MF") || name.startsWith("META-INF/LICENSE")
                    || name.equals("META-INF/NOTICE")) {
                outer.put(name, bytes);
            }
        });
        outer.put(Launcher.PROGRAM, program.toByteArray());
        Path made = jar.resolveSibling(jar.getFileName() + ".part");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(made))) {
            zip(outer, times, other, out);
        }
        Files.move(made, jar, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What is ours and no class is laid down as it is, so that nothing need be unpacked at a start. */
    private static void zip(Map<String, byte[]> files, Map<String, LocalDateTime> times, LocalDateTime other, OutputStream to)
            throws IOException {
        ZipOutputStream out = new ZipOutputStream(to);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            ZipEntry entry = new ZipEntry(file.getKey());
            entry.setTimeLocal(times.getOrDefault(file.getKey(), other));
            if (file.getKey().startsWith("leadlamp/") && !file.getKey().endsWith(CLASS)) {
                CRC32 sum = new CRC32();
                sum.update(file.getValue());
                entry.setMethod(ZipEntry.STORED);
                entry.setSize(file.getValue().length);
                entry.setCrc(sum.getValue());
            }
            out.putNextEntry(entry);
            out.write(file.getValue());
            out.closeEntry();
        }
        out.finish();
    }
}

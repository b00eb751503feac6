package leadlamp.words;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * What the program carries beside its classes: its words, pages, rules and numbers. They stand in the jar; the build lays the
 * ones that every audit reads once more in one file beside the archive, for opening a jar takes longer than reading them.
 */
public final class Carried {
    /** Names the file in which they lie together; where it is not set, or lacks a thing, the jar is asked. */
    public static final String TOGETHER = "leadlamp.together";
    private static final int INT = 4;

    private Carried() {
    }

    /**
     * All bytes of one of them.
     *
     * @param resource its place in the jar, from the top: `/leadlamp/vocabulary.bin`
     * @throws IllegalStateException where the program lacks it
     */
    public static byte[] bytes(String resource) {
        byte[] together = Together.BYTES;
        ByteBuffer numbers = ByteBuffer.wrap(together);
        int at = 0;
        while (at < together.length) {
            int name = numbers.getInt(at);
            int length = numbers.getInt(at + INT);
            at += 2 * INT;
            if (name == resource.length() && new String(together, at, name, StandardCharsets.ISO_8859_1).equals(resource)) {
                return Arrays.copyOfRange(together, at + name, at + name + length);
            }
            at += name + length;
        }
        try (InputStream in = Carried.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks a part of itself, " + resource + "; it is made when the project is built");
            }
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new IllegalStateException("a part of the program cannot be read, " + resource, broken);
        }
    }

    /** Writes some of them together. */
    public static void together(List<String> resources, OutputStream out) throws IOException {
        for (String resource : resources) {
            byte[] bytes = bytes(resource);
            byte[] name = resource.getBytes(StandardCharsets.ISO_8859_1);
            out.write(ByteBuffer.allocate(2 * INT).putInt(name.length).putInt(bytes.length).array());
            out.write(name);
            out.write(bytes);
        }
    }

    private static final class Together {
        private static final byte[] BYTES = load();

        private static byte[] load() {
            String file = System.getProperty(TOGETHER);
            if (file == null) {
                return new byte[0];
            }
            try (FileInputStream in = new FileInputStream(file)) {
                return in.readAllBytes();
            } catch (IOException gone) {
                return new byte[0];
            }
        }
    }
}

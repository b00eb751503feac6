package leadlamp.audit;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import leadlamp.record.Node;
import leadlamp.record.Where;

/**
 * The cases of all pages and the full builds that they change, as the program carries them for lessons and exercises. An
 * audit never loads it.
 *
 * @param cases in the order of pages and lines
 * @param files text of each full build and engine sheet, by its path below the folder of the builds
 */
public record Casebook(List<Case> cases, Map<String, String> files) {
    /** The compiled form on the class path. */
    public static final String RESOURCE = "/leadlamp/cases.bin";
    private static final int SCALAR = 0;
    private static final int ITEMS = 1;
    private static final int FIELDS = 2;

    /** The cases that the program carries. */
    public static Casebook compiled() {
        try (InputStream in = Casebook.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its cases, " + RESOURCE);
            }
            return read(in);
        } catch (IOException broken) {
            throw new IllegalStateException("the program's cases cannot be read, " + RESOURCE, broken);
        }
    }

    /** The cases of one check, in the order of its page. */
    public List<Case> of(String check) {
        List<Case> own = new ArrayList<>();
        for (Case one : cases) {
            if (one.of().equals(check)) {
                own.add(one);
            }
        }
        return own;
    }

    /** Writes the compiled form. The same cases and files give the same bytes. */
    public static void compile(Collection<Case> cases, Map<String, String> files, OutputStream target) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes))) {
            out.writeInt(files.size());
            for (Map.Entry<String, String> file : new TreeMap<>(files).entrySet()) {
                text(file.getKey(), out);
                text(file.getValue(), out);
            }
            out.writeInt(cases.size());
            for (Case one : cases) {
                text(one.of(), out);
                text(one.name(), out);
                text(one.build(), out);
                node(one.change(), out);
                node(one.sheet(), out);
                out.writeInt(one.erase().size());
                for (String word : one.erase()) {
                    text(word, out);
                }
                expected(one.expect(), out);
                out.writeInt(one.also().size());
                for (Map.Entry<String, Map<String, Expected>> also : one.also().entrySet()) {
                    text(also.getKey(), out);
                    expected(also.getValue(), out);
                }
                text(one.file(), out);
                where(one.where(), out);
            }
        }
        target.write(bytes.toByteArray());
    }

    static Casebook read(InputStream source) throws IOException {
        try (DataInputStream in = new DataInputStream(new GZIPInputStream(source, 1 << 16))) {
            Map<String, String> files = new TreeMap<>();
            for (int left = in.readInt(); left > 0; left--) {
                files.put(text(in), text(in));
            }
            int many = in.readInt();
            List<Case> cases = new ArrayList<>(many);
            for (int i = 0; i < many; i++) {
                String of = text(in);
                String name = text(in);
                String build = text(in);
                Node.Fields change = (Node.Fields) node(in);
                Node.Fields sheet = (Node.Fields) node(in);
                List<String> erase = new ArrayList<>();
                for (int left = in.readInt(); left > 0; left--) {
                    erase.add(text(in));
                }
                Map<String, Expected> expect = expected(in);
                Map<String, Map<String, Expected>> also = new LinkedHashMap<>();
                for (int left = in.readInt(); left > 0; left--) {
                    also.put(text(in), expected(in));
                }
                cases.add(new Case(of, name, build, change, sheet, List.copyOf(erase), expect, also, text(in), where(in)));
            }
            return new Casebook(List.copyOf(cases), files);
        }
    }

    private static void expected(Map<String, Expected> expected, DataOutputStream out) throws IOException {
        out.writeInt(expected.size());
        for (Map.Entry<String, Expected> one : expected.entrySet()) {
            text(one.getKey(), out);
            text(one.getValue() instanceof Expected.Holds holds ? holds.so() ? "holds" : "does not hold"
                    : one.getValue() instanceof Expected.IsClear ? "clear"
                    : one.getValue() instanceof Expected.NotAsked ? "not asked" : one.getValue().toString(), out);
        }
    }

    private static Map<String, Expected> expected(DataInputStream in) throws IOException {
        Map<String, Expected> expected = new LinkedHashMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            String place = text(in);
            String answer = text(in);
            expected.put(place, Expected.read(answer).orElseThrow(() -> new IOException(answer)));
        }
        return expected;
    }

    private static void node(Node node, DataOutputStream out) throws IOException {
        where(node.where(), out);
        if (node instanceof Node.Scalar scalar) {
            out.writeByte(SCALAR);
            text(scalar.text(), out);
        } else if (node instanceof Node.Items items) {
            out.writeByte(ITEMS);
            out.writeInt(items.items().size());
            for (Node item : items.items()) {
                node(item, out);
            }
        } else if (node instanceof Node.Fields fields) {
            out.writeByte(FIELDS);
            out.writeInt(fields.fields().size());
            for (Node.Field field : fields.fields()) {
                text(field.key(), out);
                where(field.where(), out);
                node(field.value(), out);
            }
        }
    }

    private static Node node(DataInputStream in) throws IOException {
        Where where = where(in);
        int kind = in.readByte();
        if (kind == SCALAR) {
            return new Node.Scalar(text(in), where);
        }
        int many = in.readInt();
        if (kind == ITEMS) {
            List<Node> items = new ArrayList<>(many);
            for (int i = 0; i < many; i++) {
                items.add(node(in));
            }
            return new Node.Items(List.copyOf(items), where);
        }
        List<Node.Field> fields = new ArrayList<>(many);
        for (int i = 0; i < many; i++) {
            fields.add(new Node.Field(text(in), where(in), node(in)));
        }
        return new Node.Fields(List.copyOf(fields), where);
    }

    private static void where(Where where, DataOutputStream out) throws IOException {
        text(where.file(), out);
        out.writeInt(where.line());
        out.writeInt(where.column());
    }

    private static Where where(DataInputStream in) throws IOException {
        return new Where(text(in), in.readInt(), in.readInt());
    }

    private static void text(String text, DataOutputStream out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        byte[] bytes = in.readNBytes(in.readInt());
        return new String(bytes, StandardCharsets.UTF_8);
    }
}

package leadlamp.audit;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/** The knowledge of the past in its compiled form. Nothing reads it where a record shows no sign. */
public final class PastFile {
    /** Signs and events. */
    public static final String RESOURCE = "/leadlamp/past.bin";
    /** Their rules. */
    public static final String RULES = "/leadlamp/past-rules.bin";

    private PastFile() {
    }

    /** Writes signs and events. The same ones give the same bytes. */
    static void write(Collection<PastSign> signs, Collection<PastEvent> events, OutputStream to) throws IOException {
        Deflater best = new Deflater(Deflater.BEST_COMPRESSION);
        DeflaterOutputStream packed = new DeflaterOutputStream(to, best);
        DataOutputStream out = new DataOutputStream(packed);
        out.writeInt(signs.size());
        for (PastSign sign : signs) {
            out.writeUTF(sign.id());
            out.writeUTF(sign.sign());
            out.writeUTF(sign.looks());
            texts(sign.shownBy(), out);
            out.writeUTF(sign.family());
            texts(sign.setAside(), out);
            out.writeUTF(sign.basis());
        }
        out.writeInt(events.size());
        for (PastEvent event : events) {
            write(event, out);
        }
        out.flush();
        packed.finish();
        best.end();
    }

    private static void write(PastEvent event, DataOutputStream out) throws IOException {
        out.writeUTF(event.id());
        out.writeUTF(event.word());
        out.writeUTF(event.event());
        out.writeBoolean(event.claim());
        out.writeByte(event.when().ordinal());
        out.writeBoolean(event.byHand());
        texts(event.leadsTo(), out);
        out.writeByte(event.severity().ordinal());
        texts(event.contradicted(), out);
        out.writeInt(event.hidden().size());
        for (PastEvent.Hidden hidden : event.hidden()) {
            out.writeUTF(hidden.damage());
            out.writeUTF(hidden.look());
            looked(hidden.looked(), out);
            looked(hidden.unless(), out);
        }
        texts(event.alsoCheck(), out);
        texts(event.renew(), out);
        out.writeInt(event.elses().size());
        for (PastEvent.Else other : event.elses()) {
            out.writeUTF(other.event());
            out.writeUTF(other.tellApart());
        }
        out.writeUTF(event.basis());
    }

    private static void looked(List<PastEvent.Looked> all, DataOutputStream out) throws IOException {
        out.writeInt(all.size());
        for (PastEvent.Looked looked : all) {
            out.writeUTF(looked.text());
            out.writeUTF(looked.fact());
            out.writeUTF(looked.of());
            out.writeUTF(looked.what());
            texts(looked.says(), out);
            out.writeBoolean(looked.fault());
        }
    }

    private static void texts(List<String> texts, DataOutputStream out) throws IOException {
        out.writeInt(texts.size());
        for (String text : texts) {
            out.writeUTF(text);
        }
    }

    /** Signs and events that the program carries. */
    static Past compiled() {
        try (InputStream in = PastFile.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its knowledge of the past, " + RESOURCE);
            }
            DataInputStream data = new DataInputStream(new BufferedInputStream(new InflaterInputStream(in)));
            List<PastSign> signs = new ArrayList<>();
            for (int i = data.readInt(); i > 0; i--) {
                signs.add(new PastSign(data.readUTF(), data.readUTF(), data.readUTF(), texts(data), data.readUTF(), texts(data),
                        data.readUTF()));
            }
            List<PastEvent> events = new ArrayList<>();
            for (int i = data.readInt(); i > 0; i--) {
                events.add(event(data));
            }
            return new Past(signs, events, Rulebase.past());
        } catch (IOException broken) {
            throw new IllegalStateException("the program's knowledge of the past cannot be read, " + RESOURCE, broken);
        }
    }

    private static PastEvent event(DataInputStream in) throws IOException {
        return new PastEvent(in.readUTF(), in.readUTF(), in.readUTF(), in.readBoolean(),
                PastEvent.When.values()[in.readByte()], in.readBoolean(), texts(in), Severity.values()[in.readByte()], texts(in),
                hidden(in), texts(in), texts(in), elses(in), in.readUTF());
    }

    private static List<PastEvent.Hidden> hidden(DataInputStream in) throws IOException {
        List<PastEvent.Hidden> all = new ArrayList<>();
        for (int i = in.readInt(); i > 0; i--) {
            String damage = in.readUTF();
            String look = in.readUTF();
            all.add(new PastEvent.Hidden(damage, look, looked(in), looked(in)));
        }
        return List.copyOf(all);
    }

    private static List<PastEvent.Looked> looked(DataInputStream in) throws IOException {
        List<PastEvent.Looked> looked = new ArrayList<>();
        for (int i = in.readInt(); i > 0; i--) {
            looked.add(new PastEvent.Looked(in.readUTF(), in.readUTF(), in.readUTF(), in.readUTF(), texts(in), in.readBoolean()));
        }
        return List.copyOf(looked);
    }

    private static List<PastEvent.Else> elses(DataInputStream in) throws IOException {
        List<PastEvent.Else> all = new ArrayList<>();
        for (int i = in.readInt(); i > 0; i--) {
            all.add(new PastEvent.Else(in.readUTF(), in.readUTF()));
        }
        return List.copyOf(all);
    }

    private static List<String> texts(DataInputStream in) throws IOException {
        String[] texts = new String[in.readInt()];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = in.readUTF();
        }
        return List.of(texts);
    }
}

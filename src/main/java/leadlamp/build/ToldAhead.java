package leadlamp.build;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Tells the libraries in the jar what they look up at each start, though in this jar it is always the same: who writes their
 * log (nobody), where settings stand (in the system's own), and which class serves where they name a service. The search opens
 * the jar, reads its list of entries and links a dozen lambdas, which is a fair part of what the rule engine takes to load.
 */
final class ToldAhead {
    private static final String LOGGERS = "org/slf4j/LoggerFactory";
    private static final String NO_LOG = "org/slf4j/helpers/NOPLogger";
    private static final String SETTINGS = "org/drools/util/Config$ConfigResolverHolder";
    private static final String SYSTEM_SETTINGS = "org/drools/util/Config$SystemPropertyConfigResolver";
    private static final String SERVICES = "org/kie/api/internal/utils/KieServiceLoader";
    private static final String NAMED = "META-INF/services/";
    private static final int API = Opcodes.ASM9;

    private ToldAhead() {
    }

    /**
     * The classes that are told something, as they stand then.
     *
     * @param files the files of the jar by name
     */
    static Map<String, byte[]> of(Map<String, byte[]> files) {
        Map<String, byte[]> told = new TreeMap<>();
        tell(files, told, LOGGERS, Map.of(
                "getLogger(Ljava/lang/Class;)", ToldAhead::noLog,
                "getLogger(Ljava/lang/String;)", ToldAhead::noLog,
                "<clinit>()", body -> body.visitInsn(Opcodes.RETURN)));
        tell(files, told, SETTINGS, Map.of("createConfigResolver()", body -> make(body, SYSTEM_SETTINGS)));
        Map<String, String> services = services(files);
        tell(files, told, SERVICES, Map.of("load(Ljava/lang/Class;Ljava/lang/String;)", body -> serve(body, services)));
        return told;
    }

    /** Puts other bodies in the place of a class's methods, told by their names and what they take. */
    private static void tell(Map<String, byte[]> files, Map<String, byte[]> told, String name, Map<String, Consumer<MethodVisitor>> bodies) {
        byte[] bytes = files.get(name + ".class");
        Set<String> there = new TreeSet<>();
        if (bytes != null) {
            ClassReader reader = new ClassReader(bytes);
            ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
            reader.accept(new ClassVisitor(API, writer) {
                @Override
                public MethodVisitor visitMethod(int access, String method, String descriptor, String signature, String[] exceptions) {
                    MethodVisitor body = super.visitMethod(access, method, descriptor, signature, exceptions);
                    String key = method + descriptor.substring(0, descriptor.indexOf(')') + 1);
                    if (!bodies.containsKey(key)) {
                        return body;
                    }
                    there.add(key);
                    body.visitCode();
                    bodies.get(key).accept(body);
                    body.visitMaxs(0, 0);
                    body.visitEnd();
                    return null;
                }
            }, 0);
            told.put(name + ".class", writer.toByteArray());
        }
        if (!there.equals(bodies.keySet())) {
            throw new IllegalStateException("The libraries no longer have what the jar tells ahead: " + name + " " + bodies.keySet());
        }
    }

    private static void noLog(MethodVisitor body) {
        body.visitFieldInsn(Opcodes.GETSTATIC, NO_LOG, "NOP_LOGGER", "L" + NO_LOG + ";");
        body.visitInsn(Opcodes.ARETURN);
    }

    private static void make(MethodVisitor body, String type) {
        body.visitTypeInsn(Opcodes.NEW, type);
        body.visitInsn(Opcodes.DUP);
        body.visitMethodInsn(Opcodes.INVOKESPECIAL, type, "<init>", "()V", false);
        body.visitInsn(Opcodes.ARETURN);
    }

    /** The one class that serves under a name is made; there is none under any other. */
    private static void serve(MethodVisitor body, Map<String, String> services) {
        services.forEach((service, by) -> {
            Label other = new Label();
            body.visitLdcInsn(service);
            body.visitVarInsn(Opcodes.ALOAD, 1);
            body.visitMethodInsn(Opcodes.INVOKEVIRTUAL, "java/lang/Class", "getName", "()Ljava/lang/String;", false);
            body.visitMethodInsn(Opcodes.INVOKEVIRTUAL, "java/lang/String", "equals", "(Ljava/lang/Object;)Z", false);
            body.visitJumpInsn(Opcodes.IFEQ, other);
            make(body, by);
            body.visitLabel(other);
            body.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        });
        body.visitInsn(Opcodes.ACONST_NULL);
        body.visitInsn(Opcodes.ARETURN);
    }

    /** Services of the rule engine by name, and the class that serves. */
    private static Map<String, String> services(Map<String, byte[]> files) {
        Map<String, String> services = new TreeMap<>();
        files.forEach((name, bytes) -> {
            if (!name.startsWith(NAMED + "org.")) {
                return;
            }
            List<String> by = new ArrayList<>();
            for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
                String plain = line.strip();
                if (!plain.isEmpty() && plain.charAt(0) != '#') {
                    by.add(plain.replace('.', '/'));
                }
            }
            if (by.size() != 1 || !files.containsKey(by.get(0) + ".class")) {
                throw new IllegalStateException("One class should serve under " + name + ", and stand in the jar: " + by);
            }
            services.put(name.substring(NAMED.length()), by.get(0));
        });
        return services;
    }
}

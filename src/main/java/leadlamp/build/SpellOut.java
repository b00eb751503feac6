package leadlamp.build;

import java.io.IOException;
import java.lang.invoke.LambdaMetafactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Spells out what the compiler leaves to be linked while the program runs: lambdas, what makes two records equal, and texts
 * that are put together; in our own classes, and in those of the libraries that stand in the jar. The table of derived
 * values alone has some nine hundred lambdas; linking one costs a third of a millisecond at every start, where calling a
 * method of a class that lies in the archive costs next to nothing.
 *
 * <p>The lambdas of a source file become one class for each interface that they stand for, with a number for each lambda and
 * a switch over the numbers; it is a nestmate, so that the lambdas' bodies stay private where the compiler put them. What a
 * lambda means does not change. One that wants more than casts and boxes is left as it is, and so are classes that
 * have been through here before.
 */
public final class SpellOut {
    private static final String LAMBDAS = "java/lang/invoke/LambdaMetafactory";
    private static final String RECORDS = "java/lang/runtime/ObjectMethods";
    private static final String TEXTS = "java/lang/invoke/StringConcatFactory";
    private static final String BUILDER = "java/lang/StringBuilder";
    private static final String CLASS = ".class";
    /** What gives back what it is given: Java's own is a lambda too. */
    private static final String SAME = "plain$same";
    private static final Type OBJECT_TO_OBJECT = Type.getMethodType("(Ljava/lang/Object;)Ljava/lang/Object;");
    private static final Handle IDENTITY = new Handle(Opcodes.H_INVOKESTATIC, LAMBDAS, "metafactory", "()V", false);
    /** In the form of a text that is put together: the next argument, and the next constant. */
    private static final char ARGUMENT = 1;
    private static final char CONSTANT = 2;
    private static final int API = Opcodes.ASM9;

    /** One lambda: what it calls, what it holds, as what it is called. */
    private record Lambda(Handle calls, Type[] holds, Type erased, Type called) {
    }

    /** The lambdas of one source file that stand for one interface. */
    private static final class Group {
        private final String name;
        private final String standsFor;
        private final String method;
        private final Type erased;
        private final boolean laidDown;
        private final List<Lambda> lambdas = new ArrayList<>();

        Group(String name, String standsFor, String method, Type erased, boolean laidDown) {
            this.name = name;
            this.standsFor = standsFor;
            this.method = method;
            this.erased = erased;
            this.laidDown = laidDown;
        }
    }

    private final String host;
    private final Map<String, Group> groups = new TreeMap<>();

    private SpellOut(String host) {
        this.host = host;
    }

    /** @param arguments the folder of the compiled classes */
    public static void main(String[] arguments) throws IOException {
        folder(Path.of(arguments[0]));
    }

    private static void folder(Path folder) throws IOException {
        Map<String, byte[]> classes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.resolve("leadlamp"))) {
            for (Path file : (Iterable<Path>) files.filter(f -> f.toString().endsWith(CLASS)).sorted()::iterator) {
                classes.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        for (Map.Entry<String, byte[]> file : spelled(classes).entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
    }

    /**
     * Classes of a jar spelled out, and those that were added. What is older than nests of classes stays as it is.
     *
     * @param files the files of the jar by name
     */
    static Map<String, byte[]> in(Map<String, byte[]> files) {
        Map<String, byte[]> classes = new TreeMap<>();
        files.forEach((name, bytes) -> {
            if (name.endsWith(CLASS) && version(bytes) >= Opcodes.V11) {
                classes.put(name, bytes);
            }
        });
        return spelled(classes);
    }

    private static int version(byte[] bytes) {
        return (bytes[6] & 0xff) << 8 | bytes[7] & 0xff;
    }

    /** The classes by the names of their files, spelled out, and those that were added. */
    private static Map<String, byte[]> spelled(Map<String, byte[]> classes) {
        Map<String, Map<String, byte[]>> nests = new TreeMap<>();
        classes.forEach((name, bytes) -> {
            String[] host = {name.substring(0, name.length() - CLASS.length())};
            new ClassReader(bytes).accept(new ClassVisitor(API) {
                @Override
                public void visitNestHost(String nestHost) {
                    host[0] = nestHost;
                }
            }, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
            nests.computeIfAbsent(host[0], n -> new TreeMap<>()).put(name, bytes);
        });
        Map<String, byte[]> written = new TreeMap<>();
        nests.forEach((host, nest) -> {
            if (nest.containsKey(host + CLASS)) {
                written.putAll(new SpellOut(host).nest(nest));
            }
        });
        return written;
    }

    private Map<String, byte[]> nest(Map<String, byte[]> files) {
        Map<String, byte[]> written = new TreeMap<>();
        files.forEach((file, bytes) -> {
            ClassReader reader = new ClassReader(bytes);
            ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
            reader.accept(new Spelling(writer), 0);
            written.put(file, writer.toByteArray());
        });
        if (!groups.isEmpty()) {
            ClassReader reader = new ClassReader(written.get(host + CLASS));
            ClassWriter writer = new ClassWriter(reader, 0);
            reader.accept(new Nest(writer), 0);
            written.put(host + CLASS, writer.toByteArray());
            for (Group group : groups.values()) {
                written.put(group.name + CLASS, classOf(group));
            }
        }
        return written;
    }

    /** Takes the new classes into the nest. */
    private final class Nest extends ClassVisitor {
        Nest(ClassVisitor next) {
            super(API, next);
        }

        @Override
        public void visitEnd() {
            groups.values().forEach(group -> visitNestMember(group.name));
            super.visitEnd();
        }
    }

    /** Puts plain calls in the place of those that would be linked. */
    private final class Spelling extends ClassVisitor {
        private String name;
        private boolean isInterface;
        private final Map<String, Handle[]> equal = new TreeMap<>();
        private final List<Text> texts = new ArrayList<>();
        private boolean same;

        Spelling(ClassVisitor next) {
            super(API, next);
        }

        @Override
        public void visit(int version, int access, String name, String signature, String superName, String[] interfaces) {
            this.name = name;
            this.isInterface = (access & Opcodes.ACC_INTERFACE) != 0;
            super.visit(version, access, name, signature, superName, interfaces);
        }

        @Override
        public MethodVisitor visitMethod(int access, String method, String descriptor, String signature, String[] exceptions) {
            MethodVisitor next = super.visitMethod(access, method, descriptor, signature, exceptions);
            return new MethodVisitor(API, next) {
                @Override
                public void visitMethodInsn(int opcode, String owner, String called, String type, boolean ofInterface) {
                    if (owner.equals("java/util/function/Function") && called.equals("identity")) {
                        same = true;
                        visitInvokeDynamicInsn("apply", type, IDENTITY, OBJECT_TO_OBJECT,
                                new Handle(Opcodes.H_INVOKESTATIC, name, SAME, OBJECT_TO_OBJECT.getDescriptor(), isInterface), OBJECT_TO_OBJECT);
                    } else {
                        super.visitMethodInsn(opcode, owner, called, type, ofInterface);
                    }
                }

                @Override
                public void visitInvokeDynamicInsn(String called, String type, Handle linker, Object... with) {
                    if (linker.getOwner().equals(LAMBDAS) && simple(linker, with) && plain(type, with)) {
                        Group group = group(called, type, laidDown(linker), with);
                        group.lambdas.add(new Lambda((Handle) with[1], Type.getArgumentTypes(type), (Type) with[0],
                                (Type) with[2]));
                        super.visitMethodInsn(Opcodes.INVOKESTATIC, group.name, "of" + (group.lambdas.size() - 1), type, false);
                    } else if (linker.getOwner().equals(RECORDS) && !called.equals("toString")) {
                        Handle[] fields = new Handle[with.length - 2];
                        System.arraycopy(with, 2, fields, 0, fields.length);
                        equal.put(called, fields);
                        super.visitMethodInsn(Opcodes.INVOKESTATIC, name, "plain$" + called, type, false);
                    } else if (linker.getOwner().equals(TEXTS)) {
                        texts.add(new Text(type, with.length == 0 ? String.valueOf(ARGUMENT).repeat(Type.getArgumentTypes(type).length)
                                : (String) with[0], with));
                        super.visitMethodInsn(Opcodes.INVOKESTATIC, name, "plain$text" + (texts.size() - 1), type, isInterface);
                    } else {
                        super.visitInvokeDynamicInsn(called, type, linker, with);
                    }
                }
            };
        }

        @Override
        public void visitEnd() {
            if (equal.containsKey("hashCode")) {
                spellHashCode(cv, name, equal.get("hashCode"));
            }
            if (equal.containsKey("equals")) {
                spellEquals(cv, name, equal.get("equals"));
            }
            if (same) {
                MethodVisitor body = cv.visitMethod(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC, SAME,
                        OBJECT_TO_OBJECT.getDescriptor(), null, null);
                body.visitCode();
                body.visitVarInsn(Opcodes.ALOAD, 0);
                body.visitInsn(Opcodes.ARETURN);
                body.visitMaxs(1, 1);
                body.visitEnd();
            }
            for (int i = 0; i < texts.size(); i++) {
                spellText(cv, "plain$text" + i, texts.get(i));
            }
            super.visitEnd();
        }
    }

    /** Whether a lambda is linked as one interface and no more, save that it may be laid down in a file. */
    private static boolean simple(Handle linker, Object[] with) {
        return linker.getName().equals("metafactory")
                || linker.getName().equals("altMetafactory") && (with[3].equals(LambdaMetafactory.FLAG_SERIALIZABLE)
                || with[3].equals(LambdaMetafactory.FLAG_SERIALIZABLE | LambdaMetafactory.FLAG_BRIDGES) && with[4].equals(0));
    }

    /** Whether a lambda may be laid down in a file; its interface need not say so. */
    private static boolean laidDown(Handle linker) {
        return linker.getName().equals("altMetafactory");
    }

    private Group group(String method, String type, boolean laidDown, Object[] with) {
        String standsFor = Type.getReturnType(type).getInternalName();
        String key = standsFor + " " + method + with[0] + (laidDown ? " laid down" : "");
        Group group = groups.get(key);
        if (group == null) {
            group = new Group(host + "$Spelt" + (groups.size() + 1), standsFor, method, (Type) with[0], laidDown);
            groups.put(key, group);
        }
        return group;
    }

    /** Whether a lambda wants nothing but casts and boxes: of what it is called with, and of what comes back. */
    private static boolean plain(String type, Object[] with) {
        Handle calls = (Handle) with[1];
        Type erased = (Type) with[0];
        List<Type> given = new ArrayList<>(List.of(Type.getArgumentTypes(type)));
        given.addAll(List.of(((Type) with[2]).getArgumentTypes()));
        List<Type> wanted = wanted(calls);
        if (given.size() != wanted.size() || calls.getTag() == Opcodes.H_INVOKESPECIAL && !calls.getName().startsWith("lambda$")) {
            return false;
        }
        int held = given.size() - erased.getArgumentTypes().length;
        for (int i = 0; i < given.size(); i++) {
            Type from = i < held ? given.get(i) : erased.getArgumentTypes()[i - held];
            if (i < held && primitive(from) != primitive(wanted.get(i)) || !fits(from, given.get(i), wanted.get(i))) {
                return false;
            }
        }
        Type[] asCalled = ((Type) with[2]).getArgumentTypes();
        for (int i = 0; i < asCalled.length; i++) {
            if (primitive(asCalled[i]) != primitive(erased.getArgumentTypes()[i])) {
                return false;
            }
        }
        Type back = calls.getTag() == Opcodes.H_NEWINVOKESPECIAL ? Type.getObjectType(calls.getOwner())
                : Type.getReturnType(calls.getDesc());
        Type result = erased.getReturnType();
        if (result == Type.VOID_TYPE) {
            return true;
        }
        return back != Type.VOID_TYPE && (primitive(result) && !primitive(back) ? back.getInternalName().equals(box(result))
                : !primitive(result) || back.equals(result));
    }

    /** Whether what comes as one type, and is meant as another, can be taken as a third: it is the same, is cast, boxed or unboxed. */
    private static boolean fits(Type comes, Type meant, Type wanted) {
        if (primitive(comes)) {
            return primitive(wanted) ? comes.equals(wanted) : true;
        }
        return !primitive(wanted) || meant.getSort() == Type.OBJECT && meant.getInternalName().equals(box(wanted));
    }

    /** What a call takes, the object that it is called on first. */
    private static List<Type> wanted(Handle calls) {
        List<Type> wanted = new ArrayList<>();
        if (calls.getTag() != Opcodes.H_INVOKESTATIC && calls.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
            wanted.add(Type.getObjectType(calls.getOwner()));
        }
        wanted.addAll(List.of(Type.getArgumentTypes(calls.getDesc())));
        return wanted;
    }

    private static boolean primitive(Type type) {
        return type.getSort() < Type.ARRAY;
    }

    // --- the class of a group

    private byte[] classOf(Group group) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES | ClassWriter.COMPUTE_MAXS) {
            @Override
            protected String getCommonSuperClass(String one, String other) {
                return "java/lang/Object";
            }
        };
        writer.visit(Opcodes.V17, Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC, group.name, null,
                "java/lang/Object", group.laidDown ? new String[] {group.standsFor, "java/io/Serializable"} : new String[] {group.standsFor});
        writer.visitNestHost(host);
        writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, "which", "I", null, null).visitEnd();
        int most = 0;
        for (Lambda lambda : group.lambdas) {
            most = Math.max(most, lambda.holds.length);
        }
        for (int i = 0; i < most; i++) {
            writer.visitField(Opcodes.ACC_PRIVATE, "held" + i, "Ljava/lang/Object;", null, null).visitEnd();
        }
        MethodVisitor made = writer.visitMethod(Opcodes.ACC_PRIVATE, "<init>", "(I)V", null, null);
        made.visitCode();
        made.visitVarInsn(Opcodes.ALOAD, 0);
        made.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
        made.visitVarInsn(Opcodes.ALOAD, 0);
        made.visitVarInsn(Opcodes.ILOAD, 1);
        made.visitFieldInsn(Opcodes.PUTFIELD, group.name, "which", "I");
        made.visitInsn(Opcodes.RETURN);
        made.visitMaxs(0, 0);
        made.visitEnd();
        for (int i = 0; i < group.lambdas.size(); i++) {
            maker(writer, group, i);
        }
        calls(writer, group);
        writer.visitEnd();
        return writer.toByteArray();
    }

    /** {@code static Interface ofN(what it holds)}. */
    private static void maker(ClassWriter writer, Group group, int number) {
        Lambda lambda = group.lambdas.get(number);
        MethodVisitor made = writer.visitMethod(Opcodes.ACC_STATIC, "of" + number,
                Type.getMethodDescriptor(Type.getObjectType(group.standsFor), lambda.holds), null, null);
        made.visitCode();
        made.visitTypeInsn(Opcodes.NEW, group.name);
        made.visitInsn(Opcodes.DUP);
        push(made, number);
        made.visitMethodInsn(Opcodes.INVOKESPECIAL, group.name, "<init>", "(I)V", false);
        int local = 0;
        for (int i = 0; i < lambda.holds.length; i++) {
            Type type = lambda.holds[i];
            made.visitInsn(Opcodes.DUP);
            made.visitVarInsn(type.getOpcode(Opcodes.ILOAD), local);
            local += type.getSize();
            if (primitive(type)) {
                box(made, type);
            }
            made.visitFieldInsn(Opcodes.PUTFIELD, group.name, "held" + i, "Ljava/lang/Object;");
        }
        made.visitInsn(Opcodes.ARETURN);
        made.visitMaxs(0, 0);
        made.visitEnd();
    }

    /** The interface's method: by the number, the body. */
    private static void calls(ClassWriter writer, Group group) {
        MethodVisitor call = writer.visitMethod(Opcodes.ACC_PUBLIC, group.method, group.erased.getDescriptor(), null, null);
        call.visitCode();
        call.visitVarInsn(Opcodes.ALOAD, 0);
        call.visitFieldInsn(Opcodes.GETFIELD, group.name, "which", "I");
        Label[] labels = new Label[group.lambdas.size()];
        for (int i = 0; i < labels.length; i++) {
            labels[i] = new Label();
        }
        Label none = new Label();
        call.visitTableSwitchInsn(0, labels.length - 1, none, labels);
        for (int i = 0; i < labels.length; i++) {
            call.visitLabel(labels[i]);
            body(call, group, group.lambdas.get(i));
        }
        call.visitLabel(none);
        call.visitTypeInsn(Opcodes.NEW, "java/lang/IllegalStateException");
        call.visitInsn(Opcodes.DUP);
        call.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/IllegalStateException", "<init>", "()V", false);
        call.visitInsn(Opcodes.ATHROW);
        call.visitMaxs(0, 0);
        call.visitEnd();
    }

    private static void body(MethodVisitor call, Group group, Lambda lambda) {
        Handle calls = lambda.calls;
        boolean makes = calls.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        if (makes) {
            call.visitTypeInsn(Opcodes.NEW, calls.getOwner());
            call.visitInsn(Opcodes.DUP);
        }
        List<Type> wanted = wanted(calls);
        int at = 0;
        for (int i = 0; i < lambda.holds.length; i++) {
            Type type = lambda.holds[i];
            call.visitVarInsn(Opcodes.ALOAD, 0);
            call.visitFieldInsn(Opcodes.GETFIELD, group.name, "held" + i, "Ljava/lang/Object;");
            if (primitive(type)) {
                unbox(call, type);
            } else {
                call.visitTypeInsn(Opcodes.CHECKCAST, wanted.get(at).getInternalName());
            }
            at++;
        }
        int local = 1;
        for (Type type : lambda.erased.getArgumentTypes()) {
            call.visitVarInsn(type.getOpcode(Opcodes.ILOAD), local);
            local += type.getSize();
            Type want = wanted.get(at);
            if (primitive(type) && !primitive(want)) {
                box(call, type);
            } else if (!primitive(type) && primitive(want)) {
                unbox(call, want);
            } else if (!primitive(type) && !want.getInternalName().equals(type.getInternalName())) {
                call.visitTypeInsn(Opcodes.CHECKCAST, want.getInternalName());
            }
            at++;
        }
        int opcode = switch (calls.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> calls.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
        call.visitMethodInsn(opcode, calls.getOwner(), calls.getName(), calls.getDesc(), calls.isInterface());
        Type back = makes ? Type.getObjectType(calls.getOwner()) : Type.getReturnType(calls.getDesc());
        Type result = lambda.erased.getReturnType();
        if (result == Type.VOID_TYPE) {
            if (back != Type.VOID_TYPE) {
                call.visitInsn(back.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
            }
            call.visitInsn(Opcodes.RETURN);
            return;
        }
        if (primitive(back) && !primitive(result)) {
            box(call, back);
        } else if (!primitive(back) && primitive(result)) {
            unbox(call, result);
        } else if (!primitive(result) && !result.getInternalName().equals("java/lang/Object")
                && !result.getInternalName().equals(back.getInternalName())) {
            call.visitTypeInsn(Opcodes.CHECKCAST, result.getInternalName());
        }
        call.visitInsn(result.getOpcode(Opcodes.IRETURN));
    }

    private static void box(MethodVisitor code, Type type) {
        String box = box(type);
        code.visitMethodInsn(Opcodes.INVOKESTATIC, box, "valueOf", "(" + type.getDescriptor() + ")L" + box + ";", false);
    }

    private static void unbox(MethodVisitor code, Type type) {
        code.visitTypeInsn(Opcodes.CHECKCAST, box(type));
        code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, box(type), type.getClassName() + "Value", "()" + type.getDescriptor(), false);
    }

    // --- records

    private static void spellHashCode(ClassVisitor writer, String record, Handle[] fields) {
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC, "plain$hashCode",
                "(L" + record + ";)I", null, null);
        code.visitCode();
        code.visitInsn(Opcodes.ICONST_0);
        for (Handle field : fields) {
            push(code, 31);
            code.visitInsn(Opcodes.IMUL);
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitFieldInsn(Opcodes.GETFIELD, record, field.getName(), field.getDesc());
            Type type = Type.getType(field.getDesc());
            if (primitive(type)) {
                code.visitMethodInsn(Opcodes.INVOKESTATIC, box(type), "hashCode", "(" + type.getDescriptor() + ")I", false);
            } else {
                code.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "hashCode", "(Ljava/lang/Object;)I", false);
            }
            code.visitInsn(Opcodes.IADD);
        }
        code.visitInsn(Opcodes.IRETURN);
        code.visitMaxs(0, 0);
        code.visitEnd();
    }

    private static void spellEquals(ClassVisitor writer, String record, Handle[] fields) {
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC, "plain$equals",
                "(L" + record + ";Ljava/lang/Object;)Z", null, null);
        code.visitCode();
        Label differ = new Label();
        code.visitVarInsn(Opcodes.ALOAD, 1);
        code.visitTypeInsn(Opcodes.INSTANCEOF, record);
        code.visitJumpInsn(Opcodes.IFEQ, differ);
        for (Handle field : fields) {
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitFieldInsn(Opcodes.GETFIELD, record, field.getName(), field.getDesc());
            code.visitVarInsn(Opcodes.ALOAD, 1);
            code.visitTypeInsn(Opcodes.CHECKCAST, record);
            code.visitFieldInsn(Opcodes.GETFIELD, record, field.getName(), field.getDesc());
            Type type = Type.getType(field.getDesc());
            if (primitive(type)) {
                code.visitMethodInsn(Opcodes.INVOKESTATIC, box(type), "compare", "(" + type.getDescriptor() + type.getDescriptor()
                        + ")I", false);
                code.visitJumpInsn(Opcodes.IFNE, differ);
            } else {
                code.visitMethodInsn(Opcodes.INVOKESTATIC, "java/util/Objects", "equals",
                        "(Ljava/lang/Object;Ljava/lang/Object;)Z", false);
                code.visitJumpInsn(Opcodes.IFEQ, differ);
            }
        }
        code.visitInsn(Opcodes.ICONST_1);
        code.visitInsn(Opcodes.IRETURN);
        code.visitLabel(differ);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        code.visitInsn(Opcodes.ICONST_0);
        code.visitInsn(Opcodes.IRETURN);
        code.visitMaxs(0, 0);
        code.visitEnd();
    }

    // --- texts put together

    /**
     * A text put together.
     *
     * @param type what it is put together from
     * @param form its plain characters, with marks where arguments and constants go
     * @param with the form, and the constants
     */
    private record Text(String type, String form, Object[] with) {
    }

    private static void spellText(ClassVisitor writer, String method, Text text) {
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC, method, text.type, null, null);
        code.visitCode();
        code.visitTypeInsn(Opcodes.NEW, BUILDER);
        code.visitInsn(Opcodes.DUP);
        code.visitMethodInsn(Opcodes.INVOKESPECIAL, BUILDER, "<init>", "()V", false);
        Type[] arguments = Type.getArgumentTypes(text.type);
        int argument = 0;
        int constant = 1;
        int local = 0;
        StringBuilder plain = new StringBuilder();
        for (char c : text.form.toCharArray()) {
            if (c == CONSTANT) {
                plain.append(text.with[constant++]);
            } else if (c != ARGUMENT) {
                plain.append(c);
            } else {
                append(code, plain);
                Type type = arguments[argument++];
                code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), local);
                local += type.getSize();
                code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BUILDER, "append", "(" + appended(type) + ")L" + BUILDER + ";", false);
            }
        }
        append(code, plain);
        code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BUILDER, "toString", "()Ljava/lang/String;", false);
        code.visitInsn(Opcodes.ARETURN);
        code.visitMaxs(0, 0);
        code.visitEnd();
    }

    private static void append(MethodVisitor code, StringBuilder plain) {
        if (plain.length() > 0) {
            code.visitLdcInsn(plain.toString());
            code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BUILDER, "append", "(Ljava/lang/String;)L" + BUILDER + ";", false);
            plain.setLength(0);
        }
    }

    private static String appended(Type type) {
        return switch (type.getSort()) {
            case Type.BYTE, Type.SHORT -> "I";
            case Type.OBJECT -> type.getInternalName().equals("java/lang/String") ? "Ljava/lang/String;" : "Ljava/lang/Object;";
            case Type.ARRAY -> "Ljava/lang/Object;";
            default -> type.getDescriptor();
        };
    }

    private static String box(Type type) {
        return switch (type.getSort()) {
            case Type.BOOLEAN -> "java/lang/Boolean";
            case Type.CHAR -> "java/lang/Character";
            case Type.BYTE -> "java/lang/Byte";
            case Type.SHORT -> "java/lang/Short";
            case Type.INT -> "java/lang/Integer";
            case Type.LONG -> "java/lang/Long";
            case Type.FLOAT -> "java/lang/Float";
            default -> "java/lang/Double";
        };
    }

    private static void push(MethodVisitor code, int number) {
        if (number <= Byte.MAX_VALUE) {
            code.visitIntInsn(Opcodes.BIPUSH, number);
        } else {
            code.visitIntInsn(Opcodes.SIPUSH, number);
        }
    }
}

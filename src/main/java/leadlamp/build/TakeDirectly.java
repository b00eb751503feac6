package leadlamp.build;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Takes a field directly where a method that only gives it back is called. A short run interprets most of its code, and to
 * call costs an interpreter many times what to take does; a compiler would do the same, had it the time.
 *
 * <p>It does so where it is certain which method would run: no class in the jar has another of the same name below. The
 * fields are opened to the whole jar for it; no more is changed.
 */
final class TakeDirectly {
    private static final String CLASS = ".class";
    private static final int API = Opcodes.ASM9;

    /** A field that a method gives back. */
    private record Field(String owner, String name, String type) {
    }

    /** Methods that give back a field, by class, name and type. */
    private final Map<String, Field> giving = new HashMap<>();
    /** Methods that may be another's in a class below, by class, name and type. */
    private final Set<String> again = new HashSet<>();
    private final Map<String, String> above = new HashMap<>();
    private final Map<String, Set<String>> methods = new HashMap<>();
    private final Set<String> seenByAll = new HashSet<>();
    private final Set<Field> declared = new HashSet<>();
    private final Set<Field> opened = new HashSet<>();

    private TakeDirectly() {
    }

    /**
     * The classes that were changed, as they stand then.
     *
     * @param files the files of the jar by name
     */
    static Map<String, byte[]> in(Map<String, byte[]> files) {
        TakeDirectly all = new TakeDirectly();
        files.forEach((name, bytes) -> {
            if (name.endsWith(CLASS)) {
                new ClassReader(bytes).accept(all.new Look(), ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
            }
        });
        all.methods.forEach((type, own) -> {
            for (String higher = all.above.get(type); higher != null; higher = all.above.get(higher)) {
                for (String method : own) {
                    all.again.add(higher + "." + method);
                }
            }
        });
        Map<String, byte[]> changed = new TreeMap<>();
        files.forEach((name, bytes) -> {
            if (name.endsWith(CLASS)) {
                changed.put(name, all.directly(bytes));
            }
        });
        changed.replaceAll((name, bytes) -> all.opened(bytes));
        return changed;
    }

    /** Looks for methods that give a field back, and for what stands above and below what. */
    private final class Look extends ClassVisitor {
        private String type;
        private boolean isInterface;

        Look() {
            super(API);
        }

        @Override
        public void visit(int version, int access, String name, String signature, String superName, String[] interfaces) {
            type = name;
            isInterface = (access & Opcodes.ACC_INTERFACE) != 0;
            above.put(name, superName);
            methods.put(name, new HashSet<>());
            if ((access & Opcodes.ACC_PUBLIC) != 0) {
                seenByAll.add(name);
            }
        }

        @Override
        public FieldVisitor visitField(int access, String name, String fieldType, String signature, Object value) {
            declared.add(new Field(type, name, fieldType));
            return null;
        }

        @Override
        public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
            methods.get(type).add(name + descriptor);
            boolean plain = (access & (Opcodes.ACC_STATIC | Opcodes.ACC_ABSTRACT | Opcodes.ACC_NATIVE | Opcodes.ACC_SYNCHRONIZED)) == 0;
            return plain && !isInterface && descriptor.startsWith("()") ? new Body(type, name, descriptor) : null;
        }
    }

    /**
     * Reads a method, and notes it where it does nothing but give a field of its own class back. One that its class has from above
     * will not do, though the compiler names the class itself: who may call the method may not reach that field.
     */
    private final class Body extends MethodVisitor {
        private final String type;
        private final String name;
        private final String descriptor;
        private int step;
        private Field field;

        Body(String type, String name, String descriptor) {
            super(API);
            this.type = type;
            this.name = name;
            this.descriptor = descriptor;
        }

        @Override
        public void visitVarInsn(int opcode, int variable) {
            step = step == 0 && opcode == Opcodes.ALOAD && variable == 0 ? 1 : -1;
        }

        @Override
        public void visitFieldInsn(int opcode, String owner, String field, String type) {
            boolean own = opcode == Opcodes.GETFIELD && owner.equals(this.type) && descriptor.equals("()" + type);
            step = step == 1 && own ? 2 : -1;
            this.field = new Field(owner, field, type);
        }

        @Override
        public void visitInsn(int opcode) {
            boolean back = opcode >= Opcodes.IRETURN && opcode <= Opcodes.ARETURN;
            if (step == 2 && back) {
                step = 3;
            } else {
                step = -1;
            }
        }

        @Override
        public void visitIntInsn(int opcode, int operand) {
            step = -1;
        }

        @Override
        public void visitTypeInsn(int opcode, String type) {
            step = -1;
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String type, boolean ofInterface) {
            step = -1;
        }

        @Override
        public void visitInvokeDynamicInsn(String name, String type, org.objectweb.asm.Handle linker, Object... with) {
            step = -1;
        }

        @Override
        public void visitJumpInsn(int opcode, Label label) {
            step = -1;
        }

        @Override
        public void visitLdcInsn(Object value) {
            step = -1;
        }

        @Override
        public void visitIincInsn(int variable, int by) {
            step = -1;
        }

        @Override
        public void visitTableSwitchInsn(int min, int max, Label other, Label... labels) {
            step = -1;
        }

        @Override
        public void visitLookupSwitchInsn(Label other, int[] keys, Label[] labels) {
            step = -1;
        }

        @Override
        public void visitMultiANewArrayInsn(String type, int dimensions) {
            step = -1;
        }

        @Override
        public void visitEnd() {
            if (step == 3 && declared.contains(field)) {
                giving.put(type + "." + name + descriptor, field);
            }
        }
    }

    /** The field that a call on an object of this type takes, or null; null too where the caller may not name the class that has it. */
    private Field field(String caller, String owner, String called) {
        for (String type = owner; type != null && above.containsKey(type); type = above.get(type)) {
            if (methods.get(type).contains(called)) {
                boolean seen = seenByAll.contains(type) || folder(type).equals(folder(caller));
                return again.contains(type + "." + called) || !seen ? null : giving.get(type + "." + called);
            }
        }
        return null;
    }

    private static String folder(String type) {
        return type.substring(0, type.lastIndexOf('/') + 1);
    }

    private byte[] directly(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        ClassWriter writer = new ClassWriter(reader, 0);
        boolean[] changed = new boolean[1];
        reader.accept(new ClassVisitor(API, writer) {
            @Override
            public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
                return new MethodVisitor(API, super.visitMethod(access, name, descriptor, signature, exceptions)) {
                    @Override
                    public void visitMethodInsn(int opcode, String owner, String called, String type, boolean ofInterface) {
                        Field field = opcode == Opcodes.INVOKEVIRTUAL ? field(reader.getClassName(), owner, called + type) : null;
                        if (field == null) {
                            super.visitMethodInsn(opcode, owner, called, type, ofInterface);
                        } else {
                            opened.add(field);
                            changed[0] = true;
                            super.visitFieldInsn(Opcodes.GETFIELD, field.owner, field.name, field.type);
                        }
                    }
                };
            }
        }, 0);
        return changed[0] ? writer.toByteArray() : bytes;
    }

    /** A class with its fields that are taken from elsewhere open. */
    private byte[] opened(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        ClassWriter writer = new ClassWriter(reader, 0);
        boolean[] changed = new boolean[1];
        reader.accept(new ClassVisitor(API, writer) {
            @Override
            public FieldVisitor visitField(int access, String name, String type, String signature, Object value) {
                boolean open = opened.contains(new Field(reader.getClassName(), name, type));
                changed[0] |= open;
                return super.visitField(open ? access & ~(Opcodes.ACC_PRIVATE | Opcodes.ACC_PROTECTED) | Opcodes.ACC_PUBLIC : access,
                        name, type, signature, value);
            }
        }, 0);
        return changed[0] ? writer.toByteArray() : bytes;
    }
}

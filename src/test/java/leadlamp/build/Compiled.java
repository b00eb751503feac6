package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Small sources put through the compiler as ours are, so that the steps meet what it really writes. */
final class Compiled {
    private static final Pattern FOLDER = Pattern.compile("package ([\\w.]+);");
    private static final Pattern NAME = Pattern.compile("(?:class|record|interface|enum) (\\w+)");
    private static final String CLASS = ".class";

    private Compiled() {
    }

    /** Compiles sources, each with its package, into the classes of a folder, by the names of their files. */
    static Map<String, byte[]> in(Path folder, String... sources) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("--release", "17", "-proc:none", "-nowarn", "-d", folder.toString()));
        for (String source : sources) {
            Matcher name = NAME.matcher(source);
            assertThat(name.find()).isTrue();
            Path file = folder.resolve("sources").resolve(folder(source)).resolve(name.group(1) + ".java");
            Files.createDirectories(file.getParent());
            arguments.add(Files.writeString(file, source).toString());
        }
        assertThat(ToolProvider.getSystemJavaCompiler().run(null, null, null, arguments.toArray(new String[0])))
                .as("the sources compile").isZero();
        return classes(folder);
    }

    private static String folder(String source) {
        Matcher folder = FOLDER.matcher(source);
        return folder.find() ? folder.group(1).replace('.', '/') : "";
    }

    static Map<String, byte[]> classes(Path folder) throws IOException {
        Map<String, byte[]> classes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(CLASS)).toList()) {
                classes.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return classes;
    }

    /** What a class's {@code static String run()} says, once Java has checked the classes; or the name of what it throws. */
    static String run(Map<String, byte[]> classes, String name) throws ReflectiveOperationException {
        Loader loader = new Loader(classes);
        for (String file : classes.keySet()) {
            Class.forName(Loader.name(file), false, loader).getDeclaredMethods();
        }
        try {
            return (String) loader.loadClass(name).getMethod("run").invoke(null);
        } catch (InvocationTargetException thrown) {
            return thrown.getCause().getClass().getSimpleName();
        }
    }

    /** What the methods of a class call, take from fields, and leave to be linked. */
    static List<String> does(byte[] bytes) {
        TreeSet<String> does = new TreeSet<>();
        new ClassReader(bytes).accept(new ClassVisitor(Opcodes.ASM9) {
            @Override
            public MethodVisitor visitMethod(int access, String method, String descriptor, String signature, String[] exceptions) {
                return new MethodVisitor(Opcodes.ASM9) {
                    @Override
                    public void visitMethodInsn(int opcode, String owner, String name, String type, boolean ofInterface) {
                        does.add("calls " + last(owner) + "." + name);
                    }

                    @Override
                    public void visitFieldInsn(int opcode, String owner, String name, String type) {
                        if (opcode == Opcodes.GETFIELD) {
                            does.add("takes " + last(owner) + "." + name);
                        }
                    }

                    @Override
                    public void visitInvokeDynamicInsn(String name, String type, Handle linker, Object... with) {
                        does.add("links " + name);
                    }
                };
            }
        }, 0);
        return List.copyOf(does);
    }

    private static String last(String owner) {
        return owner.substring(owner.lastIndexOf('/') + 1);
    }

    /** Classes that stand nowhere but here, and Java's own. */
    static final class Loader extends ClassLoader {
        private final Map<String, byte[]> files;

        Loader(Map<String, byte[]> files) {
            super(ClassLoader.getPlatformClassLoader());
            this.files = files;
        }

        static String name(String file) {
            return file.substring(0, file.length() - CLASS.length()).replace('/', '.');
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] bytes = files.get(name.replace('.', '/') + CLASS);
            if (bytes == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, bytes, 0, bytes.length);
        }
    }
}

package leadlamp.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import org.drools.base.rule.accessor.GlobalResolver;
import org.drools.core.BaseConfiguration;
import org.drools.kiesession.rulebase.SessionsAwareKnowledgeBase;
import org.drools.util.Config;
import org.drools.wiring.api.ComponentsSupplier;
import org.drools.wiring.statics.StaticComponentsSupplier;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBaseConfiguration;
import org.kie.internal.conf.CompositeBaseConfiguration;
import org.kie.memorycompiler.StoreClassLoader;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.slf4j.LoggerFactory;

class ToldAheadTest {
    private static final String LOGGERS = "org/slf4j/LoggerFactory.class";
    private static final String SETTINGS = "org/drools/util/Config$ConfigResolverHolder.class";
    private static final String SERVICES = "org/kie/api/internal/utils/KieServiceLoader.class";
    private static final String EXECUTORS = "META-INF/services/org.kie.api.concurrent.KieExecutors";

    /** The libraries of the jar that have to do with it, as they came. */
    private static Map<String, byte[]> libraries() throws IOException, URISyntaxException {
        Map<String, byte[]> files = new TreeMap<>();
        for (Class<?> one : List.of(LoggerFactory.class, Config.class, KieBaseConfiguration.class, CompositeBaseConfiguration.class,
                BaseConfiguration.class, GlobalResolver.class, StoreClassLoader.class,
                SessionsAwareKnowledgeBase.class, ComponentsSupplier.class, StaticComponentsSupplier.class)) {
            try (JarFile jar = new JarFile(Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI()).toFile())) {
                for (var entry : jar.stream().filter(e -> !e.isDirectory() && !e.getName().startsWith("META-INF/versions/")).toList()) {
                    files.put(entry.getName(), jar.getInputStream(entry).readAllBytes());
                }
            }
        }
        return files;
    }

    private static Compiled.Loader told(Map<String, byte[]> files) {
        Map<String, byte[]> told = new TreeMap<>(files);
        told.putAll(ToldAhead.of(files));
        return new Compiled.Loader(told);
    }

    private static Object served(ClassLoader loader, String service) throws ReflectiveOperationException {
        Class<?> services = loader.loadClass("org.kie.api.internal.utils.KieServiceLoader");
        Field instance = services.getDeclaredField("INSTANCE");
        instance.setAccessible(true);
        Method lookup = services.getDeclaredMethod("lookup", Class.class);
        lookup.setAccessible(true);
        return lookup.invoke(instance.get(null), loader.loadClass(service));
    }

    @Test
    void who_asks_for_a_service_is_given_what_its_file_names() throws Exception {
        Map<String, byte[]> files = libraries();
        Compiled.Loader loader = told(files);
        List<String> asked = new ArrayList<>();
        for (String file : files.keySet()) {
            String service = file.substring(file.lastIndexOf('/') + 1);
            if (file.startsWith("META-INF/services/org.") && files.containsKey(service.replace('.', '/') + ".class")) {
                Object served = served(loader, service);
                assertThat(new String(files.get(file), StandardCharsets.UTF_8)).as(service).contains(served.getClass().getName());
                assertThat(served).as(service).isInstanceOf(loader.loadClass(service));
                assertThat(served(loader, service)).as(service).isSameAs(served);
                asked.add(service);
            }
        }
        assertThat(asked).contains("org.kie.api.concurrent.KieExecutors", "org.kie.api.internal.assembler.KieAssemblers",
                "org.drools.core.reteoo.RuntimeComponentFactory");
    }

    @Test
    void who_asks_for_what_nobody_serves_is_given_nothing() throws Exception {
        Compiled.Loader loader = told(libraries());
        assertThat(served(loader, "org.kie.api.io.KieResources")).isNull();
        assertThat(served(loader, "org.kie.api.KieServices")).isNull();
    }

    @Test
    void every_logger_is_silent() throws Exception {
        Compiled.Loader loader = told(libraries());
        Class<?> loggers = loader.loadClass("org.slf4j.LoggerFactory");
        Object silent = loader.loadClass("org.slf4j.helpers.NOPLogger").getField("NOP_LOGGER").get(null);
        assertThat(loggers.getMethod("getLogger", String.class).invoke(null, "rules")).isSameAs(silent);
        assertThat(loggers.getMethod("getLogger", Class.class).invoke(null, String.class)).isSameAs(silent);
    }

    @Test
    void settings_stand_in_the_system_s_own() throws Exception {
        Class<?> settings = told(libraries()).loadClass("org.drools.util.Config");
        Method asked = settings.getMethod("getConfig", String.class, String.class);
        String name = "leadlamp.tried.setting";
        assertThat(asked.invoke(null, name, "usual")).isEqualTo("usual");
        System.setProperty(name, "given");
        try {
            assertThat(asked.invoke(null, name, "usual")).isEqualTo("given");
        } finally {
            System.clearProperty(name);
        }
    }

    @Test
    void what_is_told_stands_before_java_s_check_of_classes_and_nothing_else_is_changed() throws Exception {
        Map<String, byte[]> files = libraries();
        assertThat(ToldAhead.of(files)).containsOnlyKeys(LOGGERS, SETTINGS, SERVICES);
        Compiled.Loader loader = told(files);
        for (String file : List.of(LOGGERS, SETTINGS, SERVICES)) {
            assertThat(Class.forName(Compiled.Loader.name(file), true, loader).getDeclaredMethods()).as(file).isNotEmpty();
        }
    }

    @Test
    void a_library_that_no_longer_has_the_method_stops_the_build() throws Exception {
        Map<String, byte[]> files = libraries();
        without(files, LOGGERS, "getLogger", "(Ljava/lang/Class;)");
        assertThatThrownBy(() -> ToldAhead.of(files)).isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("The libraries no longer have what the jar tells ahead: org/slf4j/LoggerFactory");
        Map<String, byte[]> settings = libraries();
        without(settings, SETTINGS, "createConfigResolver", "()");
        assertThatThrownBy(() -> ToldAhead.of(settings)).hasMessageContaining("org/drools/util/Config$ConfigResolverHolder [createConfigResolver()]");
        Map<String, byte[]> services = libraries();
        without(services, SERVICES, "load", "(Ljava/lang/Class;Ljava/lang/String;)");
        assertThatThrownBy(() -> ToldAhead.of(services)).hasMessageContaining("org/kie/api/internal/utils/KieServiceLoader");
    }

    @Test
    void a_library_that_no_longer_has_the_class_stops_the_build() throws Exception {
        Map<String, byte[]> files = libraries();
        files.remove(SERVICES);
        assertThatThrownBy(() -> ToldAhead.of(files)).hasMessageContaining("org/kie/api/internal/utils/KieServiceLoader");
    }

    @Test
    void two_that_serve_under_one_name_or_one_that_is_not_there_stop_the_build() throws Exception {
        Map<String, byte[]> two = libraries();
        two.put(EXECUTORS, "# who serves\norg.drools.core.concurrent.ExecutorProviderImpl\norg.drools.util.Config\n".getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> ToldAhead.of(two)).hasMessageContaining("One class should serve under " + EXECUTORS);
        Map<String, byte[]> gone = libraries();
        gone.remove("org/drools/core/concurrent/ExecutorProviderImpl.class");
        assertThatThrownBy(() -> ToldAhead.of(gone)).hasMessageContaining("One class should serve under " + EXECUTORS);
    }

    private static void without(Map<String, byte[]> files, String file, String method, String takes) {
        ClassReader reader = new ClassReader(files.get(file));
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
                return name.equals(method) && descriptor.startsWith(takes) ? null
                        : super.visitMethod(access, name, descriptor, signature, exceptions);
            }
        }, 0);
        files.put(file, writer.toByteArray());
    }
}

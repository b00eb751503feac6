package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import leadlamp.facts.Fact;
import org.junit.jupiter.api.Test;

class RulebaseFieldsTest {
    private static final Set<String> OF_NO_USE_TO_A_RULE = Set.of("Value sum");

    @Test
    void every_fact_is_known_by_name() {
        assertThat(RulebaseFields.facts()).containsExactlyInAnyOrderElementsOf(
                Arrays.stream(Fact.class.getPermittedSubclasses()).map(Class::getSimpleName).toList());
        for (String name : RulebaseFields.facts()) {
            assertThat(RulebaseFields.type(RulebaseFields.fact(name)).getSimpleName()).isEqualTo(name);
        }
    }

    @Test
    void every_word_of_a_fact_can_be_asked_for() {
        for (Class<?> fact : Fact.class.getPermittedSubclasses()) {
            List<String> words = new ArrayList<>();
            for (RecordComponent part : fact.getRecordComponents()) {
                if (part.getType() == String.class && !OF_NO_USE_TO_A_RULE.contains(fact.getSimpleName() + " " + part.getName())) {
                    words.add(part.getName());
                }
            }
            if (!words.contains("at")) {
                words.add("at");
            }
            assertThat(RulebaseFields.words(fact.getSimpleName())).as(fact.getSimpleName()).containsExactlyInAnyOrderElementsOf(words);
        }
    }

    @Test
    void every_yes_or_no_of_a_fact_can_be_asked_for() throws NoSuchMethodException {
        for (Class<?> fact : Fact.class.getPermittedSubclasses()) {
            List<String> flags = new ArrayList<>();
            for (Method method : fact.getDeclaredMethods()) {
                if (method.getReturnType() == boolean.class && method.getParameterCount() == 0 && !method.isSynthetic()) {
                    String name = method.getName();
                    flags.add(name.startsWith("is") ? Character.toLowerCase(name.charAt(2)) + name.substring(3) : name);
                }
            }
            assertThat(RulebaseFields.flags(fact.getSimpleName())).as(fact.getSimpleName()).containsExactlyInAnyOrderElementsOf(flags);
        }
        for (String tie : RulebaseFields.ties()) {
            assertThat(Fact.class.getMethod(tie, String.class).getReturnType()).isEqualTo(boolean.class);
        }
    }
}

package leadlamp.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.Map;
import java.util.TreeMap;
import org.drools.core.KieBaseConfigurationImpl;
import org.drools.core.RuleBaseConfiguration;
import org.drools.core.impl.RuleBaseFactory;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.conf.Option;

class RulebaseSettingsTest {
    @Test
    void the_settings_put_together_by_hand_are_those_that_rules_usually_run_with() throws ReflectiveOperationException {
        Map<String, String> usual = told(RuleBaseFactory.newKnowledgeBaseConfiguration());
        assertThat(usual).hasSizeGreaterThan(20).containsKeys("RuleBaseConfiguration.isShareBetaNodes",
                "RuleBaseConfiguration.getIndexPrecedenceOption", "KieBaseConfigurationImpl.isMutabilityEnabled");
        assertThat(told(RulebaseModels.settings())).isEqualTo(usual);
    }

    @Test
    void a_setting_that_is_another_is_told() throws ReflectiveOperationException {
        KieBaseConfiguration other = RuleBaseFactory.newKnowledgeBaseConfiguration();
        RuleBaseConfiguration rules = other.as(RuleBaseConfiguration.KEY);
        rules.setShareBetaNodes(!rules.isShareBetaNodes());
        assertThat(told(other)).isNotEqualTo(told(RulebaseModels.settings()));
    }

    private static Map<String, String> told(KieBaseConfiguration settings) throws ReflectiveOperationException {
        Map<String, String> told = new TreeMap<>();
        tell(settings.as(RuleBaseConfiguration.KEY), told);
        tell(settings.as(KieBaseConfigurationImpl.KEY), told);
        return told;
    }

    /** What a part of the settings says of itself; what it was loaded by is no setting. */
    private static void tell(Object part, Map<String, String> told) throws ReflectiveOperationException {
        for (Method says : part.getClass().getMethods()) {
            Class<?> as = says.getReturnType();
            boolean asked = says.getName().startsWith("get") || says.getName().startsWith("is");
            boolean setting = as.isPrimitive() || as == String.class || as.isEnum() || Option.class.isAssignableFrom(as);
            // The two kinds of behaviour are classes of their own, made before Java had enums.
            boolean behaviour = as.getName().startsWith(RuleBaseConfiguration.class.getName() + "$");
            if (asked && (setting || behaviour) && says.getParameterCount() == 0 && says.getDeclaringClass() != Object.class) {
                told.put(part.getClass().getSimpleName() + "." + says.getName(), String.valueOf(says.invoke(part)));
            }
        }
    }
}

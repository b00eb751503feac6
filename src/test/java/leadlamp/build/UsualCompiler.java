package leadlamp.build;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import leadlamp.audit.Conditions;
import leadlamp.audit.Findings;
import leadlamp.facts.Ask;
import leadlamp.facts.Fact;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.runtime.KieSession;

/** The same rules through the compiler that Drools itself brings, to compare with. */
final class UsualCompiler {
    private final KieBase base;

    UsualCompiler(Map<String, String> textByFile) {
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        textByFile.forEach((file, text) -> files.write("src/main/resources/" + file, text));
        KieBuilder builder = services.newKieBuilder(files).buildAll();
        if (builder.getResults().hasMessages(Message.Level.ERROR)) {
            throw new IllegalArgumentException(builder.getResults().getMessages().toString());
        }
        base = services.newKieContainer(builder.getKieModule().getReleaseId()).getKieBase();
    }

    /** Everything that the rules find. */
    Findings findings(Collection<Ask> asks, Collection<? extends Fact> facts) {
        Findings findings = new Findings();
        List<Object> all = new ArrayList<>(asks);
        all.addAll(facts);
        fire("findings", findings, all);
        return findings;
    }

    /** Every condition that the rules set. */
    Conditions conditions(Collection<? extends Fact> facts) {
        Conditions conditions = new Conditions();
        fire("conditions", conditions, facts);
        return conditions;
    }

    private void fire(String global, Object into, Collection<?> facts) {
        KieSession session = base.newKieSession();
        try {
            session.setGlobal(global, into);
            facts.forEach(session::insert);
            session.fireAllRules();
        } finally {
            session.dispose();
        }
    }
}

package outshop.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.conf.KieBaseMutabilityOption;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;
import org.kie.api.runtime.rule.Match;
import org.kie.api.runtime.rule.AgendaFilter;
import outshop.rules.RuleEngine;

/** The rule engine with all rules and a desk that takes nothing: every rule is found, none runs. */
final class Bare {
  private static final AgendaFilter COUNT = Bare::refuse;

  private final KieSessionsPool sessions;

  Bare() throws IOException, ReflectiveOperationException {
    List<Model> models = new ArrayList<>();
    try (InputStream names = RuleEngine.class.getResourceAsStream(RuleEngine.MODELS)) {
      for (String name : new String(names.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        models.add((Model) Class.forName(name).getDeclaredConstructor().newInstance());
      }
    }
    sessions =
        KieBaseBuilder.createKieBaseFromModel(models, KieBaseMutabilityOption.DISABLED)
            .newKieSessionsPool(1);
  }

  private static boolean refuse(Match match) {
    return false;
  }

  /** Puts the facts in and lets the engine find what is to be run. */
  int run(Collection<?> facts) {
    KieSession session = sessions.newKieSession();
    facts.forEach(session::insert);
    int fired = session.fireAllRules(COUNT);
    session.dispose();
    return fired;
  }
}

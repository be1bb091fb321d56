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
import org.kie.api.runtime.rule.AgendaFilter;
import org.kie.api.runtime.rule.Match;
import outshop.rules.RuleEngine;

/** The rule engine with all rules and without the grading of what they hand in. */
final class Bare {
  private static final AgendaFilter NONE = Bare::refuse;

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

  /** Puts the facts in and lets the engine find what is to be run; none is run. */
  int find(Collection<?> facts) {
    KieSession session = sessions.newKieSession();
    facts.forEach(session::insert);
    int fired = session.fireAllRules(NONE);
    session.dispose();
    return fired;
  }

  /** Runs every rule before a desk that throws away what they hand in. */
  int run(Collection<?> facts) {
    Deaf desk = new Deaf();
    KieSession session = sessions.newKieSession();
    session.setGlobal("desk", desk);
    facts.forEach(session::insert);
    session.fireAllRules();
    session.dispose();
    return desk.handedIn();
  }
}

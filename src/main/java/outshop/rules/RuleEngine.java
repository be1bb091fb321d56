package outshop.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.KieServices;
import org.kie.api.conf.KieBaseMutabilityOption;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;
import outshop.findings.Finding;

/**
 * Runs every rule over the facts of one plan. The rules were compiled when the program was built;
 * nothing is compiled here. One engine serves any number of plans, from any number of threads.
 */
public final class RuleEngine {
  /** The names of the classes the rules were compiled to, one a line. */
  public static final String MODELS = "models.txt";

  /**
   * No rule is ever added to a rule base, so its sessions need not keep facts by every class they
   * are of, which takes a third of the time to put them in.
   */
  private static final KieBaseMutabilityOption FIXED = KieBaseMutabilityOption.DISABLED;

  private final RuleBook book;

  /** Sessions that are used again and again: to make one costs more than to empty it. */
  private final KieSessionsPool sessions;

  private RuleEngine(RuleBook book, KieSessionsPool sessions) {
    this.book = book;
    this.sessions = sessions;
  }

  /** The engine with the rules that were built with the program. */
  public static RuleEngine load() {
    return of(RuleBook.load(), RuleBook.resource(MODELS), RuleEngine.class.getClassLoader());
  }

  /**
   * The engine of compiled rules.
   *
   * @param book the pages of these rules
   * @param models the names of the classes they were compiled to
   * @param loader loads those classes
   */
  public static RuleEngine of(RuleBook book, List<String> models, ClassLoader loader) {
    List<Model> loaded = new ArrayList<>();
    for (String name : models) {
      try {
        Class<?> model = Class.forName(name, true, loader);
        loaded.add((Model) model.getDeclaredConstructor().newInstance());
      } catch (ReflectiveOperationException e) {
        throw new RuleBookException(name, "cannot be loaded; build the program whole", e);
      }
    }
    KieBaseConfiguration fixed = KieServices.get().newKieBaseConfiguration();
    fixed.setOption(FIXED);
    return new RuleEngine(
        book,
        KieBaseBuilder.createKieBaseFromModel(loaded, fixed, new UnchangingFacts())
            .newKieSessionsPool(1));
  }

  /** The same rules with what other pages say about them; nothing is loaded again. */
  public RuleEngine with(RuleBook pages) {
    return new RuleEngine(pages, sessions);
  }

  public RuleBook book() {
    return book;
  }

  /**
   * What all rules find in these facts, in no particular order.
   *
   * @param facts records of the figures package
   */
  public List<Finding> run(Collection<?> facts) {
    return judge(facts).findings();
  }

  /** As {@link #run}, with where a rule had nothing to compare. */
  public Judged judge(Collection<?> facts) {
    Grader grader = new Grader(book);
    fire(grader, facts);
    return grader.judged();
  }

  /** As {@link #run}, but only how each rule ended, by the same policy. */
  public List<Verdict> verdicts(Collection<?> facts) {
    Tally tally = new Tally(book);
    fire(tally, facts);
    return tally.verdicts();
  }

  private void fire(Desk desk, Collection<?> facts) {
    KieSession session = sessions.newKieSession();
    session.setGlobal("desk", desk);
    for (Object fact : facts) {
      session.insert(fact);
    }
    session.fireAllRules();
    // Not in a finally: a session in which a rule failed is not used again.
    session.dispose();
  }
}

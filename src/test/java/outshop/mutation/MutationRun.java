package outshop.mutation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import outshop.findings.Finding;
import outshop.rulecases.Example;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/** Puts every fault into every rule, one at a time, and runs the rule's own examples on it. */
final class MutationRun {
  private final Map<String, List<Example>> examples = new TreeMap<>();
  private final Consumer<String> progress;

  /**
   * A run.
   *
   * @param examples whatever may notice a fault: each only in its own rule
   * @param progress is told a line a rule
   */
  MutationRun(List<Example> examples, Consumer<String> progress) {
    for (Example example : examples) {
      this.examples.computeIfAbsent(example.rule(), r -> new ArrayList<>()).add(example);
    }
    this.progress = progress;
  }

  /** The fate of every mutant of these rules. */
  List<Trial> of(List<RuleText> pages) {
    Map<RuleText, List<Mutant>> mutants = new LinkedHashMap<>();
    List<String> drls = new ArrayList<>();
    for (RuleText page : pages) {
      List<Mutant> of = mutants(page);
      mutants.put(page, of);
      drls.add(drl(page));
      of.stream().map(Mutant::drl).filter(text -> !text.isEmpty()).forEach(drls::add);
    }
    progress.accept("compiling " + drls.stream().distinct().count() + " texts of rules");
    CompiledRules rules = new CompiledRules(drls);
    List<Trial> trials = new ArrayList<>();
    mutants.forEach((page, of) -> trials.addAll(trials(page, of, rules)));
    return trials;
  }

  /** Every mutant of a rule, also those that will not compile. */
  static List<Mutant> mutants(RuleText page) {
    String drl = drl(page);
    List<Mutant> mutants = new ArrayList<>(PageMutants.of(page, drl));
    mutants.addAll(DrlMutants.of(page, drl));
    return mutants;
  }

  private List<Trial> trials(RuleText page, List<Mutant> mutants, CompiledRules rules) {
    Map<Example, List<Object>> facts = new LinkedHashMap<>();
    examples.getOrDefault(page.name(), List.of()).forEach(e -> facts.put(e, e.facts()));
    Fate unchanged = fate(rules.engine(drl(page), new RuleBook(List.of(page))), facts);
    if (unchanged != Fate.SURVIVED) {
      throw new IllegalStateException(page.name() + " fails its own examples; mend that first");
    }
    Map<String, Optional<RuleEngine>> engines = new LinkedHashMap<>();
    List<Trial> trials = new ArrayList<>();
    for (Mutant mutant : mutants) {
      RuleBook changed = new RuleBook(List.of(mutant.page()));
      Fate fate =
          mutant.drl().isEmpty()
              ? removed(facts)
              : fate(
                  engines
                      .computeIfAbsent(mutant.drl(), drl -> rules.engine(drl, changed))
                      .map(engine -> engine.with(changed)),
                  facts);
      trials.add(new Trial(mutant, fate));
    }
    long survived = trials.stream().filter(Trial::survived).count();
    progress.accept(
        page.name()
            + ": "
            + mutants.size()
            + " mutants, "
            + facts.size()
            + " examples, "
            + survived
            + " survive");
    return trials;
  }

  /** A rule that is not there finds nothing. */
  private static Fate removed(Map<Example, List<Object>> facts) {
    boolean noticed = facts.keySet().stream().anyMatch(e -> e.failure(List.of()).isPresent());
    return noticed ? Fate.KILLED : Fate.SURVIVED;
  }

  private static Fate fate(Optional<RuleEngine> engine, Map<Example, List<Object>> facts) {
    if (engine.isEmpty()) {
      return Fate.NOT_COMPILED;
    }
    for (Map.Entry<Example, List<Object>> example : facts.entrySet()) {
      List<Finding> findings;
      try {
        findings = engine.get().run(example.getValue());
      } catch (RuntimeException e) {
        return Fate.STOPPED;
      }
      if (example.getKey().failure(findings).isPresent()) {
        return Fate.KILLED;
      }
    }
    return Fate.SURVIVED;
  }

  private static String drl(RuleText page) {
    try {
      return Files.readString(Example.RULES.resolve(page.name() + ".drl"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

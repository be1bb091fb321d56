package outshop.mutation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What a whole run found, as a page. */
final class MutationPage {
  private static final String HEAD =
      """
      # How good the rules' examples are

      Made by `mvn -q test-compile exec:exec@rule-mutation`; do not edit. Each rule gets one deliberate fault at a time (a *mutant*), in its
      page or in its text, and only its own examples are run on it. A fault that an example answers otherwise is noticed; one that no example
      notices *survives*. Some faults change nothing that an example could see: those are *equivalent* and listed below with the reason, kept
      by hand in `src/test/resources/equivalent-mutants.txt`. Faults that do not compile cannot get into the rule book and are not counted.

      A bound is moved by 1 %: values in a plan have three digits, so an example just on each side of a bound must notice that.
      Not tried are faults in the figures that a rule judges and in the sentences of its page.

      """;

  /** The heading of the table that {@link MutationRecord} reads. */
  static final String BY_RULE = "## By rule";

  private static final String BY_FAULT = "## By fault";

  private final List<Trial> trials;
  private final EquivalentMutants equivalent;

  MutationPage(List<Trial> trials, EquivalentMutants equivalent) {
    this.trials = List.copyOf(trials);
    this.equivalent = equivalent;
  }

  /** The mutants that survive and are not on the list of equivalent ones. */
  List<Mutant> survivors() {
    return trials.stream()
        .filter(Trial::survived)
        .map(Trial::mutant)
        .filter(m -> !isEquivalent(m))
        .toList();
  }

  /** Lines of the list that nothing needs; of the whole list if every rule was tried. */
  List<EquivalentMutants.Entry> stale(boolean whole) {
    List<EquivalentMutants.Entry> stale = new ArrayList<>(equivalent.stale(trials));
    stale.removeIf(e -> !whole && e.rule().equals("*"));
    if (whole) {
      stale.addAll(equivalent.orphans(trials));
    }
    return stale;
  }

  String score() {
    return score(trials).words();
  }

  String text() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append(score()).append(".\n");
    text.append("Not counted: ");
    text.append(score(trials).notCompiled()).append(" that do not compile.\n");
    table(text, "## By family", Trial::family);
    table(text, BY_FAULT, trial -> trial.mutant().fault().words());
    table(text, BY_RULE, trial -> trial.mutant().rule());
    text.append("\n## Faults that no example notices\n\n");
    if (survivors().isEmpty()) {
      text.append("None.\n");
    } else {
      text.append("| rule | fault | in detail |\n| --- | --- | --- |\n");
      survivors().forEach(m -> text.append(cells(m)).append(" |\n"));
    }
    text.append(
        "\n## Equivalent faults\n\n| rule | fault | in detail | why no example can see it |\n");
    text.append("| --- | --- | --- | --- |\n");
    for (Trial trial : trials) {
      if (trial.survived()) {
        equivalent
            .reason(trial.mutant())
            .ifPresent(
                why -> text.append(cells(trial.mutant())).append(" | ").append(why).append(" |\n"));
      }
    }
    return text.toString();
  }

  private static String cells(Mutant mutant) {
    return "| "
        + mutant.rule()
        + " | "
        + mutant.fault().words()
        + " | `"
        + mutant.what().replace("|", "\\|")
        + "`";
  }

  private void table(StringBuilder text, String heading, Function<Trial, String> group) {
    Map<String, List<Trial>> groups = new LinkedHashMap<>();
    if (heading.equals(BY_FAULT)) {
      for (Fault fault : Fault.values()) {
        groups.put(fault.words(), new ArrayList<>());
      }
    }
    trials.forEach(t -> groups.computeIfAbsent(group.apply(t), g -> new ArrayList<>()).add(t));
    groups.values().removeIf(List::isEmpty);
    text.append("\n").append(heading).append("\n\n| ");
    text.append(heading.substring(heading.lastIndexOf(' ') + 1)).append(Score.HEAD).append("\n");
    groups.forEach(
        (name, of) -> text.append("| ").append(name).append(score(of).cells()).append(" |\n"));
    text.append("| all").append(score(trials).cells()).append(" |\n");
  }

  /** The counts of some of the trials. */
  private Score score(List<Trial> of) {
    List<Trial> counted = of.stream().filter(Trial::counts).toList();
    List<Trial> left = counted.stream().filter(Trial::survived).toList();
    int equivalents = (int) left.stream().filter(t -> isEquivalent(t.mutant())).count();
    return new Score(
        counted.size(),
        counted.size() - left.size(),
        (int) counted.stream().filter(t -> t.fate() == Fate.STOPPED).count(),
        equivalents,
        left.size() - equivalents,
        of.size() - counted.size());
  }

  private boolean isEquivalent(Mutant mutant) {
    return equivalent.reason(mutant).isPresent();
  }
}

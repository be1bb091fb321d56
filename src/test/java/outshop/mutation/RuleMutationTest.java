package outshop.mutation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import outshop.rulecases.Example;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/** The mutation run itself: that it finds what weak examples let through. */
final class RuleMutationTest {
  private static final RuleBook BOOK = RuleBook.load();

  /** The whole rule book takes longer: see DEVELOPERS.md. */
  @Test
  void theExamplesOfOneFamilyNoticeEveryFaultThatCanBeSeen() {
    List<RuleText> sound = BOOK.all().stream().filter(r -> r.family().equals("sound")).toList();

    List<Trial> trials = new MutationRun(Example.all(), line -> {}).of(sound);

    MutationPage page = new MutationPage(trials, EquivalentMutants.load());
    assertThat(trials).hasSizeGreaterThan(100);
    assertThat(page.survivors()).extracting(Mutant::key).isEmpty();
    assertThat(page.stale(false)).isEmpty();
  }

  @Test
  void examplesThatShowNothingLetEveryFaultThatMattersSurvive() {
    RuleText page = BOOK.find("sound/unequal-sharing").orElseThrow();
    List<Example> silent =
        Example.all().stream()
            .filter(e -> e.rule().equals(page.name()) && e.expect().equals("silent"))
            .toList();
    assertThat(silent).hasSize(1);

    List<Trial> trials = new MutationRun(silent, line -> {}).of(List.of(page));

    assertThat(trials).extracting(Trial::fate).containsOnly(Fate.SURVIVED);
    assertThat(trials).extracting(t -> t.mutant().fault()).contains(Fault.RULE_REMOVED);
  }

  @Test
  void aRuleThatFailsItsOwnExamplesIsNotTried() {
    RuleText page = BOOK.find("sound/unequal-sharing").orElseThrow();
    RuleText wrong = PageMutants.turned(page);
    MutationRun run = new MutationRun(Example.all(), line -> {});

    assertThatThrownBy(() -> run.of(List.of(wrong)))
        .hasMessageContaining("sound/unequal-sharing fails its own examples");
  }

  @Test
  void aTextThatDoesNotCompileTakesNoOtherWithIt() {
    String good = "package rules.sound\nrule \"a\"\nwhen\n String()\nthen\nend\n";
    String unknown = good.replace("String()", "Nothing()");
    String broken = good.replace("then", "");

    CompiledRules rules = new CompiledRules(List.of(unknown, good, broken));

    assertThat(rules.engine(good, BOOK)).isPresent();
    assertThat(rules.engine(unknown, BOOK)).isEmpty();
    assertThat(rules.engine(broken, BOOK)).isEmpty();
  }

  @Test
  void theListOfEquivalentMutantsAsksForAReasonAndForgetsNothing() {
    RuleText page = BOOK.find("sound/unequal-sharing").orElseThrow();
    List<Mutant> mutants = PageMutants.of(page, "");
    Mutant first = mutants.get(0);
    EquivalentMutants list =
        EquivalentMutants.of(
            List.of(
                "# a remark",
                first.key() + " | it is so",
                "* | situation removed | * | no rule has any",
                "sound/gone | bound removed | * | was once"));
    List<Trial> trials = new ArrayList<>();
    trials.add(new Trial(first, Fate.SURVIVED));
    MutationPage survived = new MutationPage(trials, list);

    assertThat(list.reason(first)).contains("it is so");
    assertThat(list.reason(mutants.get(1))).isEmpty();
    assertThat(survived.survivors()).isEmpty();
    assertThat(survived.stale(true))
        .extracting(EquivalentMutants.Entry::rule)
        .containsExactly("*", "sound/gone");
    assertThat(survived.stale(false)).isEmpty();
    assertThat(new MutationPage(List.of(new Trial(first, Fate.KILLED)), list).stale(false))
        .extracting(EquivalentMutants.Entry::rule)
        .containsExactly("sound/unequal-sharing");
    assertThatThrownBy(() -> EquivalentMutants.of(List.of(first.key() + " | ")))
        .hasMessageContaining("reason");
  }
}

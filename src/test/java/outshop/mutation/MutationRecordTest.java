package outshop.mutation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/** What a page of mutants has on record, and what is wrong with it. */
final class MutationRecordTest {
  private static final RuleText RULE = RuleBook.load().find("sound/unequal-sharing").orElseThrow();

  @Test
  void whatARunWritesIsReadBack() {
    List<Trial> trials = trials(Fate.KILLED);
    trials.set(0, new Trial(trials.get(0).mutant(), Fate.STOPPED));
    trials.set(1, new Trial(trials.get(1).mutant(), Fate.SURVIVED));
    trials.set(2, new Trial(trials.get(2).mutant(), Fate.NOT_COMPILED));
    EquivalentMutants one = EquivalentMutants.of(List.of(trials.get(1).mutant().key() + " | so"));

    MutationRecord.Entry entry = record(trials, one).of(RULE);

    int made = trials.size();
    assertThat(entry.score()).contains(new Score(made - 1, made - 2, 1, 1, 0, 1));
    assertThat(entry.score().orElseThrow().brief())
        .isEqualTo("%d of %d, 1 equivalent", made - 2, made - 2);
    assertThat(entry.gaps()).isEmpty();
  }

  @Test
  void aSurvivorIsAGap() {
    List<Trial> trials = trials(Fate.KILLED);
    trials.set(0, new Trial(trials.get(0).mutant(), Fate.SURVIVED));

    assertThat(record(trials, EquivalentMutants.of(List.of())).of(RULE).gaps())
        .containsExactly("mutants that no example notices: 1");
  }

  @Test
  void aRecordOfAnotherNumberOfMutantsIsAGap() {
    List<Trial> trials = trials(Fate.KILLED);
    int now = trials.size();
    trials.remove(0);

    assertThat(record(trials, EquivalentMutants.of(List.of())).of(RULE).gaps())
        .singleElement()
        .asString()
        .startsWith("a record of %d mutants where there are %d".formatted(now - 1, now));
  }

  @Test
  void noRecordIsAGap() {
    MutationRecord.Entry entry = MutationRecord.of(List.of("# a page", "", "| rule |")).of(RULE);

    assertThat(entry.score()).isEmpty();
    assertThat(entry.gaps()).singleElement().asString().startsWith("no record of its mutants");
  }

  private static List<Trial> trials(Fate fate) {
    return new ArrayList<>(
        MutationRun.mutants(RULE).stream().map(mutant -> new Trial(mutant, fate)).toList());
  }

  private static MutationRecord record(List<Trial> trials, EquivalentMutants equivalent) {
    return MutationRecord.of(new MutationPage(trials, equivalent).text().lines().toList());
  }
}

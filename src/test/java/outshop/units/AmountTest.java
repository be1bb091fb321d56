package outshop.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class AmountTest {
  private static final Amount.Known VOLTS =
      Amount.known(14.4, Unit.VOLTS, Origin.DATA_SHEET, "pack volts", "label");
  private static final Amount.Known AMPS =
      Amount.known(2.5, Unit.AMPS, Origin.MEASURED, "motor amps", "read");
  private static final Amount.Known OHMS =
      Amount.assumed(0.04, 0.01, 0.12, Unit.OHMS, "cell ohms", "usual");
  private static final Amount.Missing LOST = Amount.missing("receiver", "own_amps", "measure it");
  private static final Amount.Absent NONE = new Amount.Absent("cut-off");

  @Test
  void aKnownValueIsItsOwnRange() {
    assertThat(VOLTS.low()).isEqualTo(14.4);
    assertThat(VOLTS.high()).isEqualTo(14.4);
    assertThat(VOLTS.isAssumed()).isFalse();
    assertThat(VOLTS.isKnown()).isTrue();
    assertThat(VOLTS.get()).isSameAs(VOLTS);
  }

  @Test
  void aProductHasTheLeastSureOriginAndKeepsItsWorking() {
    Amount.Known watts =
        Amount.computed("watts", Unit.WATTS, "volts x amps", v -> v[0] * v[1], VOLTS, AMPS).get();

    assertThat(watts.value()).isEqualTo(36);
    assertThat(watts.origin()).isEqualTo(Origin.MEASURED);
    assertThat(watts.from()).containsExactly(VOLTS, AMPS);
    assertThat(watts.label()).isEqualTo("watts");
    assertThat(watts.how()).isEqualTo("volts x amps");
    assertThat(watts.unit()).isEqualTo(Unit.WATTS);
    assertThat(watts.assumptions()).isEmpty();
  }

  @Test
  void anAssumedRangeIsCarriedThrough() {
    Amount.Known dip =
        Amount.computed("dip", Unit.VOLTS, "amps x ohms", v -> v[0] * v[1], AMPS, OHMS).get();
    Amount.Known left =
        Amount.computed("left", Unit.VOLTS, "volts - dip", v -> v[0] - v[1], VOLTS, dip).get();

    assertThat(dip.low()).isCloseTo(0.025, within(1e-12));
    assertThat(dip.high()).isCloseTo(0.3, within(1e-12));
    assertThat(left.value()).isCloseTo(14.3, within(1e-12));
    assertThat(left.low()).isCloseTo(14.1, within(1e-12));
    assertThat(left.high()).isCloseTo(14.375, within(1e-12));
    assertThat(left.isAssumed()).isTrue();
    assertThat(left.assumptions()).containsExactly(OHMS);
  }

  @Test
  void anAssumptionUsedTwiceIsNamedOnce() {
    Amount.Known sum = Amount.sum("sum", Unit.OHMS, List.of(OHMS, OHMS, OHMS.named("other"))).get();

    assertThat(sum.assumptions())
        .extracting(Amount.Known::label)
        .containsExactly("cell ohms", "other");
    assertThat(sum.value()).isCloseTo(0.12, within(1e-12));
  }

  @Test
  void whatIsMissingStaysMissingAndIsNamedOnceInOrder() {
    Amount other = Amount.missing("decoder", "own_amps", "measure it");

    Amount sum = Amount.sum("sum", Unit.AMPS, List.of(AMPS, LOST, other, LOST));

    assertThat(sum.isMissing()).isTrue();
    assertThat(((Amount.Missing) sum).wants())
        .extracting(Want::name)
        .containsExactly("decoder: own_amps", "receiver: own_amps");
    assertThat(LOST.times(2, "twice", "x 2")).isEqualTo(LOST);
    assertThat(LOST.named("other")).isEqualTo(LOST);
  }

  @Test
  void anAbsentValueAddsNothingToASumButLeavesAProductAbsent() {
    assertThat(Amount.sum("sum", Unit.AMPS, List.of(AMPS, NONE)).get().value()).isEqualTo(2.5);
    assertThat(Amount.sum("sum", Unit.AMPS, List.of(NONE)).get().value()).isZero();
    assertThat(Amount.computed("p", Unit.WATTS, "", v -> v[0], AMPS, NONE)).isEqualTo(NONE);
    assertThat(NONE.named("limit")).isEqualTo(new Amount.Absent("limit"));
    assertThat(NONE.isAbsent()).isTrue();
  }

  @Test
  void anotherValueStandsInForAMissingOneOnly() {
    assertThat(LOST.orElse(AMPS)).isSameAs(AMPS);
    assertThat(VOLTS.orElse(AMPS)).isSameAs(VOLTS);
    assertThat(NONE.orElse(AMPS)).isSameAs(NONE);
  }

  @Test
  void aFactorKeepsUnitAndWorking() {
    Amount.Known more = AMPS.times(1.25, "with reserve", "x 1.25").get();

    assertThat(more.value()).isEqualTo(3.125);
    assertThat(more.unit()).isEqualTo(Unit.AMPS);
    assertThat(more.from()).containsExactly(AMPS);
    assertThat(more.named("limit").label()).isEqualTo("limit");
  }

  @Test
  void askingForAValueThatIsNotThereIsAFaultOfTheProgram() {
    assertThatThrownBy(LOST::get).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(NONE::get).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> new Amount.Missing(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Amount.assumed(1, 2, 3, Unit.AMPS, "x", "y"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Amount.known(Double.NaN, Unit.AMPS, Origin.GUESS, "x", "y"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 6, 7, 12})
  void theRangeOfASumIsTheSumOfTheRanges(int count) {
    for (long seed = 1; seed <= 50; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<Amount.Known> parts = new ArrayList<>();
      double low = 0;
      double high = 0;
      for (int i = 0; i < count; i++) {
        double value = random.nextDouble(1, 10);
        parts.add(Amount.assumed(value, value - 1, value + 2, Unit.AMPS, "part " + i, "usual"));
        low += value - 1;
        high += value + 2;
      }

      Amount.Known sum = Amount.sum("sum", Unit.AMPS, parts).get();

      assertThat(sum.low()).as("seed %d", seed).isCloseTo(low, within(1e-9));
      assertThat(sum.high()).as("seed %d", seed).isCloseTo(high, within(1e-9));
    }
  }

  @Test
  void everyCombinationOfEndsIsTried() {
    for (long seed = 1; seed <= 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double r = random.nextDouble(1, 5);
      Amount.Known a = Amount.assumed(r, r - 0.5, r + 1, Unit.OHMS, "a", "usual");
      Amount.Known b = Amount.assumed(r, r - 0.9, r + 2, Unit.OHMS, "b", "usual");

      Amount.Known ratio =
          Amount.computed("ratio", Unit.SHARE, "a / b", v -> v[0] / v[1], a, b).get();

      assertThat(ratio.low()).as("seed %d", seed).isCloseTo((r - 0.5) / (r + 2), within(1e-12));
      assertThat(ratio.high()).as("seed %d", seed).isCloseTo((r + 1) / (r - 0.9), within(1e-12));
    }
  }

  @Test
  void theLessSureOriginWins() {
    assertThat(Origin.STANDARD.and(Origin.GUESS)).isEqualTo(Origin.GUESS);
    assertThat(Origin.ASSUMED.and(Origin.DATA_SHEET)).isEqualTo(Origin.ASSUMED);
    assertThat(Origin.PLAN.and(Origin.PLAN)).isEqualTo(Origin.PLAN);
  }

  @Test
  void aWordIsOnlyWhatWasSaid() {
    Said said = new Said.Word("dcc", Origin.DATA_SHEET, "receiver: output");
    Said unsaid = new Said.Unsaid(new Want("receiver", "output", "data sheet"));

    assertThat(said.is("dcc")).isTrue();
    assertThat(said.isNot("dcc")).isFalse();
    assertThat(said.isNot("motor-drive")).isTrue();
    assertThat(said.or("x")).isEqualTo("dcc");
    assertThat(said.isUnsaid()).isFalse();
    assertThat(unsaid.is("dcc")).isFalse();
    assertThat(unsaid.isNot("dcc")).isFalse();
    assertThat(unsaid.or("x")).isEqualTo("x");
    assertThat(unsaid.isUnsaid()).isTrue();
  }
}

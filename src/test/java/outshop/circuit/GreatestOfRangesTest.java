package outshop.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;

/** The greatest and least of amounts that may carry ranges. */
final class GreatestOfRangesTest {
  private static final Amount MEASURED =
      Amount.known(1.0, Unit.AMPS, Origin.MEASURED, "main: cruising", "measured");
  private static final Amount ASSUMED =
      Amount.assumed(0.9, 0.5, 1.5, Unit.AMPS, "main: slipping", "not stated");

  @Test
  void whatTheSmallerOneLeavesOpenUpwardsStaysOpen() {
    Amount.Known greatest = Cases.greatest(List.of(MEASURED, ASSUMED)).get();

    assertThat(greatest.value()).isEqualTo(1.0);
    assertThat(greatest.low()).isEqualTo(1.0);
    assertThat(greatest.high()).isEqualTo(1.5);
    assertThat(greatest.label()).isEqualTo("main: cruising");
    assertThat(greatest.assumptions()).extracting(Amount.Known::label).contains("main: slipping");
  }

  @Test
  void theGreaterOnesLowEndIsLiftedByTheOther() {
    Amount high = Amount.assumed(2, 0.5, 3, Unit.AMPS, "rear: slipping", "not stated");

    Amount.Known greatest = Cases.greatest(List.of(MEASURED, high)).get();

    assertThat(greatest.value()).isEqualTo(2);
    assertThat(greatest.low()).isEqualTo(1.0);
    assertThat(greatest.high()).isEqualTo(3);
  }

  @Test
  void theLeastIsOpenDownwards() {
    Amount.Known least = Cases.least(List.of(MEASURED, ASSUMED)).get();

    assertThat(least.value()).isEqualTo(0.9);
    assertThat(least.low()).isEqualTo(0.5);
    assertThat(least.high()).isEqualTo(1.0);
  }

  @Test
  void withoutRangesItIsTheGreatestItself() {
    Amount more = Amount.known(1.4, Unit.AMPS, Origin.MEASURED, "main: slipping", "measured");

    assertThat(Cases.greatest(List.of(MEASURED, more))).isSameAs(more);
    assertThat(Cases.least(List.of(MEASURED, more))).isSameAs(MEASURED);
  }

  @Test
  void oneThatIsMissingMakesItMissing() {
    Amount missing = Amount.missing("main", "slipping", "measure it");

    assertThat(Cases.greatest(List.of(MEASURED, missing))).isEqualTo(missing);
  }
}

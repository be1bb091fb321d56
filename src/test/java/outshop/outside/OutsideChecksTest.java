package outshop.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs every check against the world outside. */
final class OutsideChecksTest {
  /** A check that lets more pass than this share of its value would tell nothing. */
  private static final double WIDEST = 0.2;

  @TestFactory
  Stream<DynamicTest> theProgramFindsWhatTheSourceSays() {
    return OutsideChecks.all().stream()
        .map(check -> DynamicTest.dynamicTest(check.toString(), () -> holds(check)));
  }

  private static void holds(OutsideCheck check) {
    double got = check.got().getAsDouble();

    assertThat(check.accepts(got))
        .as(
            "%s%nsource: %s%nexpected: %s, %s%nfound: %s",
            check.what(),
            check.source(),
            check.expectedText(),
            check.toleranceText(),
            check.gotText())
        .isTrue();
  }

  @Test
  void thereAreManyAndEachIsNamedOnceAndSaysItsSource() {
    List<OutsideCheck> all = OutsideChecks.all();

    assertThat(all).hasSizeGreaterThanOrEqualTo(90);
    assertThat(all).extracting(OutsideCheck::id).doesNotHaveDuplicates();
    assertThat(all).extracting(OutsideCheck::source).noneMatch(String::isBlank);
  }

  /** A value a little past the tolerance on either side, or none at all, is refused. */
  @Test
  void everyCheckCanFail() {
    for (OutsideCheck check : OutsideChecks.all()) {
      double expected = check.expected().doubleValue();
      double past = check.tolerance() + 1e-6 * Math.max(1, Math.abs(expected));

      assertThat(check.accepts(expected)).as("%s", check).isTrue();
      assertThat(check.accepts(expected + past)).as("%s", check).isFalse();
      assertThat(check.accepts(expected - past)).as("%s", check).isFalse();
      assertThat(check.accepts(Double.NaN)).as("%s", check).isFalse();
      assertThat(check.tolerance()).as("%s", check).isBetween(0.0, WIDEST * Math.abs(expected));
    }
  }

  @Test
  void everySourceOfACheckSaysHowFarItWasRead() {
    assertThat(OutsideChecks.all())
        .allSatisfy(
            check ->
                assertThat(Reading.of(check.source()))
                    .as("%s: %s", check, check.source())
                    .isPresent()
                    .get()
                    .isIn(Reading.ofPublished()));
  }

  @Test
  void aSourceIsAsWeakAsTheWeakestOfWhatItSays() {
    assertThat(Reading.of("IEC 60335-1:2010, 3.4.2")).contains(Reading.READ);
    assertThat(Reading.of("a book, 3rd ed., p. 4 (read)")).contains(Reading.READ);
    assertThat(Reading.of("book (second-hand); answer worked out")).contains(Reading.SECOND_HAND);
    assertThat(Reading.of("book, second-hand and from memory")).contains(Reading.MEMORY);
    assertThat(Reading.of("Common practice, no source")).contains(Reading.PRACTICE);
    assertThat(Reading.of("the data sheet; a fifth in reserve: common practice, no source"))
        .contains(Reading.PRACTICE);
    assertThat(Reading.of("the receiver's data sheet; the circuit solved"))
        .contains(Reading.OWN_DATA);
    assertThat(Reading.of("Kirchhoff's laws")).contains(Reading.CIRCUIT);
    assertThat(Reading.of("a book, 3rd ed., p. 4")).isEmpty();
  }
}

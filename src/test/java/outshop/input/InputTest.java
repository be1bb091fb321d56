package outshop.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places, problems, near words and texts shown in one line. */
final class InputTest {
  private static final List<String> WORDS =
      List.of("pack", "jack", "receiver", "smoke-heater", "input_max_volts", "id");

  @ParameterizedTest
  @CsvSource({
    "packs, pack",
    "PACK, pack",
    "apck, pack",
    "reciever, receiver",
    "smokeheater, smoke-heater",
    "input_max_volt, input_max_volts",
    "ld, id",
  })
  void theNearestWordIsFound(String typed, String nearest) {
    assertThat(Nearest.word(typed, WORDS)).contains(nearest);
    assertThat(Nearest.hint(typed, WORDS)).isEqualTo(" (did you mean \"" + nearest + "\"?)");
  }

  @ParameterizedTest
  @CsvSource({"motor", "x", "receptacle", "''", "zz"})
  void aWordTooFarOffIsNotGuessed(String typed) {
    assertThat(Nearest.word(typed, List.of("pack", "receiver"))).isEmpty();
    assertThat(Nearest.hint(typed, List.of("pack", "receiver"))).isEmpty();
  }

  @Test
  void ofTwoEquallyNearWordsTheFirstIsTaken() {
    assertThat(Nearest.word("hack", List.of("pack", "jack"))).contains("pack");
    assertThat(Nearest.word("hack", List.of("jack", "pack"))).contains("jack");
  }

  @Test
  void anEndlessWordIsNotCompared() {
    assertThat(Nearest.word("p".repeat(61), List.of("p".repeat(60)))).isEmpty();
    assertThat(Nearest.word("p", List.of())).isEmpty();
  }

  @Test
  void aTextIsShownInOneLineWithoutInvisibleSigns() {
    assertThat(Shown.text("a\nb\u001b[31m\u202e\u00a0\u2009c"))
        .isEqualTo("a\\u000ab\\u001b[31m\\u202e\u00a0\u2009c");
    assertThat(Shown.text("5 \u03a9")).isEqualTo("5 \u03a9");
    assertThat(Shown.text("\ud83d")).isEqualTo("\\ud83d");
    assertThat(Shown.text("x".repeat(80))).isEqualTo("x".repeat(80));
    assertThat(Shown.text("x".repeat(81))).isEqualTo("x".repeat(80) + "... (81 characters)");
  }

  @Test
  void aPlaceSaysAsMuchAsIsKnown() {
    assertThat(Place.whole("pack.csv").position()).isEqualTo("pack.csv");
    assertThat(new Place("pack.csv", 3, 0, "").position()).isEqualTo("pack.csv:3");
    assertThat(new Place("pack.csv", 3, 7, "row 3").position()).isEqualTo("pack.csv:3:7");
  }

  @Test
  void aProblemIsOneLine() {
    Place place = new Place("pack.csv", 3, 7, "row 3, column title");

    assertThat(Problem.error(place, "a\nb", "not a word", "pack or jack").line())
        .isEqualTo(
            "pack.csv:3:7: row 3, column title: not a word: found \"a\\u000ab\"; expected pack or"
                + " jack");
    assertThat(Problem.error(Place.whole("x"), "", "cannot be read", "").line())
        .isEqualTo("x: cannot be read");
  }

  @Test
  void unusableInputCarriesEveryProblem() {
    Problem problem = Problem.error(Place.whole("x"), "", "cannot be read", "");
    UnusableInput unusable = new UnusableInput(List.of(problem, problem));

    assertThat(unusable.problems()).containsExactly(problem, problem);
    assertThat(unusable).hasMessage("2 problems in the input");
  }
}

package outshop.render.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PageTextTest {
  @Test
  void paragraphsAreFilledAndKeptApart() {
    assertThat(page("one", "two", "", "three"))
        .isEqualTo(
            """
            one two

            three
            """);
  }

  @Test
  void headingsGetARuleAndNoGapUnderIt() {
    assertThat(page("# What it says", "", "words", "", "## More", "words"))
        .isEqualTo(
            """

            What it says
            ------------
            words

            More
            ----
            words
            """);
  }

  @Test
  void itemsHangUnderTheirWords() {
    assertThat(
            page(
                "- an item that is longer than a line",
                "  and goes on",
                "- another",
                "",
                "1. first"))
        .isEqualTo(
            """
              - an item that is longer than a line
                and goes on
              - another

              1. first
            """);
  }

  @Test
  void codeStandsAsItIs() {
    assertThat(page("words", "", "```yaml", "pack:  {cells: 4}", "```"))
        .isEqualTo(
            """
            words

              pack:  {cells: 4}
            """);
  }

  @Test
  void aTableThatFitsStandsInColumns() {
    assertThat(
            page("words", "", "| gauge | 16 |", "| --- | --- |", "| stands | 22 A |", "", "more"))
        .isEqualTo(
            """
            words

              gauge   16
              ------------
              stands  22 A

            more
            """);
  }

  @Test
  void cellsThatDoNotFitAreWrappedInTheirColumns() {
    assertThat(
            page(
                "| example | answer |",
                "| --- | --- |",
                "| a full pack of four cells | warning |",
                "| a receiver that takes more than it could ever be given | fine |"))
        .isEqualTo(
            """
              example                        answer
              --------------------------------------
              a full pack of four cells      warning

              a receiver that takes more     fine
              than it could ever be given
            """);
  }

  @Test
  void marksOfEmphasisGoButAStarBetweenSpacesStays() {
    assertThat(page("the *nominal* and **full** `volts`: 4 * 3.6 V"))
        .isEqualTo("the nominal and full volts: 4 * 3.6 V\n");
  }

  @Test
  void whatOnlyAReportCanFillInStandsInAngleBrackets() {
    assertThat(PageText.gaps("at least {demand}")).isEqualTo("at least <demand>");
  }

  @Test
  void whatDoesNotFitBesideGoesBelow() {
    Sheet sheet = new Sheet(look());
    sheet.row("  " + "r".repeat(30) + "  ", "12 %");
    sheet.row("  " + "r".repeat(38), "exactly");
    assertThat(sheet.text())
        .isEqualTo(
            "  "
                + "r".repeat(30)
                + "  12 %\n"
                + "  "
                + "r".repeat(38)
                + "\n"
                + " ".repeat(20)
                + "exactly\n");
  }

  @Test
  void aLabelThatTakesHalfTheLineStandsAlone() {
    Sheet sheet = new Sheet(look());
    sheet.hanging("a label that is far too long for this", "words");
    assertThat(sheet.text()).isEqualTo("a label that is far too long for this\n    words\n");
  }

  private static String page(String... lines) {
    Sheet sheet = new Sheet(look());
    PageText.print(List.of(lines), sheet);
    return sheet.text();
  }

  private static Look look() {
    return new Look(40, false, StandardCharsets.UTF_8);
  }
}

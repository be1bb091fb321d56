package outshop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CellTest {
  private static final Column VOLTS = Columns.require(Kind.PACK, "nominal_volts");
  private static final Column CELLS = Columns.require(Kind.PACK, "cells_series_count");
  private static final Column CUTOFF = Columns.require(Kind.PACK, "cutoff_volts");
  private static final Column SOUNDS = Columns.require(Kind.DECODER, "sounds");
  private static final Column LINKS = Columns.require(Kind.RECEIVER, "links");
  private static final Column TITLE = Columns.require(Kind.PACK, "title");

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\t", "\u00a0", "\u200b \ufeff"})
  void whatLooksBlankIsBlank(String written) {
    assertThat(Cell.read(VOLTS, written)).isEqualTo(new Cell.Blank());
    assertThat(Cell.read(TITLE, written)).isEqualTo(new Cell.Blank());
    assertThat(Cell.read(LINKS, written)).isEqualTo(new Cell.Blank());
  }

  @Test
  void aNumberTellsHowItsDecimalsWereWritten() {
    assertThat(Cell.read(VOLTS, "7.4")).isEqualTo(new Cell.Quantity(7.4, Cell.Decimals.PLAIN));
    assertThat(Cell.read(VOLTS, "7,4")).isEqualTo(new Cell.Quantity(7.4, Cell.Decimals.COMMA));
    assertThat(Cell.read(VOLTS, "7,4 V")).isEqualTo(new Cell.Quantity(7.4, Cell.Decimals.COMMA));
    assertThat(Cell.read(VOLTS, "7.400"))
        .isEqualTo(new Cell.Quantity(7.4, Cell.Decimals.PERHAPS_THOUSANDS));
  }

  @Test
  void noneIsAWordOnlyWhereTheColumnAllowsIt() {
    assertThat(Cell.read(CUTOFF, "None")).isEqualTo(new Cell.None());
    assertThat(Cell.read(VOLTS, "none")).isInstanceOf(Cell.Wrong.class);
    assertThat(Cell.read(SOUNDS, "none")).isEqualTo(new Cell.Words("none"));
    assertThat(Cell.read(TITLE, "none")).isEqualTo(new Cell.Words("none"));
  }

  @Test
  void aCountIsAskedForAsAPlainNumber() {
    assertThat(Cell.read(CELLS, "four"))
        .isEqualTo(
            new Cell.Wrong(
                "four",
                "not a number",
                "a plain number, such as 4, or a blank cell if it is not known"));
    assertThat(Cell.read(CUTOFF, "low"))
        .isEqualTo(
            new Cell.Wrong(
                "low",
                "not a number",
                "a number in V, such as 12, or none if there is no such thing, or a blank cell if"
                    + " it is not known"));
  }

  @Test
  void whereTheExampleIsNoneANumberIsShown() {
    Cell fan = Cell.read(Columns.require(Kind.SMOKE_HEATER, "fan_milliamps"), "some");

    assertThat(((Cell.Wrong) fan).expected()).startsWith("a number in mA, such as 5, or none");
  }

  @Test
  void wordsAreSetInSmallLettersAndStandOnce() {
    assertThat(Cell.read(LINKS, " Az09-z  az09-z\tb ")).isEqualTo(new Cell.Words("az09-z b"));
    assertThat(Cell.read(SOUNDS, "Steam diesel STEAM")).isEqualTo(new Cell.Words("steam diesel"));
    assertThat(Cell.read(SOUNDS, "none none")).isEqualTo(new Cell.Words("none"));
    assertThat(Cell.read(LINKS, "-a")).isInstanceOf(Cell.Wrong.class);
    assertThat(Cell.read(LINKS, "a_b")).isInstanceOf(Cell.Wrong.class);
    assertThat(Cell.read(LINKS, "a".repeat(60))).isInstanceOf(Cell.Words.class);
    assertThat(Cell.read(LINKS, "a".repeat(61))).isInstanceOf(Cell.Wrong.class);
  }

  @Test
  void aTextIsOneLineAndLosesOneApostrophe() {
    assertThat(Cell.read(TITLE, "a\r\n b\t\u00a0c")).isEqualTo(new Cell.Words("a b c"));
    assertThat(Cell.read(TITLE, "'=x")).isEqualTo(new Cell.Words("=x"));
    assertThat(Cell.read(TITLE, "''x'")).isEqualTo(new Cell.Words("'x'"));
    assertThat(Cell.read(TITLE, "'")).isEqualTo(new Cell.Blank());
    assertThat(Cell.read(TITLE, "a\u0000b")).isInstanceOf(Cell.Wrong.class);
    assertThat(Cell.read(TITLE, "a\u007fb")).isInstanceOf(Cell.Wrong.class);
  }

  @Test
  void aNegativeNumberTooSmallToHoldIsAPlainZero() {
    Cell.Quantity zero = (Cell.Quantity) Cell.read(VOLTS, "-1e-400");

    assertThat(1 / zero.held()).isPositive();
  }
}

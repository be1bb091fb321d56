package outshop.render.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class WrapTest {
  @Test
  void breaksBetweenWords() {
    assertThat(Wrap.lines("one two three", 7)).containsExactly("one two", "three");
  }

  @Test
  void aNumberStaysWithItsUnit() {
    assertThat(Wrap.lines("it draws 2.4 A, fused", 12)).containsExactly("it draws", "2.4 A, fused");
    assertThat(Wrap.lines("charged to 4.20 V +/- 50 mV", 22))
        .containsExactly("charged to 4.20 V", "+/- 50 mV");
  }

  @Test
  void aNumberWithoutUnitMayStandAtTheEnd() {
    assertThat(Wrap.lines("it has 4 lamps", 8)).containsExactly("it has 4", "lamps");
  }

  @Test
  void aWordLongerThanTheLineIsCut() {
    assertThat(Wrap.lines("ab cdefghij k", 4)).containsExactly("ab", "cdef", "ghij", "k");
  }

  @Test
  void aNumberAndUnitThatNoLineHoldsBreakAtTheSpace() {
    assertThat(Wrap.lines("123456 kohm", 8)).containsExactly("123456", "kohm");
  }

  @Test
  void wideCharactersCountTwice() {
    assertThat(Wrap.lines("界界界", 4)).containsExactly("界界", "界");
    assertThat(Glyphs.columns("e\u0301")).isEqualTo(1);
  }

  @Test
  void anEmptyTextIsOneEmptyLine() {
    assertThat(Wrap.lines("", 10)).containsExactly("");
    assertThat(Wrap.lines("   ", 10)).containsExactly("");
  }
}

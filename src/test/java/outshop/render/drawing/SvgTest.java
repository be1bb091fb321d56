package outshop.render.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SvgTest {
  /**
   * What XML 1.0 (fifth edition) has no place for, and marks that turn the direction of writing.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          3c 62 3e  | &lt;b&gt;
          22 27     | &quot;&#39;
          26 61     | &amp;a
          1 41      | \uFFFDA
          9b 41     | \uFFFDA
          fffe      | \uFFFD
          202e 41   | \\u202eA
          1f600     | \uD83D\uDE00
          """)
  void textIsWrittenSoThatItStaysText(String codes, String expected) {
    StringBuilder text = new StringBuilder();
    for (String code : codes.split(" ")) {
      text.appendCodePoint(Integer.parseInt(code, 16));
    }
    assertThat(Svg.escaped(text.toString())).isEqualTo(expected);
  }
}

package outshop.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class BasisTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          part     | the data sheet                  | the part's own data: the data sheet
          std, hb  | a table                         | published standard; handbook or physics: a table
          cp       | common practice, no source      | common practice, no source
          cp       | 16 kHz: common practice         | 16 kHz: common practice
          std, cp  | common practice, no source: x   | published standard; common practice, no source: x
          part, cp | the label; a fifth: common practice | the part's own data: the label; a fifth: common practice
          cp       | a club's own figure             | common practice: a club's own figure
          """)
  void aSourceIsNotSaidTwice(String basis, String source, String sentence) {
    assertThat(Basis.sentence(basis, source)).isEqualTo(sentence);
  }
}

package outshop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SeparatorTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "id,maker                       | ,",
        "id;maker                       | ;",
        "id;maker, town, street;title   | ;",
        "shelf, top; shelf, low,id      | ,",
        "\"a;b;c;d\",id,maker           | ,",
        "\"shelf;id;maker;title\",id,note,origin | ,",
        "id                             | ,",
        "foo;bar                        | ;",
        "foo;bar,qux                    | ,",
        "foo;bar;qux,id                 | ,",
        "Nominal Volts;Id               | ;",
      })
  void isFoundByTheNamesItMakes(String header, char separator) {
    assertThat(Separator.of(Kind.PACK, header + "\nx;y;z,a,b,c,d,e,f")).isEqualTo(separator);
    assertThat(Separator.of(Kind.PACK, "\n \n" + header)).isEqualTo(separator);
    assertThat(Separator.of(Kind.PACK, header + "\rx;y;z,a,b,c,d,e,f")).isEqualTo(separator);
  }

  @Test
  void aTabIsFoundToo() {
    assertThat(Separator.of(Kind.PACK, "id\tmaker, town; street")).isEqualTo('\t');
    assertThat(Separator.of(Kind.PACK, "")).isEqualTo(',');
  }

  @Test
  void aLineThatNamesTheSeparatorIsMeasured() {
    assertThat(Separator.markLength("sep=;\nid")).isEqualTo(6);
    assertThat(Separator.markLength("sep=;\rid")).isEqualTo(6);
    assertThat(Separator.markLength("sep=;\r\nid")).isEqualTo(7);
    assertThat(Separator.markLength("SEP=,\nid")).isEqualTo(6);
    assertThat(Separator.markLength("sep=;")).isEqualTo(5);
    assertThat(Separator.markLength("sep=")).isZero();
    assertThat(Separator.markLength("sep=;;\nid")).isZero();
    assertThat(Separator.markLength("sepia;id\n")).isZero();
    assertThat(Separator.markLength("")).isZero();
  }
}

package outshop.render.plot;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class TextsTest {
  @Test
  void escapesWhatXmlReads() {
    assertThat(Texts.escaped("<b a=\"1\">&'")).isEqualTo("&lt;b a=&quot;1&quot;&gt;&amp;&#39;");
  }

  @Test
  void showsWhatWouldHideOrTurnRound() {
    assertThat(Texts.visible("a\u202eb\u0000c\ud800d\ufffee\tf"))
        .isEqualTo("a\\u202eb\\u0000c\\ud800d\\ufffee\\u0009f");
    assertThat(Texts.visible("Ω °C 20 \ud83d\ude82")).isEqualTo("Ω °C 20 \ud83d\ude82");
  }

  @Test
  void cutsATextWithoutEnd() {
    assertThat(Texts.visible("x".repeat(10_000))).hasSize(Texts.LONGEST + 1).endsWith("…");
  }

  @Test
  void setsApartOnlyWhatMightTurnItsNeighbours() {
    assertThat(Texts.apart("Sallowmere é")).isEqualTo("Sallowmere é");
    assertThat(Texts.apart("\u05d0\u05d1")).isEqualTo("\u2068\u05d0\u05d1\u2069");
  }

  @Test
  void fitsATextIntoItsRoom() {
    assertThat(Texts.fitted("decoder", 10)).isEqualTo("decoder");
    String cut = Texts.fitted("a very long name of a part", 6);
    assertThat(cut).startsWith("a very").endsWith("…");
    assertThat(Texts.width(cut)).isLessThanOrEqualTo(6);
    assertThat(Texts.fitted("\u6f22".repeat(20), 5)).isEqualTo("\u6f22".repeat(3) + "…");
  }
}

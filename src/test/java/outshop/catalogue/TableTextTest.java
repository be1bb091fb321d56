package outshop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

final class TableTextTest {

  @Test
  void onlyAWholeMarkAtTheStartCounts() {
    assertThat(TableText.of(bytes('i', 0xff))).isEqualTo(new TableText.Text("i\u00ff", true));
    assertThat(TableText.of(bytes('i', 0xfe))).isEqualTo(new TableText.Text("i\u00fe", true));
    assertThat(TableText.of(bytes(0xef, 0xbb))).isEqualTo(new TableText.Text("\u00ef\u00bb", true));
    assertThat(TableText.of(bytes('P', 'K', 3))).isEqualTo(new TableText.Text("PK\u0003", false));
    assertThat(TableText.of(bytes())).isEqualTo(new TableText.Text("", false));
  }

  @Test
  void everyMarkIsTakenOff() {
    assertThat(TableText.of(bytes(0xef, 0xbb, 0xbf, 'i', 'd')))
        .isEqualTo(new TableText.Text("id", false));
    assertThat(TableText.of(bytes(0xfe, 0xff, 0, 'i', 0, 'd')))
        .isEqualTo(new TableText.Text("id", false));
    assertThat(TableText.of(bytes(0xff, 0xfe, 'i', 0, 'd', 0)))
        .isEqualTo(new TableText.Text("id", false));
  }

  @Test
  void aZeroByteAnywhereIsNoText() {
    assertThat(TableText.of(bytes(0, 'i', 'd'))).isInstanceOf(TableText.Unreadable.class);
    assertThat(TableText.of(bytes('i', 'd', 0))).isInstanceOf(TableText.Unreadable.class);
    assertThat(TableText.of(bytes(0xb0, 0))).isInstanceOf(TableText.Unreadable.class);
  }

  @Test
  void utf8IsTriedBeforeWindows1252() {
    byte[] utf8 = "5 \u03a9 \u20ac \ud83d\ude82".getBytes(StandardCharsets.UTF_8);

    assertThat(TableText.of(utf8))
        .isEqualTo(new TableText.Text("5 \u03a9 \u20ac \ud83d\ude82", false));
    assertThat(TableText.of(bytes(0x80))).isEqualTo(new TableText.Text("\u20ac", true));
  }

  private static byte[] bytes(int... values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return bytes;
  }
}

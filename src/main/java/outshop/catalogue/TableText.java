package outshop.catalogue;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** The text of a table, decoded the way spreadsheets encode it. */
sealed interface TableText {

  /**
   * A readable text, without a byte order mark.
   *
   * @param isWindows1252 whether the bytes were no UTF-8 and were taken for Windows-1252
   */
  record Text(String text, boolean isWindows1252) implements TableText {}

  /** Bytes that are no text of a table: why, and what would be right. */
  record Unreadable(String what, String expected) implements TableText {}

  /**
   * Decodes UTF-8 with or without a byte order mark, UTF-16 with one, and otherwise Windows-1252.
   */
  static TableText of(byte[] bytes) {
    if (startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
      return new Unreadable("a spreadsheet's own file, not CSV", "the sheet saved as CSV (UTF-8)");
    }
    if (startsWith(bytes, 0xfe, 0xff)) {
      return wide(bytes, StandardCharsets.UTF_16BE);
    }
    if (startsWith(bytes, 0xff, 0xfe)) {
      return wide(bytes, StandardCharsets.UTF_16LE);
    }
    int start = startsWith(bytes, 0xef, 0xbb, 0xbf) ? 3 : 0;
    try {
      return withoutNul(decoded(bytes, start, StandardCharsets.UTF_8), false);
    } catch (CharacterCodingException notUtf8) {
      return windows1252(bytes);
    }
  }

  private static TableText wide(byte[] bytes, Charset charset) {
    try {
      return withoutNul(decoded(bytes, 2, charset), false);
    } catch (CharacterCodingException broken) {
      return new Unreadable("broken UTF-16 text", "the sheet saved as CSV (UTF-8)");
    }
  }

  private static TableText windows1252(byte[] bytes) {
    try {
      return withoutNul(decoded(bytes, 0, Charset.forName("windows-1252")), true);
    } catch (CharacterCodingException neither) {
      return new Unreadable(
          "neither UTF-8 nor Windows-1252 text", "the sheet saved as CSV (UTF-8)");
    }
  }

  private static TableText withoutNul(String text, boolean isWindows1252) {
    return text.indexOf('\0') < 0
        ? new Text(text, isWindows1252)
        : new Unreadable(
            "no text: it holds zero bytes, as UTF-16 without a byte order mark does",
            "the sheet saved as CSV (UTF-8)");
  }

  private static String decoded(byte[] bytes, int start, Charset charset)
      throws CharacterCodingException {
    return charset
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(ByteBuffer.wrap(bytes, start, bytes.length - start))
        .toString();
  }

  private static boolean startsWith(byte[] bytes, int... first) {
    if (bytes.length < first.length) {
      return false;
    }
    for (int i = 0; i < first.length; i++) {
      if ((bytes[i] & 0xff) != first[i]) {
        return false;
      }
    }
    return true;
  }
}

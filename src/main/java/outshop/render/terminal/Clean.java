package outshop.render.terminal;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import outshop.input.Shown;

/**
 * Makes a text fit to be printed: control and direction characters are written as {@code \\u....},
 * line ends and tabs become spaces, signs the charset lacks are spelled out, and a text without end
 * is cut.
 */
final class Clean {
  /** No sentence of the rule book is longer. */
  static final int LONGEST = 2000;

  private static final char NO_BREAK_SPACE = '\u00a0';

  private final boolean unicode;
  private final CharsetEncoder encoder;

  Clean(Charset charset) {
    this.unicode = charset.equals(StandardCharsets.UTF_8);
    this.encoder =
        charset.canEncode() ? charset.newEncoder() : StandardCharsets.US_ASCII.newEncoder();
  }

  String text(String raw) {
    return text(raw, LONGEST);
  }

  /**
   * The text fit to be printed.
   *
   * @param most characters after which it is cut, with a remark that says how long it was
   */
  String text(String raw, int most) {
    StringBuilder clean = new StringBuilder(Math.min(raw.length(), most));
    int used = 0;
    for (int i = 0; i < raw.length(); ) {
      int c = raw.codePointAt(i);
      i += Character.charCount(c);
      if (used++ == most) {
        return clean.append("... (").append(raw.length()).append(" characters)").toString();
      }
      append(clean, c, i < raw.length() ? raw.charAt(i) : ' ');
    }
    return clean.toString();
  }

  private void append(StringBuilder clean, int c, char next) {
    if (c >= ' ' && c < 0x7f) {
      clean.append((char) c);
    } else if (c == '\n' || c == '\r' || c == '\t') {
      clean.append(' ');
    } else if (c == NO_BREAK_SPACE || c == '\u202f') {
      clean.append(NO_BREAK_SPACE);
    } else if (Shown.isHidden(c)) {
      clean.append("\\u%04x".formatted(c));
    } else if (unicode) {
      clean.appendCodePoint(c);
    } else {
      clean.append(plain(c, next));
    }
  }

  private String plain(int c, char next) {
    return switch (c) {
      case '°' -> next == 'C' ? "" : "deg";
      case '²' -> "2";
      case '³' -> "3";
      case 'Ω', 0x2126 -> "ohm";
      case 'µ', 0x3bc -> "u";
      case '±' -> "+/-";
      case '×' -> "x";
      case '÷' -> "/";
      case '·' -> "*";
      case 'ρ' -> "rho";
      case 'Δ' -> "delta";
      case '√' -> "sqrt";
      case '≈' -> "~";
      case '≤' -> "<=";
      case '≥' -> ">=";
      case '→' -> "->";
      case '½' -> "1/2";
      case '…' -> "...";
      case 0x2212, 0x2010, 0x2011, 0x2013, 0x2014 -> "-";
      case 0x2018, 0x2019 -> "'";
      case 0x201c, 0x201d -> "\"";
      default -> {
        String sign = Character.toString(c);
        yield encoder.canEncode(sign) ? sign : "\\u%04x".formatted(c);
      }
    };
  }
}

package outshop.catalogue;

import java.math.BigDecimal;

/**
 * How a number was written in a cell. Spreadsheets write {@code 2.4}, {@code 2,4}, {@code 1,500}
 * and {@code 1.500,0}, each according to its own settings; what can only mean one thing is
 * accepted, the rest is refused with the right form.
 *
 * @param sort what sort of number it is
 * @param digits of a readable one, the number with a point for decimals
 * @param unit the text after the number, without the space between; may be empty
 * @param rightForm of an unreadable one, how to write it so that it can be read
 */
record NumberForm(Sort sort, String digits, String unit, String rightForm) {

  /** What a text turned out to be. */
  enum Sort {
    /** {@code 1500}, {@code 2.4}, {@code 1.5e3}. */
    PLAIN,
    /** {@code 2,4}: a comma for decimals. */
    DECIMAL_COMMA,
    /** {@code 1.500}: means 1.5, but 1500 in a file that writes a comma for decimals. */
    PERHAPS_THOUSANDS,
    /** {@code 1,500}: 1.5 or 1500. */
    AMBIGUOUS,
    /** {@code 1.500,0} or {@code 1 500}. */
    GROUPED,
    NO_NUMBER
  }

  private static final int LONGEST = 60;
  private static final NumberForm NONE = new NumberForm(Sort.NO_NUMBER, "", "", "");

  boolean isReadable() {
    return sort == Sort.PLAIN || sort == Sort.DECIMAL_COMMA || sort == Sort.PERHAPS_THOUSANDS;
  }

  /** The number with a point for decimals, times a factor, without needless zeros. */
  static String shown(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.signum() == 0 ? "0" : stripped.toPlainString();
  }

  /** Looks at a trimmed text. */
  static NumberForm of(String text) {
    return text.length() > LONGEST ? NONE : new Scan(text).form();
  }

  /** One walk over the text: sign, digits with their separators, exponent, the rest. */
  private static final class Scan {
    private final String text;
    private final StringBuilder body = new StringBuilder();
    private int at;
    private int digitCount;
    private int separatorCount;
    private int lastSeparator = -1;

    Scan(String text) {
      this.text = text;
    }

    NumberForm form() {
      String sign = sign();
      while (at < text.length() && bodyChar()) {
        at++;
      }
      char end = body.length() == 0 ? '.' : body.charAt(body.length() - 1);
      if (digitCount == 0 || !isDigit(end)) {
        return NONE;
      }
      String exponent = exponent();
      return judged(sign, body.toString(), exponent, rest());
    }

    private String sign() {
      char c = text.isEmpty() ? ' ' : text.charAt(0);
      if (c == '-' || c == '\u2212') {
        at++;
        return "-";
      }
      if (c == '+') {
        at++;
      }
      return "";
    }

    private boolean bodyChar() {
      char c = text.charAt(at);
      if (isDigit(c)) {
        digitCount++;
      } else if (c == '.' || c == ',' || isGroupSign(c)) {
        separatorCount++;
        lastSeparator = body.length();
      } else {
        return false;
      }
      body.append(c);
      return true;
    }

    /** A space or an apostrophe that parts off exactly three digits. */
    private boolean isGroupSign(char c) {
      return (Blanks.isBlank(c) || c == '\'' || c == '\u2019')
          && at > 0
          && isDigit(text.charAt(at - 1))
          && at + 3 < text.length()
          && isDigit(text.charAt(at + 1))
          && isDigit(text.charAt(at + 2))
          && isDigit(text.charAt(at + 3))
          && (at + 4 == text.length() || !isDigit(text.charAt(at + 4)));
    }

    private String exponent() {
      int i = at;
      if (i >= text.length() || (text.charAt(i) != 'e' && text.charAt(i) != 'E')) {
        return "";
      }
      i++;
      if (i < text.length() && (text.charAt(i) == '+' || text.charAt(i) == '-')) {
        i++;
      }
      int firstDigit = i;
      while (i < text.length() && isDigit(text.charAt(i))) {
        i++;
      }
      if (i == firstDigit || i - firstDigit > 3) {
        return "";
      }
      String exponent = text.substring(at, i);
      at = i;
      return exponent;
    }

    private String rest() {
      while (at < text.length() && Blanks.isBlank(text.charAt(at))) {
        at++;
      }
      return text.substring(at);
    }

    private NumberForm judged(String sign, String number, String exponent, String unit) {
      if (separatorCount == 0) {
        return new NumberForm(Sort.PLAIN, sign.concat(number).concat(exponent), unit, "");
      }
      char separator = number.charAt(lastSeparator);
      if (separatorCount > 1 || (separator != '.' && separator != ',')) {
        return grouped(sign, number, unit);
      }
      boolean likeThousands =
          exponent.isEmpty()
              && number.length() - lastSeparator == 4
              && lastSeparator >= 1
              && lastSeparator <= 3
              && number.charAt(0) != '0';
      String digits = sign.concat(number.replace(',', '.')).concat(exponent);
      if (separator == '.') {
        return new NumberForm(
            likeThousands ? Sort.PERHAPS_THOUSANDS : Sort.PLAIN, digits, unit, "");
      }
      return likeThousands
          ? new NumberForm(Sort.AMBIGUOUS, digits, unit, eitherForm(digits))
          : new NumberForm(Sort.DECIMAL_COMMA, digits, unit, "");
    }

    private NumberForm grouped(String sign, String number, String unit) {
      char last = number.charAt(lastSeparator);
      boolean decimals = (last == '.' || last == ',') && number.indexOf(last) == lastSeparator;
      String whole = decimals ? number.substring(0, lastSeparator) : number;
      if (!isGrouped(whole)) {
        return NONE;
      }
      String digits = sign + onlyDigits(whole);
      if (decimals) {
        digits = digits + '.' + number.substring(lastSeparator + 1);
      }
      return new NumberForm(Sort.GROUPED, digits, unit, shown(new BigDecimal(digits)));
    }

    /** Whether the separators, all of one sort, part the digits into threes. */
    private static boolean isGrouped(String whole) {
      char sign = 0;
      int run = 0;
      for (int i = 0; i < whole.length(); i++) {
        char c = whole.charAt(i);
        if (isDigit(c)) {
          run++;
          continue;
        }
        boolean first = sign == 0;
        boolean fits = first ? run >= 1 && run <= 3 : c == sign && run == 3;
        if (!fits) {
          return false;
        }
        sign = c;
        run = 0;
      }
      return sign == 0 || run == 3;
    }

    private static String onlyDigits(String whole) {
      StringBuilder digits = new StringBuilder();
      for (int i = 0; i < whole.length(); i++) {
        if (isDigit(whole.charAt(i))) {
          digits.append(whole.charAt(i));
        }
      }
      return digits.toString();
    }
  }

  /**
   * Both meanings of a number with three decimals, written so that neither can be taken for the
   * other: {@code 1.5 or 1500}.
   */
  static String eitherForm(String digits) {
    BigDecimal number = new BigDecimal(digits);
    String small = shown(number);
    String unmistakable = number.stripTrailingZeros().scale() == 3 ? small + "0" : small;
    return unmistakable + " or " + shown(number.movePointRight(3));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}

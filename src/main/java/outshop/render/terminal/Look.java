package outshop.render.terminal;

import java.nio.charset.Charset;

/**
 * How a text is laid out.
 *
 * @param width of a line, in columns; held within {@value #NARROWEST} and {@value #WIDEST}
 * @param colour whether escape sequences for colour may stand in it; colour never says anything
 *     that a word does not say as well
 * @param charset what the text will be written in; signs it lacks are spelled out
 */
public record Look(int width, boolean colour, Charset charset) {
  /** Below this many columns the aligned blocks fall apart. */
  public static final int NARROWEST = 40;

  /** Longer lines are hard to read. */
  public static final int WIDEST = 100;

  /** Where nothing is known of the terminal. */
  public static final int USUAL = 80;

  public Look {
    width = Math.max(NARROWEST, Math.min(WIDEST, width));
  }
}

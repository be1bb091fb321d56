package outshop.sheets;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of words on a sheet in which numbers and the user's own words keep what they are, so that
 * a renderer can mark them.
 */
public record Line(List<Piece> pieces) {
  private static final String GAP = "{}";

  /** A piece of a line. */
  public sealed interface Piece permits Words, Own, Number {
    /** As it is read. */
    String text();
  }

  /** The program's words. */
  public record Words(String text) implements Piece {}

  /** The user's words: a title, a name, a terminal. */
  public record Own(String text) implements Piece {}

  /** A number. */
  public record Number(Figure figure) implements Piece {
    @Override
    public String text() {
      return figure.text();
    }
  }

  public Line {
    pieces = List.copyOf(pieces);
  }

  /** The user's words as a piece. */
  static Piece own(String text) {
    return new Own(text);
  }

  /** A figure as a piece. */
  static Piece number(Figure figure) {
    return new Number(figure);
  }

  /**
   * A line from words with a gap {@code {}} for each piece. Errors: {@link
   * IllegalArgumentException} where gaps and pieces differ in number.
   */
  static Line of(String words, Piece... fill) {
    List<Piece> pieces = new ArrayList<>();
    int from = 0;
    for (Piece piece : fill) {
      int gap = words.indexOf(GAP, from);
      if (gap < 0) {
        throw new IllegalArgumentException("too few gaps: " + words);
      }
      add(pieces, words.substring(from, gap));
      pieces.add(piece);
      from = gap + GAP.length();
    }
    if (words.indexOf(GAP, from) >= 0) {
      throw new IllegalArgumentException("too many gaps: " + words);
    }
    add(pieces, words.substring(from));
    return new Line(pieces);
  }

  private static void add(List<Piece> pieces, String words) {
    if (!words.isEmpty()) {
      pieces.add(new Words(words));
    }
  }

  /** This line and another behind it. */
  Line and(Line more) {
    List<Piece> both = new ArrayList<>(pieces);
    both.addAll(more.pieces);
    return new Line(both);
  }

  /** Names one after the other: {@code a, b, c}. */
  static Line names(List<String> names) {
    List<Piece> pieces = new ArrayList<>();
    for (String name : names) {
      if (!pieces.isEmpty()) {
        pieces.add(new Words(", "));
      }
      pieces.add(new Own(name));
    }
    return new Line(pieces);
  }

  /** All pieces as one text. */
  public String text() {
    StringBuilder text = new StringBuilder();
    pieces.forEach(piece -> text.append(piece.text()));
    return text.toString();
  }

  /** The numbers in it, in their order. */
  public List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece instanceof Number number) {
        figures.add(number.figure());
      }
    }
    return figures;
  }

  public boolean isEmpty() {
    return pieces.isEmpty();
  }
}

package outshop.catalogue;

import java.util.Map;
import java.util.function.Consumer;

/**
 * What makes a part stand for several parts at once, or makes somebody watch what is read of it. A
 * part of a catalogue or a plan has nothing of this.
 *
 * @param spans the columns in which the parts it stands for differ. A word column in which they
 *     differ is blank, and open
 * @param watcher is told of every column that is read
 */
public record Loose(Map<String, Span> spans, Consumer<String> watcher) {
  /** What the watcher is told where the row itself is looked at: its place, or its origin. */
  public static final String ROW = "(row)";

  /** What the watcher is told where all columns are read at once. */
  public static final String ALL = "(all)";

  /** Of a part that stands for itself alone. */
  public static final Loose NOTHING = new Loose(Map.of(), column -> {});

  public Loose {
    spans = Map.copyOf(spans);
  }

  /**
   * Where the numbers of several parts lie, in the column's unit.
   *
   * @param at the value that is shown as if it were the one
   */
  public record Span(double low, double at, double high) {
    /** Not known at all: one of the parts states it and another does not. */
    public static final Span OPEN = new Span(Double.NaN, Double.NaN, Double.NaN);

    public boolean isOpen() {
      return Double.isNaN(at);
    }
  }
}

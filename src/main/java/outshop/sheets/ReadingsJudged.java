package outshop.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.sheets.BenchSheet.Side;
import outshop.sheets.BenchSheet.Stage;
import outshop.sheets.BenchSheet.Step;
import outshop.units.Exact;
import outshop.units.Unit;

/**
 * The readings of a bench sheet, judged.
 *
 * @param lines one a step, in the sheet's order
 * @param next what to do now
 */
public record ReadingsJudged(String title, List<Judged> lines, Line next) {
  public ReadingsJudged {
    lines = List.copyOf(lines);
  }

  /** How a reading stands. */
  public enum Stand {
    INSIDE("inside"),
    OUTSIDE("outside"),
    /** Nothing was read. */
    MISSING("not read"),
    /** It was read, but there is no window to hold it against. */
    UNTOLD("cannot tell"),
    /** It was read although a violation stands. */
    BARRED("read too soon"),
    /** It was read before a step that guards it. */
    EARLY("read too soon");

    private final String words;

    Stand(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * One step's reading.
   *
   * @param off how far outside, as a share of the edge it passed; where that edge is zero, empty
   * @param cause the likely cause, where it is outside
   */
  public record Judged(
      Step step,
      Stand stand,
      Optional<Reading> reading,
      Optional<Side> side,
      Optional<Double> off,
      Optional<Line> cause) {}

  /** Whether a reading is off: outside its window, or read when it should not have been. */
  public boolean isOff() {
    return lines.stream()
        .anyMatch(
            l ->
                l.stand() == Stand.OUTSIDE
                    || l.stand() == Stand.BARRED
                    || l.stand() == Stand.EARLY);
  }

  /** How many readings stand so. */
  public int count(Stand stand) {
    return (int) lines.stream().filter(l -> l.stand() == stand).count();
  }

  /** Holds readings against the sheet that they answer. */
  public static ReadingsJudged of(BenchSheet sheet, Map<String, Reading> readings) {
    List<Judged> lines = new ArrayList<>();
    boolean open = false;
    for (Stage stage : sheet.stages()) {
      boolean openBefore = open;
      boolean anyOrder = stage.power() == BenchSheet.Power.NOTHING;
      for (Step step : stage.steps()) {
        Optional<Reading> reading = Optional.ofNullable(readings.get(step.name()));
        Judged judged = judge(step, stage, reading, anyOrder ? openBefore : open);
        lines.add(judged);
        open |= judged.stand() != Stand.INSIDE && judged.stand() != Stand.UNTOLD;
      }
    }
    return new ReadingsJudged(sheet.title(), lines, next(sheet, lines));
  }

  private static Judged judge(
      Step step, Stage stage, Optional<Reading> reading, boolean openBefore) {
    if (reading.isEmpty()) {
      return plain(step, Stand.MISSING, reading);
    }
    if (stage.barred()) {
      return plain(step, Stand.BARRED, reading);
    }
    Optional<Side> side = side(step.expected(), reading.get());
    if (side.isPresent()) {
      Side told =
          step.means(side.get()).isPresent() || side.get() != Side.NONE ? side.get() : beside(step);
      return new Judged(
          step,
          Stand.OUTSIDE,
          reading,
          Optional.of(told),
          off(step.expected(), reading.get()),
          cause(step, told));
    }
    if (openBefore) {
      return plain(step, Stand.EARLY, reading);
    }
    boolean untold = step.expected() instanceof Expected.Untold;
    return plain(step, untold ? Stand.UNTOLD : Stand.INSIDE, reading);
  }

  private static Judged plain(Step step, Stand stand, Optional<Reading> reading) {
    return new Judged(step, stand, reading, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Where nothing is said of no reading at all, it is a high one of ohms, else a low one. */
  private static Side beside(Step step) {
    return step.expected().unit() == Unit.OHMS ? Side.HIGH : Side.LOW;
  }

  private static Optional<Line> cause(Step step, Side side) {
    return step.means(side).or(() -> side == Side.NONE ? step.means(Side.LOW) : Optional.empty());
  }

  /** On which side it lies; empty if it is inside, or there is no window. */
  private static Optional<Side> side(Expected expected, Reading reading) {
    if (expected instanceof Expected.Joined joined) {
      return joined(joined, reading);
    }
    if (expected instanceof Expected.Apart apart) {
      boolean low =
          reading instanceof Reading.Joined
              || (reading instanceof Reading.Value v
                  && Exact.below(v.value(), apart.atLeast().value()));
      return low ? Optional.of(Side.LOW) : Optional.empty();
    }
    return expected instanceof Expected.Window window ? window(window, reading) : Optional.empty();
  }

  private static Optional<Side> joined(Expected.Joined joined, Reading reading) {
    if (reading instanceof Reading.Open) {
      return Optional.of(Side.NONE);
    }
    boolean high =
        reading instanceof Reading.Value v
            && joined.atMost().isPresent()
            && Exact.above(v.value(), joined.atMost().get().value());
    return high ? Optional.of(Side.HIGH) : Optional.empty();
  }

  private static Optional<Side> window(Expected.Window window, Reading reading) {
    if (reading instanceof Reading.Open) {
      return window.to().isPresent() ? Optional.of(Side.NONE) : Optional.empty();
    }
    double value = ((Reading.Value) reading).value();
    if (Exact.below(value, window.from().value())) {
      // No ohms are a short; no volts or amps are nothing at all.
      boolean nothing = Exact.same(value, 0) && window.from().unit() != Unit.OHMS;
      return Optional.of(nothing ? Side.NONE : Side.LOW);
    }
    boolean high = window.to().isPresent() && Exact.above(value, window.to().get().value());
    return high ? Optional.of(Side.HIGH) : Optional.empty();
  }

  private static Optional<Double> off(Expected expected, Reading reading) {
    if (!(reading instanceof Reading.Value value)) {
      return Optional.empty();
    }
    Optional<Figure> edge = Optional.empty();
    if (expected instanceof Expected.Window window) {
      boolean low = Exact.below(value.value(), window.from().value());
      edge = low ? Optional.of(window.from()) : window.to();
    } else if (expected instanceof Expected.Joined joined) {
      edge = joined.atMost();
    } else if (expected instanceof Expected.Apart apart) {
      edge = Optional.of(apart.atLeast());
    }
    return edge.filter(e -> e.value() != 0)
        .map(e -> Math.abs(value.value() - e.value()) / Math.abs(e.value()));
  }

  private static Line next(BenchSheet sheet, List<Judged> lines) {
    if (!sheet.standing().isEmpty()) {
      return Line.of(
          "Power nothing: {} violations stand in the report. Mend them, then draw the sheet up anew.",
          Line.number(Figure.count("violations", sheet.standing().size())));
    }
    Optional<Judged> off = first(lines, Stand.OUTSIDE);
    if (off.isPresent()) {
      return Line.of(
          "Stop at {}: switch off, find the cause, mend it, read it again. No further step before.",
          Line.own(off.get().step().name()));
    }
    Optional<Judged> early = first(lines, Stand.EARLY);
    Optional<Judged> missing = first(lines, Stand.MISSING);
    if (missing.isPresent() && early.isPresent()) {
      return Line.of(
          "Switch off and go back: {} guards {} and was not read.",
          Line.own(missing.get().step().name()),
          Line.own(early.get().step().name()));
    }
    if (missing.isPresent()) {
      return Line.of("{}. ", Line.own(missing.get().step().name())).and(missing.get().step().act());
    }
    return Line.of(
        "Every step is read and none is off. That says what the meter said, no more: the makers'"
            + " instructions and qualified people come first.");
  }

  private static Optional<Judged> first(List<Judged> lines, Stand stand) {
    return lines.stream().filter(l -> l.stand() == stand).findFirst();
  }
}

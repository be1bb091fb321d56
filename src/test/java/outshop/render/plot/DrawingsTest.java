package outshop.render.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import outshop.circuit.LoadCase;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.render.ReadDrawing;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;

/** Drawings of plots made for the purpose: hostile and endless texts. */
final class DrawingsTest {
  private static final String HOSTILE = "<script>alert(\"1\")</script>&'\u202e\u0000\ud800";

  private static Amount.Known value(double value, Unit unit) {
    return Amount.known(value, unit, Origin.DATA_SHEET, HOSTILE, HOSTILE);
  }

  private static final Set<Meaning> IN_A_LANE =
      EnumSet.of(
          Meaning.NO_LOAD,
          Meaning.STANDING,
          Meaning.CRUISING,
          Meaning.SLIPPING,
          Meaning.BLOCKED,
          Meaning.TOP_STEP);

  private static Set<Meaning> points(Plot.Subject subject) {
    return switch (subject) {
      case FUSE_GATES -> EnumSet.of(Meaning.SHORTEST, Meaning.LONGEST, Meaning.OVERLOAD);
      case RUN_TIME -> EnumSet.of(Meaning.HOURS, Meaning.COLD_HOURS);
      default -> EnumSet.noneOf(Meaning.class);
    };
  }

  private static Set<Meaning> meanings(Plot.Subject subject) {
    return switch (subject) {
      case VOLTAGE_WINDOWS -> EnumSet.range(Meaning.TAKES_LEAST, Meaning.TOP_STEP);
      case CURRENT_LADDER -> EnumSet.range(Meaning.CRUISING, Meaning.PEAK);
      case FUSE_GATES -> EnumSet.range(Meaning.CONTINUOUS, Meaning.BREAKING);
      case RUN_TIME -> EnumSet.range(Meaning.CHARGE, Meaning.ALLOWED);
      case LOUDNESS -> EnumSet.range(Meaning.OHMS, Meaning.TAKES_WATTS);
    };
  }

  /** A plot of each subject with every meaning it may have, whose every text is the given one. */
  private static List<Plot> hostile(String text) {
    List<Plot> plots = new ArrayList<>();
    for (Plot.Subject subject : Plot.Subject.values()) {
      List<Mark> marks = new ArrayList<>();
      for (Meaning meaning : meanings(subject)) {
        Optional<LoadCase.Charge> charge =
            IN_A_LANE.contains(meaning) ? Optional.of(LoadCase.Charge.FULL) : Optional.empty();
        Optional<Amount> along =
            points(subject).contains(meaning)
                ? Optional.of(value(1 + meaning.ordinal(), Unit.AMPS))
                : Optional.empty();
        marks.add(new Mark(meaning, charge, along, value(3 + meaning.ordinal(), unit(subject))));
        marks.add(new Mark(meaning, charge, along, Amount.missing(text, text, text)));
      }
      Row row = new Row(text, text, marks);
      boolean oneWish = subject == Plot.Subject.RUN_TIME;
      List<Row> rows = oneWish ? List.of(row) : List.of(row, row);
      plots.add(new Plot(subject, text, rows, List.of(text + ".", text)));
    }
    return plots;
  }

  private static Unit unit(Plot.Subject subject) {
    return switch (subject) {
      case VOLTAGE_WINDOWS -> Unit.VOLTS;
      case CURRENT_LADDER, FUSE_GATES -> Unit.AMPS;
      case RUN_TIME -> Unit.HOURS;
      case LOUDNESS -> Unit.DECIBELS;
    };
  }

  @Test
  void aHostileTextIsShownAsText() {
    for (Drawn drawn : Drawings.of(hostile(HOSTILE))) {
      ReadDrawing read = ReadDrawing.of(drawn.svg());
      assertThat(read.all("script")).isEmpty();
      assertThat(drawn.svg()).doesNotContain("<script", "\u202e", "\u0000", "\ud800");
      assertThat(read.text()).contains("<script>alert(\"1\")</script>&'\\u202e\\u0000\\ud800");
      assertThat(drawn.rows().toString()).doesNotContain("\u202e");
    }
  }

  @Test
  void aTextWithoutEndStaysInItsRoom() {
    for (String endless : List.of("W".repeat(10_000), "\u05d0\u05d1 ".repeat(4000))) {
      for (Drawn drawn : Drawings.of(hostile(endless))) {
        textsFit(drawn);
        assertThat(drawn.svg().length()).isLessThan(60_000);
      }
    }
  }

  /** A text's box by the estimate of its width, which is rather too wide. */
  private record Box(double left, double right, double base, double size, String text) {
    boolean over(Box other) {
      boolean level = Math.abs(base - other.base) < 0.8 * Math.min(size, other.size);
      return level && left < other.right && other.left < right;
    }
  }

  private static void textsFit(Drawn drawn) {
    ReadDrawing read = ReadDrawing.of(drawn.svg());
    List<Box> boxes = new ArrayList<>();
    for (Element text : read.all("text")) {
      String shown = text.getLastChild().getTextContent();
      double size = ReadDrawing.number(text, "font-size");
      double wide = Texts.width(shown) * size;
      double x = ReadDrawing.number(text, "x");
      String anchor = text.getAttribute("text-anchor");
      double left = anchor.equals("start") ? x : anchor.equals("end") ? x - wide : x - wide / 2;
      Box box = new Box(left, left + wide, ReadDrawing.number(text, "y"), size, shown);
      assertThat(box.left()).as("%s: %s", drawn.id(), shown).isGreaterThanOrEqualTo(-0.5);
      assertThat(box.right())
          .as("%s: %s", drawn.id(), shown)
          .isLessThanOrEqualTo(Canvas.WIDTH + 0.5);
      for (Box other : boxes) {
        assertThat(box.over(other))
            .as("%s: \"%s\" over \"%s\"", drawn.id(), shown, other.text())
            .isFalse();
      }
      boxes.add(box);
    }
  }

  @Test
  void aCutTextHasTheWholeInItsTitle() {
    String name = "a-name-as-long-as-a-plan-allows-it-to-be";
    Row row =
        new Row(
            name,
            name,
            List.of(
                new Mark(
                    Meaning.TAKES_MOST, Optional.empty(), Optional.empty(), value(12, Unit.VOLTS)),
                new Mark(
                    Meaning.TAKES_LEAST,
                    Optional.empty(),
                    Optional.empty(),
                    value(7, Unit.VOLTS))));
    Plot plot = new Plot(Plot.Subject.VOLTAGE_WINDOWS, "", List.of(row), List.of());

    ReadDrawing read = ReadDrawing.of(Drawings.of(List.of(plot)).get(0).svg());

    assertThat(read.all("title").stream().map(Element::getTextContent)).contains(name);
    assertThat(read.all("text").stream().map(t -> t.getLastChild().getTextContent()))
        .anyMatch(t -> t.startsWith("a-name") && t.endsWith("…"));
  }
}

package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import outshop.plan.Plan;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.render.ReadDrawing;
import outshop.render.plot.Drawings;
import outshop.render.plot.Drawn;
import outshop.report.Report;
import outshop.units.Unit;

/** Every plot of every demo plan, read back from its drawing. */
final class PlotsReadBackTest {
  /** The drawing is written to a hundredth; so far may a place be off. */
  private static final double HUNDREDTH = 0.006;

  /** A character of the usual fonts, on average, in units of its height. */
  private static final double WIDE = 0.5;

  static Stream<Path> plans() {
    return Sample.plans().stream();
  }

  private static void bothHold(double place, double value, ReadDrawing.Axis scale) {
    assertThat(place).as("place of %s", value).isCloseTo(scale.at(value), within(HUNDREDTH));
    assertThat(scale.at(scale.value(place))).isCloseTo(place, within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyDrawnValueIsAFigureAndStandsWhereItSays(Path path) {
    Report report = Sample.report(path);
    List<Drawn> drawn = Drawings.of(report.plots());
    int seen = 0;
    for (int i = 0; i < drawn.size(); i++) {
      Plot plot = report.plots().get(i);
      ReadDrawing read = ReadDrawing.of(drawn.get(i).svg());
      for (ReadDrawing.Read value : read.values()) {
        Mark mark = mark(plot, value);
        assertThat(value.value()).isEqualTo(mark.amount().get().value());
        standsRight(read, value, mark);
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(40);
  }

  /** The mark that a drawn value names; there must be one. */
  private static Mark mark(Plot plot, ReadDrawing.Read value) {
    return plot.rows().stream()
        .filter(row -> row.name().equals(value.row()))
        .flatMap(row -> row.marks().stream())
        .filter(m -> m.meaning().name().toLowerCase(Locale.ROOT).equals(value.meaning()))
        .filter(m -> charge(m).equals(value.charge()))
        .filter(
            m -> value.along().isEmpty() || m.along().get().get().value() == value.along().get())
        .filter(m -> m.amount().get().value() == value.value())
        .findFirst()
        .orElseThrow(() -> new AssertionError("no such figure: " + value));
  }

  private static String charge(Mark mark) {
    return mark.charge().map(c -> c.name().toLowerCase(Locale.ROOT)).orElse("");
  }

  private static void standsRight(ReadDrawing read, ReadDrawing.Read value, Mark mark) {
    double[] place = ReadDrawing.place(value.element());
    ReadDrawing.Axis x = read.axis("x").orElseThrow();
    if (mark.along().isPresent()) {
      bothHold(place[0], mark.along().get().get().value(), x);
      bothHold(place[1], value.value(), read.axis("y").orElseThrow());
    } else if (mark.meaning() == Meaning.ASKED) {
      bothHold(place[1], value.value(), read.axis("y").orElseThrow());
    } else {
      bothHold(place[0], value.value(), x);
    }
  }

  /** What is known is drawn: no figure of a row is left out in silence. */
  @ParameterizedTest
  @MethodSource("plans")
  void everyKnownFigureIsDrawn(Path path) {
    Report report = Sample.report(path);
    List<Drawn> drawn = Drawings.of(report.plots());
    for (int i = 0; i < drawn.size(); i++) {
      Plot plot = report.plots().get(i);
      ReadDrawing read = ReadDrawing.of(drawn.get(i).svg());
      boolean blank = read.axis("x").isEmpty();
      List<String> found =
          read.values().stream()
              .map(v -> v.row() + "/" + v.meaning() + "/" + v.charge() + "/" + v.value())
              .toList();
      for (Row row : plot.rows()) {
        for (Mark mark : row.marks()) {
          if (!blank && mark.isKnown() && hasSign(mark)) {
            assertThat(found)
                .contains(
                    row.name()
                        + "/"
                        + mark.meaning().name().toLowerCase(Locale.ROOT)
                        + "/"
                        + charge(mark)
                        + "/"
                        + mark.amount().get().value());
          }
        }
      }
    }
  }

  private static boolean hasSign(Mark mark) {
    boolean inWords =
        List.of(Meaning.OHMS, Meaning.GETS_WATTS, Meaning.TAKES_WATTS, Meaning.CHARGE)
            .contains(mark.meaning());
    boolean nothing = mark.amount().get().unit() == Unit.AMPS && mark.amount().get().value() < 1e-6;
    return !inWords && !nothing;
  }

  @ParameterizedTest
  @MethodSource("plans")
  void isOneImageWithTitleAndDescription(Path path) {
    Set<String> ids = new HashSet<>();
    for (Drawn drawn : Drawings.of(Sample.report(path).plots())) {
      ReadDrawing read = ReadDrawing.of(drawn.svg());
      Element root = read.root();
      assertThat(root.getAttribute("role")).isEqualTo("img");
      assertThat(root.getAttribute("aria-labelledby"))
          .isEqualTo(drawn.id() + "-title " + drawn.id() + "-desc");
      assertThat(read.all("title").get(0).getTextContent()).isEqualTo(drawn.title());
      assertThat(read.all("desc").get(0).getTextContent()).isEqualTo(drawn.summary());
      for (Element element : read.all("*")) {
        if (element.hasAttribute("id")) {
          assertThat(ids.add(element.getAttribute("id"))).as(element.getAttribute("id")).isTrue();
          assertThat(element.getAttribute("id")).startsWith(drawn.id());
        }
      }
      assertThat(drawn.rows().isEmpty()).isEqualTo(drawn.summary().contains("no decoder with"));
      assertThat(drawn.rows()).allMatch(row -> row.size() == drawn.headers().size());
      assertThat(drawn.svg().replace("http://www.w3.org/2000/svg", "")).doesNotContain("http");
    }
  }

  @Test
  void isTheSameToTheByteInAnyLocale() {
    Path path = Sample.FOLDER.resolve("plans/half-measured.yaml");
    List<Drawn> first = Drawings.of(Sample.report(path).plots());
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Drawings.of(Sample.report(path).plots())).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }

  /** ISO 8820-3 as cited where the gates stand: multiple, shortest and longest seconds. */
  private static final double[][] BLADE = {
    {1.00, 360_000, Double.POSITIVE_INFINITY},
    {1.35, 0.75, 600},
    {1.60, 0.25, 50},
    {2.00, 0.15, 5},
    {3.50, 0.04, 0.5},
    {6.00, 0.02, 0.15}
  };

  private static double shortest(double multiple) {
    for (double[] gate : BLADE) {
      if (multiple <= gate[0]) {
        return gate[1];
      }
    }
    return 0;
  }

  private static double longest(double multiple) {
    double longest = Double.POSITIVE_INFINITY;
    for (double[] gate : BLADE) {
      longest = multiple >= gate[0] ? gate[2] : longest;
    }
    return longest;
  }

  /** The steps drawn are those of the standard's gates, at every current between. */
  @Test
  void theFusesAreasFollowItsGates() {
    Path path = Sample.FOLDER.resolve("plans/sallowmere-tank.yaml");
    Plot plot = plot(Sample.report(path), Plot.Subject.FUSE_GATES);
    double rated =
        plot.rows().stream()
            .flatMap(r -> r.known(Meaning.RATED).stream())
            .findFirst()
            .get()
            .value();
    assertThat(rated).isEqualTo(4);
    ReadDrawing read = ReadDrawing.of(Drawings.of(List.of(plot)).get(0).svg());
    ReadDrawing.Axis x = read.axis("x").orElseThrow();
    ReadDrawing.Axis y = read.axis("y").orElseThrow();
    List<double[]> holds = area(read, "plot-holds");
    List<double[]> opened = area(read, "plot-opened");
    int compared = 0;
    for (double multiple = 0.4; multiple < 200; multiple *= 1.07) {
      double at = x.at(multiple * rated);
      double shortest = shortest(multiple);
      double longest = longest(multiple);
      if (shortest > 0) {
        assertThat(level(holds, at, true)).isCloseTo(y.at(shortest), within(0.02));
        compared++;
      }
      if (Double.isFinite(longest)) {
        assertThat(level(opened, at, false)).isCloseTo(y.at(longest), within(0.02));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  private static List<double[]> area(ReadDrawing read, String name) {
    return ReadDrawing.points(
        read.all("path").stream()
            .filter(p -> p.getAttribute("class").equals(name))
            .findFirst()
            .orElseThrow()
            .getAttribute("d"));
  }

  /** The height of a stair at a place: its level piece there, above the floor or under the top. */
  private static double level(List<double[]> points, double x, boolean upper) {
    double level = upper ? Double.MAX_VALUE : -Double.MAX_VALUE;
    for (int i = 0; i < points.size(); i++) {
      double[] a = points.get(i);
      double[] b = points.get((i + 1) % points.size());
      boolean spans = Math.min(a[0], b[0]) <= x && x <= Math.max(a[0], b[0]);
      if (spans && a[1] == b[1] && a[0] != b[0]) {
        level = upper ? Math.min(level, a[1]) : Math.max(level, a[1]);
      }
    }
    return level;
  }

  private static Plot plot(Report report, Plot.Subject subject) {
    return report.plots().stream().filter(p -> p.subject() == subject).findFirst().orElseThrow();
  }

  @Test
  void whatIsMissingIsNamedWithTheWayToGetIt() {
    byte[] empty = "outshop_plan: 1\n".getBytes(StandardCharsets.UTF_8);
    Plan plan = Sample.plan("empty.yaml", empty, Sample.catalogue());

    List<Drawn> drawn = Drawings.of(Sample.report(plan).plots());

    assertThat(drawn).hasSize(5);
    for (Drawn each : drawn.subList(0, 4)) {
      String text = ReadDrawing.of(each.svg()).text();
      assertThat(each.wants()).as(each.id()).isNotEmpty();
      String wanted = each.wants().get(0).name();
      assertThat(text).as(each.id()).contains("Not drawn for want of " + wanted);
      assertThat(each.summary()).contains(wanted, each.wants().get(0).how());
      assertThat(ReadDrawing.of(each.svg()).values()).isEmpty();
      assertThat(each.rows().toString()).contains("cannot tell");
    }
    assertThat(drawn.get(4).summary()).contains("no decoder with sound");
  }

  @Test
  void anAssumedValueIsDrawnAsItsRangeAndNamed() {
    Drawn drawn =
        Drawings.of(Sample.report(Sample.FOLDER.resolve("plans/half-measured.yaml")).plots())
            .get(0);
    ReadDrawing read = ReadDrawing.of(drawn.svg());
    ReadDrawing.Axis x = read.axis("x").orElseThrow();
    List<Element> ranges =
        read.all("path").stream()
            .filter(p -> p.getAttribute("class").equals("plot-range"))
            .toList();

    assertThat(ranges).isNotEmpty();
    for (Element range : ranges) {
      double low = ReadDrawing.points(range.getAttribute("d")).get(0)[0];
      assertThat(low).isCloseTo(x.at(ReadDrawing.number(range, "data-low")), within(HUNDREDTH));
      assertThat(ReadDrawing.number(range, "data-low"))
          .isLessThan(ReadDrawing.number(range, "data-high"));
    }
    assertThat(drawn.summary()).contains("Assumed, so drawn as ranges: ");
    assertThat(read.text()).contains("Assumed: ");
  }

  @ParameterizedTest
  @MethodSource("plans")
  void noTextRunsOutOfThePictureOrOverAnother(Path path) {
    Drawings.of(Sample.report(path).plots()).forEach(PlotsReadBackTest::textsFit);
  }

  /** A text's box by an estimate of its width. */
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
      double wide = WIDE * size * shown.length();
      double x = ReadDrawing.number(text, "x");
      String anchor = text.getAttribute("text-anchor");
      double left = anchor.equals("start") ? x : anchor.equals("end") ? x - wide : x - wide / 2;
      Box box = new Box(left, left + wide, ReadDrawing.number(text, "y"), size, shown);
      assertThat(box.left()).as("%s: %s", drawn.id(), shown).isGreaterThanOrEqualTo(-0.5);
      assertThat(box.right()).as("%s: %s", drawn.id(), shown).isLessThanOrEqualTo(360 + 0.5);
      for (Box other : boxes) {
        assertThat(box.over(other))
            .as("%s: \"%s\" over \"%s\"", drawn.id(), shown, other.text())
            .isFalse();
      }
      boxes.add(box);
    }
  }
}

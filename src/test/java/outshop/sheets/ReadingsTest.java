package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.input.Problem;
import outshop.sheets.ReadingsJudged.Judged;
import outshop.sheets.ReadingsJudged.Stand;

/** Readings that come back: read from a file, held against the windows of the sheet. */
final class ReadingsTest {
  private static BenchSheet sheet;

  @BeforeAll
  static void draw() throws IOException {
    sheet = Drawn.sheets(Drawn.base()).bench();
  }

  private static ReadingsFile read(BenchSheet of, String... lines) {
    String text = "outshop_readings: 1\nreadings:\n  " + String.join("\n  ", lines) + "\n";
    return ReadingsFile.read("r.yaml", text.getBytes(StandardCharsets.UTF_8), of);
  }

  private static ReadingsFile read(String... lines) {
    return read(sheet, lines);
  }

  private static Judged judged(String step, String reading) {
    ReadingsFile file = read(step + ": " + reading);
    assertThat(file.problems()).isEmpty();
    return ReadingsJudged.of(sheet, file.readings()).lines().stream()
        .filter(l -> l.step().name().equals(step))
        .findFirst()
        .orElseThrow();
  }

  /** A reading of each step that lies in the middle of what is expected. */
  private static Map<String, Reading> inside() {
    Map<String, Reading> readings = new LinkedHashMap<>();
    for (BenchSheet.Step step : sheet.steps()) {
      Expected expected = step.expected();
      if (expected instanceof Expected.Joined) {
        readings.put(step.name(), new Reading.Joined());
      } else if (expected instanceof Expected.Apart) {
        readings.put(step.name(), new Reading.Open());
      } else if (expected instanceof Expected.Window w) {
        double to = w.to().map(Figure::value).orElse(w.from().value() + 10);
        readings.put(step.name(), new Reading.Value((w.from().value() + to) / 2, w.from().unit()));
      }
    }
    return readings;
  }

  /** Speaker of the base plan: 5.7 to 8.32 ohm; motor 3.41 to 5.43; see BenchWindowsTest. */
  @ParameterizedTest
  @CsvSource({
    "speaker-ohms, 7 ohm, INSIDE, ",
    "speaker-ohms, 5.7 ohm, INSIDE, ",
    "speaker-ohms, 8.32 ohm, INSIDE, ",
    "speaker-ohms, 8.33 ohm, OUTSIDE, HIGH",
    "speaker-ohms, 5.69 ohm, OUTSIDE, LOW",
    "speaker-ohms, open, OUTSIDE, NONE",
    "speaker-ohms, 0 ohm, OUTSIDE, LOW",
    "plus-out-on, joined, INSIDE, ",
    "plus-out-on, 0.4 ohm, INSIDE, ",
    "plus-out-on, 2 ohm, OUTSIDE, HIGH",
    "plus-out-on, open, OUTSIDE, NONE",
    "plus-out-off, open, INSIDE, ",
    "plus-out-off, 1000 kohm, INSIDE, ",
    "plus-out-off, 999 kohm, OUTSIDE, LOW",
    "plus-out-off, joined, OUTSIDE, LOW",
    "plus-to-minus, open, INSIDE, ",
    "plus-to-minus, 1 ohm, OUTSIDE, LOW",
  })
  void unpowered(String step, String reading, Stand stand, String side) {
    Judged judged = judged(step, reading);
    assertThat(judged.stand()).isEqualTo(stand);
    assertThat(judged.side().map(Enum::name).orElse("")).isEqualTo(side == null ? "" : side);
    assertThat(judged.cause().isPresent()).isEqualTo(stand == Stand.OUTSIDE);
  }

  @ParameterizedTest
  @CsvSource({
    "idle-amps, 100 mA, INSIDE, ",
    "idle-amps, 0.093 A, INSIDE, ",
    "idle-amps, 145 mA, INSIDE, ",
    "idle-amps, 146 mA, OUTSIDE, HIGH",
    "idle-amps, 92 mA, OUTSIDE, LOW",
    "idle-amps, 0 A, OUTSIDE, NONE",
    "feed-volts, -10.4 V, OUTSIDE, LOW",
  })
  void powered(String step, String reading, Stand stand, String side) {
    Map<String, Reading> readings = inside();
    readings.putAll(read(step + ": " + reading).readings());
    Judged judged =
        ReadingsJudged.of(sheet, readings).lines().stream()
            .filter(l -> l.step().name().equals(step))
            .findFirst()
            .orElseThrow();
    assertThat(judged.stand()).isEqualTo(stand);
    assertThat(judged.side().map(Enum::name).orElse("")).isEqualTo(side == null ? "" : side);
  }

  @Test
  void howFarOutsideIsAShareOfTheEdge() {
    // 5.7 ohm is the edge; 2.85 ohm is half of it.
    assertThat(judged("speaker-ohms", "2.85 ohm").off().orElseThrow()).isCloseTo(0.5, within(1e-9));
    // 8.32 ohm is the edge; 16.64 ohm is twice that.
    assertThat(judged("speaker-ohms", "16.64 ohm").off().orElseThrow()).isCloseTo(1, within(1e-9));
  }

  @Test
  void theCauseIsThatOfTheSideOnWhichItLies() {
    assertThat(judged("speaker-ohms", "16 ohm").cause().orElseThrow().text())
        .contains("another speaker");
    assertThat(judged("speaker-ohms", "open").cause().orElseThrow().text())
        .contains("the coil is broken");
    assertThat(judged("plus-out-on", "open").cause().orElseThrow().text()).contains("fuse, switch");
  }

  @Test
  void everyReadingInsideLeavesNothingToDo() {
    ReadingsJudged judged = ReadingsJudged.of(sheet, inside());
    assertThat(judged.isOff()).isFalse();
    assertThat(judged.count(Stand.INSIDE)).isEqualTo(sheet.steps().size());
    assertThat(judged.next().text()).contains("none is off").doesNotContain("safe");
  }

  @Test
  void whatIsNotReadYetIsNext() {
    Map<String, Reading> readings = inside();
    readings.keySet().retainAll(List.of("main-ohms", "out-1-ohms"));
    ReadingsJudged judged = ReadingsJudged.of(sheet, readings);
    assertThat(judged.isOff()).isFalse();
    assertThat(judged.count(Stand.MISSING)).isEqualTo(sheet.steps().size() - 2);
    assertThat(judged.next().text()).startsWith("speaker-ohms. Speaker: both leads off");
  }

  @Test
  void aReadingThatIsOffStopsThere() {
    Map<String, Reading> readings = inside();
    readings.put("minus-in", new Reading.Joined());
    readings
        .keySet()
        .removeIf(s -> sheet.steps().stream().skip(14).anyMatch(t -> t.name().equals(s)));
    ReadingsJudged judged = ReadingsJudged.of(sheet, readings);
    assertThat(judged.isOff()).isTrue();
    assertThat(judged.next().text()).startsWith("Stop at minus-in");
  }

  /** Whoever reads a powered step before the steps that guard it is told so. */
  @Test
  void aPoweredStepReadTooSoonIsOff() {
    Map<String, Reading> readings = inside();
    readings.remove("plus-in-off");
    readings.keySet().removeIf(s -> s.startsWith("pack") || s.startsWith("charg"));
    ReadingsJudged judged = ReadingsJudged.of(sheet, readings);
    assertThat(judged.count(Stand.EARLY)).isGreaterThan(5);
    assertThat(judged.isOff()).isTrue();
    assertThat(judged.next().text())
        .startsWith("Switch off and go back: plus-in-off guards supply-volts");
    Map<String, Reading> gap = inside();
    gap.remove("first-amps");
    assertThat(
            ReadingsJudged.of(sheet, gap).lines().stream()
                .filter(l -> l.stand() == Stand.EARLY)
                .findFirst()
                .orElseThrow()
                .step()
                .name())
        .isEqualTo("idle-amps");
  }

  @Test
  void nothingPoweredIsReadWhileAViolationStands() throws IOException {
    BenchSheet barred =
        Drawn.sheets(Drawn.base("input_max_volts: 20 V", "input_max_volts: 16 V")).bench();
    assertThat(barred.standing()).isNotEmpty();
    ReadingsJudged judged = ReadingsJudged.of(barred, read(barred, "idle-amps: 100 mA").readings());
    assertThat(judged.count(Stand.BARRED)).isEqualTo(1);
    assertThat(judged.isOff()).isTrue();
    assertThat(judged.next().text()).startsWith("Power nothing: 1 violations");
  }

  @Test
  void aStepWithoutAWindowIsNotedAndNotJudged() throws IOException {
    BenchSheet open = Drawn.sheets(Drawn.base(", amps: 60 mA}", "}")).bench();
    ReadingsJudged judged =
        ReadingsJudged.of(
            open, Map.of("out-1-rise", new Reading.Value(9, outshop.units.Unit.AMPS)));
    assertThat(judged.count(Stand.OUTSIDE)).isZero();
  }

  @Test
  void everyInputErrorIsToldAtOnceWithPlaceAndMend() {
    ReadingsFile file =
        read(
            "idle-amps: 95",
            "feed-volts: 95 mA",
            "plus-out-on: yes",
            "idel-amps: 95 mA",
            "pack-volts: [12 V]",
            "motor-amps: joined");
    assertThat(file.isUsable()).isFalse();
    assertThat(file.problems()).hasSize(6);
    List<String> lines = new ArrayList<>(file.problems().stream().map(Problem::line).toList());
    assertThat(lines.get(0))
        .contains("r.yaml:3:14", "readings.idle-amps", "\"95\"", "the unit is missing");
    assertThat(lines.get(1)).contains("r.yaml:4", "\"mA\" measures amps");
    assertThat(lines.get(2)).contains("r.yaml:5", "\"joined\", \"open\" or");
    assertThat(lines.get(3)).contains("r.yaml:6", "no such step", "did you mean \"idle-amps\"");
    assertThat(lines.get(4)).contains("r.yaml:7", "one value");
    assertThat(lines.get(5)).contains("r.yaml:8", "a value in amps").doesNotContain("open");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          outshop_readings: 2\\nreadings: {}   | this version is not known
          readings: {}                         | the version is missing
          outshop_readings: 1                  | the readings are missing
          outshop_readings: 1\\nreading: {}    | did you mean "readings"
          - 1                                  | no list of keys
          outshop_readings: 1\\nreadings: 7    | no steps stand here
          outshop_readings: 1\\n\\treadings: 7 | a tab
          """)
  void aFileOfAnotherFormIsRefused(String text, String told) {
    byte[] bytes = text.replace("\\n", "\n").replace("\\t", "\t").getBytes(StandardCharsets.UTF_8);
    ReadingsFile file = ReadingsFile.read("r.yaml", bytes, sheet);
    assertThat(file.isUsable()).isFalse();
    assertThat(file.problems().get(0).line()).contains(told);
  }

  @Test
  void theEmptyFormReadsAsNothingRead() {
    String form = ReadingsForm.of(sheet);
    ReadingsFile file = ReadingsFile.read("f", form.getBytes(StandardCharsets.UTF_8), sheet);
    assertThat(file.problems()).isEmpty();
    assertThat(file.readings()).isEmpty();
    assertThat(sheet.steps()).allSatisfy(s -> assertThat(form).contains("  " + s.name() + ":\n"));
  }

  @Test
  void theFormOfABarredSheetHasNoPoweredStep() throws IOException {
    BenchSheet barred =
        Drawn.sheets(Drawn.base("input_max_volts: 20 V", "input_max_volts: 16 V")).bench();
    assertThat(ReadingsForm.of(barred)).contains("main-ohms:").doesNotContain("idle-amps");
  }
}

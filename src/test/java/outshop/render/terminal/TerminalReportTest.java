package outshop.render.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outshop.circuit.Station;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.render.Approved;
import outshop.render.FindingBuilder;
import outshop.render.Reports;
import outshop.report.Report;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;

final class TerminalReportTest {
  private static final TerminalReport.Depth SHORT = new TerminalReport.Depth(false, false);
  private static final TerminalReport.Depth WORKING = new TerminalReport.Depth(true, false);
  private static final TerminalReport.Depth ALL = new TerminalReport.Depth(false, true);
  private static final Look PLAIN = new Look(80, false, StandardCharsets.UTF_8);

  @Test
  void theFullReportReadsAsApproved() throws IOException {
    Approved.check("full.txt", TerminalReport.text(Reports.full(), PLAIN, SHORT));
  }

  @Test
  void theWorkingReadsAsApproved() throws IOException {
    Approved.check("working.txt", TerminalReport.text(Reports.full(), PLAIN, WORKING));
  }

  @Test
  void aReportWithoutObjectionsReadsAsApproved() throws IOException {
    Approved.check("clear.txt", TerminalReport.text(Reports.clear(), PLAIN, SHORT));
  }

  @Test
  void aRuleThatObjectsOftenReadsAsApproved() throws IOException {
    Approved.check("many.txt", TerminalReport.text(Reports.manyOfOneRule(), PLAIN, SHORT));
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 55, 80, 93, 100})
  void noLineIsLongerThanTheWidth(int width) {
    for (Report report : List.of(Reports.full(), Reports.clear(), hostile())) {
      for (TerminalReport.Depth depth : List.of(SHORT, WORKING, ALL)) {
        String text =
            TerminalReport.text(report, new Look(width, false, StandardCharsets.UTF_8), depth);
        assertThat(text.split("\n"))
            .allSatisfy(l -> assertThat(Glyphs.columns(l)).isLessThanOrEqualTo(width));
      }
    }
  }

  @Test
  void aWidthBeyondTheReadableIsHeldBack() {
    assertThat(new Look(400, false, StandardCharsets.UTF_8).width()).isEqualTo(100);
    assertThat(new Look(3, false, StandardCharsets.UTF_8).width()).isEqualTo(40);
  }

  @Test
  void noLineEndsWithSpacesAndTheTextEndsWithOneLineEnd() {
    String text = TerminalReport.text(Reports.full(), PLAIN, WORKING);
    assertThat(text.split("\n", -1)).allSatisfy(l -> assertThat(l).isEqualTo(l.stripTrailing()));
    assertThat(text).endsWith(".\n").doesNotContain("\r").doesNotContain("\t");
  }

  @Test
  void theSummaryCounts() {
    assertThat(TerminalReport.summary(Reports.full()))
        .isEqualTo("Stop: 2 violations, 3 warnings, 3 cannot tell, 1 advice, 4 fine; 66 rules");
    assertThat(TerminalReport.summary(Reports.clear()))
        .isEqualTo("Clear: 0 violations, 0 warnings, 0 cannot tell, 0 advice, 1 fine; 66 rules");
  }

  @Test
  void threeOfOneRuleAreShownAndTheRestCountedUnlessAllAreAskedFor() {
    String few = TerminalReport.text(Reports.manyOfOneRule(), PLAIN, SHORT);
    assertThat(few).contains("lamp-3 gets more").doesNotContain("lamp-4 gets more");
    assertThat(few).contains("and 4 more of lighting/led-current (--all)");
    assertThat(few).contains("7 warnings").contains("not shown: 4 (--all)");
    String all = TerminalReport.text(Reports.manyOfOneRule(), PLAIN, ALL);
    assertThat(all)
        .contains("lamp-7 gets more")
        .doesNotContain("more of")
        .doesNotContain("not shown");
  }

  @Test
  void aLongNameAmongWhatIsFineMovesLeftAndTheRoomStaysInItsColumn() {
    List<Finding> fine = new ArrayList<>();
    for (String[] row :
        new String[][] {
          {"current/jack-break-contact-overloaded", "jack"},
          {"current/wire-overloaded", "decoder.speaker+ - speaker.plus"}
        }) {
      fine.add(
          FindingBuilder.of(row[0], Outcome.FINE, Consequence.NUISANCE)
              .at(Station.WIRING, row[1], row[1])
              .compares(
                  Amount.known(1, Unit.AMPS, Origin.PLAN, "has", "plan"),
                  true,
                  Amount.known(4, Unit.AMPS, Origin.PLAN, "limit", "plan"),
                  1)
              .build());
    }
    assertThat(TerminalReport.text(Reports.withFindings("Two", List.of(), fine), PLAIN, SHORT))
        .contains(
            """
              current/jack-break-contact-overloaded  jack                          75 %
              current/wire-overloaded         decoder.speaker+ - speaker.plus      75 %
            """);
  }

  @Test
  void theWorkingIsShownOnlyWhenAskedFor() {
    assertThat(TerminalReport.text(Reports.full(), PLAIN, SHORT))
        .doesNotContain("cells in series x 4.2 V");
    assertThat(TerminalReport.text(Reports.full(), PLAIN, WORKING))
        .contains("pack full = 16.8 V [cells in series x 4.2 V]");
  }

  @Test
  void colourNeverStandsAlone() {
    String plain = TerminalReport.text(Reports.full(), PLAIN, WORKING);
    String coloured =
        TerminalReport.text(Reports.full(), new Look(80, true, StandardCharsets.UTF_8), WORKING);
    assertThat(coloured).contains("\u001b[1;31m").contains("\u001b[1;33m");
    List<String> stripped = new ArrayList<>();
    for (String line : coloured.replaceAll("\u001b\\[[0-9;]*m", "").split("\n", -1)) {
      stripped.add(line.stripTrailing());
    }
    assertThat(String.join("\n", stripped)).isEqualTo(plain);
    for (String word :
        List.of("violation, ", "warning, ", "advice, ", "Cannot tell", "Fine", "Stop: ")) {
      assertThat(plain).contains(word);
    }
  }

  @Test
  void everyColourIsPutBackBeforeTheLineEnds() {
    String coloured =
        TerminalReport.text(Reports.full(), new Look(80, true, StandardCharsets.UTF_8), SHORT);
    assertThat(coloured.split("\n"))
        .allSatisfy(
            line -> {
              int last = line.lastIndexOf("\u001b[");
              assertThat(last < 0 || line.startsWith("\u001b[0m", last)).isTrue();
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"US-ASCII", "ISO-8859-1", "windows-1252", "IBM437"})
  void whatTheCharsetLacksIsSpelledOut(String name) {
    Charset charset = Charset.forName(name);
    String text = TerminalReport.text(Reports.full(), new Look(80, false, charset), SHORT);
    assertThat(charset.newEncoder().canEncode(text)).isTrue();
    assertThat(text)
        .contains("below 0 C")
        .contains("0.5 mm2")
        .contains("8 ohm")
        .doesNotContain("?");
  }

  @Test
  void signsStandAsTheyAreInUtf8() {
    assertThat(TerminalReport.text(Reports.full(), PLAIN, SHORT))
        .contains("0 °C", "0.5 mm²", "8 Ω");
  }

  @Test
  void noBannedWordIsUsed() {
    for (Report report : List.of(Reports.full(), Reports.clear(), Reports.manyOfOneRule())) {
      String text = TerminalReport.text(report, PLAIN, WORKING).toLowerCase(Locale.ROOT);
      assertThat(text).doesNotContainPattern("\\b(safe|safely|please|invalid|illegal|simply)\\b");
    }
  }

  @Test
  void numbersStayWithTheirUnits() {
    for (int width = 40; width <= 100; width++) {
      String text =
          TerminalReport.text(
              Reports.full(), new Look(width, false, StandardCharsets.UTF_8), WORKING);
      assertThat(text).doesNotContainPattern("[0-9]\n +(V|A|dB|%|AWG|°C|mm²|Ω|mV)[ ,;.)\n]");
    }
  }

  @Test
  void noControlCharacterGetsThrough() {
    String text = TerminalReport.text(hostile(), PLAIN, WORKING);
    assertThat(text.codePoints().filter(c -> c != '\n'))
        .allSatisfy(
            c ->
                assertThat(Character.getType(c))
                    .isNotIn(
                        (int) Character.CONTROL,
                        (int) Character.FORMAT,
                        (int) Character.SURROGATE,
                        (int) Character.LINE_SEPARATOR,
                        (int) Character.PARAGRAPH_SEPARATOR));
    assertThat(text).contains("\\u001b").contains("\\u202e");
  }

  @Test
  void aTextWithoutEndIsCutAndSaysSo() {
    String text = TerminalReport.text(hostile(), PLAIN, SHORT);
    assertThat(text).contains("(10000 characters)");
    assertThat(text.replaceAll("\\n *", "")).doesNotContain("x".repeat(Clean.LONGEST + 1));
  }

  @Test
  void aHostileTitleCannotForgeALine() {
    Report report =
        Reports.withFindings("x\n  o==  violation, harm", List.of(), Reports.clear().fine());
    String text = TerminalReport.text(report, PLAIN, SHORT);
    assertThat(text.lines()).noneMatch(l -> l.strip().startsWith("o==  violation"));
  }

  @Test
  void nothingJudgedIsNotClear() {
    Report nothing = Reports.withFindings("Empty", List.of(), List.of());
    assertThat(TerminalReport.summary(nothing)).startsWith("Caution: ");
  }

  static Report hostile() {
    String bad = "\u001b[2J\u0007\u202eevil\u2028\u0085\ud800\t\u200b\u009b31m";
    String endless = "x".repeat(10_000);
    List<Finding> findings = new ArrayList<>();
    for (String text : List.of(bad, endless, "界".repeat(3000), "e\u0301".repeat(500), "")) {
      findings.add(
          FindingBuilder.of("data/hostile", Outcome.VIOLATION, Consequence.HARM)
              .at(Station.PLAN, text, text)
              .says(text)
              .why(text)
              .cure(text)
              .basis(text, text)
              .assumes(text)
              .step(text, text, text)
              .build());
    }
    Report full = Reports.full();
    return new Report(
        bad,
        endless,
        findings,
        full.cannotTell(),
        findings,
        List.of(new Report.Accepted(findings.get(0), endless)),
        List.of(bad, endless),
        full.wanted(),
        full.parts(),
        full.path(),
        full.cases(),
        List.of(bad),
        full.notes(),
        1,
        full.plots());
  }
}

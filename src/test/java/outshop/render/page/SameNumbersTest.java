package outshop.render.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import outshop.acceptance.Sample;
import outshop.render.json.JsonReport;
import outshop.report.Report;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every number in the page is the one of the same report as JSON, to the digits shown. */
final class SameNumbersTest {
  private static final JsonMapper MAPPER = new JsonMapper();

  /** How many of a unit the sign after a number stands for, by the unit's name in the JSON. */
  private static final Map<String, Double> SIGNS =
      Map.ofEntries(
          Map.entry("mA", 1e-3),
          Map.entry("A", 1.0),
          Map.entry("V", 1.0),
          Map.entry("W", 1.0),
          Map.entry("mm", 1e-3),
          Map.entry("m", 1.0),
          Map.entry("mohm", 1e-3),
          Map.entry("ohm", 1.0),
          Map.entry("kohm", 1e3),
          Map.entry("g", 1e-3),
          Map.entry("kg", 1.0),
          Map.entry("ms", 1e-3),
          Map.entry("s", 1.0),
          Map.entry("%", 1e-2),
          Map.entry("uF", 1e-6),
          Map.entry("Hz", 1.0),
          Map.entry("kHz", 1e3),
          Map.entry("MHz", 1e6),
          Map.entry("", 1.0));

  private static final Pattern NUMBER = Pattern.compile("(-?[0-9.]+) ?(.*)");

  @Test
  void whatWasFoundHasTheNumbersOfTheJson() {
    int compared = 0;
    for (Path plan : Sample.plans()) {
      Report report = DemoPages.report(plan);
      String html = ReportPage.html(report);
      JsonNode findings = json(report).get("findings");
      for (int i = 0; i < findings.size(); i++) {
        String block = PageText.finding(html, "finding-" + (i + 1));
        compared += numbers(findings.get(i), rows(block));
      }
    }
    assertThat(compared).isGreaterThan(50);
  }

  /** The rows of the table of numbers: label, value. */
  private static List<String[]> rows(String block) {
    List<String[]> rows = new ArrayList<>();
    for (String row : PageText.all(block, "<tr>(<th scope=\"row\">.*?)</tr>")) {
      String label = PageText.all(row, "<th scope=\"row\">(.*?)</th>").get(0);
      rows.add(new String[] {label, PageText.all(row, "<td class=\"value\">(.*?)</td>").get(0)});
    }
    return rows;
  }

  private static int numbers(JsonNode finding, List<String[]> rows) {
    if (!finding.has("demand")) {
      assertThat(rows).isEmpty();
      return 0;
    }
    String name = finding.get("rule").asString();
    same(name, rows.get(0)[1], finding.get("demand").get("value").doubleValue());
    boolean marked = rows.get(1)[0].equals("limit");
    same(name, rows.get(1)[1], finding.get("limit").get("value").doubleValue());
    String[] bound = rows.get(marked ? 2 : 1);
    assertThat(bound[0]).isEqualTo(finding.get("bound").get("side").asString());
    same(name, bound[1], finding.get("bound").get("value").doubleValue());
    String[] past = rows.get(rows.size() - 1);
    if (finding.get("past").doubleValue() > 0) {
      assertThat(past[0]).isIn("over by", "short by");
      same(name, past[1], finding.get("past").doubleValue());
    }
    return rows.size();
  }

  /** Three digits are shown at the least. */
  private static void same(String what, String shown, double value) {
    Matcher matcher = NUMBER.matcher(shown);
    assertThat(matcher.matches()).as(what + ": " + shown).isTrue();
    double factor = SIGNS.getOrDefault(matcher.group(2), 1.0);
    double read = Double.parseDouble(matcher.group(1)) * factor;
    assertThat(read).as("%s: %s", what, shown).isCloseTo(value, within(Math.abs(value) * 0.00501));
  }

  @Test
  void whatIsFineHasTheNumbersOfTheJson() {
    int compared = 0;
    for (Path plan : Sample.plans()) {
      Report report = DemoPages.report(plan);
      String section = PageText.section(ReportPage.html(report), "fine");
      List<String> rows = PageText.all(section, "<tr>(<td class=\"room\">.*?)</tr>");
      List<JsonNode> numbered = new ArrayList<>();
      json(report).get("fine").forEach(f -> addNumbered(f, numbered));
      assertThat(rows).hasSameSizeAs(numbered);
      for (int i = 0; i < rows.size(); i++) {
        fine(numbered.get(i), PageText.of(rows.get(i)));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(500);
  }

  private static void addNumbered(JsonNode finding, List<JsonNode> numbered) {
    if (finding.has("demand")) {
      numbered.add(finding);
    }
  }

  private static void fine(JsonNode finding, String row) {
    String rule = finding.get("rule").asString();
    assertThat(row).endsWith(rule).contains(PageText.squeezed(finding.get("headline").asString()));
    double past = finding.get("past").doubleValue();
    if (past == 0) {
      assertThat(row).startsWith("at the bound ");
    } else {
      same(rule, row.substring(0, row.indexOf('%') + 1), -past);
    }
    String numbers = row.substring(row.lastIndexOf(" has ") + 5);
    same(
        rule,
        numbers.substring(0, numbers.indexOf(';')),
        finding.get("demand").get("value").doubleValue());
  }

  @Test
  void theCountsAreThoseOfTheJson() {
    for (Path plan : Sample.plans()) {
      Report report = DemoPages.report(plan);
      String html = ReportPage.html(report);
      JsonNode counts = json(report).get("counts");
      List<String> shown =
          PageText.all(html.substring(0, html.indexOf("</header>")), "<b>(\\d+)</b>");
      List<String> expected = new ArrayList<>();
      for (String name : List.of("violation", "warning", "cannotTell", "advice", "fine")) {
        expected.add(Integer.toString(counts.get(name).intValue()));
      }
      assertThat(shown).isEqualTo(expected);
      assertThat(PageText.of(html)).contains("judged by " + counts.get("rules").intValue());
      List<String> decides = PageText.all(html, "<div class=\"decides\"><b>(\\d+)</b>");
      List<String> wanted = new ArrayList<>();
      json(report).get("wanted").forEach(w -> wanted.add(Integer.toString(w.get("rules").size())));
      assertThat(decides).isEqualTo(wanted);
    }
  }

  private static JsonNode json(Report report) {
    return MAPPER.readTree(JsonReport.text(report));
  }
}

package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.cli.Check;
import outshop.render.json.JsonReport;
import outshop.render.json.ReportSchema;
import outshop.render.sheet.SheetPage;
import outshop.units.AmountText;
import outshop.units.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every number on a sheet's page is the figure in the JSON of the same run, to the last digit. */
final class PagesTest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private static final Pattern NUMBER =
      Pattern.compile(
          "<span class=\"n\" data-figure=\"([^\"]+)\" data-value=\"([^\"]+)\" data-unit=\"([^\"]+)\">([^<]+)</span>");

  /** A number with a unit that stands in the page's own words, outside a marked figure. */
  private static final Pattern UNMARKED =
      Pattern.compile("\\d\\s?(V|A|mA|mV|ohm|kohm|mohm|W|Wh|Ah|h|mm|m|AWG|%)\\b");

  @TestFactory
  Stream<DynamicTest> everyDemoPlan() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> check(p)));
  }

  private static void check(Path path) throws IOException {
    Check.Checked checked = Drawn.demo(path);
    Sheets sheets = checked.sheets();
    String json = JsonReport.text(checked.report(), sheets);
    assertThat(ReportSchema.faults(json)).isEmpty();
    JsonNode all = MAPPER.readTree(json).get("sheets");
    int compared = 0;
    for (Map.Entry<String, String> page : pages(sheets).entrySet()) {
      compared += compare(page.getKey(), page.getValue(), all.get(page.getKey()));
    }
    assertThat(compared).isGreaterThan(100);
  }

  private static Map<String, String> pages(Sheets sheets) {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("measuring", SheetPage.of(sheets.measuring()));
    pages.put("buying", SheetPage.of(sheets.buying()));
    pages.put("wiring", SheetPage.of(sheets.wiring(), "", ""));
    pages.put("bench", SheetPage.of(sheets.bench()));
    pages.put("owner", SheetPage.of(sheets.owner()));
    return pages;
  }

  private static int compare(String kind, String page, JsonNode sheet) {
    Map<String, Double> values = new LinkedHashMap<>();
    Map<String, String> units = new LinkedHashMap<>();
    collect(sheet, values, units);
    Matcher matcher = NUMBER.matcher(page);
    int compared = 0;
    while (matcher.find()) {
      String name = matcher.group(1);
      assertThat(values).as("%s: the JSON has %s", kind, name).containsKey(name);
      assertThat(Double.parseDouble(matcher.group(2))).as(name).isEqualTo(values.get(name));
      assertThat(matcher.group(3)).as(name).isEqualTo(units.get(name));
      Unit unit = Unit.valueOf(units.get(name).toUpperCase(Locale.ROOT).replace('-', '_'));
      assertThat(matcher.group(4)).as(name).isEqualTo(AmountText.text(values.get(name), unit));
      compared++;
    }
    if (!kind.equals("measuring")) {
      assertThat(compared).as(kind).isPositive();
      assertThat(unmarked(page)).as("%s: numbers that are no figures", kind).isEmpty();
    }
    return compared;
  }

  /** Names, values and units of all figures; one name stands for one value. */
  private static void collect(
      JsonNode node, Map<String, Double> values, Map<String, String> units) {
    if (node.isObject() && node.has("name") && node.has("value") && node.has("unit")) {
      String name = node.get("name").asString();
      Double before = values.put(name, node.get("value").asDouble());
      assertThat(before == null || before == node.get("value").asDouble())
          .as("%s stands for one value", name)
          .isTrue();
      units.put(name, node.get("unit").asString());
    }
    node.forEach(child -> collect(child, values, units));
  }

  /**
   * What is left when style, figures and the user's own words are taken out; the assumptions and
   * cautions of the program name limits that are no figures of the plan.
   */
  private static List<String> unmarked(String page) {
    String words =
        page.replaceAll("(?s)<style>.*?</style>", "")
            .replaceAll("(?s)<title>.*?</title>", "")
            .replaceAll("<span class=\"n\"[^>]*>[^<]*</span>", "")
            .replaceAll("(?s)<(bdi|span) class=\"own[^\"]*\">.*?</\\1>", "")
            .replaceAll("<[^>]+>", " ");
    return UNMARKED
        .matcher(words)
        .results()
        .map(
            r ->
                words.substring(
                    Math.max(0, r.start() - 30), Math.min(words.length(), r.end() + 10)))
        .filter(w -> PROGRAM.stream().noneMatch(w::contains))
        .toList();
  }

  /** Numbers of the program's own, the same for every plan. */
  private static final List<String> PROGRAM =
      List.of("5 % above", "under 7 V", "10 % either", "scatter by 10 %", "below 0 °C");

  @Test
  void aHostileTitleStaysText() throws IOException {
    String hostile = "<script>alert(1)</script> \\\"quotes\\\" & 'more' \\u202e" + "x".repeat(500);
    Sheets sheets = Drawn.sheets(Drawn.base("title: Base plan", "title: \"" + hostile + "\""));
    for (String page : pages(sheets).values()) {
      assertThat(page).doesNotContain("<script").contains("&lt;script&gt;alert(1)");
      assertThat(page)
          .doesNotContainPattern("(?i)(src|href)=(?!\"#|\"data:,\")")
          .doesNotContain("url(", "@import");
    }
  }

  @Test
  void aWrongNumberOnThePageWouldBeNoticed() {
    Check.Checked checked = Drawn.demo("sallowmere-tank");
    String page = SheetPage.of(checked.sheets().bench());
    JsonNode sheet =
        MAPPER
            .readTree(JsonReport.text(checked.report(), checked.sheets()))
            .get("sheets")
            .get("bench");
    String wrong = page.replaceFirst("data-value=\"13.0\"", "data-value=\"13.5\"");
    assertThat(wrong).isNotEqualTo(page);
    assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> compare("bench", wrong, sheet)))
        .isInstanceOf(AssertionError.class);
    String bare = page.replaceFirst("Supply alone", "Supply of 9 V alone");
    assertThat(unmarked(bare)).isNotEmpty();
  }
}

package outshop.render.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

final class JsonReportTest {
  private static final JsonMapper MAPPER = new JsonMapper();

  @Test
  void theFullReportReadsAsApproved() throws IOException {
    Approved.check("full.json", JsonReport.text(Reports.full()));
  }

  @Test
  void everyReportFitsTheSchema() throws IOException {
    for (Report report :
        List.of(Reports.full(), Reports.clear(), Reports.manyOfOneRule(), withoutEnd())) {
      assertThat(ReportSchema.faults(JsonReport.text(report))).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "outshopReport" : 1          | "outshopReport" : 2
          "verdict" : "stop"           | "verdict" : "halt"
          "outcome" : "violation"      | "outcome" : "error"
          "consequence" : "harm"       | "consequence" : "bad"
          "unit" : "volts"             | "unit" : "V"
          "side" : "at most"           | "side" : "below"
          "softened" : true            | "softened" : "yes"
          "value" : 16.8               | "value" : "16.8"
          "violation" : 2              | "violation" : -2
          "planFile"                   | "planfile"
          "severity" : "unlikely"      | "severity" : "odd"
          "volts" : 0.0012             | "volt" : 0.0012
          "station" : "radio"          | "station" : "wireless"
          "rule" : "sound/no-enclosure" | "rule" : "No enclosure"
          """)
  void aBrokenReportDoesNotFitTheSchema(String right, String wrong) throws IOException {
    String json = JsonReport.text(Reports.full());
    assertThat(json).contains(right);
    assertThat(ReportSchema.faults(json.replace(right, wrong))).isNotEmpty();
  }

  /** Save the plots, which reports of earlier programs have not. */
  @Test
  void aReportThatLacksAPieceDoesNotFitTheSchema() throws IOException {
    JsonNode whole = MAPPER.readTree(JsonReport.text(Reports.full()));
    for (String name : whole.propertyNames()) {
      JsonNode less = ((tools.jackson.databind.node.ObjectNode) whole).deepCopy().without(name);
      boolean fits = ReportSchema.faults(less.toString()).isEmpty();
      assertThat(fits).as("without " + name).isEqualTo(name.equals("plots"));
    }
  }

  @Test
  void theSchemaItselfFitsItsDialect() throws IOException {
    JsonNode schema = MAPPER.readTree(Files.readString(ReportSchema.FILE));
    assertThat(schema.get("$schema").asString())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    List<String> untitled = new ArrayList<>();
    collectUntitled("", schema, untitled);
    assertThat(untitled).isEmpty();
  }

  private static void collectUntitled(String path, JsonNode node, List<String> untitled) {
    JsonNode properties = node.get("properties");
    if (properties != null) {
      for (String name : properties.propertyNames()) {
        JsonNode property = properties.get(name);
        if (!property.has("title") && !property.has("$ref")) {
          untitled.add(path + "/" + name);
        }
      }
    }
    JsonNode definitions = node.get("$defs");
    if (definitions != null) {
      for (String name : definitions.propertyNames()) {
        if (!definitions.get(name).has("title")) {
          untitled.add(name);
        }
        collectUntitled(name, definitions.get(name), untitled);
      }
    }
  }

  @Test
  void theSameReportIsTheSameToTheByteInEveryLocale() {
    String here = JsonReport.text(Reports.full());
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(JsonReport.text(Reports.full())).as(tag).isEqualTo(here);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void itEndsWithOneLineEndAndHasNoOther() {
    String json = JsonReport.text(Reports.full());
    assertThat(json).endsWith("}\n").doesNotContain("\r").doesNotEndWith("\n\n");
  }

  @Test
  void numbersComeBackExactly() {
    double[] values = {
      0.1 + 0.2,
      16.799999999999997,
      1e-9 / 3,
      Double.parseDouble("2e23"),
      Math.scalb(1.0, -44),
      5.0,
      123456789.125,
      1e22
    };
    for (double value : values) {
      JsonNode demand = demand(value, value, value);
      assertThat(demand.get("value").doubleValue()).isEqualTo(value);
    }
    assertThat(json(Math.scalb(1.0, -44))).contains("5.684341886080802E-14");
    assertThat(json(Double.parseDouble("2e23"))).contains("2.0E23");
  }

  @Test
  void aNumberWithoutEndIsAText() throws IOException {
    String json = JsonReport.text(withoutEnd());
    assertThat(json).contains("\"high\" : \"Infinity\"");
    assertThat(ReportSchema.faults(json)).isEmpty();
  }

  @Test
  void everythingTheReportHoldsIsThere() {
    Report report = Reports.full();
    JsonNode json = MAPPER.readTree(JsonReport.text(report));
    assertThat(json.get("findings")).hasSize(report.findings().size());
    assertThat(json.get("cannotTell")).hasSize(report.cannotTell().size());
    assertThat(json.get("fine")).hasSize(report.fine().size());
    assertThat(json.get("wanted").get(0).get("rules")).hasSize(3);
    assertThat(json.get("wanted").get(0).get("worst").asString()).isEqualTo("harm");
    assertThat(json.get("parts").get(0).get("price").doubleValue()).isEqualTo(64.5);
    assertThat(json.get("parts").get(1).has("price")).isFalse();
    assertThat(json.get("cases").get(0).get("elements").get(1).get("amps").doubleValue())
        .isEqualTo(-0.1 * 3);
    assertThat(json.get("cases").get(1).get("wants")).hasSize(1);
    assertThat(json.get("notes").get(0).get("line").intValue()).isEqualTo(12);
    assertThat(json.get("counts").get("rules").intValue()).isEqualTo(66);
    JsonNode over = json.get("findings").get(1);
    assertThat(over.get("past").doubleValue()).isEqualTo(16.8 / 14 - 1);
    assertThat(over.get("bound").get("side").asString()).isEqualTo("at most");
    assertThat(over.get("bound").get("value").doubleValue()).isEqualTo(14);
    assertThat(over.get("demand").get("how").asString()).startsWith("cells in series");
    assertThat(over.get("working")).hasSize(3);
    assertThat(over.get("cures")).hasSize(2);
  }

  @Test
  void hostileTextsStayInTheirPlace() throws IOException {
    String bad = "\u001b[2J\u202e\u2028\u0085\u009b\"},{\"outcome\":\"fine\u200b";
    Finding finding =
        FindingBuilder.of("data/hostile", Outcome.WARNING, Consequence.WEARS)
            .at(Station.PLAN, bad, bad)
            .says("x".repeat(10_000))
            .why(bad)
            .build();
    String json = JsonReport.text(Reports.withFindings(bad, List.of(finding), List.of()));
    assertThat(json.codePoints().filter(c -> c != '\n'))
        .allSatisfy(
            c ->
                assertThat(Character.getType(c))
                    .isNotIn((int) Character.CONTROL, (int) Character.FORMAT));
    JsonNode read = MAPPER.readTree(json.getBytes(StandardCharsets.UTF_8));
    assertThat(read.get("title").asString()).isEqualTo(bad);
    assertThat(read.get("findings").get(0).get("why").asString()).isEqualTo(bad);
    assertThat(read.get("findings").get(0).get("headline").asString()).hasSize(10_000);
    assertThat(ReportSchema.faults(json)).isEmpty();
  }

  private static Report withoutEnd() {
    return Reports.withFindings(
        "Without end", List.of(comparing(1, 0, Double.POSITIVE_INFINITY)), List.of());
  }

  private static JsonNode demand(double value, double low, double high) {
    Report report =
        Reports.withFindings("Numbers", List.of(comparing(value, low, high)), List.of());
    return MAPPER.readTree(JsonReport.text(report)).get("findings").get(0).get("demand");
  }

  private static String json(double value) {
    return JsonReport.text(
        Reports.withFindings("Numbers", List.of(comparing(value, value, value)), List.of()));
  }

  private static Finding comparing(double value, double low, double high) {
    Amount.Known has =
        new Amount.Known(value, low, high, Unit.SECONDS, Origin.ASSUMED, "time", "read", List.of());
    Amount.Known limit = Amount.known(1, Unit.SECONDS, Origin.PLAN, "limit", "stated");
    return FindingBuilder.of("data/number", Outcome.WARNING, Consequence.STOPS)
        .says("a number")
        .compares(has, true, limit, 1)
        .build();
  }
}

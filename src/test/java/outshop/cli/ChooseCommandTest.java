package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outshop.render.json.ReportSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code choose} on the command line. */
final class ChooseCommandTest {
  private static final String CATALOGUE = "catalog-sample/catalogue";
  private static final JsonMapper MAPPER = new JsonMapper();

  @TempDir private Path folder;
  private Path plan;

  @BeforeEach
  void aPlanWithOpenPlaces() throws IOException {
    plan = folder.resolve("open.yaml");
    Files.writeString(
        plan,
        Files.readString(Path.of("catalog-sample/plans/thistlewick-tender.yaml"))
            .replace("part: receiver-dcc-18v-5a", "part: any")
            .replace("handset: handset-heron-eu", "handset: any # which?")
            .replace("{part: connector-valley-pins,", "{kind: connector, part: any,"));
  }

  private static String[] with(String[] some, String... more) {
    String[] all = Arrays.copyOf(some, some.length + more.length);
    System.arraycopy(more, 0, all, some.length, more.length);
    return all;
  }

  private Run choose(String... more) {
    String[] always = {"choose", plan.toString(), "--catalogue", CATALOGUE};
    return Run.of(with(always, more));
  }

  @Test
  void whatWorksIsShownWithItsProof() {
    Run run = choose("--order", "cost", "--best", "2", "--seconds", "600");

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.shown()).contains("receiver 10").contains("handset 7").contains("pack-plug 8");
    assertThat(run.shown()).containsPattern("560 combinations, [0-9]+ works?, all considered\\.");
    assertThat(run.shown()).contains("1  price ").contains("warning").contains("cannot tell");
  }

  @Test
  void theAnswerIsTheSameWhateverTheThreads() {
    Run one = choose("--order", "size", "--threads", "1", "--seconds", "600");
    Run three = choose("--order", "size", "--threads", "3", "--seconds", "600");

    assertThat(one.out()).isEqualTo(three.out()).contains("all considered");
  }

  @Test
  void aCombinationIsWrittenAndPassesTheCheck() throws IOException {
    Path full = folder.resolve("full.yaml");
    String before = Files.readString(plan);

    Run run =
        choose(
            "--order",
            "cost",
            "--best",
            "2",
            "--number",
            "2",
            "--best-only",
            "--seconds",
            "600",
            "--write",
            full.toString());

    assertThat(run.code()).isZero();
    assertThat(run.shown()).contains("Combination 2 is written");
    assertThat(Files.readString(plan)).isEqualTo(before);
    assertThat(Files.readString(full))
        .contains("# which?")
        .doesNotContain("any")
        .hasLineCount((int) before.lines().count());
    assertThat(Run.of("check", full.toString(), "--catalogue", CATALOGUE).code()).isZero();
  }

  @Test
  void thePlanItselfIsNotWrittenOver() {
    Run run = choose("--write", plan.toString());

    assertThat(run.code()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.told()).contains("--write").contains("would write over the plan");
  }

  @Test
  void aKindThatIsMissingIsAdded() throws IOException {
    Files.writeString(plan, Files.readString(plan).replaceFirst("(?m)^  fuse: .*\\R", ""));
    Path full = folder.resolve("full.yaml");

    Run run =
        choose(
            "--order",
            "cost",
            "--best-only",
            "--best",
            "1",
            "--seconds",
            "600",
            "--write",
            full.toString());

    assertThat(run.shown()).contains("fuse 14 (added)");
    assertThat(Files.readString(full)).containsPattern("(?m)^  fuse: fuse-");
    assertThat(choose("--only-open", "--best-only", "--seconds", "0").shown())
        .doesNotContain("fuse 14");
  }

  @Test
  void aSearchThatIsStoppedSaysThatNotAllIsConsidered() {
    Run run = choose("--seconds", "0");

    assertThat(run.shown()).contains("not all considered");
    assertThat(run.shown()).containsAnyOf("by chance", "Nothing was found that works");
  }

  @Test
  void whereNothingWorksItSaysWhatAPartWouldNeed() throws IOException {
    Files.writeString(
        plan,
        Files.readString(plan)
            .replace(
                "{part: any, bay: water-tank, cutoff_volts: 10 V}",
                "{part: any, bay: water-tank, input_max_volts: 8 V, input_min_volts: 5 V}"));

    Run run = choose("--seconds", "600");

    assertThat(run.code()).isEqualTo(Exit.FOUND);
    assertThat(run.shown()).contains("none works, all considered").contains("Nothing works.");
    assertThat(run.shown())
        .contains("voltage/receiver-over-maximum")
        .contains("input max volts of at least 14.6 V");
    JsonNode json = jsonOf(choose("--seconds", "600", "--as", "json"));
    assertThat(json.get("best").size()).isZero();
    assertThat(json.get("work").asInt()).isZero();
    assertThat(json.get("inTheWay").get(0).get("violations").toString())
        .contains("voltage/receiver-over-maximum", "input max volts of at least 14.6 V");
  }

  private static JsonNode jsonOf(Run run) throws IOException {
    assertThat(ReportSchema.faults(ReportSchema.CHOICE, run.out())).isEmpty();
    return MAPPER.readTree(run.out());
  }

  @Test
  void otherProgramsGetTheSameAsJson() throws IOException {
    Path full = folder.resolve("full.yaml");
    String[] asked = {"--order", "cost", "--best", "2", "--seconds", "600"};

    Run run = choose(with(asked, "--as", "json", "--write", full.toString()));
    String text = choose(asked).out().replaceAll("\\s+", " ");

    assertThat(run.code()).isZero();
    assertThat(ReportSchema.faults(ReportSchema.CHOICE, run.out())).isEmpty();
    assertThat(run.told()).contains("outshop: combination 1 is written to");
    JsonNode json = MAPPER.readTree(run.out());
    assertThat(text)
        .contains(
            "560 combinations, " + json.get("work").asInt() + " work, all considered.",
            json.get("cautions").get(0).asString());
    assertThat(json.get("allConsidered").asBoolean()).isTrue();
    assertThat(json.get("considered").asInt()).isEqualTo(json.get("combinations").asInt());
    assertThat(json.get("best").size()).isEqualTo(2);
    for (JsonNode one : json.get("best")) {
      String figures =
          "price %.2f, %d warning"
              .formatted(one.get("price").asDouble(), one.get("warnings").asInt());
      assertThat(text).contains(figures, one.get("cannotTell").asInt() + " cannot tell");
      for (String place : one.get("parts").propertyNames()) {
        assertThat(text).contains(place + " " + one.get("parts").get(place).asString());
      }
    }
    for (String place : json.get("best").get(0).get("parts").propertyNames()) {
      assertThat(Files.readString(full))
          .contains(json.get("best").get(0).get("parts").get(place).asString());
    }
  }

  @Test
  void theJsonIsTheSameWhateverTheThreads() {
    Run one = choose("--as", "json", "--threads", "1", "--seconds", "600");
    Run two = choose("--as", "json", "--threads", "2", "--seconds", "600");

    assertThat(one.out()).isEqualTo(two.out()).startsWith("{\n  \"outshopChoose\" : 1,");
  }

  @Test
  void aBrokenAnswerDoesNotFitTheSchema() throws IOException {
    String json = choose("--order", "cost", "--best", "1", "--best-only", "--as", "json").out();

    assertThat(json).contains("\"counted\" : false");
    assertThat(ReportSchema.faults(ReportSchema.CHOICE, json)).isEmpty();
    String[][] swaps = {
      {"\"outshopChoose\" : 1", "\"outshopChoose\" : 2"},
      {"\"order\" : \"cost\"", "\"order\" : \"beauty\""},
      {"\"bestAreSure\" : true", "\"bestAreSure\" : \"yes\""},
      {"\"warnings\"", "\"warning\""},
      {"\"kind\" : \"receiver\"", "\"kind\" : 7"},
      {"\"allConsidered\"", "\"allconsidered\""},
      {"\"combinations\" : 560", "\"combinations\" : \"560\""},
      {"\"combinations\" : 560", "\"combinations\" : 560.5"},
      {"\"combinations\" : 560", "\"combinations\" : -560"},
    };
    for (String[] swap : swaps) {
      assertThat(json).contains(swap[0]);
      assertThat(ReportSchema.faults(ReportSchema.CHOICE, json.replace(swap[0], swap[1])))
          .as(swap[1])
          .isNotEmpty();
    }
  }

  /** What somebody tries first: nothing is chosen yet. */
  @Test
  void ofAPlanWithNothingChosenTheBestAreProved() throws IOException {
    String whole = Files.readString(Path.of("catalog-sample/plans/sallowmere-tank.yaml"));
    int parts = whole.indexOf("\nparts:");
    int outputs = whole.indexOf("\noutputs:");
    String open =
        whole
            .substring(parts, outputs)
            .replace("pack-plug: {", "pack-plug: {kind: connector, ")
            .replaceAll("part: [a-z0-9-]+", "part: any")
            .replaceAll("(?m)^(  [a-z]+): [a-z0-9-]+$", "$1: any");
    Files.writeString(plan, whole.substring(0, parts) + open + whole.substring(outputs));

    for (String order : List.of("warnings", "cost", "run-time", "size")) {
      JsonNode json =
          jsonOf(
              choose(
                  "--order",
                  order,
                  "--best",
                  "10",
                  "--best-only",
                  "--seconds",
                  "600",
                  "--as",
                  "json"));

      assertThat(json.get("combinations").asLong()).isEqualTo(76_769_280_000L);
      assertThat(json.get("places").size()).isEqualTo(11);
      assertThat(json.get("bestAreSure").asBoolean()).as(order).isTrue();
      assertThat(json.get("best").size()).isEqualTo(10);
      List<Double> marks = new ArrayList<>();
      for (JsonNode one : json.get("best")) {
        marks.add(
            switch (order) {
              case "warnings" -> one.get("warnings").asDouble();
              case "cost" -> one.get("price").asDouble();
              case "run-time" -> -one.get("mostHours").asDouble();
              default -> one.get("litres").asDouble();
            });
      }
      assertThat(marks).as(order).isSorted();
    }
    Path full = folder.resolve("full.yaml");
    choose("--best", "1", "--best-only", "--seconds", "600", "--write", full.toString());
    assertThat(Run.of("check", full.toString(), "--catalogue", CATALOGUE).code()).isZero();
  }

  @Test
  void wrongArgumentsAreToldApart() {
    assertThat(choose("--order", "beauty").told())
        .contains("--order takes warnings, cost, run-time, size");
    assertThat(choose("--best", "0").told()).contains("--best takes a whole number from 1 to 1000");
    assertThat(choose("--threads", "many").told()).contains("--threads takes a whole number");
    assertThat(choose("--seconds", "-1").code()).isEqualTo(Exit.UNUSABLE);
    assertThat(choose("--number", "2").told()).contains("needs --write FILE");
    assertThat(choose("--number", "7", "--write", "x.yaml").told()).contains("--number takes");
  }

  @Test
  void aPlanThatLeavesNothingOpenIsRefused() {
    Run run =
        Run.of("choose", "catalog-sample/plans/thistlewick-tender.yaml", "--catalogue", CATALOGUE);

    assertThat(run.code()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.told()).contains("leaves no place open").contains("receiver: any");
  }
}

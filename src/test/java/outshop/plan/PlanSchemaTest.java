package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.input.Tree;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

final class PlanSchemaTest {
  private static final Path COMMITTED = Path.of("docs", "plan.schema.json");
  private static final SchemaRegistry DRAFT_2020_12 =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final Schema SCHEMA = DRAFT_2020_12.getSchema(PlanSchema.text(), InputFormat.JSON);
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  /** What an editor takes a YAML tree for: YAML 1.2 numbers, truth values and nothing. */
  static JsonNode json(Tree.Node node) {
    if (node instanceof Tree.Fields fields) {
      ObjectNode object = JSON.objectNode();
      fields.entries().forEach(e -> object.set(e.key(), json(e.value())));
      return object;
    }
    if (node instanceof Tree.Rows rows) {
      ArrayNode array = JSON.arrayNode();
      rows.items().forEach(item -> array.add(json(item)));
      return array;
    }
    Tree.Text text = (Tree.Text) node;
    if (text.quoted()) {
      return JSON.stringNode(text.text());
    }
    if (text.isBlank() || text.text().matches("~|null")) {
      return JSON.nullNode();
    }
    if (text.text().matches("true|false")) {
      return JSON.booleanNode(Boolean.parseBoolean(text.text()));
    }
    if (text.text().matches("[+-]?[0-9]{1,18}")) {
      return JSON.numberNode(Long.parseLong(text.text()));
    }
    return text.text().matches("[+-]?(\\.[0-9]+|[0-9]+\\.[0-9]*)([eE][+-]?[0-9]+)?")
        ? JSON.numberNode(Double.parseDouble(text.text()))
        : JSON.stringNode(text.text());
  }

  private static List<Error> errors(String plan) {
    Tree.Read read = Tree.read("plan.yaml", plan.getBytes(StandardCharsets.UTF_8));
    assertThat(read.problems()).isEmpty();
    return SCHEMA.validate(json(read.root().orElseThrow()));
  }

  static List<String> problems(String plan) {
    return errors(plan).stream().map(e -> e.getInstanceLocation() + " " + e.getMessage()).toList();
  }

  @Test
  void the_committed_schema_is_current() throws IOException {
    if (Boolean.getBoolean("outshop.approve")) {
      Files.createDirectories(COMMITTED.getParent());
      Files.writeString(COMMITTED, PlanSchema.text());
    }
    assertThat(Files.readString(COMMITTED))
        .as("stale: run the tests once with -Doutshop.approve=true and look at the difference")
        .isEqualTo(PlanSchema.text());
  }

  @Test
  void the_schema_is_one_by_its_own_standard() {
    Schema standard =
        DRAFT_2020_12.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(standard.validate(PlanSchema.text(), InputFormat.JSON)).isEmpty();
    assertThat(standard.validate("{\"type\": \"text\"}", InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void the_good_plan_is_good() {
    assertThat(problems(PlanReaderTest.goodPlan())).isEmpty();
  }

  @Test
  void sections_with_nothing_in_them_are_good() {
    assertThat(problems("outshop_plan: 1\nlocomotive:\n  motors:\n    main:\nwishes:\n")).isEmpty();
  }

  static Stream<Key> values() {
    return Keys.all().stream()
        .filter(k -> !List.of(Key.Type.ROWS, Key.Type.PART).contains(k.type()))
        .filter(k -> !k.path().startsWith("parts."))
        .filter(k -> !k.path().matches("(accepted|measured\\.joined|wiring\\.wires)\\..*"));
  }

  private static String plan(Key key, String value) {
    StringBuilder plan = new StringBuilder();
    String indent = "";
    for (String part : key.path().split("\\.")) {
      plan.append(plan.isEmpty() ? "" : "\n").append(indent);
      plan.append(part.equals("*") ? "it" : part).append(':');
      indent += "  ";
    }
    String version = key.path().equals("outshop_plan") ? "" : "outshop_plan: 1\n";
    return version + plan + " " + value + "\n";
  }

  @ParameterizedTest
  @MethodSource("values")
  void every_keys_example_is_good_and_a_section_in_its_place_is_not(Key key) {
    assertThat(problems(plan(key, key.example()))).isEmpty();
    assertThat(problems(plan(key, "{a: b}"))).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("values")
  void a_quantity_without_its_unit_and_a_word_off_the_list_are_bad(Key key) {
    boolean text = key.type() == Key.Type.TEXT;
    boolean plain = key.unit() == outshop.units.Unit.MONEY || key.type() == Key.Type.COUNT;
    boolean bad = !text && !plain;
    assertThat(problems(plan(key, "5")).isEmpty()).isNotEqualTo(bad || key.low() == key.high());
    assertThat(problems(plan(key, "5 bananas")).isEmpty()).isEqualTo(text);
  }

  @Test
  void every_column_of_every_kind_is_good_with_its_example() {
    for (Kind kind : Kind.values()) {
      StringBuilder plan = new StringBuilder("outshop_plan: 1\nparts:\n  it:\n");
      plan.append("    kind: ").append(kind.word()).append('\n');
      for (Column column : Columns.of(kind)) {
        String example = column.isNumber() ? Written.like(column).example() : column.example();
        plan.append("    ").append(column.name()).append(": ").append(example).append('\n');
      }
      assertThat(problems(plan.toString())).isEmpty();
      PlanReader.Read read = PlanReaderTest.read(plan.toString());
      assertThat(read.problems()).extracting(outshop.input.Problem::line).isEmpty();
    }
  }

  static Stream<Arguments> bad() {
    return Stream.of(
        Arguments.of("title: x", ""),
        Arguments.of("outshop_plan: 2", "/outshop_plan"),
        Arguments.of("outshop_plan: 1\nbudget: 300", ""),
        Arguments.of("outshop_plan: 1\nlocomotive: {motor: {}}", "/locomotive"),
        Arguments.of(
            "outshop_plan: 1\nlocomotive: {motors: {main: {blocked: 2.6}}}",
            "/locomotive/motors/main/blocked"),
        Arguments.of(
            "outshop_plan: 1\nlocomotive: {motors: {main: {blocked: 7 V}}}",
            "/locomotive/motors/main/blocked"),
        Arguments.of(
            "outshop_plan: 1\nlocomotive: {motors: {main: {blocked: none}}}",
            "/locomotive/motors/main/blocked"),
        Arguments.of(
            "outshop_plan: 1\nlocomotive: {motors: {main motor: {}}}", "/locomotive/motors"),
        Arguments.of("outshop_plan: 1\nlocomotive: {bays: {none: {}}}", "/locomotive/bays"),
        Arguments.of(
            "outshop_plan: 1\nlocomotive: {frame: {joined_to: []}}", "/locomotive/frame/joined_to"),
        Arguments.of(
            "outshop_plan: 1\nlocomotive: {frame: {joined_to: [none, frame]}}",
            "/locomotive/frame/joined_to"),
        Arguments.of(
            "outshop_plan: 1\nlocomotive: {frame: {joined_to: [main]}}",
            "/locomotive/frame/joined_to"),
        Arguments.of("outshop_plan: 1\nwishes: {region: mars}", "/wishes/region"),
        Arguments.of("outshop_plan: 1\nwishes: {functions: 2.5}", "/wishes/functions"),
        Arguments.of("outshop_plan: 1\nparts: {fuse: {bay: tender}}", "/parts/fuse"),
        Arguments.of(
            "outshop_plan: 1\nparts: {fuse: {part: fuse-5a, kind: fuse}}", "/parts/fuse/part"),
        Arguments.of("outshop_plan: 1\nparts: {fuse: {kind: fuze}}", "/parts/fuse/kind"),
        Arguments.of(
            "outshop_plan: 1\nparts: {fuse: {kind: fuse, cells_series_count: 4}}", "/parts/fuse"),
        Arguments.of(
            "outshop_plan: 1\nparts: {fuse: {kind: fuse, rated_amps: 5}}",
            "/parts/fuse/rated_amps"),
        Arguments.of(
            "outshop_plan: 1\nparts: {fuse: {part: fuse-5a, rated_amp: 5 A}}", "/parts/fuse"),
        Arguments.of("outshop_plan: 1\nparts: {fuse: {part: fuse-5a, id: mine}}", "/parts/fuse"),
        Arguments.of(
            "outshop_plan: 1\nparts: {fuse: {part: fuse-5a, held_by: rope}}",
            "/parts/fuse/held_by"),
        Arguments.of("outshop_plan: 1\nwiring: {wire: {kind: fuse}}", "/wiring/wire/kind"),
        Arguments.of("outshop_plan: 1\nwiring: {wire: {kind: wire, bay: tender}}", "/wiring/wire"),
        Arguments.of("outshop_plan: 1\nwiring: {wires: [{from: frame}]}", "/wiring/wires/0"),
        Arguments.of("outshop_plan: 1\nwiring: {wires: {}}", "/wiring/wires"),
        Arguments.of("outshop_plan: 1\naccepted: [{rule: a/b, where: fuse}]", "/accepted/0"));
  }

  @ParameterizedTest
  @MethodSource("bad")
  void bad_plans_are_bad_at_their_place_for_schema_and_reader_alike(String plan, String place) {
    assertThat(errors(plan)).extracting(e -> e.getInstanceLocation().toString()).contains(place);
    assertThat(PlanReaderTest.read(plan + "\n").isUsable()).isFalse();
  }

  @Test
  void every_key_is_described_for_editors() {
    JsonNode schema = SCHEMA.getSchemaNode();
    List<String> bare = new ArrayList<>();
    describe(schema, "", bare);
    assertThat(bare).isEmpty();
    assertThat(schema.at("/properties/wishes/properties/volume/description").stringValue())
        .isEqualTo(
            "How to get it: ask the owner. Example: 60 %. Left out: 60 % is assumed (40 % to"
                + " 100 %).");
  }

  private static void describe(JsonNode schema, String path, List<String> bare) {
    schema
        .at("/properties")
        .properties()
        .forEach(
            e -> {
              String below = path + "." + e.getKey();
              boolean section = e.getValue().has("properties");
              boolean own = e.getValue().has("propertyNames");
              if (section || own) {
                describe(e.getValue(), below, bare);
                describe(e.getValue().path("additionalProperties"), below + ".*", bare);
              } else if (!e.getValue().has("title") || !e.getValue().has("description")) {
                bare.add(below);
              }
            });
  }
}

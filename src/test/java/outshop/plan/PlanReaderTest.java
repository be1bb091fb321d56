package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Problem;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;

final class PlanReaderTest {

  static String goodPlan() {
    try (InputStream in = PlanReaderTest.class.getResourceAsStream("good-plan.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PlanReader.Read read(String text) {
    return read(text, SmallCatalogue.CATALOGUE);
  }

  static PlanReader.Read read(String text, Catalogue catalogue) {
    return PlanReader.read("plan.yaml", text.getBytes(StandardCharsets.UTF_8), catalogue);
  }

  private static Plan plan(String text) {
    PlanReader.Read read = read(text);
    assertThat(read.problems()).extracting(Problem::line).isEmpty();
    return read.plan();
  }

  private static void isKnown(Amount amount, double value, Unit unit, Origin origin) {
    assertThat(amount.get().value()).isEqualTo(value);
    assertThat(amount.get().unit()).isEqualTo(unit);
    assertThat(amount.get().origin()).isEqualTo(origin);
  }

  @Test
  void quantities_are_held_in_their_units_whatever_prefix_was_written() {
    Plan plan = plan(goodPlan());
    isKnown(plan.amount("locomotive.motors.main.slipping"), 1.4, Unit.AMPS, Origin.MEASURED);
    isKnown(plan.amount("locomotive.bays.tender.length"), 0.14, Unit.METRES, Origin.MEASURED);
    isKnown(plan.amount("locomotive.bays.tender.height"), 0.048, Unit.METRES, Origin.MEASURED);
    isKnown(plan.amount("locomotive.bays.tender.celsius"), 35, Unit.CELSIUS, Origin.MEASURED);
    isKnown(plan.amount("locomotive.lamps.rear.reverse"), 1200, Unit.OHMS, Origin.MEASURED);
    isKnown(plan.amount("measured.electronics"), 0.06, Unit.AMPS, Origin.MEASURED);
    isKnown(plan.amount("wishes.running"), 1.5, Unit.HOURS, Origin.PLAN);
    isKnown(plan.amount("wishes.duty.cruising"), 0.7, Unit.SHARE, Origin.PLAN);
    isKnown(plan.amount("wishes.functions"), 2, Unit.COUNT, Origin.PLAN);
    isKnown(plan.amount("wishes.budget"), 300, Unit.MONEY, Origin.PLAN);
  }

  @Test
  void none_is_absent_and_what_is_left_out_is_missing_or_assumed() {
    Plan plan = plan(goodPlan());
    assertThat(plan.amount("locomotive.lamps.rear.forward")).isInstanceOf(Amount.Absent.class);
    assertThat(plan.amount("locomotive.motors.main.start_surge"))
        .isInstanceOf(Amount.Missing.class);
    assertThat(plan.amount("locomotive.motors.second.blocked")).isInstanceOf(Amount.Missing.class);
    assertThat(plan.amount("wishes.volume").get().isAssumed()).isTrue();
    assertThat(plan.said("wishes.programming").isUnsaid()).isTrue();
  }

  @Test
  void words_and_texts_stay_as_written() {
    Plan plan = plan(goodPlan());
    assertThat(plan.title()).isEqualTo("Sallowmere tank engine");
    assertThat(plan.said("locomotive.old_speaker.kept").is("no")).isTrue();
    assertThat(plan.said("locomotive.bays.boiler.closed"))
        .isEqualTo(new Said.Word("yes", Origin.PLAN, "locomotive.bays.boiler.closed"));
    assertThat(plan.accepted())
        .extracting(Accepted::rule, Accepted::where, Accepted::reason, a -> a.place().line())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "sound/no-enclosure", "speaker", "the boiler itself is the box", 145));
  }

  @Test
  void names_come_in_the_plans_order_even_where_nothing_else_is_known_of_them() {
    Plan plan = plan(goodPlan());
    assertThat(plan.names("locomotive.motors")).containsExactly("main", "second");
    assertThat(plan.names("locomotive.bays")).containsExactly("boiler", "tender");
    assertThat(plan.names("outputs")).containsExactly("out-1", "out-2");
    assertThat(plan.names("speakers")).contains("joined_to");
  }

  @Test
  void lists_of_names_tell_none_from_not_stated() {
    Plan plan = plan(goodPlan());
    assertThat(plan.list("vehicles")).contains(List.of("engine", "tender"));
    assertThat(plan.list("locomotive.bays.tender.beside")).contains(List.of());
    assertThat(plan.list("locomotive.motors.main.joined_to")).contains(List.of("frame"));
    assertThat(plan.list("locomotive.motors.second.joined_to")).isEmpty();
    assertThat(plan.list("outputs.out-2.feeds")).contains(List.of("rear"));
  }

  @Test
  void parts_come_along_the_power_path_without_the_materials() {
    Plan plan = plan(goodPlan());
    assertThat(plan.parts())
        .extracting(Fitted::name)
        .containsExactly(
            "charger",
            "jack",
            "pack",
            "fuse",
            "switch",
            "pack-plug",
            "tender-cable",
            "receiver",
            "decoder",
            "r-rear",
            "glow",
            "speaker");
    assertThat(plan.materials())
        .extracting(Fitted::name)
        .containsExactly("wiring.light_wire", "wiring.motor_wire", "wiring.wire");
    assertThat(plan.parts(Kind.WIRE)).isEmpty();
  }

  @Test
  void a_material_is_found_under_its_key() {
    Plan plan = plan(goodPlan());
    assertThat(plan.part("wiring.wire").orElseThrow().part().id()).isEqualTo("wire-20-stranded");
    assertThat(plan.text("wiring.wire")).contains("wire-20-stranded");
    Fitted light = plan.part("wiring.light_wire").orElseThrow();
    assertThat(light.part().id()).isEqualTo("wiring.light_wire");
    isKnown(light.amount("awg"), 26, Unit.GAUGE, Origin.PLAN);
    Fitted motor = plan.part("wiring.motor_wire").orElseThrow();
    isKnown(motor.amount("max_celsius"), 80, Unit.CELSIUS, Origin.DATA_SHEET);
    isKnown(motor.amount("awg"), 20, Unit.GAUGE, Origin.DATA_SHEET);
    assertThat(plan.part("wiring.wires.1.wire")).isEmpty();
  }

  @Test
  void a_part_written_out_holds_its_columns_in_their_units() {
    Part fuse = plan(goodPlan()).part("fuse").orElseThrow().part();
    assertThat(fuse.kind()).isEqualTo(Kind.FUSE);
    assertThat(fuse.id()).isEqualTo("fuse-of-the-shed");
    isKnown(fuse.amount("rated_amps"), 5, Unit.AMPS, Origin.MEASURED);
    isKnown(fuse.amount("cold_milliohms"), 0.018, Unit.OHMS, Origin.MEASURED);
    isKnown(fuse.amount("price_each"), 0.8, Unit.MONEY, Origin.MEASURED);
    assertThat(fuse.amount("hold_amps")).isInstanceOf(Amount.Absent.class);
    assertThat(fuse.amount("breaking_amps")).isInstanceOf(Amount.Missing.class);
    assertThat(fuse.said("style").is("blade")).isTrue();
    Part speaker = plan(goodPlan()).part("speaker").orElseThrow().part();
    assertThat(speaker.id()).isEqualTo("speaker");
    assertThat(speaker.origin()).isEqualTo(Origin.PLAN);
    assertThat(plan(goodPlan()).text("parts.speaker.bay")).contains("boiler");
  }

  @Test
  void columns_beside_part_override_the_catalogues_and_nothing_else() {
    Fitted receiver = plan(goodPlan()).part("receiver").orElseThrow();
    assertThat(receiver.part().id()).isEqualTo("receiver-6a");
    isKnown(receiver.amount("input_max_volts"), 16, Unit.VOLTS, Origin.DATA_SHEET);
    isKnown(receiver.amount("continuous_amps"), 6, Unit.AMPS, Origin.DATA_SHEET);
    assertThat(receiver.several("links")).containsExactly("heron-2", "osprey");
    assertThat(receiver.part().title()).isEqualTo("radio receiver, 6 A");
    assertThat(receiver.part().place().file()).isEqualTo("plan.yaml");
    Fitted jack = plan(goodPlan()).part("jack").orElseThrow();
    assertThat(jack.part().place().file()).isEqualTo("jack.csv");
    assertThat(jack.place().line()).isEqualTo(72);
  }

  @Test
  void a_row_without_a_wire_uses_the_wire_of_the_power_path() {
    List<WireRow> wires = plan(goodPlan()).wires();
    assertThat(wires)
        .extracting(w -> w.from() + " " + w.to() + " " + w.wire().id())
        .startsWith(
            "pack.plus pack-plug.1a wire-26-stranded",
            "pack-plug.1b fuse.a wire-20-stranded",
            "fuse.b splice.feed wiring.wires.3.wire")
        .hasSize(8);
    isKnown(wires.get(0).length(), 0.06, Unit.METRES, Origin.PLAN);
    isKnown(wires.get(2).length(), 0, Unit.METRES, Origin.PLAN);
    assertThat(wires.get(1).length())
        .isEqualTo(Amount.missing("wiring.wires.2", "length", "ruler along the wire"));
  }

  @Test
  void a_row_without_any_wire_has_one_of_which_nothing_is_known() {
    Plan plan =
        plan(
            """
            outshop_plan: 1
            wiring:
              wires:
                - {from: frame, to: splice.a, length: 60 mm}
            """);
    Part wire = plan.wires().get(0).wire();
    assertThat(wire.kind()).isEqualTo(Kind.WIRE);
    assertThat(wire.amount("awg"))
        .isEqualTo(
            Amount.missing(
                "wiring.wires.1",
                "awg",
                outshop.catalogue.Columns.require(Kind.WIRE, "awg").how()));
  }

  @Test
  void pairs_found_joined_are_listed_and_an_empty_list_states_that_there_are_none() {
    assertThat(plan(goodPlan()).joined())
        .extracting(j -> j.one() + " " + j.other() + " " + j.place().line())
        .containsExactly("main.plus jack.sleeve 119", "frame right-rail 120");
    Plan none = plan("outshop_plan: 1\nmeasured:\n  joined: []\n");
    assertThat(none.joined()).isEmpty();
    assertThat(none.stated()).containsKey("measured.joined");
    assertThat(plan("outshop_plan: 1\n").stated()).doesNotContainKey("measured.joined");
  }

  @Test
  void line_ends_and_a_byte_order_mark_change_nothing() {
    String text = goodPlan();
    for (String same : List.of("\ufeff" + text, text.replace("\n", "\r\n"), text.strip())) {
      assertThat(plan(same).stated()).isEqualTo(plan(text).stated());
    }
  }

  @Test
  void values_may_be_quoted() {
    Plan plan = plan("outshop_plan: '1'\nwishes: {\"budget\": \"300\", region: 'europe'}\n");
    isKnown(plan.amount("wishes.budget"), 300, Unit.MONEY, Origin.PLAN);
    assertThat(plan.said("wishes.region").is("europe")).isTrue();
  }

  @Test
  void shares_add_up_exactly_although_binary_fractions_do_not() {
    assertThat(0.7 + 0.2 + 0.1).isNotEqualTo(1.0);
    plan(
        """
        outshop_plan: 1
        wishes:
          duty: {standing: 70 %, cruising: 20 %, slipping: 10 %}
        """);
  }

  @Test
  void two_shares_alone_need_not_make_a_whole() {
    plan("outshop_plan: 1\nwishes:\n  duty: {standing: 10 %, cruising: 20 %}\n");
  }

  @Test
  void a_plan_with_errors_still_holds_what_could_be_read() {
    PlanReader.Read read =
        read(
            "outshop_plan: 1\nwishes: {budget: 300 EUR, region: europe}\nparts: {fuse: fuse-5a}\n");
    assertThat(read.isUsable()).isFalse();
    assertThat(read.plan().said("wishes.region").is("europe")).isTrue();
    assertThat(read.plan().amount("wishes.budget").isMissing()).isTrue();
    assertThat(read.plan().part("fuse")).isPresent();
  }

  @Test
  void unlikely_values_and_notes_leave_a_plan_usable() {
    PlanReader.Read read = read("outshop_plan: 1\nwishes:\n  budget:\n  running: 300 h\n");
    assertThat(read.problems())
        .extracting(Problem::severity)
        .containsExactly(Problem.Severity.NOTE, Problem.Severity.UNLIKELY);
    assertThat(read.isUsable()).isTrue();
    isKnown(read.plan().amount("wishes.running"), 300, Unit.HOURS, Origin.PLAN);
  }

  @Test
  void an_empty_catalogue_is_said_to_know_no_part() {
    PlanReader.Read read =
        read("outshop_plan: 1\nparts: {fuse: fuse-5a}\n", new Catalogue(List.of()));
    assertThat(read.problems())
        .extracting(Problem::line)
        .containsExactly(
            "plan.yaml:2:15: parts.fuse: the catalogue has no part of this id: found \"fuse-5a\";"
                + " expected an id of the catalogue, or a section with part: or kind:");
  }

  @Test
  void files_are_read_under_the_name_they_were_given(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("reedholm.yaml");
    Files.writeString(file, goodPlan());
    PlanReader.Read read = PlanReader.read(file, SmallCatalogue.CATALOGUE);
    assertThat(read.problems()).isEmpty();
    assertThat(read.plan().file()).isEqualTo(file.toString());
    Path absent = folder.resolve("absent.yaml");
    assertThat(PlanReader.read(absent, SmallCatalogue.CATALOGUE).problems())
        .extracting(Problem::line)
        .containsExactly(absent + ": there is no such file; expected a file that can be read");
    assertThat(PlanReader.read(folder, SmallCatalogue.CATALOGUE).isUsable()).isFalse();
  }
}

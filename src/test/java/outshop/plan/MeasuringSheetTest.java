package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import outshop.catalogue.Catalogue;

final class MeasuringSheetTest {

  private static String flat(String sheet) {
    return sheet.replaceAll("\\s+", " ");
  }

  private static String of(String plan) {
    PlanReader.Read read = PlanReaderTest.read(plan);
    assertThat(read.isUsable()).isTrue();
    return MeasuringSheet.of(read.plan());
  }

  @Test
  void the_blank_sheet_asks_for_everything_that_can_be_measured() {
    String sheet = MeasuringSheet.blank();
    for (Key key : Keys.all()) {
      boolean measured = key.path().matches("(locomotive|measured)\\..*");
      boolean asked = measured && !key.path().matches("measured\\.(usable|joined\\..*)");
      String item = " " + key.name() + ": " + key.help() + " how: " + key.how() + " ";
      if (measured) {
        assertThat(flat(sheet).contains(item)).as(key.path()).isEqualTo(asked);
      }
    }
    assertThat(sheet)
        .contains("Frame\n", "Bay (one copy", "Motor (one copy", "Lamp (one copy", "Smoke heater (")
        .contains(
            "Old speaker\n", "Pickups\n", "On the bench, once receiver and decoder are there");
  }

  @Test
  void boxes_ask_in_the_unit_or_the_words_of_the_key() {
    String flat = flat(MeasuringSheet.blank());
    assertThat(flat)
        .contains(
            "length: inner length of the bay how: measure inside, at the narrowest [__________ mm]")
        .contains("winding: winding resistance")
        .contains("take the lowest steady reading [__________ ohm]")
        .contains("how: ohmmeter across the lamp's leads [__________ ohm] ( ) none")
        .contains("( ) metal ( ) plastic ( ) wood")
        .contains("( ) board ( ) choke ( ) capacitor ( ) none")
        .contains("how: ohmmeter [____________________] with [____________________] ( ) none");
  }

  @Test
  void the_cautions_come_before_anything_is_measured() {
    String sheet = flat(MeasuringSheet.blank());
    String before = sheet.substring(0, sheet.indexOf("Frame"));
    assertThat(before)
        .contains("Leave every lithium pack")
        .contains("unplugged")
        .contains("bench supply with a current limit")
        .contains("hold the wheels for one second")
        .contains("mains")
        .contains("qualified people")
        .contains("makers' instructions and the local codes come first");
    assertThat(sheet).doesNotContainIgnoringCase(" safe");
  }

  @Test
  void every_line_fits_eighty_columns_whatever_the_title() {
    String title = "x".repeat(300);
    String long_name = "n".repeat(40);
    for (String sheet :
        List.of(
            MeasuringSheet.blank(),
            of(PlanReaderTest.goodPlan()),
            of("outshop_plan: 1\ntitle: " + title + "\n"),
            of("outshop_plan: 1\nlocomotive:\n  smoke:\n    " + long_name + ":\n"))) {
      assertThat(sheet.lines()).allMatch(line -> line.length() <= 80);
      assertThat(sheet).endsWith("\n").doesNotContain("\t", "\r");
    }
  }

  @Test
  void a_plans_sheet_asks_only_for_what_it_does_not_state() {
    String sheet = flat(of(PlanReaderTest.goodPlan()));
    assertThat(sheet).startsWith("MEASURING SHEET Sallowmere tank engine ");
    assertThat(sheet)
        .contains("Bay \"boiler\" metal_all_round:", "celsius: temperature in the bay");
    assertThat(sheet).contains("Motor \"main\" start_surge:", "Motor \"second\" kind:");
    assertThat(sheet).contains("Lamp \"rear\" rated:", "forward_volts:");
    assertThat(sheet)
        .doesNotContain(
            "Frame ", "Lamp \"front\"", "Smoke", "Old speaker", "Pickups", "electronics:");
    assertThat(sheet).contains("sound_average:").doesNotContain(" joined:");
  }

  @Test
  void bays_and_motors_are_asked_for_even_where_the_plan_names_none() {
    String sheet = of("outshop_plan: 1\n");
    assertThat(sheet)
        .contains("Bay (one copy for each)   its name: [", "Motor (one copy for each)");
    assertThat(sheet).doesNotContain("Lamp (", "Lamp \"", "Smoke heater (");
  }

  @Test
  void a_filament_lamp_is_not_asked_for_an_anode_and_an_unknown_one_is() {
    String plan = "outshop_plan: 1\nlocomotive:\n  lamps:\n    front:\n      kind: ";
    assertThat(of(plan + "filament\n")).doesNotContain("anode", "forward_volts");
    assertThat(of(plan + "unknown\n")).contains("anode: which way", "forward_volts: forward");
    assertThat(of(plan + "led\n")).contains("anode: which way");
  }

  @Test
  void an_old_speaker_is_measured_unless_it_goes() {
    String plan = "outshop_plan: 1\nlocomotive:\n  old_speaker:\n    kept: ";
    assertThat(of(plan + "yes\n")).contains("Old speaker", "reading: ohmmeter");
    assertThat(of(plan + "no\n")).doesNotContain("Old speaker");
  }

  @Test
  void a_plan_that_states_it_all_leaves_nothing_to_measure() {
    PlanWriter.Start start =
        new PlanWriter.Start(
            "", List.of("main"), List.of("front"), List.of("tender"), List.of("s"));
    Catalogue empty = new Catalogue(List.of());
    String all = PlanWriterTest.uncommented(PlanWriter.starter(start, empty));
    PlanReader.Read read = PlanReaderTest.read(all, empty);
    assertThat(read.problems()).isEmpty();
    assertThat(MeasuringSheet.of(read.plan()))
        .endsWith("\nNothing is left to measure: the plan states it all.\n");
    assertThat(of("outshop_plan: 1\n")).doesNotContain("Nothing is left");
  }
}

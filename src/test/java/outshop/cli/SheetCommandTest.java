package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code sheet}, {@code new-readings} and {@code readings}, as a user types them. */
final class SheetCommandTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "measuring, MEASURING SHEET",
    "buying, Buying list: Base plan",
    "wiring, Wiring sheet: Base plan",
    "bench, Bench sheet: Base plan",
    "owner, Owner's sheet: Base plan"
  })
  void everyKindIsTextOfEightyColumnsAndAPage(String kind, String first) throws IOException {
    String plan = Plans.good(folder).toString();
    Run text = Run.of("sheet", kind, plan);
    assertThat(text.code()).isZero();
    assertThat(text.err()).isEmpty();
    assertThat(text.out()).startsWith(first);
    assertThat(text.out().lines()).allMatch(line -> line.length() <= 80);
    Path to = folder.resolve(kind + ".html");
    Run page = Run.of("sheet", kind, plan, "--as", "page", "--to", to.toString());
    assertThat(page.code()).isZero();
    assertThat(Files.readString(to)).startsWith("<!DOCTYPE html>").contains("Base plan", "</html>");
    assertThat(Run.of("sheet", kind, plan, "--as", "page").out()).isEqualTo(Files.readString(to));
  }

  @Test
  void anUnknownKindIsRefusedWithTheNearest() throws IOException {
    Run run = Run.of("sheet", "bensch", Plans.good(folder).toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.told()).contains("did you mean \"bench\"", "measuring, buying, wiring");
  }

  @Test
  void aSheetDoesNotTakeThePlaceOfItsPlan() throws IOException {
    Path plan = Plans.good(folder);
    String before = Files.readString(plan);
    Run run = Run.of("sheet", "bench", plan.toString(), "--to", plan.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(Files.readString(plan)).isEqualTo(before);
  }

  @Test
  void aFaultyPlansBenchSheetForbidsPower() throws IOException {
    Run run = Run.of("sheet", "bench", Plans.withReceiverFor(folder, "16.7 V").toString());
    assertThat(run.code()).isZero();
    assertThat(run.shown())
        .contains("STOP  Do not power it")
        .contains("voltage/receiver-over-maximum at receiver")
        .contains("Not before the violations")
        .doesNotContain("idle-amps");
  }

  @Test
  void readingsComeBack() throws IOException {
    String plan = Plans.good(folder).toString();
    Path form = folder.resolve("readings.yaml");
    assertThat(Run.of("new-readings", plan, form.toString()).code()).isZero();
    assertThat(Run.of("new-readings", plan, form.toString()).code()).isEqualTo(2);
    Run empty = Run.of("readings", plan, form.toString());
    assertThat(empty.code()).isZero();
    assertThat(empty.shown()).contains("To do  main-ohms. main: leads off");

    String text = Files.readString(form);
    Files.writeString(form, text.replace("main-ohms:", "main-ohms: 4.4 ohm"));
    Run inside = Run.of("readings", plan, form.toString());
    assertThat(inside.code()).isZero();
    assertThat(inside.out()).contains("1 inside");

    Files.writeString(form, text.replace("speaker-ohms:", "speaker-ohms: 3.5 ohm"));
    Run off = Run.of("readings", plan, form.toString());
    assertThat(off.code()).isEqualTo(1);
    assertThat(off.shown())
        .contains("outside: 3.5 ohm, low by", "likely  two speakers side by side", "Stop at");

    Files.writeString(
        form,
        text.replace("speaker-ohms:", "speaker-ohms: 3.5 V").replace("  idle-amps:", "  idel:"));
    Run wrong = Run.of("readings", plan, form.toString());
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.told()).contains("2 errors", "\"V\" measures volts", "no such step");
  }

  @Test
  void theJsonReportHoldsTheSheets() throws IOException {
    Run run = Run.of("check", Plans.good(folder).toString(), "--as", "json");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("\"sheets\" : {", "\"idle-amps\"", "\"idle-amps.from\"");
  }
}

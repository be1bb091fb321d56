package outshop.sheets;

import outshop.input.Shown;

/** An empty file of readings, one line a step, to be filled in. */
public final class ReadingsForm {
  private ReadingsForm() {}

  /** The form of a bench sheet, as YAML. */
  public static String of(BenchSheet sheet) {
    StringBuilder form = new StringBuilder();
    form.append("# Readings of the bench sheet of ").append(Shown.text(sheet.title())).append('\n');
    form.append(
        "# Behind each step write what the meter shows, with its unit: 0.42 A, 7 V, 4.6 ohm.\n");
    form.append("# Continuity: joined or open. A step left blank counts as not read.\n");
    form.append("outshop_readings: 1\n");
    form.append("readings:\n");
    for (BenchSheet.Stage stage : sheet.stages()) {
      form.append("  # ").append(stage.title()).append('\n');
      if (stage.barred()) {
        form.append("  # not before the violations in the report are mended\n");
        continue;
      }
      stage.steps().forEach(step -> form.append("  ").append(step.name()).append(":\n"));
    }
    return form.toString();
  }
}

package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import outshop.catalogue.Catalogue;
import outshop.plan.PlanReader;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;

/** The plan that the rules' examples start from, with pieces of its text exchanged. */
final class BasePlan {
  private static final Path FILE = Path.of("rules", "base-plan.yaml");

  private BasePlan() {}

  /**
   * The plan on the bench.
   *
   * @param changes in pairs: a piece of its text, and what stands in its place where it first is
   */
  static Bench with(String... changes) throws IOException {
    String text = Files.readString(FILE);
    for (int i = 0; i < changes.length; i += 2) {
      int at = text.indexOf(changes[i]);
      assertThat(at).as("the base plan holds \"%s\"", changes[i]).isNotNegative();
      text = text.substring(0, at) + changes[i + 1] + text.substring(at + changes[i].length());
    }
    PlanReader.Read read =
        PlanReader.read("test", text.getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
    assertThat(read.isUsable()).as("%s", read.problems()).isTrue();
    return Bench.of(read.plan(), read.problems());
  }

  /** A value as read on the bench. */
  static Amount measured(double value, Unit unit) {
    return Amount.known(value, unit, Origin.MEASURED, value + " " + unit, "measured");
  }
}

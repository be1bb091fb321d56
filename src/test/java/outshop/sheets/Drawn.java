package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import outshop.acceptance.Sample;
import outshop.catalogue.Catalogue;
import outshop.cli.Check;
import outshop.plan.Plan;

/** Sheets of demo plans and of the plan that the rules' examples start from. */
final class Drawn {
  private static final Map<Path, Check.Checked> DEMO = new ConcurrentHashMap<>();

  private Drawn() {}

  /** A demo plan's report and sheets; worked out once. */
  static Check.Checked demo(Path path) {
    return DEMO.computeIfAbsent(
        path, p -> new Check(Sample.ENGINE).checked(Sample.plan(p), List.of()));
  }

  static Check.Checked demo(String name) {
    return demo(Sample.FOLDER.resolve("plans").resolve(name + ".yaml"));
  }

  /**
   * The base plan.
   *
   * @param changes in pairs: a piece of its text, and what stands in its place where it first is
   */
  static Plan base(String... changes) throws IOException {
    String text = Files.readString(Path.of("rules", "base-plan.yaml"));
    for (int i = 0; i < changes.length; i += 2) {
      int at = text.indexOf(changes[i]);
      assertThat(at).as("the base plan holds \"%s\"", changes[i]).isNotNegative();
      text = text.substring(0, at) + changes[i + 1] + text.substring(at + changes[i].length());
    }
    return Sample.plan("test", text.getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
  }

  static Sheets sheets(Plan plan) {
    return new Check(Sample.ENGINE).checked(plan, List.of()).sheets();
  }

  static BenchSheet.Step step(BenchSheet sheet, String name) {
    return sheet.steps().stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no step " + name + " among " + names(sheet)));
  }

  static List<String> names(BenchSheet sheet) {
    return sheet.steps().stream().map(BenchSheet.Step::name).toList();
  }
}

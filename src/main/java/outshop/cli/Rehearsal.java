package outshop.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Runs what people run most, with the output thrown away, so that Java can keep ready what it
 * takes. The launcher starts it to make its archive; nothing it does can be seen.
 */
final class Rehearsal {
  private Rehearsal() {}

  /**
   * Rehearses.
   *
   * @param arguments a folder of plans, with a catalogue beside it; without one, only what needs no
   *     plan is rehearsed
   */
  public static void main(String[] arguments) {
    Surroundings nowhere =
        new Surroundings(
            OutputStream.nullOutputStream(),
            OutputStream.nullOutputStream(),
            StandardCharsets.UTF_8,
            Map.of(),
            () -> false);
    run(nowhere, "help");
    run(nowhere, "explain", "voltage/receiver-over-maximum");
    Path folder = Path.of(arguments.length == 0 ? "" : arguments[0]);
    if (arguments.length == 0 || !Files.isDirectory(folder)) {
      return;
    }
    for (String plan : plans(folder)) {
      run(nowhere, "check", plan);
      run(nowhere, "check", plan, "--as", "json", "--working");
    }
  }

  private static TreeSet<String> plans(Path folder) {
    TreeSet<String> plans = new TreeSet<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, "*.yaml")) {
      entries.forEach(plan -> plans.add(plan.toString()));
    } catch (IOException e) {
      plans.clear();
    }
    return plans;
  }

  private static void run(Surroundings nowhere, String... arguments) {
    Main.run(List.of(arguments), nowhere);
  }
}

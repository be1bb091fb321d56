package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Plans for the tests, made from the one in which no rule finds a violation or a warning. */
final class Plans {
  private static final String LIMIT = "input_max_volts: 20 V";

  private Plans() {}

  static Path good(Path folder) throws IOException {
    return write(folder, "good.yaml", text());
  }

  /** The receiver takes only so much; at 16.8 V a full pack is exactly there. */
  static Path withReceiverFor(Path folder, String volts) throws IOException {
    return write(folder, "receiver.yaml", replaced(text(), LIMIT, "input_max_volts: " + volts));
  }

  static Path withoutReceiverLimit(Path folder) throws IOException {
    return write(folder, "unknown.yaml", replaced(text(), "    " + LIMIT + "\n", ""));
  }

  /** A title as YAML writes it between double quotes. */
  static Path titled(Path folder, String title) throws IOException {
    return write(
        folder, "titled.yaml", replaced(text(), "title: Base plan", "title: \"" + title + "\""));
  }

  private static String text() throws IOException {
    String text = Files.readString(Path.of("rules", "base-plan.yaml"));
    return text.replaceAll("(?m)^  1: \\{feeds", "  one: {feeds");
  }

  private static String replaced(String text, String from, String to) {
    assertThat(text).contains(from);
    return text.replace(from, to);
  }

  private static Path write(Path folder, String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text);
    return file;
  }
}

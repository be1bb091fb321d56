package outshop.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts that somebody read and approved, under {@code src/test/resources/approved}. With {@code
 * -Doutshop.approve=true} they are written anew; the change is then there to be read.
 */
public final class Approved {
  private static final Path FOLDER = Path.of("src/test/resources/approved");

  private Approved() {}

  /** Compares a text with the approved one, to the byte. */
  public static void check(String name, String text) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("outshop.approve")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, text);
    }
    assertThat(file).as("approved text; see Approved").exists();
    assertThat(text).isEqualTo(Files.readString(file));
  }
}

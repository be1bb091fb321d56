package outshop.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import outshop.rulebook.FormatPages;

/**
 * The references of the file formats are current. With {@code -Doutshop.approve=true} they are
 * written anew.
 */
final class DocsTest {

  @Test
  void theCatalogueReferenceIsCurrent() throws IOException {
    current("docs/catalogue.md", FormatPages.catalogue());
  }

  @Test
  void thePlanReferenceIsCurrent() throws IOException {
    current("docs/plan.md", FormatPages.plan());
  }

  private static void current(String file, String text) throws IOException {
    Path path = Path.of(file);
    if (Boolean.getBoolean("outshop.approve")) {
      Files.writeString(path, text);
    }
    assertThat(Files.readString(path))
        .as("%s; run the tests with -Doutshop.approve=true and read the difference", file)
        .isEqualTo(text);
  }
}

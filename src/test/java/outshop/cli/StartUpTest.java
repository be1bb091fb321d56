package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The text report starts fast: the classes of the pages are loaded only for a page. */
final class StartUpTest {
  private static final List<String> OF_PAGES = List.of("gg.jte.", "outshop.render.page.");

  @TempDir Path folder;

  @Test
  void theTextReportLoadsNothingOfThePages() throws IOException, InterruptedException {
    String loaded = loaded("text");
    assertThat(loaded).contains("outshop.render.terminal.TerminalReport ");
    OF_PAGES.forEach(name -> assertThat(loaded).doesNotContain(name));
  }

  @Test
  void aPageLoadsThem() throws IOException, InterruptedException {
    String loaded = loaded("page");
    OF_PAGES.forEach(name -> assertThat(loaded).contains(name));
  }

  private String loaded(String form) throws IOException, InterruptedException {
    Path log = folder.resolve("loaded.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xlog:class+load:file=" + log,
                "-cp",
                classPath(),
                "outshop.cli.Main",
                "check",
                "catalog-sample/plans/sallowmere-tank.yaml",
                "--as",
                form,
                "--to",
                folder.resolve("report").toString())
            .redirectOutput(new File(folder.toFile(), "out.txt"))
            .redirectError(new File(folder.toFile(), "err.txt"))
            .start();
    assertThat(process.waitFor()).as(() -> read(folder.resolve("err.txt"))).isZero();
    return Files.readString(log);
  }

  /** Also where the tests' own class loader holds the classes. */
  private static String classPath() {
    List<String> paths = new ArrayList<>(List.of(System.getProperty("java.class.path")));
    if (Main.class.getClassLoader() instanceof URLClassLoader loader) {
      for (URL url : loader.getURLs()) {
        paths.add(Path.of(URI.create(url.toString())).toString());
      }
    }
    return String.join(File.pathSeparator, paths);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return e.toString();
    }
  }
}

package outshop.render.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import outshop.acceptance.Sample;
import outshop.render.Browser;

/**
 * Takes the pictures in {@code docs/looks}, to be looked at before they are committed. Printed
 * pages become pictures by {@code pdftoppm}, which has to be installed.
 */
public final class Looks {
  private static final int DESKTOP = 1280;
  private static final int PHONE = 360;
  private static final int HIGH = 1500;
  private static final int PRINTED_PAGES = 2;

  private Looks() {}

  /** Writes every picture into the folder that is named. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    Path scratch = Files.createTempDirectory("outshop-looks");
    try (Browser browser = Browser.start()) {
      for (String plan : List.of("five-cells-too-many", "sallowmere-tank", "half-measured")) {
        Path page = scratch.resolve(plan + ".html");
        Path source = Sample.FOLDER.resolve("plans").resolve(plan + ".yaml");
        Files.writeString(page, ReportPage.html(Sample.report(source)));
        browser.dark(false);
        take(browser, page, DESKTOP, folder.resolve(plan + "-desktop.png"));
        take(browser, page, PHONE, folder.resolve(plan + "-phone.png"));
        browser.dark(true);
        take(browser, page, DESKTOP, folder.resolve(plan + "-dark.png"));
        browser.dark(false);
        Path pdf = Files.write(scratch.resolve(plan + ".pdf"), browser.printed());
        print(pdf, folder.resolve(plan + "-print"));
      }
    }
  }

  private static void take(Browser browser, Path page, int width, Path to) throws IOException {
    browser.size(width, HIGH);
    browser.open(page);
    Files.write(to, browser.wholePicture(HIGH));
  }

  private static void print(Path pdf, Path to) throws IOException, InterruptedException {
    List<String> command =
        List.of(
            "pdftoppm",
            "-png",
            "-gray",
            "-r",
            "75",
            "-l",
            Integer.toString(PRINTED_PAGES),
            pdf.toString(),
            to.toString());
    int code = new ProcessBuilder(command).inheritIO().start().waitFor();
    if (code != 0) {
      throw new IOException("pdftoppm ended with " + code);
    }
  }
}

package outshop.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
  private static final int DRAWN = 900;
  private static final int PRINTED_PAGES = 2;
  private static final String CHARGING = "plug in, switch off";

  private Looks() {}

  /** Writes every picture into the folder that is named. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    Path scratch = Files.createTempDirectory("outshop-looks");
    try (Browser browser = Browser.start()) {
      for (String plan : List.of("five-cells-too-many", "sallowmere-tank", "half-measured")) {
        Path page = made(scratch, plan, "check", plan(plan), "--as", "page");
        browser.dark(false);
        take(browser, page, DESKTOP, folder.resolve(plan + "-desktop.png"));
        take(browser, page, PHONE, folder.resolve(plan + "-phone.png"));
        browser.dark(true);
        take(browser, page, DESKTOP, folder.resolve(plan + "-dark.png"));
        browser.dark(false);
        print(browser, page, folder.resolve(plan + "-print"));
      }
      for (String kind : SheetCommand.KINDS) {
        String sheet = kind + "-sheet";
        print(
            browser,
            made(scratch, sheet, "sheet", kind, plan("sallowmere-tank"), "--as", "page"),
            folder.resolve(sheet));
      }
      drawn(browser, scratch, folder.resolve("wiring.png"));
      drawn(browser, scratch, folder.resolve("wiring-charging.png"), "--state", CHARGING);
    }
  }

  private static String plan(String name) {
    return Sample.FOLDER.resolve("plans").resolve(name + ".yaml").toString();
  }

  private static Path made(Path scratch, String name, String... arguments) throws IOException {
    return Files.writeString(scratch.resolve(name + ".html"), Run.of(arguments).out());
  }

  private static void drawn(Browser browser, Path scratch, Path to, String... more)
      throws IOException {
    List<String> arguments = new ArrayList<>(List.of("wiring", plan("sallowmere-tank")));
    arguments.addAll(List.of(more));
    String svg = Run.of(arguments.toArray(new String[0])).out();
    Path page = Files.writeString(scratch.resolve("wiring.html"), "<body>" + svg);
    browser.size(DESKTOP, DRAWN);
    browser.open(page);
    Files.write(to, browser.wholePicture(DRAWN));
  }

  private static void take(Browser browser, Path page, int width, Path to) throws IOException {
    browser.size(width, HIGH);
    browser.open(page);
    Files.write(to, browser.wholePicture(HIGH));
  }

  private static void print(Browser browser, Path page, Path to)
      throws IOException, InterruptedException {
    browser.open(page);
    Path pdf = Files.write(Path.of(page + ".pdf"), browser.printed());
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

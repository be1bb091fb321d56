package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outshop.acceptance.Sample;
import outshop.render.Browser;

/** The pages as the commands write them, whole, in a real browser. */
final class PagesInBrowserTest {
  private static final int DESKTOP = 1280;
  private static final int PHONE = 360;
  private static final int NARROWEST = 320;
  private static final int MOST_PAGES = 2;
  private static final List<String> PLANS =
      List.of("sallowmere-tank", "jack-the-wrong-way", "half-measured", "brackenlow-railcar");

  private static Browser browser;

  @TempDir Path folder;

  @BeforeAll
  static void start() {
    browser = Browser.start();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void theAccessibilityRulesObjectToNothingAndNothingLeavesThePage() {
    for (String plan : PLANS) {
      for (Path page : pages(plan)) {
        browser.size(DESKTOP, 900);
        browser.dark(false);
        browser.open(page);
        assertThat(browser.axe()).as("%s, desktop", page).isEmpty();
        browser.dark(true);
        browser.size(PHONE, 900);
        assertThat(browser.axe()).as("%s, phone, dark", page).isEmpty();
        browser.size(NARROWEST, 900);
        assertThat(browser.scrollsSideways()).as(page.toString()).isFalse();
        assertThat(browser.requests()).as(page.toString()).isEmpty();
        assertThat(browser.console()).as(page.toString()).isEmpty();
      }
    }
  }

  @Test
  void everySheetOfEveryDemoPlanIsOneOrTwoPages() {
    browser.dark(false);
    for (Path plan : Sample.plans()) {
      String name = plan.getFileName().toString().replace(".yaml", "");
      for (String kind : SheetCommand.KINDS) {
        browser.open(sheet(kind, name));
        assertThat(pagesOf(browser.printed())).as("%s of %s", kind, name).isBetween(1, MOST_PAGES);
      }
    }
  }

  private List<Path> pages(String plan) {
    List<Path> pages = new ArrayList<>();
    Path report = folder.resolve(plan + ".html");
    run("check", path(plan), "--as", "page", "--to", report.toString());
    pages.add(report);
    SheetCommand.KINDS.forEach(kind -> pages.add(sheet(kind, plan)));
    return pages;
  }

  private Path sheet(String kind, String plan) {
    Path sheet = folder.resolve(plan + "-" + kind + ".html");
    run("sheet", kind, path(plan), "--as", "page", "--to", sheet.toString());
    return sheet;
  }

  private static String path(String plan) {
    return Sample.FOLDER.resolve("plans").resolve(plan + ".yaml").toString();
  }

  private static void run(String... arguments) {
    Run run = Run.of(arguments);
    assertThat(run.code()).as(run.err()).isLessThan(Exit.UNUSABLE);
  }

  /** Pages of a PDF: its page tree says how many. */
  private static int pagesOf(byte[] pdf) {
    Matcher count =
        Pattern.compile("/Type\\s*/Pages.*?/Count\\s+(\\d+)", Pattern.DOTALL)
            .matcher(new String(pdf, StandardCharsets.ISO_8859_1));
    int most = 0;
    while (count.find()) {
      most = Math.max(most, Integer.parseInt(count.group(1)));
    }
    return most;
  }
}

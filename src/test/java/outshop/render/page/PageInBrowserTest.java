package outshop.render.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outshop.acceptance.Sample;
import outshop.render.Browser;
import outshop.render.Reports;
import outshop.report.Report;

/** The page in a real browser, as a person opens it: a file, without a network. */
final class PageInBrowserTest {
  private static final int DESKTOP = 1280;
  private static final int PHONE = 360;
  private static final int NARROWEST = 320;

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

  @BeforeEach
  void asUsual() {
    browser.dark(false);
    browser.size(DESKTOP, 900);
  }

  @Test
  void theAccessibilityRulesObjectToNothing() throws IOException {
    for (Map.Entry<String, Report> page : reports().entrySet()) {
      browser.open(file(ReportPage.html(page.getValue(), figures(), figures(), "")));
      for (boolean dark : new boolean[] {false, true}) {
        browser.dark(dark);
        for (int width : widths(page.getKey(), dark)) {
          browser.size(width, 900);
          assertThat(browser.axe()).as("%s, dark %s, %d", page.getKey(), dark, width).isEmpty();
        }
      }
    }
  }

  /** The demo plans in every way; the others, which look alike, in two. */
  private static int[] widths(String page, boolean dark) {
    boolean demo = page.indexOf(' ') < 0 && !page.equals("hostile");
    return demo ? new int[] {DESKTOP, PHONE} : new int[] {dark ? PHONE : DESKTOP};
  }

  /** What is folded away is judged as well. */
  @Test
  void theAccessibilityRulesObjectToNothingThatIsFoldedAway() throws IOException {
    browser.open(file(ReportPage.html(DemoPages.report(demo("newcomer")))));
    browser.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertThat(browser.axe()).isEmpty();
  }

  @Test
  void theAccessibilityRulesWouldNotice() throws IOException {
    String html = ReportPage.html(Reports.clear());
    browser.open(file(html.replace("<html lang=\"en\">", "<html>")));
    assertThat(browser.axe()).singleElement().asString().startsWith("html-has-lang");
  }

  @Test
  void nothingScrollsSideways() throws IOException {
    for (Path plan : Sample.plans()) {
      browser.open(file(ReportPage.html(DemoPages.report(plan))));
      browser.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
      for (int width : new int[] {NARROWEST, PHONE, 640, 800, 1000, DESKTOP}) {
        browser.size(width, 700);
        assertThat(browser.scrollsSideways()).as("%s at %d", plan, width).isFalse();
      }
    }
  }

  @Test
  void aPageThatScrollsSidewaysWouldBeNoticed() throws IOException {
    String html = ReportPage.html(Reports.clear()).replace("Lowmoor", "<svg width=\"900\"/>");
    browser.open(file(html));
    browser.size(NARROWEST, 700);
    assertThat(browser.scrollsSideways()).isTrue();
  }

  @Test
  void noRequestLeavesThePageAndTheConsoleIsSilent() throws IOException {
    for (Path plan : Sample.plans()) {
      browser.open(file(ReportPage.html(DemoPages.report(plan), figures(), figures(), "")));
      assertThat(browser.requests()).as(plan.toString()).isEmpty();
      assertThat(browser.console()).as(plan.toString()).isEmpty();
      assertThat(browser.ask("return performance.getEntriesByType('resource').length"))
          .isEqualTo(0L);
    }
  }

  @Test
  void aRequestWouldBeNoticed() throws IOException {
    Path picture = folder.resolve("picture.png");
    Files.write(picture, new byte[] {1});
    browser.open(file("<!DOCTYPE html><title>x</title><img src=\"picture.png\" alt=\"\">"));
    assertThat(browser.requests()).containsExactly(picture.toUri().toString());
  }

  /** What the page's policy forbids is not even asked for, and the console says so. */
  @Test
  void thePolicyHolds() throws IOException {
    String html = ReportPage.html(Reports.clear());
    String added =
        "<img src=\"picture.png\" alt=\"\"><p id=\"p\" style=\"color:red\">x</p>"
            + "<script>document.title = 'ran';</script>";
    browser.open(file(html.replace("</main>", added + "</main>")));
    assertThat(browser.driver().getTitle()).startsWith("Clear: Lowmoor");
    assertThat(browser.console())
        .hasSize(3)
        .allSatisfy(line -> assertThat(line).contains("Content Security Policy"));
    assertThat(browser.ask("return document.querySelector('#p').style.color")).isEqualTo("");
  }

  @Test
  void hostileNamesAreTextAndBreakNoLayout() throws IOException {
    browser.open(file(ReportPage.html(Hostile.report())));
    assertThat(browser.ask("return document.querySelectorAll('script, img').length")).isEqualTo(0L);
    assertThat(browser.ask("return document.querySelector('#finding-1 h3').textContent"))
        .isEqualTo(Hostile.MARKUP);
    assertThat(browser.ask("return document.querySelector('#finding-2 h3').textContent"))
        .isEqualTo(Visible.whole(Hostile.TURNED));
    assertThat(browser.ask("return document.querySelector('#finding-3 h3').textContent"))
        .isEqualTo(Hostile.ENDLESS);
    browser.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
    for (int width : new int[] {NARROWEST, PHONE, 800, DESKTOP}) {
      browser.size(width, 700);
      assertThat(browser.scrollsSideways()).as("at %d", width).isFalse();
      assertThat(overlapping()).as("at %d", width).isEmpty();
    }
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void stationsDoNotOverlap() throws IOException {
    for (Path plan : Sample.plans()) {
      browser.open(file(ReportPage.html(DemoPages.report(plan))));
      for (int width : new int[] {NARROWEST, PHONE, 800, 1000, DESKTOP}) {
        browser.size(width, 700);
        assertThat(overlapping()).as("%s at %d", plan, width).isEmpty();
      }
    }
  }

  /** Words and marks of the power path that lie over others, as pairs of texts. */
  @SuppressWarnings("unchecked")
  private static List<String> overlapping() {
    return (List<String>)
        browser.ask(
            "const all = [...document.querySelectorAll('.way .node, .way h3, .way .fitted,"
                + " .way .hang li')].map(e => [e, e.getBoundingClientRect()]);"
                + "const found = [];"
                + "for (const [e, a] of all) for (const [f, b] of all)"
                + " if (e !== f && !e.contains(f) && !f.contains(e) && a.left < b.right - 1"
                + " && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1)"
                + " found.push(e.textContent.slice(0, 40) + ' / ' + f.textContent.slice(0, 40));"
                + "return found;");
  }

  @Test
  void onPaperEverythingIsOpened() throws IOException {
    browser.open(file(ReportPage.html(DemoPages.report(demo("five-cells-too-many")))));
    String shown =
        "return [...document.querySelectorAll('details:not([open]) .steps li')]"
            + ".filter(e => e.checkVisibility({contentVisibilityAuto: true})"
            + " && e.getBoundingClientRect().height > 0).length";
    assertThat((long) browser.ask(shown)).isZero();
    browser.asPrinted(true);
    long unfolded = 0;
    // The browser lays the page out anew in its own time.
    for (int i = 0; i < 50 && unfolded == 0; i++) {
      unfolded =
          (long)
              browser.ask(
                  "return new Promise(r => setTimeout(r, 100)).then(() => "
                      + shown.substring(7)
                      + ")");
    }
    assertThat(unfolded).isGreaterThan(50);
    assertThat(browser.ask("return getComputedStyle(document.body).backgroundColor"))
        .isEqualTo("rgb(255, 255, 255)");
  }

  @Test
  void aLinkOnThePathLeadsToItsFinding() throws IOException {
    browser.open(file(ReportPage.html(DemoPages.report(demo("newcomer")))));
    browser.ask("document.querySelector('.way a[href=\"#finding-7\"]').click()");
    assertThat(
            (double)
                browser.ask(
                    "return document.querySelector('#finding-7')"
                        + ".getBoundingClientRect().top + 0.5"))
        .isBetween(0.0, 200.0);
  }

  /** The page as the browser read it is the page as it was written: nothing was mended. */
  @Test
  void theMarkupIsWellFormed() throws IOException {
    for (Report report : reports().values()) {
      String html = ReportPage.html(report, figures(), figures(), "");
      browser.open(file(html));
      String body = html.substring(html.indexOf("<body>"));
      for (String tag :
          List.of("div", "section", "details", "li", "ol", "ul", "p", "table", "tr")) {
        long written = PageText.all(body, "(<" + tag + "[ >])").size();
        long closed = PageText.all(body, "(</" + tag + ">)").size();
        assertThat(closed).as(tag).isEqualTo(written);
        assertThat(browser.ask("return document.body.getElementsByTagName('" + tag + "').length"))
            .as(tag)
            .isEqualTo(written);
      }
      assertThat(browser.ask("return document.compatMode")).isEqualTo("CSS1Compat");
    }
  }

  private static Map<String, Report> reports() {
    Map<String, Report> reports = new LinkedHashMap<>();
    for (String name : List.of("five-cells-too-many", "sallowmere-tank", "half-measured")) {
      reports.put(name, DemoPages.report(demo(name)));
    }
    reports.put("something of everything", Reports.full());
    reports.put("hostile", Hostile.report());
    return reports;
  }

  private static List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        new Figure(
            "A drawing",
            "<svg viewBox=\"0 0 600 80\" role=\"img\" aria-label=\"a line\">"
                + "<path d=\"M0 40H600\" stroke=\"currentColor\"/></svg>",
            "A line from left to right.",
            List.of("From", "To"),
            List.of(List.of("left", "right"))));
    return figures;
  }

  private static Path demo(String name) {
    return Sample.FOLDER.resolve("plans").resolve(name + ".yaml");
  }

  private Path file(String html) throws IOException {
    return Files.writeString(folder.resolve("page.html"), html);
  }
}

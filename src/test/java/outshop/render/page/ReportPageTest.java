package outshop.render.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.render.Reports;
import outshop.report.Basis;
import outshop.report.Numbers;
import outshop.report.Remarks;
import outshop.report.Report;

/** Everything the report says stands in the page, where it belongs, and nothing asks for more. */
final class ReportPageTest {
  private static final Figure PLOT =
      new Figure(
          "Voltage windows",
          "<svg viewBox=\"0 0 10 10\" role=\"img\" aria-label=\"windows\"><path d=\"M0 0H10\"/></svg>",
          "Each part's window, and what it gets.",
          List.of("Part", "At most"),
          List.of(List.of("receiver", "18 V"), List.of("<b>odd</b>", "21 V")));

  @TestFactory
  Stream<DynamicTest> everyDemoPlanIsShownInFull() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> shownInFull(p)));
  }

  private static void shownInFull(Path plan) {
    Report report = DemoPages.report(plan);
    String html = ReportPage.html(report);
    for (int i = 0; i < report.findings().size(); i++) {
      ranked(report.findings().get(i), PageText.finding(html, "finding-" + (i + 1)));
    }
    String untold = PageText.of(PageText.section(html, "cannot-tell"));
    for (Finding finding : report.cannotTell()) {
      assertThat(untold).contains(words(finding.headline()), finding.rule());
    }
    String fine = PageText.of(PageText.section(html, "fine"));
    for (Finding finding : report.fine()) {
      assertThat(fine).contains(words(finding.headline()), finding.rule());
    }
    report.cautions().forEach(c -> assertThat(PageText.of(html)).contains(words(c)));
    String parts = PageText.of(PageText.section(html, "parts"));
    report.parts().forEach(p -> assertThat(parts).contains(words(p.title()), p.id()));
  }

  private static void ranked(Finding finding, String block) {
    String text = PageText.of(block);
    assertThat(text)
        .contains(
            words(finding.headline()),
            finding.outcome().words(),
            Remarks.consequence(finding),
            words(finding.why()),
            words(finding.at().described()),
            words(Basis.sentence(finding.basis(), finding.source())),
            finding.rule());
    finding.cures().forEach(cure -> assertThat(text).contains(words(cure)));
    finding.assumed().forEach(assumed -> assertThat(text).contains(words(assumed)));
    for (Numbers.Row row : Numbers.rows(finding)) {
      assertThat(text).contains(row.label() + " " + row.value() + " " + words(row.note()));
    }
    for (Finding.Step step : finding.working()) {
      assertThat(text).contains(words(step.what()) + " = " + step.value(), words(step.how()));
    }
    assertThat(text.contains(Remarks.SOFTENED)).isEqualTo(finding.softened());
  }

  private static String words(String raw) {
    return PageText.squeezed(Visible.whole(raw));
  }

  @Test
  void theVerdictComesFirstAndTheCautionsLast() {
    String text = PageText.of(ReportPage.html(Reports.full(), List.of(PLOT), List.of(PLOT), ""));
    List<String> order =
        List.of(
            "Stop at least one violation Sallowmere tank engine",
            "The power path",
            "Found, worst first",
            "Cannot tell, and how to find out",
            "What could not be judged",
            "Plots",
            "Wiring",
            "Fine, with the room that is left",
            "Accepted by the owner",
            "Parts in this plan",
            "Notes on the files",
            "This report compares data",
            "judged by 66 rules");
    int at = 0;
    for (String words : order) {
      int next = text.indexOf(words, at);
      assertThat(next).as(words + " after " + at).isNotNegative();
      at = next;
    }
  }

  @Test
  void theValueThatDecidesMostComesFirst() {
    String section = PageText.section(ReportPage.html(Reports.full()), "cannot-tell");
    List<String> counts = PageText.all(section, "<div class=\"decides\"><b>(\\d+)</b>");
    assertThat(counts).containsExactly("3", "1");
    assertThat(PageText.of(section)).contains("main: blocked hold the wheels", "at worst harm");
  }

  @Test
  void onlyTheWorstFindingIsOpen() {
    String html = ReportPage.html(Reports.full());
    assertThat(PageText.all(html, "(<details class=\"finding[^>]*>)"))
        .hasSize(7)
        .satisfies(all -> assertThat(all.get(0)).contains("finding-1", " open"))
        .satisfies(
            all -> assertThat(all.subList(1, 7)).noneMatch(details -> details.contains(" open")));
  }

  @Test
  void whatTheOwnerAcceptedSaysSoWithTheReason() {
    String html = ReportPage.html(Reports.full());
    assertThat(PageText.of(PageText.finding(html, "accepted-1")))
        .contains("Accepted by the owner, not counted: the tank itself is the box, and it");
    assertThat(PageText.of(PageText.section(html, "accepted")))
        .contains("sound/polarity at speaker: accepted, but there is no such finding");
  }

  @Test
  void softenedAndAssumedAreSaid() {
    String html = ReportPage.html(Reports.full());
    assertThat(PageText.of(PageText.finding(html, "finding-5")))
        .contains("softened " + Remarks.SOFTENED, "assumed main slipping 1.4 A; volume 60 %");
  }

  @Test
  void everyFindingHangsAtItsStation() {
    for (Path plan : Sample.plans()) {
      Report report = DemoPages.report(plan);
      String path = PageText.section(ReportPage.html(report), "path");
      List<String> numbers = PageText.all(path, "href=\"#finding-(\\d+)\"");
      assertThat(numbers).hasSize(report.findings().size()).doesNotHaveDuplicates();
      for (int i = 0; i < report.findings().size(); i++) {
        String before = path.substring(0, path.indexOf("href=\"#finding-" + (i + 1) + "\""));
        List<String> boards = PageText.all(before, "<h3 class=\"board\">([^<]*)</h3>");
        assertThat(boards.get(boards.size() - 1))
            .as("%s, finding %d", plan, i + 1)
            .isEqualTo(report.findings().get(i).at().station().words());
      }
      int untold =
          PageText.all(path, "href=\"#untold-\\w+\">(\\d+)").stream()
              .mapToInt(Integer::parseInt)
              .sum();
      assertThat(untold).isEqualTo(report.count(Outcome.CANNOT_TELL));
    }
  }

  @Test
  void plotsAndWiringAreLeftOutWhereThereAreNone() {
    assertThat(ReportPage.html(Reports.full())).doesNotContain("id=\"plots\"", "id=\"wiring\"");
    String html = ReportPage.html(Reports.full(), List.of(PLOT), List.of(), "");
    assertThat(html).contains("id=\"plots\"", PLOT.svg()).doesNotContain("id=\"wiring\"");
    assertThat(html).contains("<th scope=\"row\">&lt;b&gt;odd&lt;/b&gt;</th>");
  }

  @Test
  void aFiguresTableHasACellForEachHeader() {
    assertThatThrownBy(
            () -> new Figure("t", "<svg/>", "s", List.of("a", "b"), List.of(List.of("1"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("t: 1 cells under 2 headers");
  }

  @Test
  void nothingAsksForAnythingOutside() {
    for (Report report : List.of(Reports.full(), Reports.clear(), Reports.manyOfOneRule())) {
      String html = ReportPage.html(report, List.of(PLOT), List.of(), "");
      assertThat(html).doesNotContainPattern("(?i)https?:|//[a-z]|@import|url\\(|srcset|<base");
      assertThat(html).doesNotContainPattern("(?i)<script|\\son\\w+=|javascript:|style=");
      assertThat(PageText.all(html, "(?:href|src)=\"([^\"]*)\""))
          .isNotEmpty()
          .allMatch(address -> address.startsWith("#") || address.equals("data:,"));
    }
  }

  @Test
  void thePolicyAllowsTheStyleThatStandsThereAndNothingElse() throws NoSuchAlgorithmException {
    String html = ReportPage.html(Reports.clear());
    String style = PageText.all(html, "<style>(.*?)</style>").get(0);
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
    assertThat(PageText.unescaped(PageText.all(html, "Policy\" content=\"([^\"]*)\"").get(0)))
        .isEqualTo(
            "default-src 'none'; style-src 'sha256-"
                + Base64.getEncoder().encodeToString(hash)
                + "'; img-src data:; base-uri 'none'; form-action 'none'");
  }

  @Test
  void everyLinkLeadsSomewhereAndEveryIdIsItsOwn() {
    for (Path plan : Sample.plans()) {
      String html = ReportPage.html(DemoPages.report(plan));
      List<String> ids = PageText.all(html, "\\sid=\"([^\"]*)\"");
      assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
      assertThat(new HashSet<>(ids))
          .as(plan.toString())
          .containsAll(PageText.all(html, "href=\"#([^\"]*)\""))
          .containsAll(PageText.all(html, "aria-labelledby=\"([^\"]*)\""));
    }
  }

  @Test
  void hostileNamesAreText() {
    Report report = Hostile.report();
    String html = ReportPage.html(report);
    assertThat(html).doesNotContain("<script", "<img", Hostile.TURNED);
    assertThat(html).contains("&lt;script&gt;", "\\u202e");
    String parts = PageText.of(PageText.section(html, "parts"));
    assertThat(parts).contains(words(Hostile.MARKUP), words(Hostile.TURNED), Hostile.ENDLESS);
    assertThat(html.codePoints().filter(c -> c != '\n'))
        .noneMatch(
            c ->
                Character.getType(c) == Character.CONTROL
                    || Character.getType(c) == Character.FORMAT);
    assertThat(PageText.all(html, "<title>([^<]*)</title>").get(0).length()).isLessThan(200);
  }

  @Test
  void thePageIsTheSameToTheByteInEveryLocale() {
    String here = ReportPage.html(Reports.full());
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(ReportPage.html(Reports.full())).as(tag).isEqualTo(here);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theWordsAreOurs() {
    List<String> pages = new ArrayList<>();
    Sample.plans().forEach(p -> pages.add(PageText.of(ReportPage.html(DemoPages.report(p)))));
    assertThat(String.join(" ", pages).toLowerCase(Locale.ROOT))
        .doesNotContainPattern("\\b(safe|safely|please|invalid|illegal|simply)\\b");
  }
}

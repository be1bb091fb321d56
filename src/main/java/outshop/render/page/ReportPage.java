package outshop.render.page;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import outshop.report.Report;

/**
 * The report as one HTML file that needs nothing else: no script, no address outside itself. The
 * same report is the same to the byte.
 */
public final class ReportPage {
  private ReportPage() {}

  /** The page without plots and drawings; to be written as UTF-8. */
  public static String html(Report report) {
    return html(report, List.of(), List.of(), "");
  }

  /**
   * The page; to be written as UTF-8.
   *
   * @param plots drawn from the figures; without any the section is left out
   * @param wiring drawings of the wiring, each with its wire list; likewise
   * @param style what the drawings want beside the style of every page
   */
  public static String html(Report report, List<Figure> plots, List<Figure> wiring, String style) {
    StringOutput out = new StringOutput();
    JtereportGenerated.render(new OwaspHtmlTemplateOutput(out), null, report, plots, wiring, style);
    return out.toString();
  }
}

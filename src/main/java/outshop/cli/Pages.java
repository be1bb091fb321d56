package outshop.cli;

import java.util.List;
import outshop.drawing.WireList;
import outshop.drawing.WiringDrawing;
import outshop.render.drawing.WiringSvg;
import outshop.render.page.Figure;
import outshop.render.page.ReportPage;
import outshop.render.plot.Drawings;
import outshop.render.sheet.SheetPage;
import outshop.report.Report;
import outshop.sheets.Sheets;

/** Puts pages together from a report, its plots, its sheets and its wiring drawing. */
final class Pages {
  private static final List<String> WIRE_HEADERS =
      List.of("No.", "From", "To", "Gauge", "Length", "Colour", "Remarks");

  private Pages() {}

  static String report(Check.Checked checked, PlanFiles files) {
    Report report = checked.withPlots(files.parts());
    List<Figure> plots =
        Drawings.of(report.plots()).stream()
            .map(p -> new Figure(p.title(), p.svg(), p.summary(), p.headers(), p.rows()))
            .toList();
    return ReportPage.html(
        report, plots, List.of(wiring(checked.wiring(), report)), WiringSvg.style());
  }

  static String wiringSheet(Check.Checked checked, Sheets sheets) {
    String svg = WiringSvg.within(checked.wiring(), checked.report().findings());
    return SheetPage.of(sheets.wiring(), svg, WiringSvg.style());
  }

  private static Figure wiring(WiringDrawing drawing, Report report) {
    return new Figure(
        "As wired, with the plug out and everything switched on",
        WiringSvg.within(drawing, report.findings()),
        "Every wire of the plan, drawn from the circuit that was judged; where a finding hangs, it is"
            + " marked.",
        WIRE_HEADERS,
        drawing.wires().rows().stream().map(Pages::cells).toList());
  }

  private static List<String> cells(WireList.Row row) {
    return List.of(
        Integer.toString(row.number()),
        row.from(),
        row.to(),
        row.gaugeWords(),
        row.lengthWords(),
        row.colourWords(),
        String.join("; ", row.remarks()));
  }
}

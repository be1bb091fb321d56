package outshop.sheets;

import java.util.List;
import outshop.figures.Bench;
import outshop.plan.MeasuringSheet;
import outshop.report.Report;

/** Every sheet of one plan, from the same figures as its report. */
public record Sheets(
    MeasuringSheet.Content measuring,
    BuyingList buying,
    WiringSheet wiring,
    BenchSheet bench,
    OwnerSheet owner) {

  /**
   * Draws up all of them.
   *
   * @param facts every fact of the plan
   */
  public static Sheets of(Bench bench, List<Object> facts, Report report) {
    return new Sheets(
        MeasuringSheet.content(bench.plan()),
        BuyingLists.of(bench, facts, report),
        WiringSheets.of(bench),
        BenchSheets.of(bench, report),
        OwnerSheets.of(bench, facts, report));
  }
}

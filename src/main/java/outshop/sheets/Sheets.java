package outshop.sheets;

import java.util.List;
import outshop.figures.Bench;
import outshop.report.Report;

/** Every sheet of one plan, from the same figures as its report. */
public record Sheets(
    MeasuringPaper measuring,
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
        MeasuringPaper.of(bench.plan()),
        BuyingLists.of(bench, facts, report),
        WiringSheets.of(bench),
        BenchSheets.of(bench, report),
        OwnerSheets.of(bench, facts, report));
  }
}

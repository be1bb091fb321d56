package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import outshop.figures.Bench;
import outshop.figures.DutyTime;
import outshop.figures.RunTime;
import outshop.units.Amount;

/** Run time against the mean current, with the plan's duty, other duties and the wish. */
final class RunTimes {
  private RunTimes() {}

  static Plot of(Bench bench, List<Object> facts) {
    List<Row> rows = new ArrayList<>();
    Amount charge = DutyTime.usableCharge(bench);
    if (charge.isAbsent()) {
      Amount wanted = Amount.missing("parts", "pack", "choose a pack");
      rows.add(new Row("charge", "usable charge", List.of(Mark.of(Meaning.CHARGE, wanted))));
      return new Plot(Plot.Subject.RUN_TIME, "", rows, List.of());
    }
    rows.add(new Row("charge", "usable charge", List.of(Mark.of(Meaning.CHARGE, charge))));
    for (DutyTime duty : DutyTime.of(bench)) {
      rows.add(row(duty.duty().words(), Mark.along(Meaning.HOURS, duty.meanAmps(), duty.hours())));
    }
    for (RunTime run : Plots.all(facts, RunTime.class)) {
      rows.add(row("the duty asked for", Mark.along(Meaning.HOURS, run.meanAmps(), run.hours())));
      rows.add(
          row("the same at 0 °C", Mark.along(Meaning.COLD_HOURS, run.meanAmps(), run.coldHours())));
      rows.add(
          new Row(
              "wish",
              "run time asked for",
              List.of(
                  Mark.of(Meaning.ASKED, run.askedHours()),
                  Mark.of(Meaning.ALLOWED, DutyTime.allowedAmps(bench)))));
    }
    return new Plot(Plot.Subject.RUN_TIME, "", rows, List.of());
  }

  private static Row row(String name, Mark mark) {
    return new Row(name, name, List.of(mark));
  }
}

package outshop.render.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.circuit.LoadCase;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;

/** The table beside each plot: everything it holds, in words. */
final class Tables {
  private Tables() {}

  /** A table: its columns' headers and its rows. */
  record Table(List<String> headers, List<List<String>> rows) {}

  static Table of(Plot plot) {
    return switch (plot.subject()) {
      case VOLTAGE_WINDOWS -> windows(plot);
      case CURRENT_LADDER ->
          columns(
              plot,
              "part or conductor",
              List.of(
                  Meaning.CRUISING,
                  Meaning.SLIPPING,
                  Meaning.BLOCKED,
                  Meaning.CONTINUOUS,
                  Meaning.PEAK));
      case LOUDNESS ->
          columns(
              plot,
              "speaker",
              List.of(
                  Meaning.OHMS,
                  Meaning.BY_LOAD,
                  Meaning.BY_ALL,
                  Meaning.GETS_WATTS,
                  Meaning.TAKES_WATTS));
      case FUSE_GATES -> points(plot, "current");
      case RUN_TIME -> points(plot, "mean current");
    };
  }

  private static Table columns(Plot plot, String first, List<Meaning> meanings) {
    List<String> headers = new ArrayList<>(List.of(first));
    meanings.forEach(m -> headers.add(m.words()));
    List<List<String>> rows = new ArrayList<>();
    for (Row row : plot.rows()) {
      List<String> cells = new ArrayList<>(List.of(name(row)));
      meanings.forEach(m -> cells.add(cell(row, row.find(m))));
      rows.add(cells);
    }
    return new Table(headers, rows);
  }

  private static String name(Row row) {
    return row.described().startsWith(row.name())
        ? Texts.visible(row.described())
        : Texts.visible(row.name()) + ": " + Texts.visible(row.described());
  }

  private static String cell(Row row, Optional<Mark> mark) {
    return mark.map(m -> Texts.visible(Numbers.cell(m.amount(), Rows.known(row)))).orElse("none");
  }

  private static Table windows(Plot plot) {
    List<List<String>> rows = new ArrayList<>();
    for (Row row : plot.rows()) {
      for (Meaning bound : List.of(Meaning.TAKES_LEAST, Meaning.TAKES_MOST, Meaning.RATED)) {
        row.find(bound)
            .ifPresent(
                m -> rows.add(List.of(name(row), bound.words(), "", cell(row, row.find(bound)))));
      }
      for (Mark mark : row.marks()) {
        if (mark.charge().isPresent() || mark.meaning() == Meaning.NO_LOAD) {
          rows.add(
              List.of(
                  name(row),
                  mark.meaning().words(),
                  mark.charge().map(LoadCase.Charge::words).orElse(""),
                  cell(row, Optional.of(mark))));
        }
      }
    }
    return new Table(List.of("part", "what", "pack", "volts"), rows);
  }

  private static Table points(Plot plot, String across) {
    List<List<String>> rows = new ArrayList<>();
    for (Row row : plot.rows()) {
      for (Mark mark : row.marks()) {
        List<Amount.Known> beside = Rows.known(row);
        rows.add(
            List.of(
                name(row),
                mark.along().map(a -> Texts.visible(Numbers.cell(a, List.of()))).orElse(""),
                mark.meaning().words(),
                Texts.visible(Numbers.cell(mark.amount(), beside))));
      }
    }
    return new Table(List.of("row", across, "what", "value"), rows);
  }
}

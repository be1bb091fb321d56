package outshop.render.plot;

import java.util.ArrayList;
import java.util.List;
import outshop.plots.Plot;

/** Draws the plots of a report. */
public final class Drawings {
  private Drawings() {}

  /** Every plot in its order; the same data give the same text to the byte. */
  public static List<Drawn> of(List<Plot> plots) {
    List<Drawn> drawn = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (Plot plot : plots) {
      String id = "plot-" + plot.subject().word();
      int number = 1;
      while (ids.contains(number == 1 ? id : id + "-" + number)) {
        number++;
      }
      ids.add(number == 1 ? id : id + "-" + number);
      drawn.add(drawn(plot, ids.get(ids.size() - 1)));
    }
    return List.copyOf(drawn);
  }

  private static Drawn drawn(Plot plot, String id) {
    Canvas canvas = new Canvas(id);
    switch (plot.subject()) {
      case VOLTAGE_WINDOWS -> WindowsDrawing.draw(canvas, plot);
      case CURRENT_LADDER -> LadderDrawing.draw(canvas, plot);
      case FUSE_GATES -> FuseDrawing.draw(canvas, plot);
      case RUN_TIME -> RunTimeDrawing.draw(canvas, plot);
      case LOUDNESS -> LoudnessDrawing.draw(canvas, plot);
    }
    String title = Texts.apart(plot.title());
    String summary = Summary.of(plot);
    Tables.Table table = Tables.of(plot);
    return new Drawn(
        id,
        title,
        canvas.finished(title, summary),
        summary,
        table.headers(),
        table.rows(),
        plot.wants());
  }
}

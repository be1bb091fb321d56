package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import outshop.units.Amount;
import outshop.units.Want;

/**
 * The data of one plot.
 *
 * @param of the part it is about, where there may be several such plots; else empty
 * @param remarks what is not drawn, and why, in sentences
 */
public record Plot(Subject subject, String of, List<Row> rows, List<String> remarks) {

  /** What a plot is about. */
  public enum Subject {
    VOLTAGE_WINDOWS("voltage-windows", "What each part takes and what it gets"),
    CURRENT_LADDER("current-ladder", "What each part carries and what it may carry"),
    FUSE_GATES("fuse-gates", "How soon the fuse opens"),
    RUN_TIME("run-time", "How long one charge lasts"),
    LOUDNESS("loudness", "How loud, by the speaker");

    private final String word;
    private final String title;

    Subject(String word, String title) {
      this.word = word;
      this.title = title;
    }

    /** A word for files and anchors, the same for ever. */
    public String word() {
      return word;
    }

    public String title() {
      return title;
    }
  }

  public Plot {
    rows = List.copyOf(rows);
    remarks = List.copyOf(remarks);
  }

  /** The title with the part it is about. */
  public String title() {
    return of.isEmpty() ? subject.title() : subject.title() + ": " + of;
  }

  /** What is missing for want of data, each once, in order of name. */
  public List<Want> wants() {
    TreeSet<Want> wants = new TreeSet<>();
    for (Row row : rows) {
      for (Mark mark : row.marks()) {
        if (mark.amount() instanceof Amount.Missing missing) {
          wants.addAll(missing.wants());
        }
        if (mark.along().orElse(mark.amount()) instanceof Amount.Missing missing) {
          wants.addAll(missing.wants());
        }
      }
    }
    return List.copyOf(wants);
  }

  /** The assumed values behind it, each once, in the order they enter. */
  public List<Amount.Known> assumptions() {
    List<Amount.Known> found = new ArrayList<>();
    for (Row row : rows) {
      for (Mark mark : row.marks()) {
        add(found, mark.amount());
        mark.along().ifPresent(along -> add(found, along));
      }
    }
    return found;
  }

  private static void add(List<Amount.Known> found, Amount amount) {
    if (amount instanceof Amount.Known known) {
      for (Amount.Known assumed : known.assumptions()) {
        if (found.stream().noneMatch(f -> f.label().equals(assumed.label()))) {
          found.add(assumed);
        }
      }
    }
  }
}

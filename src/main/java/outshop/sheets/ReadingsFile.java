package outshop.sheets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.input.Nearest;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.input.Tree;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/**
 * A user's file of readings: {@code outshop_readings: 1} and {@code readings:} with one line a
 * step.
 *
 * @param readings by the step's name, in the order of the file; a step left blank is not in it
 * @param problems all that is wrong with the file, in its order
 */
public record ReadingsFile(Map<String, Reading> readings, List<Problem> problems) {
  private static final String VERSION = "outshop_readings";
  private static final String READINGS = "readings";
  private static final String JOINED = "joined";
  private static final String OPEN = "open";

  public ReadingsFile {
    readings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(readings));
    problems = List.copyOf(problems);
  }

  /** Whether nothing in it is wrong. */
  public boolean isUsable() {
    return problems.isEmpty();
  }

  /** Reads a file against the sheet that it answers; one that cannot be opened is a problem. */
  public static ReadingsFile read(Path path, BenchSheet sheet) {
    return new Walk(path.toString(), sheet).read(Tree.read(path.toString(), path));
  }

  /** Reads bytes against the sheet that they answer. Never throws for what stands in them. */
  public static ReadingsFile read(String file, byte[] bytes, BenchSheet sheet) {
    return new Walk(file, sheet).read(Tree.read(file, bytes));
  }

  private static final class Walk {
    private final String file;
    private final Map<String, BenchSheet.Step> steps = new LinkedHashMap<>();
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    Walk(String file, BenchSheet sheet) {
      this.file = file;
      sheet.steps().forEach(s -> steps.put(s.name(), s));
    }

    ReadingsFile read(Tree.Read tree) {
      problems.addAll(tree.problems());
      tree.root().ifPresent(this::root);
      return new ReadingsFile(readings, problems);
    }

    private void root(Tree.Node root) {
      if (!(root instanceof Tree.Fields fields)) {
        problem(root, "", "", "the file is no list of keys", "a line \"readings:\"");
        return;
      }
      for (Tree.Entry entry : fields.entries()) {
        switch (entry.key()) {
          case VERSION -> version(entry);
          case READINGS -> readings(entry);
          default ->
              problems.add(
                  Problem.error(
                      new Place(file, entry.line(), entry.column(), ""),
                      entry.key(),
                      "there is no such key"
                          + Nearest.hint(entry.key(), List.of(VERSION, READINGS)),
                      VERSION + " or " + READINGS));
        }
      }
      if (fields.find(VERSION).isEmpty() && problems.isEmpty()) {
        problem(root, "", "", "the version is missing", VERSION + ": 1");
      }
      if (fields.find(READINGS).isEmpty() && problems.isEmpty()) {
        problem(root, "", "", "the readings are missing", "a line \"readings:\"");
      }
    }

    private void version(Tree.Entry entry) {
      boolean right = entry.value() instanceof Tree.Text text && text.text().equals("1");
      if (!right) {
        String found = entry.value() instanceof Tree.Text text ? text.text() : "";
        problem(entry.value(), VERSION, found, "this version is not known here", "1");
      }
    }

    private void readings(Tree.Entry entry) {
      if (entry.value() instanceof Tree.Text text && text.isBlank()) {
        return;
      }
      if (!(entry.value() instanceof Tree.Fields fields)) {
        problem(
            entry.value(),
            READINGS,
            "",
            "no steps stand here",
            "lines such as \"idle-amps: 95 mA\"");
        return;
      }
      fields.entries().forEach(this::reading);
    }

    private void reading(Tree.Entry entry) {
      String path = READINGS + "." + entry.key();
      Optional<BenchSheet.Step> step = Optional.ofNullable(steps.get(entry.key()));
      if (step.isEmpty()) {
        problems.add(
            Problem.error(
                new Place(file, entry.line(), entry.column(), READINGS),
                entry.key(),
                "the bench sheet of this plan has no such step"
                    + Nearest.hint(entry.key(), steps.keySet()),
                "a step's short name as the sheet prints it"));
        return;
      }
      if (!(entry.value() instanceof Tree.Text text)) {
        problem(entry.value(), path, "", "this is no reading", "one value, such as \"0.42 A\"");
        return;
      }
      if (!text.isBlank()) {
        value(step.get(), text, path);
      }
    }

    private void value(BenchSheet.Step step, Tree.Text text, String path) {
      Unit unit = step.expected().unit();
      boolean words = unit == Unit.OHMS;
      String written = text.text().strip();
      if (words && written.equals(OPEN)) {
        readings.put(step.name(), new Reading.Open());
      } else if (step.expected().isContinuity() && written.equals(JOINED)) {
        readings.put(step.name(), new Reading.Joined());
      } else {
        number(step, text, path, unit, written);
      }
    }

    private void number(
        BenchSheet.Step step, Tree.Text text, String path, Unit unit, String written) {
      QuantityReader.Result result = QuantityReader.read(written, unit);
      if (result instanceof QuantityReader.Read read) {
        readings.put(step.name(), new Reading.Value(read.value(), unit));
        return;
      }
      String wordsToo =
          step.expected().isContinuity()
              ? "\"joined\", \"open\" or "
              : unit == Unit.OHMS ? "\"open\" or " : "";
      String expected = wordsToo + ((QuantityReader.Unreadable) result).expected();
      problem(text, path, text.text(), "this is no reading of this step", expected);
    }

    private void problem(Tree.Node at, String path, String found, String what, String expected) {
      problems.add(
          Problem.error(new Place(file, at.line(), at.column(), path), found, what, expected));
    }
  }
}

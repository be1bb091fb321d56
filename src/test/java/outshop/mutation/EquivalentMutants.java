package outshop.mutation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The mutants that no example can tell from the rule, each with the reason, as kept by hand in
 * {@code equivalent-mutants.txt}: {@code rule | fault | detail | reason}, a {@code *} for any rule
 * or any detail.
 */
final class EquivalentMutants {
  private static final String FILE = "/equivalent-mutants.txt";

  private final List<Entry> entries;

  private EquivalentMutants(List<Entry> entries) {
    this.entries = entries;
  }

  /** One line of the list. */
  record Entry(String rule, String fault, String what, String reason) {
    boolean means(Mutant mutant) {
      return isFor(rule, mutant.rule())
          && fault.equals(mutant.fault().words())
          && isFor(what, mutant.what());
    }

    private static boolean isFor(String pattern, String text) {
      return pattern.equals("*") || pattern.equals(text);
    }

    @Override
    public String toString() {
      return rule + " | " + fault + " | " + what;
    }
  }

  static EquivalentMutants load() {
    try (InputStream in = EquivalentMutants.class.getResourceAsStream(FILE)) {
      return of(new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static EquivalentMutants of(List<String> lines) {
    List<Entry> entries = new ArrayList<>();
    for (String line : lines) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      // The text of a rule may hold " || ", never " | ".
      String[] cells = line.split(" \\| ", -1);
      if (cells.length != 4 || cells[3].isBlank()) {
        throw new IllegalArgumentException("not \"rule | fault | detail | reason\": " + line);
      }
      entries.add(new Entry(cells[0], cells[1], cells[2], cells[3].trim()));
    }
    return new EquivalentMutants(List.copyOf(entries));
  }

  /** Why no example can tell this mutant from the rule; empty if it is not on the list. */
  Optional<String> reason(Mutant mutant) {
    return entries.stream().filter(e -> e.means(mutant)).map(Entry::reason).findFirst();
  }

  /** The lines for rules of these trials that no surviving mutant needs. */
  List<Entry> stale(List<Trial> trials) {
    return entries.stream()
        .filter(e -> e.rule().equals("*") || trials.stream().anyMatch(t -> isOf(e, t)))
        .filter(e -> trials.stream().noneMatch(t -> t.survived() && e.means(t.mutant())))
        .toList();
  }

  /** The lines for rules that are not there at all. */
  List<Entry> orphans(List<Trial> allTrials) {
    return entries.stream()
        .filter(e -> !e.rule().equals("*") && allTrials.stream().noneMatch(t -> isOf(e, t)))
        .toList();
  }

  private static boolean isOf(Entry entry, Trial trial) {
    return entry.rule().equals(trial.mutant().rule());
  }
}

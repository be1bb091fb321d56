package outshop.mutation;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import outshop.rulecases.Example;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/**
 * How good the examples beside the rules are: puts faults into every rule, one at a time, counts
 * how many of them the rule's own examples notice, and writes {@code docs/rule-mutation.md}.
 */
public final class RuleMutation {
  static final Path PAGE = Path.of("docs/rule-mutation.md");

  private RuleMutation() {}

  /**
   * Arguments: the families or rules to try, with commas between; all, and the page is written, if
   * none is named. Exits with 1 if a mutant survives that is not on the list of equivalent ones, if
   * a line of that list is not needed, or, with {@code CI=true}, if the page was another before.
   */
  public static void main(String[] args) throws IOException {
    PrintStream out = System.out;
    long start = System.nanoTime();
    List<String> only =
        Stream.of(String.join(",", args).split(",")).filter(arg -> !arg.isBlank()).toList();
    List<RuleText> pages =
        RuleBook.load().all().stream()
            .filter(p -> only.isEmpty() || only.contains(p.family()) || only.contains(p.name()))
            .toList();
    List<Trial> trials =
        new MutationRun(
                Example.all(),
                line -> out.printf(Locale.ROOT, "%6.1f s  %s%n", seconds(start), line))
            .of(pages);
    if (trials.isEmpty()) {
      throw new IllegalArgumentException("no rule or family of that name: " + only);
    }
    MutationPage page = new MutationPage(trials, EquivalentMutants.load());
    page.survivors().forEach(m -> out.println("survives: " + m.key()));
    page.stale(only.isEmpty()).forEach(e -> out.println("no longer needed: " + e));
    out.printf(Locale.ROOT, "%s; %.0f s%n", page.score(), seconds(start));
    boolean old = only.isEmpty() && rewritten(page.text()) && "true".equals(System.getenv("CI"));
    if (old) {
      out.println(PAGE + " was not what this run finds");
    }
    if (old || !page.survivors().isEmpty() || !page.stale(only.isEmpty()).isEmpty()) {
      System.exit(1);
    }
  }

  /** Writes the page; whether that changed it. */
  private static boolean rewritten(String text) throws IOException {
    String before = Files.exists(PAGE) ? Files.readString(PAGE) : "";
    Files.writeString(PAGE, text);
    return !before.equals(text);
  }

  private static double seconds(long start) {
    return (System.nanoTime() - start) / 1e9;
  }
}

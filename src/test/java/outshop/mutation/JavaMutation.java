package outshop.mutation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Writes {@code docs/java-mutation.md} from what the mutation run over the Java left behind ({@code
 * target/pit-reports/mutations.csv}).
 */
public final class JavaMutation {
  private static final Path RESULT = Path.of("target/pit-reports/mutations.csv");
  private static final Path PAGE = Path.of("docs/java-mutation.md");

  private static final String HEAD =
      """
      # How good the tests of the reckoning are

      Made by `mvn -Pmutation test-compile org.pitest:pitest-maven:mutationCoverage exec:exec@java-mutation` (ten minutes on two processors that
      have nothing else to do); do not edit. The classes that reckon get one deliberate fault at a time (a *mutant*: a comparison turned, a sign
      changed, a call dropped, a result replaced), and the tests that reach it are run. *noticed* are those that a test fails on; *never ends*
      those with which a test ran many times as long as it should, which counts as noticed; *survive* those that no test fails on; *not reached*
      those that no test runs.

      The faults of the rules themselves are another matter: [rule-mutation.md](rule-mutation.md).

      """;

  private static final String REASONS =
      """

      ## What survives

      Most of it stands in the solver, and much of that changes nothing that can be seen, because the solver has more than one way to the one
      solution: where the few loops will not do it takes the whole set of equations, where a step goes too far it halves it, where it does not
      settle it raises the sources from nothing, and it accepts only what balances at every net. A fault in one way then costs time, not truth.
      A comparison that lets *equal* pass where it did not (*conditionals boundary*) changes a figure only where two computed values meet to
      the last bit, and there the laws on either side give the same. These are not proven one by one.

      | class | method | faults that no test notices |
      | --- | --- | --- |
      """;

  private JavaMutation() {}

  /** A mutant and what became of it. */
  private record Fault(String type, String kind, String method, String fate) {
    static Fault of(String line) {
      String[] cells = line.split(",");
      String kind = cells[2].substring(cells[2].lastIndexOf('.') + 1).replace("Mutator", "");
      return new Fault(
          // A lambda that was written down as a class belongs to the class it stands in.
          cells[1].replaceFirst("^outshop\\.", "").replaceFirst("\\$\\$\\d+$", ""),
          kind.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT),
          cells[3],
          cells[5]);
    }

    boolean is(String word) {
      return fate.equals(word);
    }

    boolean isOpen() {
      return is("SURVIVED") || is("NO_COVERAGE");
    }
  }

  public static void main(String[] arguments) throws IOException {
    List<Fault> faults = new ArrayList<>();
    for (String line : Files.readAllLines(RESULT)) {
      faults.add(Fault.of(line));
    }
    Files.writeString(PAGE, text(faults));
  }

  private static String text(List<Fault> faults) {
    StringBuilder text = new StringBuilder(HEAD);
    text.append("| class | mutants | noticed | never ends | survive | not reached | score |\n");
    text.append("| --- | --- | --- | --- | --- | --- | --- |\n");
    grouped(faults, Fault::type).forEach((type, of) -> text.append(row(type, of)));
    text.append(row("all", faults)).append(REASONS);
    List<Fault> open = faults.stream().filter(Fault::isOpen).toList();
    grouped(open, Fault::type)
        .forEach(
            (type, ofType) ->
                grouped(ofType, Fault::method)
                    .forEach(
                        (method, of) ->
                            text.append(
                                "| %s | `%s` | %s |\n".formatted(type, method, kinds(of)))));
    return text.toString();
  }

  private static String kinds(List<Fault> faults) {
    List<String> words = new ArrayList<>();
    grouped(faults, Fault::kind)
        .forEach((kind, of) -> words.add(of.size() == 1 ? kind : kind + " (" + of.size() + ")"));
    return String.join(", ", words);
  }

  private static Map<String, List<Fault>> grouped(
      List<Fault> faults, Function<Fault, String> group) {
    Map<String, List<Fault>> groups = new TreeMap<>();
    faults.forEach(f -> groups.computeIfAbsent(group.apply(f), g -> new ArrayList<>()).add(f));
    return groups;
  }

  private static String row(String name, List<Fault> of) {
    long late = count(of, "TIMED_OUT");
    long survive = count(of, "SURVIVED");
    long unreached = count(of, "NO_COVERAGE");
    long noticed = of.size() - survive - unreached;
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %.0f %% |\n",
        name,
        of.size(),
        noticed,
        late,
        survive,
        unreached,
        100.0 * noticed / of.size());
  }

  private static long count(List<Fault> faults, String fate) {
    return faults.stream().filter(f -> f.is(fate)).count();
  }
}

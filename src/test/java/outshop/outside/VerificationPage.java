package outshop.outside;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import outshop.acceptance.PlanNetwork;
import outshop.circuit.solve.ComparedNetworks;
import outshop.circuit.solve.Network;
import outshop.circuit.solve.NoSolution;
import outshop.circuit.solve.Solver;
import outshop.circuit.solve.Stored;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/** Writes {@code docs/verification.md} from the checks, the stored results and the rule book. */
public final class VerificationPage {
  private static final String HEAD =
      """
      # What is checked against the world outside

      Made from the checks in `src/test/java/outshop/outside`, the stored results of ngspice and the rule book; do not edit. Every row is a
      test that runs with the others (`mvn test -Dtest=OutsideChecksTest`): *expected* comes from the source, *found* is what the program makes
      of the same inputs. Where a book prints a figure, the two agree to half of its last digit.

      A source is shown as far as it was read: *second-hand* means that a page which quotes it was read, not the standard or book itself;
      *from memory* that nothing was at hand to read; *worked out* that the expected value is arithmetic with published values, done apart from
      the program. What all this rests on least is gathered under [Not confirmed](#not-confirmed).

      """;

  private static final String RULES =
      """

      ## What stands behind each rule

      The four lists that follow hold every rule once, by how far its source was read, with the checks that bear on it, counted by the areas
      above: those of *the rule itself* run it or compare its bound with the source; the others check a figure that it compares or names, or
      what that figure is made of. *Solved circuits*: what it compares comes from solving the whole circuit, so the textbook circuits, the
      hand calculations and the circuits given to ngspice bear on it, and the checks of the wires, packs and motors that stand in it. *None*:
      the rule rests on its source and its examples alone. `src/test/resources/outside-proof.txt` says of each check on which rules it bears,
      and [coverage.md](coverage.md) sets the sum of it beside the examples.
      """;

  private static final String PRACTICE =
      """

      ## Common practice

      These rules rest, wholly or in part, on what the trade does; no source was found. It says nothing of how sound they are, only that
      nobody outside can be asked.
      """;

  private static final String UNREAD =
      """

      ## Rules whose source was not read

      These rest on a standard or book that others quoted, or on memory.
      """;

  private static final String READ =
      """

      ## Rules whose source was read

      What these rest on stands in a published text that was at hand.
      """;

  private static final String WITHOUT =
      """

      ## Rules that need no publication

      What the data sheet of a part states, and what follows from the wiring or the measurements themselves.
      """;

  private static final String LIST =
      """

      | rule | its source, as its page gives it | checks that bear on it |
      | --- | --- | --- |
      """;

  private static final String NGSPICE =
      """

      ## Circuits given to ngspice

      The program writes each network as a netlist; ngspice solves it. Currents and voltages of every element are compared with a run where
      ngspice is installed, and always with stored results. They may differ by 0.1 %, by 0.5 % where a load of constant power or a switching
      regulator is in the network. The largest difference below is that from the stored results, rounded up, in millionths of a volt or of an
      ampere, whichever is more. Fifteen networks put together by chance are compared as well where ngspice is installed.

      | networks | circuits | largest difference, millionths |
      | --- | --- | --- |
      """;

  /** Differences below this many millionths are rounding. */
  private static final double ROUNDING = 0.001;

  private final StringBuilder text = new StringBuilder();

  private VerificationPage() {}

  public static String text() {
    VerificationPage page = new VerificationPage();
    Map<String, List<OutsideCheck>> areas = new LinkedHashMap<>();
    for (OutsideCheck check : OutsideChecks.all()) {
      areas.computeIfAbsent(check.area(), area -> new ArrayList<>()).add(check);
    }
    page.text.append(HEAD);
    page.counts(areas);
    areas.forEach(page::area);
    page.simulator();
    page.text.append(RULES);
    OutsideProof proofs = OutsideProof.load();
    page.rules(PRACTICE, proofs, Reading.PRACTICE);
    page.rules(UNREAD, proofs, Reading.SECOND_HAND, Reading.MEMORY);
    page.rules(READ, proofs, Reading.READ, Reading.WORKED_OUT);
    page.rules(WITHOUT, proofs, Reading.OWN_DATA, Reading.CIRCUIT, Reading.GEOMETRY);
    page.text.append(NotConfirmed.TEXT);
    return page.text.toString();
  }

  private void counts(Map<String, List<OutsideCheck>> areas) {
    row("area", "checks", Reading.ofPublished().stream().map(Reading::words).toList());
    row("---", "---", Reading.ofPublished().stream().map(reading -> "---").toList());
    areas.forEach((area, checks) -> row(area, checks.size(), readings(checks)));
    List<OutsideCheck> all = areas.values().stream().flatMap(List::stream).toList();
    row("together", all.size(), readings(all));
  }

  private static List<String> readings(List<OutsideCheck> checks) {
    Map<Reading, Integer> counts = new EnumMap<>(Reading.class);
    checks.forEach(check -> counts.merge(check.reading(), 1, Integer::sum));
    return Reading.ofPublished().stream()
        .map(reading -> String.valueOf(counts.getOrDefault(reading, 0)))
        .toList();
  }

  private void area(String area, List<OutsideCheck> checks) {
    text.append("\n## ").append(area.substring(0, 1).toUpperCase(Locale.ROOT));
    text.append(area.substring(1)).append("\n\n");
    row("check", "source", List.of("expected", "found", "tolerance"));
    row("---", "---", List.of("---", "---", "---"));
    String above = "";
    for (OutsideCheck check : checks) {
      row(
          check.what(),
          check.source().equals(above) ? "as above" : check.source(),
          List.of(check.expectedText(), check.gotText(), check.toleranceText()));
      above = check.source();
    }
  }

  private void simulator() {
    text.append(NGSPICE);
    ComparedNetworks.all()
        .forEach((name, network) -> row(name, 1, List.of(millionths(apart(name, network)))));
    Map<String, List<Double>> plans = new LinkedHashMap<>();
    for (PlanNetwork network : PlanNetwork.all()) {
      plans
          .computeIfAbsent(network.plan(), plan -> new ArrayList<>())
          .add(apart(network.name(), network.network()));
    }
    plans.forEach(
        (plan, differences) ->
            row(
                "demo plan " + plan,
                differences.size(),
                List.of(millionths(differences.stream().mapToDouble(d -> d).max().orElseThrow()))));
  }

  private static double apart(String name, Network network) {
    try {
      return Stored.apartFromStored(name, network, Solver.solve(network));
    } catch (NoSolution e) {
      throw new IllegalStateException(e);
    }
  }

  private static String millionths(double apart) {
    double size = 1e6 * apart;
    return size < ROUNDING ? "below " + Digits.two(ROUNDING) : Digits.upper(size);
  }

  private void rules(String heading, OutsideProof proofs, Reading... readings) {
    text.append(heading).append(LIST);
    for (RuleText rule : RuleBook.load().all()) {
      Proof proof = proofs.of(rule);
      if (proof.reading().filter(List.of(readings)::contains).isPresent()) {
        String link = "[%s](../rules/%s.md)".formatted(rule.name(), rule.name());
        row(link, rule.source(), List.of(proof.byArea()));
      }
    }
  }

  private void row(String first, Object second, List<String> others) {
    text.append("| ").append(first).append(" | ").append(second).append(" | ");
    text.append(String.join(" | ", others)).append(" |\n");
  }
}

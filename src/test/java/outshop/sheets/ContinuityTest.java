package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.circuit.Circuit;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.Link;

/**
 * The continuity that the bench sheets of the demo plans expect, against a search of its own: sets
 * of terminals that are merged link by link. The state is read back from the step's words, and the
 * terminals from where its leads go, so that the words are held as well.
 */
final class ContinuityTest {

  @TestFactory
  Stream<DynamicTest> everyDemoPlan() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> check(p)));
  }

  @Test
  void bothAnswersAreHeldOften() {
    long joined = all().filter(s -> s.expected() instanceof Expected.Joined).count();
    long apart = all().filter(s -> s.expected() instanceof Expected.Apart).count();
    assertThat(joined).isGreaterThan(60);
    assertThat(apart).isGreaterThan(60);
  }

  private static Stream<BenchSheet.Step> all() {
    return Sample.plans().stream().flatMap(p -> Drawn.demo(p).sheets().bench().steps().stream());
  }

  private static void check(Path path) {
    Circuit circuit = CircuitBuilder.build(Sample.plan(path));
    BenchSheet sheet = Drawn.demo(path).sheets().bench();
    int held = 0;
    for (BenchSheet.Step step : sheet.steps()) {
      if (step.expected().isContinuity()) {
        held += step.name().endsWith("-apart") ? bodies(circuit, step) : pair(circuit, step);
      }
    }
    assertThat(held).isGreaterThanOrEqualTo(4);
  }

  private static int pair(Circuit circuit, BenchSheet.Step step) {
    List<String> ends = owns(step.leads());
    assertThat(ends).as(step.name()).hasSize(2);
    boolean joined = joined(circuit, said(circuit, step.act().text()), ends.get(0), ends.get(1));
    assertThat(step.expected() instanceof Expected.Joined)
        .as("%s: %s, %s", step.name(), step.act().text(), step.leads().text())
        .isEqualTo(joined);
    return 1;
  }

  /** A frame or a rail against each lead, every switch that has it at off. */
  private static int bodies(Circuit circuit, BenchSheet.Step step) {
    Map<String, String> off = said(circuit, "");
    circuit
        .positions()
        .forEach(
            (name, positions) -> {
              if (positions.contains("off")) {
                off.put(name, "off");
              }
            });
    List<String> ends = owns(step.leads());
    List<String> bodies = ends.stream().filter(e -> !e.contains(".")).toList();
    assertThat(bodies).isNotEmpty();
    for (String body : bodies) {
      ends.stream()
          .filter(e -> e.contains("."))
          .forEach(e -> assertThat(joined(circuit, off, body, e)).as(body + " - " + e).isFalse());
    }
    return 1;
  }

  private static List<String> owns(Line line) {
    return line.pieces().stream().filter(Line.Own.class::isInstance).map(Line.Piece::text).toList();
  }

  /** The positions that a text names; the others as the locomotive runs. */
  private static Map<String, String> said(Circuit circuit, String words) {
    Map<String, String> state = new HashMap<>();
    state.put("plug", words.contains("plug in") ? "in" : "out");
    circuit
        .positions()
        .forEach(
            (name, positions) -> {
              state.put(name, positions.get(0));
              for (String position : positions) {
                if (words.matches("(.*[ ,])?" + name + " " + position + "(,.*)?")) {
                  state.put(name, position);
                }
              }
            });
    return state;
  }

  private static boolean joined(
      Circuit circuit, Map<String, String> state, String one, String other) {
    Map<String, String> group = new HashMap<>();
    for (Link link : circuit.links()) {
      if (closed(link.closed(), state)) {
        String a = top(group, link.from());
        String b = top(group, link.to());
        if (!a.equals(b)) {
          group.put(a, b);
        }
      }
    }
    return top(group, one).equals(top(group, other));
  }

  private static String top(Map<String, String> group, String terminal) {
    String top = terminal;
    while (group.containsKey(top)) {
      top = group.get(top);
    }
    return top;
  }

  private static boolean closed(Link.Closed closed, Map<String, String> state) {
    if (closed instanceof Link.Closed.WithPlug plug) {
      return plug.plugIn() == state.get("plug").equals("in");
    }
    if (closed instanceof Link.Closed.AtSwitch at) {
      return at.position().equals(state.get(at.switchName()));
    }
    return true;
  }
}

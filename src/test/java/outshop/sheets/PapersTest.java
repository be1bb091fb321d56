package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.catalogue.Kind;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.Link;
import outshop.plan.Plan;

/** What stands on the wiring sheet, the buying list and the owner's sheet. */
final class PapersTest {

  @TestFactory
  Stream<DynamicTest> theWiringSheetHasEveryWireOfTheCircuitOnce() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> wires(p)));
  }

  private static void wires(Path path) {
    List<String> circuit =
        CircuitBuilder.build(Sample.plan(path)).links().stream()
            .filter(l -> l.sort() == Link.Sort.WIRE)
            .map(l -> l.from() + " - " + l.to())
            .toList();
    WiringSheet sheet = Drawn.demo(path).sheets().wiring();
    assertThat(sheet.wires().stream().map(w -> w.from() + " - " + w.to())).isEqualTo(circuit);
    assertThat(sheet.wires().stream().map(w -> (int) w.number().value()))
        .isEqualTo(Stream.iterate(1, i -> i + 1).limit(circuit.size()).toList());
  }

  @Test
  void aWireHasItsGaugeLengthAndColour() {
    WiringSheet.Wire wire = Drawn.demo("sallowmere-tank").sheets().wiring().wires().get(0);
    assertThat(wire.from()).isEqualTo("pack.plus");
    assertThat(wire.gauge().orElseThrow().text()).isEqualTo("20 AWG");
    // Half of 70 mm: the connector stands half way.
    assertThat(wire.length().orElseThrow().value()).isCloseTo(0.035, within(1e-12));
    assertThat(wire.colour()).contains("red");
  }

  /** 2 x 1.15 x 0.8118 mm = 1.867 mm over the joint of two 20 AWG wires; insulation 1.8 mm. */
  @Test
  void aSleevePassesTheJointAndShrinksOntoTheWire() throws IOException {
    Line size = Drawn.sheets(Drawn.base()).wiring().wires().get(0).sleeve();
    assertThat(size.figures().get(0).value()).isCloseTo(0.001867, within(1e-6));
    assertThat(size.figures().get(1).value()).isCloseTo(0.0018, within(1e-12));
    String sleeve =
        "  shrink: {kind: sleeve, title: shrink sleeve, supplied_bore_mm: %s mm, recovered_bore_mm: %s mm, price_each: 0.7}\n  speaker:\n    kind: speaker";
    assertThat(named(sleeve, "2.4", "1.2")).isEqualTo("shrink");
    assertThat(named(sleeve, "1.6", "0.8")).startsWith("over ");
    assertThat(named(sleeve, "4.8", "2.4")).startsWith("over ");
  }

  private static String named(String sleeve, String supplied, String recovered) throws IOException {
    Plan plan =
        Drawn.base(
            "  speaker:\n    kind: speaker",
            String.format(Locale.ROOT, sleeve, supplied, recovered));
    return Drawn.sheets(plan).wiring().wires().get(0).sleeve().text();
  }

  @TestFactory
  Stream<DynamicTest> theBuyingListAddsUp() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> addsUp(p)));
  }

  private static void addsUp(Path path) {
    Plan plan = Sample.plan(path);
    BuyingList list = Drawn.demo(path).sheets().buying();
    double sum =
        Stream.concat(list.parts().stream(), list.materials().stream())
            .flatMap(r -> r.cost().stream())
            .mapToDouble(Figure::value)
            .sum();
    assertThat(list.total().value()).isCloseTo(sum, within(0.001));
    double pieces =
        list.parts().stream().mapToDouble(r -> r.quantity().orElseThrow().value()).sum();
    assertThat(pieces).isEqualTo(plan.parts().stream().filter(p -> !p.is(Kind.SLEEVE)).count());
    assertThat(list.budget().isPresent()).isEqualTo(plan.amount("wishes.budget").isKnown());
  }

  /**
   * Sallowmere: 20 AWG 35 + 35 + 50 + 120 + 120 + 125 + 125 + 250 + 50 + 50 + 150 + 150 = 1.26 m, a
   * fifth more is 1.512 m, up to 1.6 m at 0.70 a metre.
   */
  @Test
  void wireIsCountedWithAFifthToSpare() {
    BuyingList.Row wire = Drawn.demo("sallowmere-tank").sheets().buying().materials().get(0);
    assertThat(wire.quantity().orElseThrow().value()).isEqualTo(1.6);
    assertThat(wire.cost().orElseThrow().value()).isEqualTo(1.12);
  }

  @Test
  void whatThePlanNeedsAndDoesNotNameIsListed() throws IOException {
    assertThat(missing(Drawn.base()))
        .anyMatch(m -> m.startsWith("a holder for fuse"))
        .anyMatch(m -> m.startsWith("two spare fuses"))
        .anyMatch(m -> m.startsWith("shrink sleeve"))
        .noneMatch(m -> m.contains("every such locomotive"));
    Plan bare = Drawn.base();
    Plan without =
        bare.withParts(
            bare.parts().stream().filter(p -> !p.is(Kind.FUSE) && !p.is(Kind.HANDSET)).toList());
    assertThat(missing(without))
        .contains("a handset: every such locomotive needs one")
        .contains("a fuse with its holder, for the pack's plus")
        .noneMatch(m -> m.startsWith("two spare"));
  }

  private static List<String> missing(Plan plan) {
    return Drawn.sheets(plan).buying().missing().stream().map(Line::text).toList();
  }

  @Test
  void aPartWithoutAPriceIsNamedAndNotCountedAsNothing() throws IOException {
    BuyingList list =
        Drawn.sheets(
                Drawn.base("price_each: 120\n", "mass_grams: 20 g\n", "    mass_grams: 20 g\n", ""))
            .buying();
    assertThat(list.unpriced()).containsExactly("radio receiver, DCC out");
    assertThat(list.total().value())
        .isCloseTo(Drawn.sheets(Drawn.base()).buying().total().value() - 120, within(0.001));
  }

  @TestFactory
  Stream<DynamicTest> noSheetEverSaysThatSomethingIsWithoutDanger() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> modest(p)));
  }

  private static void modest(Path path) {
    Sheets sheets = Drawn.demo(path).sheets();
    Stream<Line> owner = sheets.owner().chapters().stream().flatMap(c -> c.rules().stream());
    Stream<Line> bench =
        sheets.bench().steps().stream()
            .flatMap(
                s -> Stream.concat(Stream.of(s.act()), s.ifOff().stream().map(o -> o.means())));
    List<String> texts =
        Stream.of(
                owner, bench, sheets.bench().cautions().stream(), sheets.wiring().notes().stream())
            .flatMap(s -> s)
            .map(Line::text)
            .toList();
    assertThat(texts)
        .noneMatch(
            t -> t.toLowerCase(Locale.ROOT).matches(".*\\b(safe|safely|harmless|no risk)\\b.*"))
        .anyMatch(t -> t.contains("qualified people"))
        .anyMatch(t -> t.contains("makers' instructions, local codes"));
  }

  @Test
  void theOwnersSheetHasTheFiguresOfTheReport() {
    OwnerSheet owner = Drawn.demo("sallowmere-tank").sheets().owner();
    List<Figure> figures =
        owner.chapters().stream()
            .flatMap(c -> c.rules().stream())
            .flatMap(r -> r.figures().stream())
            .toList();
    double runs =
        Drawn.demo("sallowmere-tank").report().fine().stream()
            .filter(f -> f.rule().equals("endurance/runs-too-short"))
            .findFirst()
            .orElseThrow()
            .demand()
            .orElseThrow()
            .value();
    assertThat(figures)
        .filteredOn(f -> f.name().equals("run-time"))
        .extracting(Figure::value)
        .containsExactly(runs);
    assertThat(figures)
        .filteredOn(f -> f.name().equals("charge-min"))
        .extracting(Figure::text)
        .containsExactly("0 °C");
    assertThat(figures)
        .filteredOn(f -> f.name().equals("fuse"))
        .extracting(Figure::text)
        .containsExactly("4 A");
  }

  /** Two-pole changeover: the owner is told where the switch has to stand. */
  @Test
  void theOwnerIsToldHowTheSwitchesStandForCharging() {
    assertThat(charging("thistlewick-tender")).contains("First switch to charge");
    assertThat(charging("sallowmere-tank")).contains("The locomotive is dead meanwhile");
  }

  private static String charging(String plan) {
    return Drawn.demo(plan).sheets().owner().chapters().stream()
        .filter(c -> c.name().equals("charging"))
        .flatMap(c -> c.rules().stream())
        .map(Line::text)
        .reduce("", String::concat);
  }
}

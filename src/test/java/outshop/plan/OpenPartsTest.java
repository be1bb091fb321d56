package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import outshop.catalogue.Catalogue;
import outshop.catalogue.CatalogueReader;
import outshop.catalogue.Kind;
import outshop.input.Problem;

/** Places that a plan leaves open with {@code any}. */
final class OpenPartsTest {
  private static final Catalogue CATALOGUE =
      CatalogueReader.read(Path.of("catalog-sample/catalogue")).catalogue();

  private static PlanReader.Read read(String parts) {
    String text = "outshop_plan: 1\n" + parts + "\n";
    return PlanReader.read("plan.yaml", text.getBytes(StandardCharsets.UTF_8), CATALOGUE);
  }

  @Test
  void theNameSaysTheKindOrTheKindStandsBesideIt() {
    PlanReader.Read read =
        read(
            "parts: {speaker-left: any, pack-plug: {kind: connector, part: any}}\nwiring: {wire: any}");

    assertThat(read.isUsable()).isTrue();
    assertThat(read.open())
        .extracting(OpenPart::name, OpenPart::kind)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("speaker-left", Kind.SPEAKER),
            org.assertj.core.groups.Tuple.tuple("pack-plug", Kind.CONNECTOR),
            org.assertj.core.groups.Tuple.tuple("wiring.wire", Kind.WIRE));
    assertThat(read.plan().parts()).isEmpty();
    assertThat(read.problems()).allMatch(p -> p.severity() == Problem.Severity.NOTE);
  }

  @Test
  void aNameThatSpeaksOfNoKindOrOfTwoIsAnError() {
    assertThat(read("parts: {pack-plug: any}").isUsable()).isFalse();
    assertThat(read("parts: {thing: any}").problems())
        .anyMatch(p -> p.line().contains("but of which kind?"));
    assertThat(read("wiring: {wires: [{from: pack.plus, to: fuse.a, wire: any}]}").problems())
        .anyMatch(p -> p.line().contains("no part can be left open here"));
  }

  @Test
  void whatThePlanStatesHoldsForWhicheverPart() {
    OpenPart open = read("parts: {receiver: {part: any, cutoff_volts: 10 V}}").open().get(0);

    assertThat(CATALOGUE.of(Kind.RECEIVER))
        .isNotEmpty()
        .allMatch(p -> open.filledWith(p).numbers().get("cutoff_volts") == 10.0);
  }

  @Test
  void idsAreFilledInAndAllElseIsKept() {
    String text =
        """
        outshop_plan: 1
        # any is fine
        parts:
          receiver: "any"   # any?
          pack-plug:
            kind: connector
            part: any
        """;
    PlanReader.Read read = PlanReader.read("p", text.getBytes(StandardCharsets.UTF_8), CATALOGUE);
    OpenPart receiver = named(read.open(), "receiver");
    OpenPart plug = named(read.open(), "pack-plug");

    Optional<String> filled =
        PlanFilling.filled(
            text, Map.of(receiver, "receiver-x", plug, "7 ways"), Map.of("fuse", "fuse-1"));

    assertThat(filled)
        .contains(
            """
            outshop_plan: 1
            # any is fine
            parts:
              fuse: fuse-1
              receiver: receiver-x   # any?
              pack-plug:
                part: "7 ways"
            """);
  }

  private static OpenPart named(List<OpenPart> open, String name) {
    return open.stream().filter(o -> o.name().equals(name)).findFirst().orElseThrow();
  }
}

package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.catalogue.Catalogue;
import outshop.circuit.Gauge;
import outshop.plan.PlanReader;

/** The figures of wires, against published values where there are any. */
final class WiringFiguresTest {

  /**
   * Source: ASTM B258 (formula, second-hand); the cross-sections are the formula's, and 2.08, 1.31,
   * 0.823, 0.518 mm2 are those of the usual tables.
   */
  @ParameterizedTest
  @CsvSource({"14, 2.0809", "16, 1.3087", "18, 0.8230", "20, 0.5176", "26, 0.1288", "30, 0.0509"})
  void theGaugeOfACrossSectionIsThatOfTheTables(double gauge, double areaMm2) {
    assertThat(WireFitFigures.gaugeOf(areaMm2)).isCloseTo(gauge, within(0.01));
    assertThat(WireFitFigures.gaugeOf(Gauge.areaMm2(gauge))).isCloseTo(gauge, within(1e-9));
  }

  /**
   * Source of the resistance: 20 AWG has 10.15 ohm for 1000 ft, Handbook of Electronic Tables and
   * Formulas, as given by Floyd, Electric Circuit Fundamentals, 2nd ed.; it agrees with the value
   * reckoned from IEC 60028 within 0.03 %. The loss is current x resistance, stretch by stretch:
   * before the receiver flow 1.4 A of the motor, 0.06 A of the lamp, 0.06 A of the sound and 0.1 A
   * of the electronics, behind it all but the last.
   */
  @Test
  void theLossIsTheCurrentTimesTheResistanceOfEachStretch() throws IOException {
    String base = Files.readString(Path.of("rules", "base-plan.yaml"));
    String wire = "wire: {kind: wire, awg: 20 AWG}";
    String plan =
        base.replace(
            "  pattern: break-contact-jack\n",
            """
                  pattern: by-wire
                  wires:
                    - {from: pack.plus, to: fuse.a, %1$s, length: 1 m}
                    - {from: fuse.b, to: receiver.in+, %1$s, length: 1 m}
                    - {from: receiver.in-, to: pack.minus, %1$s, length: 2 m}
                    - {from: receiver.out-a, to: decoder.in-a, %1$s, length: 1 m}
                    - {from: decoder.in-b, to: receiver.out-b, %1$s, length: 1 m}
                """
                .formatted(wire));
    assertThat(plan).isNotEqualTo(base);
    double metre = 10.15 / 304.8;
    double fuse = 0.015;

    LeadLoss loss = only(LeadLoss.class, plan);

    double expected = 1.62 * (4 * metre + fuse) + 1.52 * 2 * metre;
    assertThat(loss.lostVolts().get().value()).isCloseTo(expected, within(expected * 0.001));
    assertThat(loss.packVolts().get().value()).isEqualTo(14.4);
    assertThat(loss.moment()).isEqualTo("wheels slipping");
  }

  /** A cable's contacts are counted once each, however many wires end there. */
  @Test
  void aContactAtWhichTwoWiresEndCountsOnce() throws IOException {
    String plan =
        Files.readString(Path.of("rules", "base-plan.yaml"))
            .replace("outputs:\n", "  tc: {kind: cable, contacts_count: 6}\noutputs:\n")
            .replace(
                "  pattern: break-contact-jack\n",
                """
                  pattern: break-contact-jack
                  motor_through: tc
                  wires:
                    - {from: tc.1b, to: front.a, wire: {kind: wire, awg: 26 AWG}, length: 10 mm}
                    - {from: tc.5a, to: front.b, wire: {kind: wire, awg: 26 AWG}, length: 10 mm}
                """);

    assertThat(only(ContactCount.class, plan).needed().get().value()).isEqualTo(3);
  }

  private static <T> T only(Class<T> kind, String plan) {
    PlanReader.Read read =
        PlanReader.read(
            "plan.yaml", plan.getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
    assertThat(read.isUsable()).as("%s", read.problems()).isTrue();
    List<T> found =
        Facts.of(Bench.of(read.plan(), List.of())).stream()
            .filter(kind::isInstance)
            .map(kind::cast)
            .toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }
}

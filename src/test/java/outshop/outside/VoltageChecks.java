package outshop.outside;

import java.util.List;
import outshop.catalogue.Kind;
import outshop.figures.Bench;
import outshop.figures.WorkingVoltage;
import outshop.findings.Outcome;

/** Published yardsticks for voltages, as the rules answer on both sides of them. */
final class VoltageChecks {
  private static final String MOST = "voltage/decoder-over-maximum";
  private static final String LEAST = "voltage/decoder-under-minimum";

  private final CheckList list = new CheckList("voltage");

  private VoltageChecks() {}

  static List<OutsideCheck> all() {
    VoltageChecks checks = new VoltageChecks();
    checks.toys();
    checks.extraLow();
    checks.decoders();
    checks.switches();
    checks.bridge();
    return checks.list.all();
  }

  private void toys() {
    list.from("Directive 2009/48/EC, annex II, part IV: 24 V direct (second-hand)")
        .same(
            "toys",
            "electric toys, most direct volts",
            "24",
            "V",
            () -> Trial.base().fact(WorkingVoltage.class).toyVolts().get().value());
    working("toys-at", "24.00", Outcome.FINE);
    working("toys-above", "24.01", Outcome.WARNING);
  }

  private void extraLow() {
    list.from("IEC 60335-1:2010, 3.4.2: safety extra-low voltage to 60 V direct")
        .same(
            "extra-low",
            "safety extra-low voltage, most direct volts",
            "60",
            "V",
            () -> Trial.base().fact(WorkingVoltage.class).extraLowVolts().get().value());
    working("extra-low-at", "60.00", Outcome.WARNING);
    working("extra-low-above", "60.01", Outcome.VIOLATION);
  }

  private void working(String id, String volts, Outcome expected) {
    list.outcome(
        id,
        "a pack of " + volts + " V when full",
        "voltage/working-voltage",
        expected,
        () -> Trial.base().with("parts.pack.full_volts", volts + " V"));
  }

  /** The receiver before the decoder drops 0.2 V. */
  private void decoders() {
    list.from(
        "NMRA S-9.1 (2020), Table 3, large scales: a decoder stands 27 V for long (read in a"
            + " transcription)");
    decoder("decoder-at", "27.2 V", "27.0 V at a decoder for 27 V", Outcome.WARNING);
    decoder("decoder-above", "27.21 V", "27.01 V at a decoder for 27 V", Outcome.VIOLATION);
    cells("decoder-6-cells", 6, MOST, Outcome.FINE);
    cells("decoder-7-cells", 7, MOST, Outcome.VIOLATION);
    list.from(
        "NMRA S-9.1 (2020), Table 3, large scales: a decoder answers at 7 V (read in a"
            + " transcription; it need not turn the motor)");
    cells("decoder-3-cells", 3, LEAST, Outcome.FINE);
    cells("decoder-2-cells", 2, LEAST, Outcome.VIOLATION);
  }

  private void decoder(String id, String packVolts, String what, Outcome expected) {
    list.outcome(
        id, what, MOST, expected, () -> standardDecoder().with("parts.pack.full_volts", packVolts));
  }

  private void cells(String id, int cells, String rule, Outcome expected) {
    list.outcome(
        id,
        cells + " lithium-ion cells on a decoder for 7 to 27 V",
        rule,
        expected,
        () ->
            standardDecoder()
                .with("parts.pack.cells_series_count", String.valueOf(cells))
                .with("parts.pack.full_volts", "(remove)")
                .with("parts.pack.nominal_volts", "(remove)")
                .with("parts.pack.empty_volts", "(remove)")
                .with("parts.pack.cutoff_volts", "(remove)"));
  }

  private void bridge() {
    list.from(
            "T. R. Kuphaldt, Lessons in Electric Circuits, vol. III, ch. 3: 0.7 V a silicon diode,"
                + " two of a bridge in the way (the program assumes a range, 0.1 to 1.8 V)")
        .within(
            0.2,
            "bridge",
            "input rectifier of a decoder that states nothing",
            "1.4",
            "V",
            VoltageChecks::assumedBridge);
  }

  private static double assumedBridge() {
    Bench bench = Trial.base().with("parts.decoder.bridge_drop_volts", "(remove)").bench();
    return bench.first(Kind.DECODER).orElseThrow().amount("bridge_drop_volts").get().value();
  }

  private static Trial standardDecoder() {
    return Trial.base()
        .with("parts.decoder.input_min_volts", "7 V")
        .with("parts.decoder.input_max_volts", "27 V");
  }

  private void switches() {
    list.from(Sources.CIRCULAR + "ch. 11: do not use AC derated switches in DC circuits")
        .outcome(
            "ac-amps",
            "a switch rated for alternating current only",
            "current/switch-rated-for-ac-only",
            Outcome.WARNING,
            () -> Trial.base().with("parts.switch.dc_amps", "(remove)"))
        .outcome(
            "ac-volts",
            "a switch rated for alternating voltage only",
            "voltage/only-alternating-rating",
            Outcome.WARNING,
            () -> Trial.base().with("parts.switch.dc_volts", "(remove)"));
  }
}

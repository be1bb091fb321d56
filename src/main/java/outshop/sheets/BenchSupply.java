package outshop.sheets;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.circuit.PackValues;
import outshop.figures.Bench;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Unit;

/**
 * The voltages of a bench supply that stands in for the pack, chosen from the parts.
 *
 * @param first for the first power: 7 V (common practice, no source), or 5 % above what the
 *     receiver needs, rounded up to half a volt
 * @param running with which lamps and motor are tried: the same, or 5 % above what makes receiver
 *     and decoder run, a cut-off of the receiver among it
 * @param nominal the pack's, against which stated currents are taken
 */
record BenchSupply(Amount first, Amount running, Amount nominal) {
  private static final double USUAL_VOLTS = 7;
  private static final double MARGIN = 1.05;
  private static final double STEP_VOLTS = 0.5;

  static BenchSupply of(Bench bench) {
    Amount nominal =
        bench
            .pack()
            .map(PackValues::nominalVolts)
            .orElse(Amount.missing("parts", "pack", "choose a pack"));
    List<Amount> starts = new ArrayList<>();
    List<Amount> runs = new ArrayList<>();
    for (Fitted receiver : bench.plan().parts(Kind.RECEIVER)) {
      starts.add(receiver.amount("input_min_volts"));
      Amount cutoff = receiver.amount("cutoff_volts");
      if (!cutoff.isAbsent()) {
        runs.add(cutoff);
      }
    }
    for (Fitted decoder : bench.plan().parts(Kind.DECODER)) {
      runs.add(decoder.amount("input_min_volts"));
    }
    if (starts.isEmpty()) {
      starts.addAll(runs);
    }
    Amount first = chosen("bench supply, first power", starts, 0);
    double least = first instanceof Amount.Known k ? k.value() : 0;
    runs.addAll(starts);
    return new BenchSupply(
        within(bench, first), within(bench, chosen("bench supply", runs, least)), nominal);
  }

  private static Amount chosen(String label, List<Amount> needs, double least) {
    if (needs.isEmpty()) {
      return Amount.missing("parts", "receiver", "choose a receiver or a decoder");
    }
    return Amount.computed(
        label,
        Unit.VOLTS,
        "the most that is needed x 1.05, at least 7 V, up to the next half volt",
        v -> {
          double most = Math.max(USUAL_VOLTS, least);
          for (double need : v) {
            most = Math.max(most, need * MARGIN);
          }
          return Math.ceil(most / STEP_VOLTS - 1e-9) * STEP_VOLTS;
        },
        needs);
  }

  /** The voltage, or what is wrong with it: no part may get more than it takes. */
  private static Amount within(Bench bench, Amount volts) {
    List<Amount> limits = new ArrayList<>();
    for (Kind kind : List.of(Kind.RECEIVER, Kind.DECODER, Kind.REGULATOR)) {
      bench.plan().parts(kind).forEach(p -> limits.add(p.amount("input_max_volts")));
    }
    bench.pack().ifPresent(p -> limits.add(p.fullVolts()));
    List<outshop.units.Want> wants = new ArrayList<>();
    for (Amount limit : limits) {
      if (limit instanceof Amount.Missing missing) {
        wants.addAll(missing.wants());
      } else if (volts instanceof Amount.Known v
          && limit instanceof Amount.Known most
          && Exact.above(v.value(), most.value())) {
        return Amount.missing(
            "wiring",
            "a bench voltage that suits every part",
            most.label() + " lies below what the other parts need to run");
      }
    }
    return wants.isEmpty() || volts.isMissing() ? volts : new Amount.Missing(wants);
  }

  /** Whether the first power is at a lower voltage than the rest. */
  boolean startsLower() {
    return first instanceof Amount.Known one
        && running instanceof Amount.Known other
        && Exact.below(one.value(), other.value());
  }
}

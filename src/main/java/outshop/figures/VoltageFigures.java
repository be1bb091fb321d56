package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.LoadCase;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/** Volts at the parts that are fed: the most they ever see, and what is left under load. */
final class VoltageFigures {
  private VoltageFigures() {}

  static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    bench.pack().ifPresent(pack -> feeds(bench, pack, facts));
    return facts;
  }

  private static void feeds(Bench bench, PackValues pack, List<Object> facts) {
    for (Fitted receiver : bench.plan().parts(Kind.RECEIVER)) {
      facts.add(
          feed(
              bench,
              receiver,
              pack.fullVolts(),
              receiver.name() + ".in+",
              receiver.name() + ".in-"));
    }
    for (Fitted decoder : bench.plan().parts(Kind.DECODER)) {
      facts.add(
          feed(
              bench,
              decoder,
              decoderFullVolts(bench, pack),
              decoder.name() + ".in-a",
              decoder.name() + ".in-b"));
    }
  }

  private static Feed feed(Bench bench, Fitted part, Amount fullVolts, String plus, String minus) {
    return new Feed(
        Places.of(part),
        part,
        fullVolts,
        least(
            bench,
            LoadCase.Charge.NOMINAL,
            plus,
            minus,
            LoadCase.Drive.SLIPPING,
            LoadCase.Drive.CRUISING),
        least(
            bench,
            LoadCase.Charge.EMPTY,
            plus,
            minus,
            LoadCase.Drive.SLIPPING,
            LoadCase.Drive.CRUISING),
        least(bench, LoadCase.Charge.EMPTY, plus, minus, LoadCase.Drive.BLOCKED));
  }

  /** What a decoder sees at most: the pack's full volts less the receiver's drop, without load. */
  static Amount decoderFullVolts(Bench bench, PackValues pack) {
    return bench
        .first(Kind.RECEIVER)
        .map(
            receiver ->
                Amount.computed(
                    "receiver output, pack full, no load",
                    Unit.VOLTS,
                    "pack full - receiver drop",
                    v -> v[0] - v[1],
                    pack.fullVolts(),
                    receiver.amount("drop_volts")))
        .orElse(pack.fullVolts());
  }

  private static Amount least(
      Bench bench, LoadCase.Charge charge, String plus, String minus, LoadCase.Drive... drives) {
    List<Amount> all = new ArrayList<>();
    for (LoadCase.Drive drive : drives) {
      all.add(bench.cases().volts(new LoadCase(charge, drive), plus, minus));
    }
    return Cases.least(all);
  }
}

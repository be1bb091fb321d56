package outshop.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.LoadCase;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * What is lost on the way from pack to decoder in wires, contacts, fuse and switch. What receiver
 * and regulators drop inside is theirs and does not count.
 */
final class LossFigures {
  private final Bench bench;
  private final Joins joins;
  private final List<Chain> chains;

  private LossFigures(Bench bench) {
    this.bench = bench;
    this.joins = new Joins(bench.circuit(), bench.circuit().running());
    this.chains = Chain.of(bench);
  }

  static List<LeadLoss> of(Bench bench) {
    if (bench.pack().isEmpty()) {
      return List.of();
    }
    LossFigures figures = new LossFigures(bench);
    List<Fitted> fed = bench.plan().parts(Kind.DECODER);
    List<Fitted> ends = fed.isEmpty() ? bench.plan().parts(Kind.RECEIVER) : fed;
    return ends.stream().map(figures::loss).toList();
  }

  /**
   * A stretch of lead, from where the volts come out to where they go in; or the other way back.
   */
  private record Stretch(String from, String to) {}

  private LeadLoss loss(Fitted part) {
    List<Stretch> stretches = new ArrayList<>();
    Optional<Chain> source = back(inputs(part), stretches, new HashSet<>());
    if (source.isEmpty()) {
      Amount unfed = unfed(part);
      return new LeadLoss(Places.of(part), unfed, "", unfed);
    }
    Amount worst = new Amount.Absent("loss");
    LoadCase.Drive at = LoadCase.Drive.SLIPPING;
    List<Amount> all = new ArrayList<>();
    for (LoadCase.Drive drive : List.of(LoadCase.Drive.SLIPPING, LoadCase.Drive.CRUISING)) {
      Amount lost = lost(stretches, new LoadCase(LoadCase.Charge.NOMINAL, drive));
      all.add(lost);
      if (worst.isAbsent() || isMore(lost, worst)) {
        worst = lost;
        at = drive;
      }
    }
    return new LeadLoss(
        Places.of(part), Cases.greatest(all), at.words(), nominalVolts(source.get()));
  }

  private static boolean isMore(Amount one, Amount other) {
    return one instanceof Amount.Known a
        && other instanceof Amount.Known b
        && a.value() > b.value();
  }

  private static Ends inputs(Fitted part) {
    String name = part.name();
    return part.is(Kind.DECODER)
        ? new Ends(name + ".in-a", name + ".in-b")
        : new Ends(name + ".in+", name + ".in-");
  }

  /**
   * Follows two leads back to the pack, through receivers and regulators.
   *
   * @param stretches gets the leads passed
   */
  private Optional<Chain> back(Ends to, List<Stretch> stretches, Set<String> passed) {
    for (Device device : bench.circuit().devices()) {
      Optional<Ends> out = outputs(device);
      if (out.isPresent() && reaches(out.get(), to) && passed.add(device.name())) {
        add(out.get(), to, stretches);
        return back(inputs(device.part().orElseThrow()), stretches, passed);
      }
    }
    for (Chain chain : chains) {
      if (reaches(chain.ends(), to)) {
        add(chain.ends(), to, stretches);
        between(chain, stretches);
        return Optional.of(chain);
      }
    }
    return Optional.empty();
  }

  private static Optional<Ends> outputs(Device device) {
    return switch (device.sort()) {
      case RECEIVER -> Optional.of(new Ends(device.terminal("out-a"), device.terminal("out-b")));
      case REGULATOR -> Optional.of(new Ends(device.terminal("out+"), device.terminal("out-")));
      default -> Optional.empty();
    };
  }

  private boolean reaches(Ends from, Ends to) {
    return from.rightly(joins, to);
  }

  private static void add(Ends from, Ends to, List<Stretch> stretches) {
    stretches.add(new Stretch(from.plus(), to.plus()));
    stretches.add(new Stretch(to.minus(), from.minus()));
  }

  /** The leads between packs in series. */
  private static void between(Chain chain, List<Stretch> stretches) {
    for (int i = 1; i < chain.packs().size(); i++) {
      stretches.add(
          new Stretch(
              chain.packs().get(i).name() + ".plus", chain.packs().get(i - 1).name() + ".minus"));
    }
  }

  private Amount lost(List<Stretch> stretches, LoadCase loadCase) {
    List<Amount> each = new ArrayList<>();
    for (Stretch stretch : stretches) {
      each.add(
          bench
              .cases()
              .volts(loadCase, stretch.from(), stretch.to())
              .named("lost from " + stretch.from() + " to " + stretch.to()));
    }
    return Amount.sum("lost in leads, " + loadCase.words(), Unit.VOLTS, each);
  }

  private static Amount nominalVolts(Chain chain) {
    List<Amount> each = chain.packs().stream().map(p -> PackValues.of(p).nominalVolts()).toList();
    return each.size() == 1 ? each.get(0) : Amount.sum(chain.name() + " nominal", Unit.VOLTS, each);
  }

  private Amount unfed(Fitted part) {
    return new NoLoad(bench)
        .patternWanted()
        .orElseGet(
            () ->
                Amount.missing(
                    part.name(),
                    "wires that feed it",
                    "join its input to the pack in the plan's wiring, both poles"));
  }
}

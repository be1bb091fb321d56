package outshop.figures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.PackValues;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * The most volts a terminal ever sees from the pack: straight off the charger, ready to run,
 * nothing drawing current. Then a wire or contact loses nothing, and only what drops a fixed
 * voltage counts: the receiver's path, the decoder's rectifier, a regulator. Follows the wiring
 * back to where the volts come from, so that a regulator in between or packs in series are found.
 */
final class NoLoad {
  private final Bench bench;
  private final Joins joins;
  private final Map<String, Amount> found = new HashMap<>();

  NoLoad(Bench bench) {
    this.bench = bench;
    this.joins = new Joins(bench.circuit(), bench.circuit().running());
  }

  /** Volts of a terminal above the pack's minus; absent where nothing feeds it. */
  Amount volts(String terminal) {
    Amount known = found.get(terminal);
    if (known == null) {
      known = volts(terminal, new HashSet<>());
      found.put(terminal, known);
    }
    return known;
  }

  /** Whether the wiring feeds a part: its plus from the pack's, its minus back to the pack. */
  boolean feeds(String plus, String minus) {
    return !volts(plus).isAbsent() && returns(minus, new HashSet<>());
  }

  /** What is missing where the plan does not say how it is wired; empty where it does. */
  Optional<Amount> patternWanted() {
    return bench.plan().said("wiring.pattern") instanceof Said.Unsaid unsaid
        ? Optional.of(new Amount.Missing(List.of(unsaid.want())))
        : Optional.empty();
  }

  /** The highest volts of any pack, or of packs in series; absent without a pack. */
  Amount highest() {
    List<Amount> all = new ArrayList<>();
    for (Device pack : bench.circuit().devices(Device.Sort.PACK)) {
      all.add(volts(pack.terminal("plus")));
    }
    return greatest(all, "pack");
  }

  /** The greatest of those that are not absent; absent if all are. */
  static Amount greatest(List<Amount> all, String label) {
    List<Amount> present = all.stream().filter(a -> !a.isAbsent()).toList();
    return present.isEmpty() ? new Amount.Absent(label) : Cases.greatest(present);
  }

  private Amount volts(String terminal, Set<String> passed) {
    List<Amount> sources = new ArrayList<>();
    for (String joined : joins.component(terminal)) {
      if (passed.add(joined)) {
        bench
            .circuit()
            .deviceAt(joined)
            .ifPresent(d -> sources.add(source(d, port(joined), passed)));
      }
    }
    return greatest(sources, terminal);
  }

  /** What a device puts out at one of its terminals; absent where it puts out nothing. */
  private Amount source(Device device, String port, Set<String> passed) {
    Amount nothing = new Amount.Absent(device.name());
    return switch (device.sort()) {
      case PACK -> port.equals("plus") ? pack(device, passed) : nothing;
      case RECEIVER -> port.equals("out-a") ? receiver(device, passed) : nothing;
      case REGULATOR -> port.equals("out+") ? regulator(device, passed) : nothing;
      case DECODER -> decoderPlus(device, port) ? decoder(device, passed) : nothing;
      default -> nothing;
    };
  }

  /** A pack's full volts, on top of another pack's where they are in series. */
  private Amount pack(Device device, Set<String> passed) {
    Amount own = PackValues.of(device.part().orElseThrow()).fullVolts();
    Amount below = volts(device.terminal("minus"), passed);
    return below.isAbsent()
        ? own
        : Amount.computed(
            device.name() + " full, on top of another",
            Unit.VOLTS,
            "sum of the packs in series",
            v -> v[0] + v[1],
            own,
            below);
  }

  private Amount receiver(Device device, Set<String> passed) {
    return lessDrop(
        "receiver output, pack full, no load",
        "volts at its input - receiver drop",
        volts(device.terminal("in+"), passed),
        device.part().orElseThrow().amount("drop_volts"));
  }

  /** The receiver's output where the plan does not say what feeds its input. */
  static Amount receiverOutput(Fitted receiver, Amount inputVolts) {
    return lessDrop(
        "receiver output, pack full, no load",
        "pack full - receiver drop",
        inputVolts,
        receiver.amount("drop_volts"));
  }

  private Amount decoder(Device device, Set<String> passed) {
    return lessDrop(
        device.name() + " output, pack full, no load",
        "volts at its input - drop of its rectifier",
        volts(device.terminal("in-a"), passed),
        device.part().orElseThrow().amount("bridge_drop_volts"));
  }

  private static Amount lessDrop(String label, String how, Amount volts, Amount drop) {
    return drop.isAbsent()
        ? volts
        : Amount.computed(label, Unit.VOLTS, how, v -> v[0] - v[1], volts, drop);
  }

  private Amount regulator(Device device, Set<String> passed) {
    return Amount.computed(
        device.name() + " output, pack full, no load",
        Unit.VOLTS,
        "what it holds, or its input where that is less",
        v -> Math.min(v[0], v[1]),
        device.part().orElseThrow().amount("output_volts"),
        volts(device.terminal("in+"), passed));
  }

  /** Whether a decoder's terminal is on its plus side. */
  private static boolean decoderPlus(Device device, String port) {
    boolean commonIsMinus = device.part().orElseThrow().said("common").is("minus");
    return port.equals("motor+") || (commonIsMinus ? port.startsWith("out-") : isCommon(port));
  }

  private static boolean isCommon(String port) {
    return port.equals("common");
  }

  private boolean returns(String terminal, Set<String> passed) {
    for (String joined : joins.component(terminal)) {
      if (passed.add(joined)) {
        Optional<Device> device = bench.circuit().deviceAt(joined);
        if (device.isPresent() && returns(device.get(), port(joined), passed)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean returns(Device device, String port, Set<String> passed) {
    return switch (device.sort()) {
      case PACK -> port.equals("minus");
      case RECEIVER -> port.equals("out-b") && returns(device.terminal("in-"), passed);
      case DECODER ->
          !decoderPlus(device, port)
              && (port.equals("motor-") || isCommon(port) || port.startsWith("out-"))
              && returns(device.terminal("in-b"), passed);
      default -> false;
    };
  }

  private static String port(String terminal) {
    return terminal.substring(terminal.indexOf('.') + 1);
  }
}

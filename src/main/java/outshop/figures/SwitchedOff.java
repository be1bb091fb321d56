package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.State;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * What still runs with every switch at rest: off, or at {@code charge} where a changeover has no
 * off, with the charging plug out.
 *
 * @param receiverOnly whether the receiver alone still draws current
 * @param parted {@code yes} if nothing does, {@code no} if something does, unsaid where it is not
 *     known what the switch does
 * @param left what still draws current, in words
 * @param how how that comes about, in words; may be empty
 * @param flat how soon that empties the pack, in words
 */
public record SwitchedOff(
    At at, boolean receiverOnly, Said parted, String left, String how, String flat) {

  private static final Set<Device.Sort> ELECTRONICS =
      Set.of(Device.Sort.RECEIVER, Device.Sort.DECODER, Device.Sort.REGULATOR);

  /** Whether it is known that nothing, or nothing but the receiver, still draws current. */
  public boolean sparesTheLoad() {
    return receiverOnly || parted.is("yes");
  }

  static Optional<SwitchedOff> of(Bench bench) {
    Circuit circuit = bench.circuit();
    Optional<Fitted> main = bench.first(Kind.SWITCH);
    Joins on = new Joins(circuit, circuit.running());
    Joins off = new Joins(circuit, atRest(circuit));
    List<Device> fed = FedLoads.of(circuit, off);
    if (main.isEmpty() || (fed.isEmpty() && FedLoads.of(circuit, on).isEmpty())) {
      return Optional.empty();
    }
    boolean receiverOnly =
        !fed.isEmpty() && fed.stream().allMatch(d -> d.sort() == Device.Sort.RECEIVER);
    return Optional.of(
        new SwitchedOff(
            Places.of(main.get()),
            receiverOnly,
            parted(main.get(), fed),
            names(fed),
            how(circuit, off),
            flat(bench, fed)));
  }

  private static State atRest(Circuit circuit) {
    Map<String, String> switches = new TreeMap<>();
    circuit
        .positions()
        .forEach((name, all) -> switches.put(name, all.contains("off") ? "off" : "charge"));
    return new State(false, switches, true, false);
  }

  private static Said parted(Fitted main, List<Device> fed) {
    Said function = main.said("function");
    if (fed.isEmpty() && function.isUnsaid()) {
      return function;
    }
    String label = main.name() + ": parts everything";
    return new Said.Word(fed.isEmpty() ? "yes" : "no", Origin.PLAN, label);
  }

  /** Whether a contact of the switch is open in vain, because its ends are joined another way. */
  private static String how(Circuit circuit, Joins off) {
    for (Link contact : circuit.links()) {
      Optional<List<Link>> around =
          contact.sort() == Link.Sort.SWITCH
              ? off.way(contact.from(), contact.to())
              : Optional.empty();
      if (around.isPresent() && !off.closed().contains(contact)) {
        boolean minus =
            circuit.devices(Device.Sort.PACK).stream()
                .anyMatch(p -> off.joined(p.terminal("minus"), contact.from()));
        return "; " + (minus ? "minus" : "plus") + " goes around it through " + odd(around.get());
      }
    }
    return "";
  }

  /** Of a way, the piece that is no wire; else the first one. */
  private static String odd(List<Link> way) {
    return way.stream()
        .filter(l -> l.sort() == Link.Sort.BODY)
        .findFirst()
        .or(() -> way.stream().findFirst())
        .map(Reach::words)
        .orElseThrow();
  }

  /** The electronics that are fed; the rest only where none of them is. */
  private static String names(List<Device> fed) {
    List<String> electronics =
        fed.stream().filter(d -> ELECTRONICS.contains(d.sort())).map(Device::name).toList();
    return String.join(
        ", ", electronics.isEmpty() ? fed.stream().map(Device::name).toList() : electronics);
  }

  private static String flat(Bench bench, List<Device> fed) {
    if (fed.isEmpty()) {
      return "";
    }
    List<Amount> own = new ArrayList<>();
    for (Device device : fed) {
      if (device.sort() == Device.Sort.RECEIVER) {
        own.add(device.part().orElseThrow().amount("own_milliamps"));
      }
    }
    Amount days =
        Amount.computed(
            "days until flat",
            Unit.DAYS,
            "capacity / standby current / 24 h",
            v -> v[0] / v[1] / 24,
            Amount.sum(
                "capacity",
                Unit.AMPERE_HOURS,
                bench.plan().parts(Kind.PACK).stream().map(p -> p.amount("capacity_ah")).toList()),
            Amount.sum("standby current", Unit.AMPS, own));
    return days instanceof Amount.Known k
        ? "a full pack is flat in " + AmountText.text(k)
        : "how soon the pack is flat is not known";
  }
}

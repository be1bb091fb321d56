package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import outshop.circuit.At;
import outshop.circuit.Device;
import outshop.circuit.Places;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** What kind of lamp the locomotive's own are, and where the other lead of every lamp goes. */
final class LampFigures {
  private final Bench bench;
  private final Nets nets;

  LampFigures(Bench bench) {
    this.bench = bench;
    this.nets = new Nets(bench);
  }

  List<Object> all() {
    List<Object> facts = new ArrayList<>();
    for (Device device : bench.circuit().devices()) {
      switch (device.sort()) {
        case BULB, LED -> {
          if (device.part().isEmpty()) {
            facts.add(reading(device));
          }
          returns(device).ifPresent(facts::add);
        }
        case SMOKE_HEATER -> returns(device).ifPresent(facts::add);
        default -> {
          // Has no lead of a lamp.
        }
      }
    }
    return facts;
  }

  private LampReading reading(Device device) {
    Plan plan = bench.plan();
    String at = "locomotive.lamps." + device.name() + ".";
    Amount forward = plan.amount(at + "forward");
    Amount reverse = plan.amount(at + "reverse");
    Said kind = plan.said(at + "kind");
    Readings.Lamp read = Readings.lamp(forward, reverse);
    boolean stated = kind.is("filament") || kind.is("led");
    List<Want> wants = wants(device, kind, forward, reverse);
    Standing known = stated ? Standing.FINE : known(read, wants);
    return new LampReading(
        Places.of(device),
        known,
        stated ? fits(kind.is("led"), read, wants) : known,
        stated,
        kind.is("led") ? "LED" : "filament",
        Readings.lampWords(forward, reverse),
        read == Readings.Lamp.FILAMENT
            ? Readings.amps(device.name() + ": from a bench supply, cold", bench7(), forward)
            : new Amount.Absent(device.name() + ": from a bench supply"));
  }

  private static Amount bench7() {
    return Plan.fixed(
        Readings.BENCH_VOLTS, Unit.VOLTS, "bench supply", "a usual first test; common practice");
  }

  /** What is still wanted to be sure of a lamp's kind: its readings, or what they cannot tell. */
  private static List<Want> wants(Device device, Said kind, Amount forward, Amount reverse) {
    List<Want> readings = Standing.wants(forward, reverse);
    if (!readings.isEmpty()) {
      return readings;
    }
    String how =
        forward.isAbsent()
            ? "it reads open both ways, so it is a LED or broken: " + Readings.howToDecide()
            : "it reads more than any filament does: part it from everything and read it again";
    return List.of(
        new Want(
            device.name(),
            kind instanceof Said.Unsaid unsaid ? unsaid.want().what() : "kind",
            how));
  }

  private static Standing known(Readings.Lamp read, List<Want> wants) {
    return switch (read) {
      case FILAMENT -> Standing.of("reads-as-filament");
      case DIODE -> Standing.of("reads-as-led");
      case UNDECIDED, UNREAD -> Standing.open(wants);
    };
  }

  private static Standing fits(boolean led, Readings.Lamp read, List<Want> wants) {
    return switch (read) {
      case FILAMENT -> led ? Standing.of("filament") : Standing.FINE;
      case DIODE -> led ? Standing.FINE : Standing.of("diode");
      case UNDECIDED -> led ? Standing.FINE : Standing.of("open");
      case UNREAD -> Standing.open(wants);
    };
  }

  private Optional<LampReturn> returns(Device device) {
    Optional<FunctionOutput> output = FunctionOutput.feeding(bench, device.name());
    Set<String> met = new TreeSet<>();
    for (String end : ends(device)) {
      Set<String> component = nets.component(device.terminal(end));
      if (!Nets.rails(component).isEmpty()) {
        return Optional.of(fact(device, Standing.of("rail"), Nets.words(Nets.rails(component))));
      }
      if (component.contains(Nets.FRAME)) {
        met.addAll(component);
      }
    }
    if (!met.isEmpty()) {
      return Optional.of(onFrame(device, output, met));
    }
    return output.map(o -> fact(device, unsaid(device, o), ""));
  }

  private static List<String> ends(Device device) {
    return device.sort() == Device.Sort.LED ? List.of("anode", "cathode") : List.of("a", "b");
  }

  private LampReturn onFrame(Device device, Optional<FunctionOutput> output, Set<String> met) {
    Set<String> others = nets.live(met);
    Set<String> own = new TreeSet<>();
    output.ifPresent(
        o -> {
          for (String port : List.of("common", o.name())) {
            String terminal = o.decoder().name() + "." + port;
            if (others.remove(terminal)) {
              own.add(terminal);
            }
          }
        });
    if (!others.isEmpty() || own.size() > 1) {
      return fact(device, Standing.of("short"), Nets.words(others.isEmpty() ? own : others));
    }
    return own.isEmpty()
        ? fact(device, Standing.of("no-return"), "nothing")
        : fact(device, Standing.of("frame"), Nets.words(own));
  }

  private Standing unsaid(Device device, FunctionOutput output) {
    List<Want> wants = new ArrayList<>(Standing.wants(bench.plan().said(output.key("returns"))));
    Said material = bench.plan().said("locomotive.frame.material");
    boolean mayConduct = material.isUnsaid() || material.is("metal");
    if (device.part().isEmpty()
        && mayConduct
        && bench.plan().list("locomotive.frame.joined_to").isEmpty()) {
      wants.addAll(Standing.wants(bench.plan().said("locomotive.frame.joined_to")));
    }
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  private static LampReturn fact(Device device, Standing standing, String meets) {
    At at = Places.of(device);
    return new LampReturn(at, standing, meets);
  }
}

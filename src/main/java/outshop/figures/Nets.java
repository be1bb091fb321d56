package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import outshop.circuit.Device;
import outshop.circuit.Joins;

/** What a lead meets through wires, closed contacts and metal while the locomotive runs. */
final class Nets {
  static final String FRAME = "frame";
  private static final List<String> RAILS = List.of("left-rail", "right-rail");
  private static final int MOST_NAMED = 2;

  private final Bench bench;
  private final Joins joins;

  Nets(Bench bench) {
    this.bench = bench;
    this.joins = new Joins(bench.circuit(), bench.circuit().running());
  }

  Set<String> component(String terminal) {
    return joins.component(terminal);
  }

  /** The rails among some terminals. */
  static List<String> rails(Set<String> terminals) {
    return RAILS.stream().filter(terminals::contains).toList();
  }

  /** Among some terminals, those that hold a voltage of their own: all but lamps and resistors. */
  Set<String> live(Set<String> terminals) {
    Set<String> live = new TreeSet<>();
    for (String terminal : terminals) {
      int point = terminal.indexOf('.');
      Optional<Device> device =
          point < 0 ? Optional.empty() : bench.circuit().device(terminal.substring(0, point));
      device.filter(Nets::isLive).ifPresent(d -> live.add(terminal));
    }
    return live;
  }

  private static boolean isLive(Device device) {
    return switch (device.sort()) {
      case PACK, CHARGER, RECEIVER, DECODER, REGULATOR, CAPACITOR, MOTOR, SPEAKER -> true;
      case BULB, LED, SMOKE_HEATER, RESISTOR -> false;
    };
  }

  /** Some terminals in words that fill a sentence, the first few by name. */
  static String words(Iterable<String> terminals) {
    List<String> all = new ArrayList<>();
    terminals.forEach(all::add);
    String named = String.join(" and ", all.subList(0, Math.min(MOST_NAMED, all.size())));
    return all.size() > MOST_NAMED ? named + " and " + (all.size() - MOST_NAMED) + " more" : named;
  }
}

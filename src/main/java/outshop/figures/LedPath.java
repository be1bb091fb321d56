package outshop.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.plan.Fitted;

/**
 * The way of the current through a LED, from where it is fed to where it returns, as the wiring has
 * it.
 *
 * @param plus a terminal at the end it is fed from
 * @param minus a terminal at the end it returns to
 * @param backwards whether its anode lies on the side of the return
 * @param resistors on the way
 * @param series other LEDs on the way
 * @param beside the LEDs that lie side by side between the same two joints, this one among them
 * @param decoder the decoder whose function output is one of the ends
 */
record LedPath(
    Device led,
    String plus,
    String minus,
    boolean backwards,
    List<Device> resistors,
    List<Device> series,
    List<Device> beside,
    Optional<Fitted> decoder) {

  /** One side of a LED: the terminals at its end, and what lies between. */
  private record Side(Set<String> end, List<Device> between) {}

  /** Follows the wiring of a running locomotive. */
  static final class Finder {
    private final Bench bench;
    private final Joins joins;

    Finder(Bench bench) {
      this.bench = bench;
      this.joins = new Joins(bench.circuit(), bench.circuit().running());
    }

    /** The way through a LED; empty where it hangs on nothing, or at one end only. */
    Optional<LedPath> through(Device led) {
      Set<String> anode = joins.component(led.terminal("anode"));
      Set<String> cathode = joins.component(led.terminal("cathode"));
      List<Device> beside =
          bench.circuit().devices(Device.Sort.LED).stream()
              .filter(
                  d ->
                      anode.contains(d.terminal("anode"))
                          && cathode.contains(d.terminal("cathode")))
              .toList();
      Optional<Side> one = side(anode, across(anode, cathode));
      Optional<Side> other = side(cathode, across(anode, cathode));
      if (one.isEmpty() || other.isEmpty()) {
        return Optional.empty();
      }
      boolean rightly = plus(one.get()).isPresent() && minus(other.get()).isPresent();
      boolean backwards = plus(other.get()).isPresent() && minus(one.get()).isPresent();
      if (!rightly && !backwards) {
        return Optional.empty();
      }
      return Optional.of(
          path(
              led,
              rightly ? one.get() : other.get(),
              rightly ? other.get() : one.get(),
              !rightly,
              beside));
    }

    /** What lies between the same two joints as the LED, either way round: no way on. */
    private Set<Device> across(Set<String> anode, Set<String> cathode) {
      Set<String> joints = new HashSet<>(anode);
      joints.addAll(cathode);
      Set<Device> across = new HashSet<>();
      for (Device device : bench.circuit().devices()) {
        for (List<String> way : ways(device)) {
          if (joints.containsAll(way)) {
            across.add(device);
          }
        }
      }
      return across;
    }

    private LedPath path(
        Device led, Side plus, Side minus, boolean backwards, List<Device> beside) {
      List<Device> between = new ArrayList<>(plus.between());
      between.addAll(minus.between());
      return new LedPath(
          led,
          plus(plus).orElseThrow(),
          minus(minus).orElseThrow(),
          backwards,
          between.stream().filter(d -> d.sort() == Device.Sort.RESISTOR).toList(),
          between.stream().filter(d -> d.sort() == Device.Sort.LED).toList(),
          beside,
          switching(plus).or(() -> switching(minus)));
    }

    /** Walks on from a joint through resistors and LEDs until something feeds or returns. */
    private Optional<Side> side(Set<String> joint, Set<Device> passed) {
      Side here = new Side(joint, List.of());
      if (plus(here).isPresent() || minus(here).isPresent()) {
        return Optional.of(here);
      }
      for (Device device : bench.circuit().devices()) {
        for (List<String> way : ways(device)) {
          if (joint.contains(way.get(0)) && passed.add(device)) {
            Optional<Side> on = side(joins.component(way.get(1)), passed);
            if (on.isPresent()) {
              List<Device> between = new ArrayList<>(List.of(device));
              between.addAll(on.get().between());
              return Optional.of(new Side(on.get().end(), between));
            }
          }
        }
      }
      return Optional.empty();
    }

    /** A device's two terminals, both ways round; none if it is nothing a LED's current passes. */
    private static List<List<String>> ways(Device device) {
      List<String> ends =
          switch (device.sort()) {
            case RESISTOR -> List.of("a", "b");
            case LED -> List.of("anode", "cathode");
            default -> List.of();
          };
      if (ends.isEmpty()) {
        return List.of();
      }
      String one = device.terminal(ends.get(0));
      String other = device.terminal(ends.get(1));
      return List.of(List.of(one, other), List.of(other, one));
    }

    private Optional<String> plus(Side side) {
      return side.end().stream().filter(t -> stands(t, true)).findFirst();
    }

    private Optional<String> minus(Side side) {
      return side.end().stream().filter(t -> stands(t, false)).findFirst();
    }

    /** Whether a terminal is one that feeds, or one that returns. */
    private boolean stands(String terminal, boolean plus) {
      Optional<Device> device = device(terminal);
      if (device.isEmpty()) {
        return false;
      }
      String port = terminal.substring(terminal.indexOf('.') + 1);
      return switch (device.get().sort()) {
        case PACK -> port.equals(plus ? "plus" : "minus");
        case REGULATOR -> port.equals(plus ? "out+" : "out-") || port.equals(plus ? "in+" : "in-");
        case RECEIVER -> port.equals(plus ? "in+" : "in-") || port.equals(plus ? "out-a" : "out-b");
        case DECODER -> function(device.get(), port, plus);
        default -> false;
      };
    }

    private static boolean function(Device decoder, String port, boolean plus) {
      boolean commonIsMinus = decoder.part().orElseThrow().said("common").is("minus");
      return plus == commonIsMinus ? port.startsWith("out-") : port.equals("common");
    }

    private Optional<Fitted> switching(Side side) {
      return side.end().stream()
          .filter(t -> t.contains(".out-"))
          .flatMap(t -> device(t).stream())
          .filter(d -> d.sort() == Device.Sort.DECODER)
          .flatMap(d -> d.part().stream())
          .findFirst();
    }

    private Optional<Device> device(String terminal) {
      int point = terminal.indexOf('.');
      return point < 0 ? Optional.empty() : bench.circuit().device(terminal.substring(0, point));
    }
  }
}

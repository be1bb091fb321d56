package outshop.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outshop.circuit.Circuit;
import outshop.circuit.Link;

/**
 * How far along the power path each thing stands, from charger and pack to wheels and lamps. Source
 * and load, radio and decoder have fixed places; whatever lies between takes the mean of what it is
 * wired to, as a point on a stretched string would, so that every part lies between its neighbours.
 */
final class Ranks {
  /** More than enough for a string of some dozen points to come to rest. */
  private static final int ROUNDS = 400;

  private final Map<String, Double> ranks = new HashMap<>();
  private final Map<String, Integer> index = new HashMap<>();
  private final Circuit circuit;

  Ranks(Circuit circuit, List<Owners.Owner> owners) {
    this.circuit = circuit;
    for (Owners.Owner owner : owners) {
      index.put(owner.name(), index.size());
      ranks.put(owner.name(), start(owner.sign()));
    }
    List<Owners.Owner> free = owners.stream().filter(o -> !isFixed(o.sign())).toList();
    for (int round = 0; round < ROUNDS; round++) {
      for (Owners.Owner owner : free) {
        ranks.put(owner.name(), mean(owner.terminals(), ranks.get(owner.name())));
      }
    }
  }

  private static double start(Sign sign) {
    return switch (sign) {
      case CHARGER -> 0;
      case PACK -> 10;
      case JACK -> 50;
      case RAIL -> 60;
      case RECEIVER -> 70;
      case DECODER -> 80;
      case MOTOR, BULB, LED, HEATER, SPEAKER -> 100;
      default -> 50;
    };
  }

  private static boolean isFixed(Sign sign) {
    return switch (sign) {
      case CHARGER, PACK, JACK, RAIL, RECEIVER, DECODER, MOTOR, BULB, LED, HEATER, SPEAKER -> true;
      default -> false;
    };
  }

  /**
   * The mean place of what some terminals of one thing are wired to; {@code otherwise} if nothing.
   */
  double mean(List<String> terminals, double otherwise) {
    double sum = 0;
    int count = 0;
    for (Link link : circuit.links()) {
      if (Owners.isInside(link)) {
        continue;
      }
      if (terminals.contains(link.from())) {
        sum += ranks.get(Owners.owner(link.to()));
        count++;
      }
      if (terminals.contains(link.to())) {
        sum += ranks.get(Owners.owner(link.from()));
        count++;
      }
    }
    return count == 0 ? otherwise : sum / count;
  }

  /** Whether one thing stands before another; of two at the same place, the first one named. */
  boolean before(String one, String other) {
    int byRank = Double.compare(ranks.get(one), ranks.get(other));
    return byRank != 0 ? byRank < 0 : index.get(one) < index.get(other);
  }

  /** What a terminal is wired to: something before its own thing, something after it. */
  Neighbours neighbours(String terminal) {
    boolean before = false;
    boolean after = false;
    String own = Owners.owner(terminal);
    for (Link link : circuit.links()) {
      boolean isFrom = link.from().equals(terminal);
      if (Owners.isInside(link) || (!isFrom && !link.to().equals(terminal))) {
        continue;
      }
      String other = Owners.owner(isFrom ? link.to() : link.from());
      if (!other.equals(own)) {
        before |= before(other, own);
        after |= before(own, other);
      }
    }
    return new Neighbours(before, after);
  }

  /** Where the neighbours of a terminal stand. */
  record Neighbours(boolean before, boolean after) {}
}

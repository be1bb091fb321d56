package outshop.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import outshop.circuit.Circuit;
import outshop.circuit.State;
import outshop.input.Nearest;
import outshop.input.Shown;

/**
 * Reads a state from words such as {@code plug in, switch off}: phrases with commas between, in any
 * order. What no phrase speaks of stays as it is while the locomotive runs.
 */
final class StateWords {
  private final Circuit circuit;
  private boolean plugIn;
  private boolean coupled = true;
  private boolean onLiveRails;
  private final Map<String, String> switches;

  private StateWords(Circuit circuit) {
    this.circuit = circuit;
    this.switches = new TreeMap<>(circuit.running().switches());
  }

  /** The state meant. Errors: {@link UsageFault} that lists every phrase this circuit knows. */
  static State read(String words, Circuit circuit) throws UsageFault {
    StateWords state = new StateWords(circuit);
    for (String phrase : words.strip().split("\\s*,\\s*")) {
      state.phrase(phrase.replaceAll("\\s+", " "));
    }
    return new State(state.plugIn, state.switches, state.coupled, state.onLiveRails);
  }

  /** Every phrase, those of the running state first in each group. */
  static List<String> phrases(Circuit circuit) {
    Set<String> phrases = new LinkedHashSet<>();
    if (circuit.hasPlug()) {
      phrases.addAll(List.of("plug out", "plug in"));
    }
    circuit.positions().forEach((name, of) -> of.forEach(p -> phrases.add(name + " " + p)));
    if (circuit.hasVehicles()) {
      phrases.addAll(List.of("vehicles coupled", "vehicles parted"));
    }
    phrases.addAll(List.of("off live rails", "on live rails"));
    return new ArrayList<>(phrases);
  }

  private void phrase(String phrase) throws UsageFault {
    if (!phrases(circuit).contains(phrase)) {
      throw new UsageFault(
          "--state: there is no \""
              + Shown.text(phrase)
              + '"'
              + Nearest.hint(phrase, phrases(circuit))
              + "; this plan knows: "
              + String.join(", ", phrases(circuit)));
    }
    switch (phrase) {
      case "plug in", "plug out" -> plugIn = phrase.equals("plug in");
      case "vehicles coupled", "vehicles parted" -> coupled = phrase.equals("vehicles coupled");
      case "on live rails", "off live rails" -> onLiveRails = phrase.equals("on live rails");
      default -> {
        int space = phrase.lastIndexOf(' ');
        switches.put(phrase.substring(0, space), phrase.substring(space + 1));
      }
    }
  }
}

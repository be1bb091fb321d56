package outshop.circuit;

import java.util.Map;
import java.util.TreeMap;

/**
 * One combination of what a person can do with the locomotive.
 *
 * @param plugIn whether the charger is joined: its plug is in, or the pack is taken out and on the
 *     charger
 * @param switches by switch, its position: {@code on}, {@code off}, {@code run} or {@code charge}
 * @param coupled whether the vehicles are joined
 * @param onLiveRails whether the wheels stand on rails that carry a voltage
 */
public record State(
    boolean plugIn, Map<String, String> switches, boolean coupled, boolean onLiveRails) {
  public State {
    switches = Map.copyOf(switches);
  }

  /** In words, such as {@code plug in, switch on}. */
  public String words() {
    StringBuilder words = new StringBuilder(plugIn ? "plug in" : "plug out");
    new TreeMap<>(switches)
        .forEach((name, position) -> words.append(", ").append(name).append(' ').append(position));
    if (!coupled) {
      words.append(", vehicles parted");
    }
    if (onLiveRails) {
      words.append(", on live rails");
    }
    return words.toString();
  }
}

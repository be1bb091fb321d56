package outshop.circuit;

import java.util.Map;
import outshop.units.Amount;

/**
 * One trial on the bench: what feeds the circuit in place of its packs, in which state it is, and
 * which of its loads are at work. Silent and standing, with every lamp dark, unless it says
 * otherwise.
 *
 * @param words what it is, such as {@code lamps of out-1 lit, bench supply}
 * @param feed what stands between the ends that the packs leave
 * @param ownShare what receiver and decoder draw at these volts, as a share of what is stated
 * @param lit by name, what each lamp or heater that is on draws, in amps; a LED draws by its own
 *     law, whatever stands here
 * @param sounding whether the sound plays
 * @param turning by name, what each motor that runs draws, in amps
 */
public record Trial(
    String words,
    Feed feed,
    State state,
    Amount ownShare,
    Map<String, Amount> lit,
    boolean sounding,
    Map<String, Amount> turning) {

  /**
   * A voltage behind a resistance.
   *
   * @param name of its element in the network
   */
  public record Feed(String name, Amount volts, Amount ohms) {}

  public Trial {
    lit = Map.copyOf(lit);
    turning = Map.copyOf(turning);
  }

  /** The same with these lamps lit. */
  public Trial lighting(String newWords, Map<String, Amount> lamps) {
    return new Trial(newWords, feed, state, ownShare, lamps, sounding, turning);
  }

  /** The same with the sound on. */
  public Trial sounding(String newWords) {
    return new Trial(newWords, feed, state, ownShare, lit, true, turning);
  }

  /** The same with these motors running. */
  public Trial turning(String newWords, Map<String, Amount> motors) {
    return new Trial(newWords, feed, state, ownShare, lit, sounding, motors);
  }
}

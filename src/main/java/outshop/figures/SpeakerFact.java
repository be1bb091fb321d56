package outshop.figures;

import java.util.List;
import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.Want;

/**
 * Something about a speaker that no comparison decides.
 *
 * @param matter what it is about
 * @param situation the situation as the rule's page names it; {@code fine}, or {@code unknown} with
 *     {@code wants}
 * @param detail what it is joined to, and the like; empty if nothing needs saying
 * @param reading an ohmmeter's reading, where there is one
 * @param nominal the impedance it stands against
 */
public record SpeakerFact(
    At at,
    Matter matter,
    String situation,
    String detail,
    Amount reading,
    Amount nominal,
    List<Want> wants) {

  /** What a fact is about. */
  public enum Matter {
    ENCLOSURE,
    LEADS,
    OLD_SPEAKER,
    PRESENCE
  }

  public boolean unknown() {
    return situation.equals("unknown");
  }

  public boolean isFine() {
    return situation.equals("fine");
  }
}

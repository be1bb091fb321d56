package outshop.circuit;

import java.util.Optional;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * A piece of conductor between two terminals.
 *
 * @param name unique in the circuit, such as {@code fuse} or {@code pack.plus - fuse.a}
 * @param from a terminal, {@code owner.terminal}
 * @param ohms its resistance while closed
 * @param part the part it is made of or belongs to
 * @param length in metres, of a wire
 * @param closed when it conducts
 */
public record Link(
    String name,
    String from,
    String to,
    Sort sort,
    Amount ohms,
    Optional<Fitted> part,
    Amount length,
    Closed closed) {

  /** As for any two equal ones, without going through all that it is made of. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** What a link is. */
  public enum Sort {
    WIRE,
    FUSE,
    SWITCH,
    /** The contact of a jack that opens when the plug goes in. */
    BREAK_CONTACT,
    /** A pair of mated contacts: of a connector, a cable between vehicles, or plug and jack. */
    CONTACT,
    /**
     * Continuity through metal that is no wire: a frame, a metal body, a reading that should not
     * be.
     */
    BODY
  }

  /** Whether it conducts, by state. */
  public sealed interface Closed {
    boolean in(State state);

    /** Always. */
    record Always() implements Closed {
      @Override
      public boolean in(State state) {
        return true;
      }
    }

    /** Only while the charging plug is in, or only while it is out. */
    record WithPlug(boolean plugIn) implements Closed {
      @Override
      public boolean in(State state) {
        return state.plugIn() == plugIn;
      }
    }

    /** Only while a switch stands in one position. */
    record AtSwitch(String switchName, String position) implements Closed {
      @Override
      public boolean in(State state) {
        return position.equals(state.switches().get(switchName));
      }
    }

    /** Only while the vehicles are coupled. */
    record Coupled() implements Closed {
      @Override
      public boolean in(State state) {
        return state.coupled();
      }
    }
  }
}

package outshop.circuit;

import java.util.List;
import java.util.Optional;

/**
 * The two terminals between which the packs of a circuit stand: where something else can feed it in
 * their place. Packs in series are taken as one, and of packs side by side the first.
 */
public record PackEnds(String plus, String minus) {

  /** The ends; empty where the circuit has no pack, or its packs chase each other in a ring. */
  public static Optional<PackEnds> of(Circuit circuit) {
    List<Device> packs = circuit.devices(Device.Sort.PACK);
    Joins joins = new Joins(circuit, circuit.running());
    Optional<String> plus = end(packs, joins, "plus", "minus");
    Optional<String> minus = end(packs, joins, "minus", "plus");
    return plus.isEmpty() || minus.isEmpty()
        ? Optional.empty()
        : Optional.of(new PackEnds(plus.get(), minus.get()));
  }

  /** The first pole that does not lead on into another pack. */
  private static Optional<String> end(List<Device> packs, Joins joins, String pole, String other) {
    return packs.stream()
        .filter(
            pack ->
                packs.stream()
                    .noneMatch(
                        next ->
                            !next.equals(pack)
                                && joins.joined(pack.terminal(pole), next.terminal(other))))
        .map(pack -> pack.terminal(pole))
        .findFirst();
  }
}

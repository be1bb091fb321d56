package outshop.circuit;

/**
 * Where a finding hangs.
 *
 * @param name the part's or thing's own name in the plan, unique there; what {@code accepted}
 *     entries refer to
 * @param described the name with what it is, for people
 */
public record At(Station station, String name, String described) implements Comparable<At> {
  @Override
  public int compareTo(At other) {
    int byStation = station.compareTo(other.station);
    return byStation != 0 ? byStation : name.compareTo(other.name);
  }
}

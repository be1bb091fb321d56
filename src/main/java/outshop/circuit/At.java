package outshop.circuit;

/**
 * Where a finding hangs.
 *
 * @param name the part's or thing's own name in the plan, unique there; what {@code accepted}
 *     entries refer to
 * @param called what sentences call it: the name, with what kind of thing it is where a name alone
 *     (of a lamp, of a motor) does not tell
 * @param described the name with what it is, for people
 */
public record At(Station station, String name, String called, String described)
    implements Comparable<At> {
  /** A place that sentences call by its name. */
  public At(Station station, String name, String described) {
    this(station, name, name, described);
  }

  @Override
  public int compareTo(At other) {
    int byStation = station.compareTo(other.station);
    return byStation != 0 ? byStation : name.compareTo(other.name);
  }
}

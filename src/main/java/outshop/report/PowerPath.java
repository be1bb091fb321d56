package outshop.report;

import java.util.List;
import java.util.stream.Stream;
import outshop.circuit.Station;

/**
 * The way of the power through the plan's circuit, station by station.
 *
 * @param line from the pack to the last station before the loads, in the order in which the current
 *     passes them; a station the current does not reach stands where it usually is
 * @param ends what is fed: motor, lights, sound
 * @param feed the charger, and what lies between it and the line
 * @param joins the number of the line's station at which the feed joins, from 0; where it joins
 *     none, that of the station beside it, and the feed's stops are not joined
 * @param charges whether the charger, with its plug in, reaches the pack with both poles; nothing
 *     is said where there is no charger
 * @param beside stations that are no one place of the way, such as the wiring
 */
public record PowerPath(
    List<Stop> line,
    List<Stop> ends,
    List<Stop> feed,
    int joins,
    boolean charges,
    List<Stop> beside) {

  /** A way without a station. */
  public static final PowerPath NONE =
      new PowerPath(List.of(), List.of(), List.of(), 0, true, List.of());

  public PowerPath {
    line = List.copyOf(line);
    ends = List.copyOf(ends);
    feed = List.copyOf(feed);
    beside = List.copyOf(beside);
  }

  /**
   * A station.
   *
   * @param fittings what is there, in the plan's order; empty where the plan has nothing
   * @param joined whether the power comes there: from the pack with everything switched on, or from
   *     the charger with its plug in
   */
  public record Stop(Station station, List<Fitting> fittings, boolean joined) {
    public Stop {
      fittings = List.copyOf(fittings);
    }
  }

  /**
   * A part, or a thing of the locomotive.
   *
   * @param name in the plan
   * @param title what it is; empty for a thing of the locomotive
   */
  public record Fitting(String name, String title) {}

  /** Whether the power goes on behind a station of the line, by its number from 0. */
  public boolean goesOnAfter(int number) {
    return Stream.concat(line.subList(number + 1, line.size()).stream(), ends.stream())
        .anyMatch(Stop::joined);
  }

  /** Every station, each once. */
  public List<Station> stations() {
    return Stream.of(feed, line, ends, beside).flatMap(List::stream).map(Stop::station).toList();
  }
}

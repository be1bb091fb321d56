package outshop.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.circuit.Link;

/**
 * A box before it has a place: its size, where its terminals lie on its edge, what is drawn in it.
 * Its upper left corner is 0, 0.
 */
final class Shape {
  static final int HEADING_LETTERS = 18;
  static final int LINE_LETTERS = 18;
  static final int MOST_LINES = 3;
  static final int HEADING_SIZE = 11;
  static final int LINE_SIZE = 9;
  static final int LABEL_SIZE = 10;
  static final int LINE_HEIGHT = 11;

  private static final int ROW = 26;
  private static final int EDGE = 6;
  private static final int NARROWEST = 76;
  private static final int CONTACT_ROOM = 44;
  private static final int SIGN_ROOM = 40;
  private static final int HALF_GAP = 10;

  private final Owners.Owner owner;
  private final List<Row> rows;
  private final List<Port> ports = new ArrayList<>();
  private final List<Route> routes = new ArrayList<>();
  private int width;
  private int height;
  private int middleX;

  /** One line of terminals across the box; each may be at the left edge, the right, or both. */
  record Row(Optional<String> west, Optional<String> east) {
    static Row west(String terminal) {
      return new Row(Optional.of(terminal), Optional.empty());
    }

    static Row east(String terminal) {
      return new Row(Optional.empty(), Optional.of(terminal));
    }

    static Row across(String west, String east) {
      return new Row(Optional.of(west), Optional.of(east));
    }
  }

  Shape(Owners.Owner owner, Ranks ranks) {
    this.owner = owner;
    this.rows = Rows.of(owner, ranks);
    measure();
    place();
    contacts();
  }

  Owners.Owner owner() {
    return owner;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Its ports, with places relative to its corner. */
  List<Port> ports() {
    return ports;
  }

  /** The routes inside it, with places relative to its corner. */
  List<Route> routes() {
    return routes;
  }

  /** What a terminal is called in its box, with the mark of its pole. */
  static String label(String terminal) {
    String name = terminal.substring(terminal.lastIndexOf('.') + 1);
    return switch (name) {
      case "plus", "anode" -> name + " +";
      case "minus", "cathode" -> name + " −";
      default -> Lettering.shortened(name, HEADING_LETTERS);
    };
  }

  private boolean isBare() {
    return owner.sign() == Sign.SPLICE;
  }

  private int header() {
    if (isBare()) {
      return 0;
    }
    return 22 + LINE_HEIGHT * Lettering.lines(owner.title(), LINE_LETTERS, MOST_LINES).size();
  }

  private void measure() {
    int left = 0;
    int right = 0;
    for (Row row : rows) {
      left = Math.max(left, row.west().map(Shape::labelWidth).orElse(0));
      right = Math.max(right, row.east().map(Shape::labelWidth).orElse(0));
    }
    String heading = Lettering.shortened(owner.name(), HEADING_LETTERS);
    width = isBare() ? labelWidth(owner.name()) : NARROWEST;
    width = Math.max(width, left + middle() + right + 2 * EDGE);
    width = Math.max(width, Lettering.width(heading, HEADING_SIZE, true) + 2 * EDGE);
    for (String line : Lettering.lines(owner.title(), LINE_LETTERS, MOST_LINES)) {
      width = Math.max(width, Lettering.width(line, LINE_SIZE, false) + 2 * EDGE);
    }
    // Half way between the labels, not between the edges.
    middleX = EDGE + left + (width - 2 * EDGE - left - right) / 2;
    height = isBare() ? ROW : header() + ROW * rows.size() + 4;
  }

  private int middle() {
    boolean contacts = owner.sign().passes() || owner.sign() == Sign.JACK;
    return contacts
        ? CONTACT_ROOM
        : owner.sign().isLoad() || owner.sign() == Sign.PACK ? SIGN_ROOM : 10;
  }

  private static int labelWidth(String terminal) {
    return Lettering.width(label(terminal), LABEL_SIZE, false);
  }

  private void place() {
    for (int i = 0; i < rows.size(); i++) {
      int y = isBare() ? ROW - 6 : header() + ROW * i + 16;
      rows.get(i).west().ifPresent(t -> ports.add(new Port(t, label(t), false, new Point(0, y))));
      rows.get(i)
          .east()
          .ifPresent(t -> ports.add(new Port(t, label(t), true, new Point(width, y))));
    }
  }

  /** The port of a terminal; of two, the left one. */
  private Point port(String terminal) {
    for (Port port : ports) {
      if (port.terminal().equals(terminal)) {
        return port.at();
      }
    }
    throw new IllegalStateException("no port for " + terminal);
  }

  private void contacts() {
    Map<String, Integer> pivots = new HashMap<>();
    List<Link> bent = new ArrayList<>();
    for (Link link : owner.inside()) {
      if (port(link.from()).y() == port(link.to()).y()) {
        Route route = straight(link);
        routes.add(route);
        pivots.putIfAbsent(link.from(), route.gap().orElseThrow().first().x());
      } else {
        bent.add(link);
      }
    }
    int x = middleX;
    for (Link link : bent) {
      Integer pivot = pivots.get(link.from());
      routes.add(bent(link, pivot == null ? x : pivot));
      x += pivot == null ? HALF_GAP : 0;
    }
  }

  private Route straight(Link link) {
    Point from = port(link.from());
    Point to = port(link.to());
    int towards = from.x() < to.x() ? HALF_GAP : -HALF_GAP;
    Route.Gap gap =
        new Route.Gap(
            0, new Point(middleX - towards, from.y()), new Point(middleX + towards, from.y()));
    return new Route(link, Optional.empty(), List.of(from, to), Optional.of(gap), true);
  }

  private Route bent(Link link, int x) {
    Point from = port(link.from());
    Point to = port(link.to());
    Point near = new Point(x, from.y());
    Point far = new Point(x, to.y());
    int towards = from.y() < to.y() ? 1 : -1;
    Route.Gap gap =
        new Route.Gap(1, new Point(x, from.y() + 4 * towards), new Point(x, to.y() - 6 * towards));
    boolean opens = link.sort() != Link.Sort.BODY;
    return new Route(
        link,
        Optional.empty(),
        List.of(from, near, far, to),
        opens ? Optional.of(gap) : Optional.empty(),
        true);
  }

  /** Decides on which edge of its box each terminal lies, and in which row. */
  private static final class Rows {
    private final Owners.Owner owner;
    private final Ranks ranks;
    private final List<Row> rows = new ArrayList<>();

    private Rows(Owners.Owner owner, Ranks ranks) {
      this.owner = owner;
      this.ranks = ranks;
    }

    static List<Row> of(Owners.Owner owner, Ranks ranks) {
      Rows rows = new Rows(owner, ranks);
      if (owner.sign().passes()) {
        rows.pairs();
      } else if (owner.sign().isMetFromBothSides()) {
        rows.throughTerminals();
      } else {
        rows.columns();
        return rows.rows;
      }
      rows.rows.sort(Comparator.comparing(rows::order));
      return rows.rows;
    }

    private int order(Row row) {
      int west = row.west().map(owner.terminals()::indexOf).orElse(Integer.MAX_VALUE);
      return Math.min(west, row.east().map(owner.terminals()::indexOf).orElse(Integer.MAX_VALUE));
    }

    private boolean isPlaced(String terminal) {
      return rows.stream()
          .anyMatch(
              r ->
                  r.west().filter(terminal::equals).isPresent()
                      || r.east().filter(terminal::equals).isPresent());
    }

    /** What passes current on has the end that is nearer to the pack at its left. */
    private void pairs() {
      List<String> firsts = new ArrayList<>();
      List<String> seconds = new ArrayList<>();
      for (Link link : owner.inside()) {
        if (!firsts.contains(link.from()) && !seconds.contains(link.to())) {
          firsts.add(link.from());
          seconds.add(link.to());
        }
      }
      if (owner.sign() == Sign.RESISTOR) {
        firsts.add(owner.name() + ".a");
        seconds.add(owner.name() + ".b");
      }
      boolean turned = ranks.mean(firsts, Double.NaN) > ranks.mean(seconds, Double.NaN);
      for (int i = 0; i < firsts.size(); i++) {
        String first = firsts.get(i);
        String second = seconds.get(i);
        rows.add(turned ? Row.across(second, first) : Row.across(first, second));
      }
      for (String terminal : owner.terminals()) {
        if (!isPlaced(terminal)) {
          Ranks.Neighbours near = ranks.neighbours(terminal);
          boolean west = near.before() == near.after() ? turned : near.before();
          rows.add(west ? Row.west(terminal) : Row.east(terminal));
        }
      }
    }

    /** A terminal met from both sides goes through the box; a contact between two shares a row. */
    private void throughTerminals() {
      for (Link link : owner.inside()) {
        Row from = through(link.from());
        Row to = through(link.to());
        boolean apart = from.west().isPresent() != to.west().isPresent();
        boolean single = isSingle(from) && isSingle(to);
        if (apart && single && !isPlaced(link.from()) && !isPlaced(link.to())) {
          rows.add(
              from.west().isPresent()
                  ? Row.across(link.from(), link.to())
                  : Row.across(link.to(), link.from()));
        }
      }
      for (String terminal : owner.terminals()) {
        if (!isPlaced(terminal)) {
          rows.add(through(terminal));
        }
      }
    }

    private static boolean isSingle(Row row) {
      return row.west().isPresent() != row.east().isPresent();
    }

    private Row through(String terminal) {
      Ranks.Neighbours near = ranks.neighbours(terminal);
      if (near.before() && near.after()) {
        return Row.across(terminal, terminal);
      }
      boolean west = near.before() || (!near.after() && isWestByNature(terminal));
      return west ? Row.west(terminal) : Row.east(terminal);
    }

    private void columns() {
      List<String> west = new ArrayList<>();
      List<String> east = new ArrayList<>();
      for (String terminal : owner.terminals()) {
        Ranks.Neighbours near = ranks.neighbours(terminal);
        boolean isWest = near.before() == near.after() ? isWestByNature(terminal) : near.before();
        (isWest ? west : east).add(terminal);
      }
      for (int i = 0; i < Math.max(west.size(), east.size()); i++) {
        rows.add(
            new Row(
                i < west.size() ? Optional.of(west.get(i)) : Optional.empty(),
                i < east.size() ? Optional.of(east.get(i)) : Optional.empty()));
      }
    }

    private boolean isWestByNature(String terminal) {
      String name = terminal.substring(terminal.lastIndexOf('.') + 1);
      return switch (owner.sign()) {
        case CHARGER, PACK, PLUG -> false;
        case JACK -> !name.equals("break");
        case RECEIVER, DECODER, REGULATOR -> name.startsWith("in");
        default -> true;
      };
    }
  }
}

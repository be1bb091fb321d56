package outshop.render.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import outshop.circuit.Link;
import outshop.drawing.Label;
import outshop.drawing.Labels;
import outshop.drawing.LeadColour;
import outshop.drawing.Live;
import outshop.drawing.Point;
import outshop.drawing.Pole;
import outshop.drawing.Route;
import outshop.drawing.WireList;
import outshop.drawing.WiringDrawing;

/** The drawing proper: boxes, conductors, joints, labels. */
final class Figure {
  private final WiringDrawing drawing;
  private final Live live;
  private final boolean marksLive;
  private final Faults faults;

  Figure(WiringDrawing drawing, Live live, boolean marksLive, Faults faults) {
    this.drawing = drawing;
    this.live = live;
    this.marksLive = marksLive;
    this.faults = faults;
  }

  void draw(Svg svg) {
    Set<String> crossed = new HashSet<>();
    for (Route route : drawing.routes()) {
      if (route.inside()) {
        crossed.addAll(List.of(route.link().from(), route.link().to()));
      }
    }
    Boxes boxes = new Boxes(svg, faults, this::bar, crossed);
    drawing.boxes().forEach(boxes::frame);
    for (List<Route> net : nets()) {
      net.forEach(r -> back(svg, r));
      net.forEach(r -> route(svg, r));
    }
    drawing.routes().stream().filter(Route::inside).forEach(r -> route(svg, r));
    for (Point joint : drawing.joints()) {
      svg.empty("circle", "class", "w-joint-dot", "cx", joint.x(), "cy", joint.y(), "r", 3.6);
    }
    drawing.boxes().forEach(boxes::content);
    for (Label label : Labels.place(drawing, said())) {
      label(svg, label);
    }
  }

  /** What is said at each route between boxes: which wire, its state, its findings. */
  private List<Labels.Said> said() {
    List<Labels.Said> names = new ArrayList<>();
    List<Labels.Said> states = new ArrayList<>();
    List<Labels.Said> marks = new ArrayList<>();
    for (Route route : drawing.routes()) {
      if (!route.inside()) {
        String name = name(route);
        names.add(new Labels.Said(route, List.of(name), name, 0));
        if (!state(route).isEmpty()) {
          states.add(said(route, List.of(state(route)), 0));
        }
        List<Fault> there = faults.at(route.link().name());
        if (!there.isEmpty()) {
          String number = Integer.toString(there.get(0).number());
          marks.add(said(route, List.of(Faults.words(there), number), Arms.WIDTH));
        }
      }
    }
    names.addAll(states);
    names.addAll(marks);
    return names;
  }

  private static Labels.Said said(Route route, List<String> texts, int extra) {
    String number = route.wire().map(w -> "(" + w.number() + ") ").orElse("");
    return new Labels.Said(route, texts, number + texts.get(0), extra);
  }

  /**
   * The routes between boxes, those that share terminals together, so that one does not cut
   * another.
   */
  private List<List<Route>> nets() {
    Map<String, String> parents = new HashMap<>();
    List<Route> between = drawing.routes().stream().filter(r -> !r.inside()).toList();
    for (Route route : between) {
      String from = root(parents, route.link().from());
      String to = root(parents, route.link().to());
      parents.put(from, to);
    }
    Map<String, List<Route>> nets = new LinkedHashMap<>();
    for (Route route : between) {
      nets.computeIfAbsent(root(parents, route.link().from()), r -> new ArrayList<>()).add(route);
    }
    return List.copyOf(nets.values());
  }

  private static String root(Map<String, String> parents, String terminal) {
    String at = terminal;
    while (parents.containsKey(at) && !parents.get(at).equals(at)) {
      at = parents.get(at);
    }
    return at;
  }

  private boolean isClosed(Route route) {
    return route.link().closed().in(live.state());
  }

  private Set<Pole> poles(Route route) {
    return marksLive ? live.on(route.link()) : EnumSet.noneOf(Pole.class);
  }

  /** The bar of a joint is of the wires that meet there; that of a contact is metal. */
  private String bar(String terminal) {
    String weight = weight(marksLive ? live.at(terminal) : Set.of());
    Optional<WireList.Row> wire =
        drawing.wires().rows().stream()
            .filter(w -> w.from().equals(terminal) || w.to().equals(terminal))
            .findFirst();
    boolean joint = terminal.startsWith("splice.");
    return joint && wire.isPresent()
        ? "w-wire w-" + code(wire.get().colour()) + weight
        : "w-inner" + weight;
  }

  private String weight(Route route) {
    return weight(poles(route));
  }

  private String weight(Set<Pole> poles) {
    if (!marksLive) {
      return "";
    }
    boolean plus =
        poles.contains(Pole.PACK_PLUS)
            || poles.contains(Pole.CHARGER_PLUS)
            || poles.contains(Pole.RAILS);
    return plus ? " w-plus" : poles.isEmpty() ? " w-dead" : " w-minus";
  }

  private void back(Svg svg, Route route) {
    String path = path(route);
    svg.empty("path", "class", "w-back", "d", path);
    String code = route.wire().map(w -> code(w.colour())).orElse("");
    if (code.equals("wh") || code.equals("ye") || code.equals("bk")) {
      String black = code.equals("bk") ? " w-edge-bk" : "";
      svg.empty("path", "class", "w-edge" + black + weight(route), "d", path);
    }
  }

  static String code(LeadColour colour) {
    return colour == LeadColour.UNNAMED ? "any" : colour.code().toLowerCase(Locale.ROOT);
  }

  private void route(Svg svg, Route route) {
    Link link = route.link();
    svg.open("g");
    svg.text("title", InWords.route(route, live, marksLive));
    svg.empty(
        "path",
        "class",
        style(route) + weight(route),
        "d",
        path(route),
        "data-link",
        link.name(),
        "data-sort",
        link.sort().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        "data-from",
        link.from(),
        "data-to",
        link.to(),
        "data-wire",
        route.wire().map(w -> Integer.toString(w.number())).orElse(""),
        "data-closed",
        isClosed(route) ? "yes" : "no",
        "data-live",
        poles(route).stream().map(Pole::words).collect(Collectors.joining(", ")));
    Contacts.draw(svg, route, isClosed(route));
    svg.close();
  }

  private static String style(Route route) {
    if (route.wire().isPresent()) {
      return "w-wire w-" + code(route.wire().get().colour());
    }
    boolean metal = route.link().sort() == Link.Sort.BODY;
    return metal ? "w-metal" : route.inside() ? "w-inner" : "w-contact";
  }

  /** The line; while it does not conduct, interrupted at its gap. */
  private String path(Route route) {
    StringBuilder path = new StringBuilder();
    List<Point> points = route.points();
    for (int i = 0; i < points.size(); i++) {
      path.append(i == 0 ? "M" : " L")
          .append(points.get(i).x())
          .append(' ')
          .append(points.get(i).y());
      if (!isClosed(route) && route.gap().isPresent() && route.gap().get().piece() == i) {
        Route.Gap gap = route.gap().get();
        path.append(" L").append(gap.first().x()).append(' ').append(gap.first().y());
        path.append(" M").append(gap.second().x()).append(' ').append(gap.second().y());
      }
    }
    return path.toString();
  }

  private static String name(Route route) {
    return route
        .wire()
        .map(Figure::wireWords)
        .orElse(route.link().sort() == Link.Sort.BODY ? "metal" : "contact");
  }

  private String state(Route route) {
    return isClosed(route)
        ? poles(route).stream().map(Pole::mark).collect(Collectors.joining(" "))
        : "open";
  }

  private static String wireWords(WireList.Row wire) {
    boolean named = wire.colour() != LeadColour.UNNAMED;
    return wire.number() + (named ? " " + wire.colour().code() : "");
  }

  private void label(Svg svg, Label label) {
    svg.empty(
        "rect",
        "class",
        "w-paper",
        "x",
        label.x(),
        "y",
        label.y(),
        "width",
        label.width(),
        "height",
        label.height());
    int x = label.x() + 2;
    if (label.said().extra() > 0) {
      Arms.draw(svg, faults.at(label.route().link().name()).get(0).aspect(), x, label.y());
      x += Arms.WIDTH;
    }
    svg.text(
        "text",
        label.text(),
        "class",
        label.said().extra() > 0 ? "w-word" : "",
        "x",
        x,
        "y",
        label.y() + 9,
        "data-label",
        label.route().link().name());
  }
}

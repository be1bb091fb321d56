package outshop.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.FixedAlignment;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.math.KVectorChain;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import outshop.circuit.Circuit;
import outshop.circuit.Link;

/**
 * Gives every box its place and every link between boxes its route: left to right along the power
 * path, in level and upright pieces. The layout library does it; what goes in is always in the same
 * order, so what comes out is always the same.
 */
final class Layout {
  private static final int MARGIN = 14;
  private static final double BETWEEN_LAYERS = 50;
  private static final double BETWEEN_BOXES = 16;
  private static final double BETWEEN_WIRES = 15;

  private static final double BEFORE_BOXES = 24;

  private final Circuit circuit;
  private final Map<String, WireList.Row> wires;
  private final Ranks ranks;
  private final List<Shape> shapes = new ArrayList<>();
  private final ElkNode root = ElkGraphUtil.createGraph();
  private final Map<String, ElkNode> nodes = new LinkedHashMap<>();
  private final Map<ElkPort, Port> portsOf = new HashMap<>();
  private final Map<String, List<ElkPort>> ports = new HashMap<>();
  private final Map<Link, ElkEdge> edges = new LinkedHashMap<>();

  Layout(Circuit circuit, List<Owners.Owner> owners, WireList wires) {
    this.circuit = circuit;
    this.wires = wires.byLink();
    this.ranks = new Ranks(circuit, owners);
    for (Owners.Owner owner : owners) {
      shapes.add(new Shape(owner, ranks));
    }
    options();
    shapes.forEach(this::node);
    circuit.links().stream().filter(l -> !Owners.isInside(l)).forEach(this::edge);
    // Makes the library's own kinds of value known to it; it stays so.
    LayoutMetaDataService.getInstance();
    new LayeredLayoutProvider().layout(root, new BasicProgressMonitor());
  }

  private void options() {
    root.setProperty(LayeredOptions.DIRECTION, Direction.RIGHT);
    root.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
    root.setProperty(LayeredOptions.RANDOM_SEED, 1);
    root.setProperty(LayeredOptions.SEPARATE_CONNECTED_COMPONENTS, false);
    root.setProperty(LayeredOptions.PARTITIONING_ACTIVATE, true);
    root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.PREFER_NODES);
    root.setProperty(LayeredOptions.THOROUGHNESS, 40);
    // Keeps the way from pack to load on one level, with what hangs on it below.
    root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.BRANDES_KOEPF);
    root.setProperty(LayeredOptions.NODE_PLACEMENT_BK_FIXED_ALIGNMENT, FixedAlignment.LEFTDOWN);
    root.setProperty(LayeredOptions.PADDING, new ElkPadding(MARGIN));
    root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, BETWEEN_LAYERS);
    root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, BEFORE_BOXES);
    root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, BETWEEN_WIRES);
    root.setProperty(LayeredOptions.SPACING_NODE_NODE, BETWEEN_BOXES);
    root.setProperty(LayeredOptions.SPACING_EDGE_NODE, BETWEEN_WIRES);
    root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, BETWEEN_WIRES);
  }

  private void node(Shape shape) {
    ElkNode node = ElkGraphUtil.createNode(root);
    node.setDimensions(shape.width(), shape.height() + Box.ROOM_ABOVE);
    node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
    Sign sign = shape.owner().sign();
    node.setProperty(
        LayeredOptions.PARTITIONING_PARTITION, sign.isSource() ? 0 : sign.isLoad() ? 2 : 1);
    nodes.put(shape.owner().name(), node);
    for (Port port : shape.ports()) {
      ElkPort elk = ElkGraphUtil.createPort(node);
      elk.setLocation(port.at().x(), port.at().y() + Box.ROOM_ABOVE);
      elk.setProperty(LayeredOptions.PORT_SIDE, port.east() ? PortSide.EAST : PortSide.WEST);
      portsOf.put(elk, port);
      ports.computeIfAbsent(port.terminal(), t -> new ArrayList<>()).add(elk);
    }
  }

  /**
   * An edge always leads from what stands before to what stands after; the link may run against it.
   */
  private void edge(Link link) {
    boolean forward = !ranks.before(Owners.owner(link.to()), Owners.owner(link.from()));
    String first = forward ? link.from() : link.to();
    String second = forward ? link.to() : link.from();
    edges.put(link, ElkGraphUtil.createSimpleEdge(port(first, true), port(second, false)));
  }

  /** The port of a terminal on the side asked for, or the one it has. */
  private ElkPort port(String terminal, boolean east) {
    List<ElkPort> of = ports.get(terminal);
    return of.stream().filter(p -> portsOf.get(p).east() == east).findFirst().orElse(of.get(0));
  }

  /** Width of the whole. */
  int width() {
    return whole(root.getWidth());
  }

  /** Height of the whole. */
  int height() {
    return whole(root.getHeight());
  }

  List<Box> boxes() {
    List<Box> boxes = new ArrayList<>();
    for (Shape shape : shapes) {
      Point at = corner(shape);
      List<Port> placed =
          shape.ports().stream()
              .map(p -> new Port(p.terminal(), p.label(), p.east(), moved(p.at(), at)))
              .toList();
      Owners.Owner owner = shape.owner();
      boxes.add(
          new Box(
              owner.name(),
              owner.title(),
              owner.sign(),
              at.x(),
              at.y(),
              shape.width(),
              shape.height(),
              placed,
              owner.unused()));
    }
    return boxes;
  }

  /** Every link of the circuit once, in the circuit's order. */
  List<Route> routes() {
    Map<Link, Route> inside = new HashMap<>();
    for (Shape shape : shapes) {
      Point at = corner(shape);
      shape.routes().forEach(r -> inside.put(r.link(), moved(r, at)));
    }
    Map<Link, List<Point>> lines = new LinkedHashMap<>();
    edges.keySet().forEach(link -> lines.put(link, points(link)));
    List<Route> routes = new ArrayList<>();
    for (Link link : circuit.links()) {
      Route within = inside.get(link);
      routes.add(within != null ? within : between(link, lines));
    }
    return routes;
  }

  private Route between(Link link, Map<Link, List<Point>> lines) {
    List<Point> points = lines.get(link);
    boolean opens = !(link.closed() instanceof Link.Closed.Always);
    Map<Link, List<Point>> others = new LinkedHashMap<>(lines);
    others.remove(link);
    return new Route(
        link,
        Optional.ofNullable(wires.get(link.name())),
        points,
        opens ? Optional.of(Gaps.of(points, others.values())) : Optional.empty(),
        false);
  }

  private List<Point> points(Link link) {
    ElkEdgeSection section = edges.get(link).getSections().get(0);
    List<Point> points = new ArrayList<>();
    add(points, section.getStartX(), section.getStartY());
    for (ElkBendPoint bend : section.getBendPoints()) {
      add(points, bend.getX(), bend.getY());
    }
    add(points, section.getEndX(), section.getEndY());
    boolean forward =
        portsOf.get((ElkPort) edges.get(link).getSources().get(0)).terminal().equals(link.from());
    if (!forward) {
      Collections.reverse(points);
    }
    return points;
  }

  private static void add(List<Point> points, double x, double y) {
    Point point = new Point(whole(x), whole(y));
    if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
      points.add(point);
    }
  }

  /** Where wires that start or end at one terminal part from each other. */
  List<Point> joints() {
    List<Point> joints = new ArrayList<>();
    for (ElkEdge edge : edges.values()) {
      KVectorChain chain = edge.getProperty(LayeredOptions.JUNCTION_POINTS);
      for (KVector at : chain == null ? new KVectorChain() : chain) {
        Point point = new Point(whole(at.x), whole(at.y));
        if (!joints.contains(point)) {
          joints.add(point);
        }
      }
    }
    return joints;
  }

  private Point corner(Shape shape) {
    ElkNode node = nodes.get(shape.owner().name());
    return new Point(whole(node.getX()), whole(node.getY()) + Box.ROOM_ABOVE);
  }

  private static Point moved(Point point, Point by) {
    return new Point(point.x() + by.x(), point.y() + by.y());
  }

  private static Route moved(Route route, Point by) {
    Optional<Route.Gap> gap =
        route.gap().map(g -> new Route.Gap(g.piece(), moved(g.first(), by), moved(g.second(), by)));
    List<Point> points = route.points().stream().map(p -> moved(p, by)).toList();
    return new Route(route.link(), route.wire(), points, gap, route.inside());
  }

  /** One way of rounding for all, so that what lay on a line still does. */
  private static int whole(double value) {
    return (int) Math.floor(value + 0.5);
  }
}

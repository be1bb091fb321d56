package outshop.drawing;

import java.util.List;
import outshop.circuit.Circuit;
import outshop.plan.Plan;

/**
 * The wiring of a plan, laid out: the same for every state, as a state changes only which contacts
 * conduct.
 *
 * @param title the plan's title, as the user wrote it
 * @param routes every link of the circuit once, in the circuit's order
 * @param joints where wires that meet at one terminal part from each other
 * @param wires the wire list
 */
public record WiringDrawing(
    String title,
    Circuit circuit,
    int width,
    int height,
    List<Box> boxes,
    List<Route> routes,
    List<Point> joints,
    WireList wires) {
  public WiringDrawing {
    boxes = List.copyOf(boxes);
    routes = List.copyOf(routes);
    joints = List.copyOf(joints);
  }

  /** Lays out the wiring of a circuit. The plan is the one the circuit was built from. */
  public static WiringDrawing of(Circuit circuit, Plan plan) {
    WireList wires = WireList.of(circuit);
    Layout layout = new Layout(circuit, Owners.of(circuit, plan), wires);
    return new WiringDrawing(
        plan.title(),
        circuit,
        layout.width(),
        layout.height(),
        layout.boxes(),
        layout.routes(),
        layout.joints(),
        wires);
  }
}

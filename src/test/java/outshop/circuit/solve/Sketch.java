package outshop.circuit.solve;

import java.util.ArrayList;
import java.util.List;

/** A network drawn up by net names; a net comes into being when it is first named. */
public final class Sketch {
  /** So little that it shows in no printed digit: for books whose sources have no resistance. */
  public static final double NO_OHMS = 1e-9;

  private final List<String> nets = new ArrayList<>();
  private final List<Element> elements = new ArrayList<>();

  public Sketch source(String name, String plus, String minus, double emfVolts, double ohms) {
    return add(new Element.Source(name, net(plus), net(minus), emfVolts, ohms));
  }

  public Sketch resistor(String name, String a, String b, double ohms) {
    return add(new Element.Resistor(name, net(a), net(b), ohms));
  }

  public Sketch drop(String name, String a, String b, double volts, double ohms) {
    return add(new Element.Drop(name, net(a), net(b), volts, ohms));
  }

  public Sketch sink(String name, String a, String b, double amps) {
    return add(new Element.Sink(name, net(a), net(b), amps));
  }

  public Sketch powerSink(String name, String a, String b, double watts, double kneeVolts) {
    return add(new Element.PowerSink(name, net(a), net(b), watts, kneeVolts));
  }

  public Sketch supply(String name, String plus, String minus, double amps) {
    return add(new Element.Supply(name, net(plus), net(minus), amps));
  }

  /** A regulator that holds its output behind 0.05 ohm, with one minus for input and output. */
  public Sketch regulator(
      String name, String in, String out, String minus, double outVolts, double efficiency) {
    return regulator(name, in, minus, out, minus, outVolts, efficiency);
  }

  public Sketch regulator(
      String name,
      String a,
      String b,
      String outA,
      String outB,
      double outVolts,
      double efficiency) {
    return add(
        new Element.Regulator(
            name, net(a), net(b), net(outA), net(outB), outVolts, 0.05, efficiency));
  }

  /** A net that nothing may ever join. */
  public Sketch loose(String net) {
    net(net);
    return this;
  }

  public Network network() {
    return new Network(nets, elements);
  }

  public Solution solve() throws NoSolution {
    return Solver.solve(network());
  }

  public double netVolts(Solution solution, String net) {
    return solution.netVolts()[nets.indexOf(net)];
  }

  private Sketch add(Element element) {
    elements.add(element);
    return this;
  }

  private int net(String name) {
    if (!nets.contains(name)) {
      nets.add(name);
    }
    return nets.indexOf(name);
  }
}

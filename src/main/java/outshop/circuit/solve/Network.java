package outshop.circuit.solve;

import java.util.List;
import java.util.Objects;

/** Nets and the elements between them. */
public final class Network {
  private final List<String> nets;
  private final List<Element> elements;

  /** Worked out when first asked for; the same every time. */
  private Layout layout;

  /**
   * A network.
   *
   * @param nets a name a net, such as the terminals joined in it
   * @param elements each with a name of its own
   */
  public Network(List<String> nets, List<Element> elements) {
    this.nets = List.copyOf(nets);
    this.elements = List.copyOf(elements);
  }

  public List<String> nets() {
    return nets;
  }

  public List<Element> elements() {
    return elements;
  }

  /**
   * The same network with other values: what follows from how it hangs together is not worked out
   * again.
   *
   * @param others the elements in the same order, each of the same name, kind and nets
   * @throws IllegalArgumentException if one differs in more than its values, or as {@link
   *     Solver#solve}
   */
  public Network with(List<Element> others) {
    Network alike = new Network(nets, others);
    alike.layout = layout();
    alike.layout.requireAlike(elements, alike.elements);
    return alike;
  }

  /**
   * What follows from how it hangs together.
   *
   * @throws IllegalArgumentException if two elements share a name or one names a net that is not
   *     there
   */
  Layout layout() {
    Layout known = layout;
    if (known == null) {
      known = new Layout(nets.size(), elements);
      layout = known;
    }
    return known;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Network that
        && nets.equals(that.nets)
        && elements.equals(that.elements);
  }

  @Override
  public int hashCode() {
    return Objects.hash(nets, elements);
  }

  @Override
  public String toString() {
    return "Network[" + nets + ", " + elements + "]";
  }
}

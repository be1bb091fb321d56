package outshop.circuit.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What follows from how a network hangs together, whatever its values are. */
final class Layout {
  /** Where each element stands in the list. */
  final Map<String, Integer> placeOf;

  final Islands islands;

  /**
   * The layout of a network.
   *
   * @throws IllegalArgumentException if two elements share a name or one names a net that is not
   *     there
   */
  Layout(int nets, List<Element> elements) {
    placeOf = new HashMap<>(2 * elements.size());
    for (Element element : elements) {
      if (placeOf.putIfAbsent(element.name(), placeOf.size()) != null) {
        throw new IllegalArgumentException(element.name() + " shares its name: " + element);
      }
      ElementRanges.requireNets(element, nets);
    }
    islands = new Islands(nets, elements);
  }

  /** Refuses elements that differ in more than their values. */
  void requireAlike(List<Element> elements, List<Element> others) {
    boolean alike = elements.size() == others.size();
    for (int i = 0; alike && i < elements.size(); i++) {
      alike = alike(elements.get(i), others.get(i));
    }
    if (!alike) {
      throw new IllegalArgumentException("the networks differ in more than their values");
    }
  }

  private static boolean alike(Element one, Element other) {
    return one.getClass() == other.getClass()
        && one.a() == other.a()
        && one.b() == other.b()
        && one.name().equals(other.name())
        && (!(one instanceof Element.Regulator r)
            || (other instanceof Element.Regulator o
                && r.outA() == o.outA()
                && r.outB() == o.outB()));
  }
}

package outshop.circuit.solve;

import java.util.List;

/**
 * Nets and the elements between them.
 *
 * @param nets a name a net, such as the terminals joined in it
 * @param elements each with a name of its own
 */
public record Network(List<String> nets, List<Element> elements) {
  public Network {
    nets = List.copyOf(nets);
    elements = List.copyOf(elements);
  }
}

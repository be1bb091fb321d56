package outshop.circuit.solve;

import java.util.Arrays;
import java.util.List;

/**
 * Which nets hang together through elements, which of these islands are live, and the net each
 * island's voltages count from. An island is live if a source or a supply lies in it, or the output
 * of a regulator whose input island is live.
 */
final class Islands {
  private static final int NONE = -1;

  private final int[] parent;
  private final int[] reference;
  private final boolean[] live;

  Islands(int nets, List<Element> elements) {
    parent = new int[nets];
    Arrays.setAll(parent, net -> net);
    reference = new int[nets];
    Arrays.fill(reference, NONE);
    live = new boolean[nets];
    for (Element element : elements) {
      join(element.a(), element.b());
      if (element instanceof Element.Regulator regulator) {
        join(regulator.outA(), regulator.outB());
      }
    }
    for (Element element : elements) {
      if (element instanceof Element.Source) {
        enliven(element.b());
      }
    }
    for (Element element : elements) {
      if (element instanceof Element.Supply) {
        enliven(element.b());
      }
    }
    enlivenBehindRegulators(elements);
    for (int net = 0; net < nets; net++) {
      int island = island(net);
      if (reference[island] == NONE) {
        reference[island] = net;
      }
      // From here on nothing moves any more, so that several threads may read.
      parent[net] = island;
    }
  }

  /** The net that stands for the whole island of {@code net}. */
  int island(int net) {
    int top = net;
    while (parent[top] != top) {
      top = parent[top];
    }
    return top;
  }

  /** Whether a source or supply reaches {@code net}. */
  boolean live(int net) {
    return live[island(net)];
  }

  /**
   * The net at 0 V in the island of {@code net}: the minus of its first source, else of its first
   * supply, else of its first regulator output; in a dead island its first net.
   */
  int reference(int net) {
    return reference[island(net)];
  }

  private void join(int a, int b) {
    int below = island(a);
    int top = island(b);
    parent[below] = top;
    parent[a] = top;
    parent[b] = top;
  }

  private void enliven(int minus) {
    int island = island(minus);
    if (!live[island]) {
      live[island] = true;
      reference[island] = minus;
    }
  }

  /** A regulator can feed the next one, so this goes round until nothing more comes alive. */
  private void enlivenBehindRegulators(List<Element> elements) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Element element : elements) {
        if (element instanceof Element.Regulator regulator
            && live(regulator.a())
            && !live(regulator.outB())) {
          enliven(regulator.outB());
          changed = true;
        }
      }
    }
  }
}

package outshop.circuit.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A tree through every live island, grown along its best conductors, with the island's reference as
 * its root; and for each branch the way through the tree from its one net to its other. The
 * unknowns of the solution are the voltages along the tree: between the ends of a wire they are as
 * small as the wire's own drop, and so keep their digits, where the difference of two nets at 14 V
 * would lose them.
 */
final class Tree {
  /** How many branches the tree has. */
  final int size;

  /** The tree branch at each place. */
  final int[] branch;

  /**
   * Where the way of branch k starts in {@link #place} and {@link #sign}; ends where k+1 starts.
   */
  final int[] wayStart;

  /** Places along the way of each branch. */
  final int[] place;

  /** +1 where the way runs along the tree branch, -1 where it runs against it. */
  final int[] sign;

  /** Live nets from the roots outward, without the roots. */
  private final int[] outward;

  private final boolean[] held;
  private final int[] above;
  private final int[] aboveBranch;

  Tree(Network network, Islands islands, Branches branches) throws NoSolution {
    int nets = network.nets().size();
    int[] chosen = new int[nets];
    size = grow(nets, branches, chosen);
    branch = Arrays.copyOf(chosen, size);
    held = new boolean[branches.count];
    for (int k : branch) {
      held[k] = true;
    }
    refuseOpenSupplies(network, branches, nets);
    above = new int[nets];
    aboveBranch = new int[nets];
    int[] depth = new int[nets];
    int[] placeAbove = new int[nets];
    outward = new int[size];
    hang(nets, islands, branches, depth, placeAbove);
    wayStart = new int[branches.count + 1];
    int total = 0;
    for (int k = 0; k < branches.count; k++) {
      wayStart[k] = total;
      total += distance(branches.from[k], branches.to[k], depth);
    }
    wayStart[branches.count] = total;
    place = new int[total];
    sign = new int[total];
    for (int k = 0; k < branches.count; k++) {
      layWay(k, branches, depth, placeAbove);
    }
  }

  /** Whether a branch is one of the tree's. */
  boolean holds(int of) {
    return held[of];
  }

  /** Fills in the volts of every live net; the others stay as they are. */
  void netVolts(double[] branchVolts, Branches branches, double[] netVolts) {
    for (int net : outward) {
      int k = aboveBranch[net];
      double step = branches.from[k] == net ? branchVolts[k] : -branchVolts[k];
      netVolts[net] = netVolts[above[net]] + step;
    }
  }

  /** Takes the best conductors first, each that joins two parts not yet joined. */
  private static int grow(int nets, Branches branches, int[] chosen) {
    int[] order = byOhms(branches);
    int[] group = new int[nets];
    Arrays.setAll(group, net -> net);
    int taken = 0;
    for (int k : order) {
      int a = top(group, branches.from[k]);
      int b = top(group, branches.to[k]);
      if (a != b && !branches.isSupply(k)) {
        group[a] = b;
        chosen[taken++] = k;
      }
    }
    return taken;
  }

  private static int[] byOhms(Branches branches) {
    int[] order = new int[branches.count];
    double[] ohms = new double[branches.count];
    for (int k = 0; k < branches.count; k++) {
      double own = branches.ohms(k);
      int at = k;
      while (at > 0 && ohms[at - 1] > own) {
        ohms[at] = ohms[at - 1];
        order[at] = order[at - 1];
        at--;
      }
      ohms[at] = own;
      order[at] = k;
    }
    return order;
  }

  private static int top(int[] group, int net) {
    int top = net;
    while (group[top] != top) {
      group[top] = group[group[top]];
      top = group[top];
    }
    return top;
  }

  private void refuseOpenSupplies(Network network, Branches branches, int nets) throws NoSolution {
    int[] group = new int[nets];
    Arrays.setAll(group, net -> net);
    for (int k : branch) {
      group[top(group, branches.from[k])] = top(group, branches.to[k]);
    }
    List<String> open = new ArrayList<>();
    for (int k = 0; k < branches.count; k++) {
      if (branches.isSupply(k) && top(group, branches.from[k]) != top(group, branches.to[k])) {
        open.add(network.elements().get(branches.element[k]).name());
      }
    }
    if (!open.isEmpty()) {
      throw new NoSolution("the current of a supply has no way back", open);
    }
  }

  /** Hangs the tree from the references: who is above whom, by which branch. */
  private void hang(int nets, Islands islands, Branches branches, int[] depth, int[] placeAbove) {
    int[] queue = new int[nets];
    int tail = 0;
    Arrays.fill(above, Branches.NONE);
    for (int net = 0; net < nets; net++) {
      if (islands.live(net) && islands.reference(net) == net) {
        above[net] = net;
        queue[tail++] = net;
      }
    }
    int roots = tail;
    int[] firstAt = new int[nets + 1];
    int[] places = placesByNet(nets, branches, firstAt);
    for (int head = 0; head < tail; head++) {
      int net = queue[head];
      for (int i = firstAt[net]; i < firstAt[net + 1]; i++) {
        int k = branch[places[i]];
        int other = branches.from[k] == net ? branches.to[k] : branches.from[k];
        if (above[other] == Branches.NONE) {
          above[other] = net;
          aboveBranch[other] = k;
          placeAbove[other] = places[i];
          depth[other] = depth[net] + 1;
          queue[tail++] = other;
        }
      }
    }
    System.arraycopy(queue, roots, outward, 0, size);
  }

  /** The places of the tree branches at each net, one net after the other. */
  private int[] placesByNet(int nets, Branches branches, int[] firstAt) {
    for (int k : branch) {
      firstAt[branches.from[k] + 1]++;
      firstAt[branches.to[k] + 1]++;
    }
    for (int net = 0; net < nets; net++) {
      firstAt[net + 1] += firstAt[net];
    }
    int[] next = Arrays.copyOf(firstAt, nets);
    int[] places = new int[2 * size];
    for (int at = 0; at < size; at++) {
      places[next[branches.from[branch[at]]]++] = at;
      places[next[branches.to[branch[at]]]++] = at;
    }
    return places;
  }

  private int distance(int a, int b, int[] depth) {
    int steps = 0;
    int one = a;
    int other = b;
    while (one != other) {
      if (depth[one] >= depth[other]) {
        one = above[one];
      } else {
        other = above[other];
      }
      steps++;
    }
    return steps;
  }

  private void layWay(int k, Branches branches, int[] depth, int[] placeAbove) {
    int at = wayStart[k];
    int one = branches.from[k];
    int other = branches.to[k];
    while (one != other) {
      boolean fromSide = depth[one] >= depth[other];
      int net = fromSide ? one : other;
      boolean startsHere = branches.from[aboveBranch[net]] == net;
      place[at] = placeAbove[net];
      sign[at] = fromSide == startsHere ? 1 : -1;
      at++;
      if (fromSide) {
        one = above[one];
      } else {
        other = above[other];
      }
    }
  }
}

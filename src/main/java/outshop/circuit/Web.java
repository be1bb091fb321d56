package outshop.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** The conductors of one state, laid out for searching. */
final class Web {
  final Terminals terminals;
  final List<Link> closed;

  /** Where the joints of each terminal begin, and behind the last one where they end. */
  private final int[] firstAt;

  /** A joint is one end of a closed link: the link, and the terminal at its other end. */
  private final Link[] jointLink;

  private final int[] jointOther;

  /** The terminals that hang together have the same number here. */
  private final int[] group;

  Web(Terminals terminals, List<Link> links, State state) {
    this.terminals = terminals;
    List<Link> conducting = new ArrayList<>(links.size());
    int[] which = new int[links.size()];
    for (int i = 0; i < which.length; i++) {
      if (links.get(i).closed().in(state)) {
        which[conducting.size()] = i;
        conducting.add(links.get(i));
      }
    }
    closed = Collections.unmodifiableList(conducting);
    int count = terminals.count();
    firstAt = new int[count + 1];
    for (int k = 0; k < closed.size(); k++) {
      firstAt[terminals.from[which[k]] + 1]++;
      firstAt[terminals.to[which[k]] + 1]++;
    }
    for (int t = 0; t < count; t++) {
      firstAt[t + 1] += firstAt[t];
    }
    int[] next = Arrays.copyOf(firstAt, count);
    jointLink = new Link[2 * closed.size()];
    jointOther = new int[2 * closed.size()];
    for (int k = 0; k < closed.size(); k++) {
      int a = terminals.from[which[k]];
      int b = terminals.to[which[k]];
      joint(next[a]++, closed.get(k), b);
      joint(next[b]++, closed.get(k), a);
    }
    group = groups(count);
  }

  private void joint(int at, Link link, int other) {
    jointLink[at] = link;
    jointOther[at] = other;
  }

  private int[] groups(int count) {
    int[] groups = new int[count];
    int[] open = new int[count];
    Arrays.fill(groups, Terminals.NONE);
    for (int start = 0; start < count; start++) {
      if (groups[start] == Terminals.NONE) {
        groups[start] = start;
        open[0] = start;
        for (int head = 0, tail = 1; head < tail; head++) {
          for (int j = firstAt[open[head]]; j < firstAt[open[head] + 1]; j++) {
            if (groups[jointOther[j]] == Terminals.NONE) {
              groups[jointOther[j]] = start;
              open[tail++] = jointOther[j];
            }
          }
        }
      }
    }
    return groups;
  }

  boolean together(int one, int other) {
    return group[one] == group[other];
  }

  int firstJoint(int terminal) {
    return firstAt[terminal];
  }

  /** Behind the last joint of a terminal. */
  int endOfJoints(int terminal) {
    return firstAt[terminal + 1];
  }

  Link link(int joint) {
    return jointLink[joint];
  }

  /** The terminal at the other end. */
  int other(int joint) {
    return jointOther[joint];
  }
}

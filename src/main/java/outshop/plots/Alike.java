package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import outshop.units.Amount;
import outshop.units.Exact;

/** Rows that say the same of several things, drawn once. */
final class Alike {
  private Alike() {}

  /** A row, and what it must share with another to stand together with it. */
  record Keyed(String key, Row row) {}

  /**
   * The rows, those with the same key and values together where the first of them stands, and named
   * after it.
   */
  static List<Row> together(List<Keyed> rows) {
    List<List<Keyed>> groups = new ArrayList<>();
    for (Keyed row : rows) {
      groups.stream()
          .filter(group -> same(group.get(0), row))
          .findFirst()
          .ifPresentOrElse(
              group -> group.add(row), () -> groups.add(new ArrayList<>(List.of(row))));
    }
    return groups.stream().map(Alike::one).toList();
  }

  private static Row one(List<Keyed> group) {
    Row first = group.get(0).row();
    int more = group.size() - 1;
    return new Row(
        more == 0 ? first.name() : first.name() + ", " + more + " more",
        String.join("; ", group.stream().map(k -> k.row().described()).toList()),
        first.marks());
  }

  private static boolean same(Keyed one, Keyed other) {
    List<Mark> marks = one.row().marks();
    List<Mark> others = other.row().marks();
    if (!one.key().equals(other.key()) || marks.size() != others.size()) {
      return false;
    }
    for (int i = 0; i < marks.size(); i++) {
      if (!same(marks.get(i).amount(), others.get(i).amount())) {
        return false;
      }
    }
    return true;
  }

  private static boolean same(Amount one, Amount other) {
    if (one instanceof Amount.Known a && other instanceof Amount.Known b) {
      return Exact.same(a.value(), b.value())
          && Exact.same(a.low(), b.low())
          && Exact.same(a.high(), b.high());
    }
    return one.isMissing() ? one.equals(other) : one.isAbsent() && other.isAbsent();
  }
}

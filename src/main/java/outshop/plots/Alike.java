package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import outshop.units.Amount;
import outshop.units.Exact;

/** Rows that say the same of several things, drawn once. */
final class Alike {
  private Alike() {}

  /**
   * The rows, those with the same values together where the first of them stands.
   *
   * @param named the name of rows drawn together, from the first one's and how many they are
   */
  static List<Row> together(List<Row> rows, BiFunction<String, Integer, String> named) {
    List<List<Row>> groups = new ArrayList<>();
    for (Row row : rows) {
      groups.stream()
          .filter(group -> same(group.get(0), row))
          .findFirst()
          .ifPresentOrElse(
              group -> group.add(row), () -> groups.add(new ArrayList<>(List.of(row))));
    }
    return groups.stream().map(group -> one(group, named)).toList();
  }

  private static Row one(List<Row> group, BiFunction<String, Integer, String> named) {
    Row first = group.get(0);
    return new Row(
        named.apply(first.name(), group.size()),
        String.join("; ", group.stream().map(Row::described).toList()),
        first.marks());
  }

  private static boolean same(Row one, Row other) {
    if (!one.name().equals(other.name()) || one.marks().size() != other.marks().size()) {
      return false;
    }
    for (int i = 0; i < one.marks().size(); i++) {
      if (!same(one.marks().get(i).amount(), other.marks().get(i).amount())) {
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

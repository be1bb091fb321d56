package outshop.units;

/**
 * A value that nobody stated: what it is, whose it is, and how to get it.
 *
 * @param where the part's or measurement's own name in the plan, such as {@code receiver}
 * @param what the value, in words or as its column, such as {@code input_max_volts}
 * @param how one sentence that tells how to get it
 */
public record Want(String where, String what, String how) implements Comparable<Want> {
  @Override
  public int compareTo(Want other) {
    int byWhere = where.compareTo(other.where);
    return byWhere != 0 ? byWhere : what.compareTo(other.what);
  }

  /** The value's short name, such as {@code receiver: input_max_volts}. */
  public String name() {
    return where + ": " + what;
  }
}

package outshop.units;

/**
 * Notes, by thread, whether anybody looked at the one value of an amount that is really a range. A
 * verdict by such a value need not hold for the whole range.
 */
public final class Peeks {
  private static final ThreadLocal<boolean[]> SEEN = ThreadLocal.withInitial(() -> new boolean[1]);

  private Peeks() {}

  /** Forgets what was noted. */
  public static void clear() {
    SEEN.get()[0] = false;
  }

  /** Whether anybody looked since. */
  public static boolean seen() {
    return SEEN.get()[0];
  }

  static void note() {
    SEEN.get()[0] = true;
  }
}

package outshop.search;

import java.util.concurrent.TimeUnit;

/** Ends a search before its time: when it is asked to, or when a deadline has passed. */
public final class Stop {
  private final long deadline;
  private final boolean limited;
  private volatile boolean asked;

  private Stop(long deadline, boolean limited) {
    this.deadline = deadline;
    this.limited = limited;
  }

  /** Stops only when asked to. */
  public static Stop whenAsked() {
    return new Stop(0, false);
  }

  /** Stops after so many seconds from now, or when asked to. */
  public static Stop after(double seconds) {
    return new Stop(System.nanoTime() + (long) (seconds * TimeUnit.SECONDS.toNanos(1)), true);
  }

  public void ask() {
    asked = true;
  }

  public boolean isDue() {
    return asked || (limited && System.nanoTime() - deadline >= 0);
  }
}

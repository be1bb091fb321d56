package outshop.cli;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Something that is made beside the work that does not need it yet: the rules are laid out while
 * the files are read. What goes wrong with it goes wrong where it is asked for.
 */
final class Ahead<T> implements Supplier<T> {
  private final FutureTask<T> task;

  private Ahead(Supplier<T> make) {
    task = new FutureTask<>(make::get);
  }

  /** Begins to make it. */
  static <T> Ahead<T> of(Supplier<T> make) {
    Ahead<T> ahead = new Ahead<>(make);
    Thread thread = new Thread(ahead.task, "ahead");
    // Nothing waits for it that does not ask.
    thread.setDaemon(true);
    thread.start();
    return ahead;
  }

  /** It, once it is made. */
  @Override
  public T get() {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return task.get();
        } catch (InterruptedException e) {
          interrupted = true;
        }
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) e.getCause();
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }
}

package outshop.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Does the same work on many things, side by side; the answers come in the order of the things. */
final class Side implements AutoCloseable {
  private final int threads;
  private final ExecutorService workers;

  /** Errors: {@link IllegalArgumentException} for less than one thread. */
  Side(int threads) {
    this.threads = threads;
    this.workers =
        Executors.newFixedThreadPool(
            threads,
            work -> {
              Thread thread = new Thread(work, "mend");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * The answer for each thing. Errors: what the work throws is thrown here, that of the first thing
   * for which it was thrown.
   */
  <T, R> List<R> each(List<T> things, Function<T, R> work) {
    List<Callable<List<R>>> shares = new ArrayList<>();
    int size = Math.max(1, Math.min(16, things.size() / threads));
    for (int from = 0; from < things.size(); from += size) {
      List<T> share = things.subList(from, Math.min(things.size(), from + size));
      shares.add(() -> share.stream().map(work).toList());
    }
    List<R> answers = new ArrayList<>();
    try {
      for (Future<List<R>> share : workers.invokeAll(shares)) {
        answers.addAll(share.get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException own) {
        throw own;
      }
      throw new IllegalStateException(e.getCause());
    }
    return answers;
  }

  @Override
  public void close() {
    workers.shutdownNow();
  }
}

package outshop.search;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import outshop.rules.RuleEngine;
import outshop.rules.Verdict;

/**
 * Finds every combination without a violation: the best in an order, and how many there are.
 *
 * <p>The answer does not depend on the number of threads, unless the search is stopped.
 */
public final class Search {
  private static final int NEIGHBOURS = 100;
  private static final long TOLD_EVERY_MILLIS = 200;

  private final RuleEngine engine;
  private final Space space;
  private final Trials trials;
  private final Region region;

  /**
   * What is asked for.
   *
   * @param best how many of the best are wanted
   * @param count whether the rest is to be considered as well, to count what works
   */
  public record Asked(Order order, int best, boolean count, int threads, Stop stop) {}

  public Search(RuleEngine engine, Space space) {
    this.engine = engine;
    this.space = space;
    this.trials = new Trials(engine, space);
    this.region = new Region(space, trials);
  }

  /** Whether one combination works, by what was learned of all of them. */
  boolean works(int[] point) {
    return region.around(point, Region.single(point)).works();
  }

  /** The answer; it comes early if it is to stop. */
  public Answer run(Asked asked, Watched watched) {
    if (space.size().signum() == 0) {
      return nothingToChoose();
    }
    while (true) {
      try {
        return attempt(asked, watched);
      } catch (Distrust found) {
        region.distrust(found);
      }
    }
  }

  private Answer nothingToChoose() {
    return new Answer(
        BigInteger.ZERO,
        BigInteger.ZERO,
        BigInteger.ZERO,
        List.of(),
        true,
        Optional.empty(),
        Optional.empty(),
        new Answer.Effort(0, 0, 0, List.of()));
  }

  private Answer attempt(Asked asked, Watched watched) {
    BestFirst first = new BestFirst(space, region, trials, asked.order(), asked.stop());
    Cover cover = new Cover(space, region, new Measure(Order.COST, space, trials), asked.stop());
    List<Runnable> jobs = new ArrayList<>();
    region.halt(false);
    for (int i = 0; i < asked.threads(); i++) {
      jobs.add(
          () -> {
            first.run(asked.best());
            if (asked.count()) {
              cover.run();
            }
          });
    }
    together(
        jobs,
        asked.stop(),
        () -> watched.at(space.size(), cover.considered(), cover.works(), first.best().size()));
    List<Found> best = first.best();
    if (!asked.stop().isDue()) {
      tryNeighbours(best);
    }
    boolean none = best.isEmpty() && cover.works().signum() == 0;
    Optional<NearMiss.Seen> near =
        none ? Optional.of(new NearMiss(space, trials, engine).seen()) : Optional.empty();
    Optional<Found> chance =
        near.map(NearMiss.Seen::nearest)
            .map(point -> measured(point, asked.order()))
            .orElse(Optional.empty());
    return new Answer(
        space.size(),
        cover.considered(),
        cover.works(),
        best,
        first.isComplete(),
        chance,
        chance.isPresent() ? Optional.empty() : near.map(NearMiss.Seen::hindrance),
        new Answer.Effort(
            trials.checks(), trials.looks(), region.boxes().size(), region.distrusted()));
  }

  /** A combination with its figures, if it works. */
  private Optional<Found> measured(int[] point, Order order) {
    List<Object> facts = trials.facts(point);
    List<Verdict> verdicts = trials.check(facts);
    return verdicts.stream().anyMatch(Verdict::isViolation)
        ? Optional.empty()
        : Optional.of(new Measure(order, space, trials).found(point, facts, verdicts));
  }

  private void together(List<Runnable> jobs, Stop stop, Runnable tell) {
    ExecutorService pool =
        Executors.newFixedThreadPool(
            jobs.size(),
            job -> {
              Thread thread = new Thread(job, "choose");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<?>> futures = new ArrayList<>();
      jobs.forEach(job -> futures.add(pool.submit(() -> halting(job))));
      for (Future<?> future : futures) {
        await(future, tell);
      }
    } catch (InterruptedException e) {
      stop.ask();
      Thread.currentThread().interrupt();
    } finally {
      region.halt(true);
      finish(pool);
    }
  }

  private void halting(Runnable job) {
    boolean ended = false;
    try {
      job.run();
      ended = true;
    } finally {
      if (!ended) {
        region.halt(true);
      }
    }
  }

  /** Nobody may go on with what is about to be taken back. */
  private static void finish(ExecutorService pool) {
    pool.shutdown();
    try {
      while (!pool.awaitTermination(1, TimeUnit.SECONDS)) {
        Thread.onSpinWait();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void await(Future<?> future, Runnable tell) throws InterruptedException {
    while (true) {
      try {
        future.get(TOLD_EVERY_MILLIS, TimeUnit.MILLISECONDS);
        return;
      } catch (TimeoutException e) {
        tell.run();
      } catch (ExecutionException e) {
        if (e.getCause() instanceof RuntimeException own) {
          throw own;
        }
        throw new IllegalStateException(e.getCause());
      }
    }
  }

  /** Checks some combinations close to the best against what was said of them. */
  private void tryNeighbours(List<Found> best) {
    Random random = new Random(7);
    for (int n = 0; n < NEIGHBOURS && !best.isEmpty(); n++) {
      Found found = best.get(random.nextInt(best.size()));
      int[] point = new int[space.slots().size()];
      for (int s = 0; s < point.length; s++) {
        point[s] = space.slots().get(s).choices().indexOf(found.parts().get(s));
      }
      int changed = random.nextInt(point.length);
      point[changed] = random.nextInt(space.slots().get(changed).choices().size());
      Optional<Box> box = region.boxes().covering(point, Region.single(point));
      if (box.isPresent()) {
        boolean works = trials.check(point).stream().noneMatch(Verdict::isViolation);
        if (works) {
          throw region.distrustOf(box.get().reason());
        }
      }
    }
  }
}

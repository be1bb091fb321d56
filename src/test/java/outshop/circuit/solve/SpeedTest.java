package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A plan's every case and state is solved anew, so one solution may not take long. */
final class SpeedTest {
  /** Ten times what it takes, in processor time so that a busy machine does not count. */
  private static final double MOST_MICROSECONDS = 200;

  private static final int BATCHES = 20;
  private static final int BATCH = 1000;

  @Test
  void aLocomotiveTakesMicroseconds() throws NoSolution {
    Network network = locomotive();
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    double best = Double.POSITIVE_INFINITY;
    double sum = 0;
    for (int batch = 0; batch < BATCHES; batch++) {
      long start = clock.getCurrentThreadCpuTime();
      for (int turn = 0; turn < BATCH; turn++) {
        sum += Solver.solve(network).amps("pack");
      }
      best = Math.min(best, (clock.getCurrentThreadCpuTime() - start) / 1e3 / BATCH);
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%d nets, %d elements: %.1f microseconds a solution",
            network.nets().size(),
            network.elements().size(),
            best));
    assertThat(sum).isNegative();
    assertThat(best).isLessThan(MOST_MICROSECONDS);
  }

  /** Twenty nets, twenty-five elements, of every kind but a supply. */
  static Network locomotive() {
    Sketch sketch = new Sketch().source("pack", "p0", "m0", 16.8, 0.12);
    for (int wire = 1; wire <= 6; wire++) {
      sketch.resistor("wire" + wire, "p" + (wire - 1), "p" + wire, 0.004 + 0.001 * wire);
    }
    return sketch
        .drop("bridge", "p6", "motor+", 1.4, 0.1)
        .resistor("motor", "motor+", "motor-", 4)
        .resistor("back3", "motor-", "m2", 0.01)
        .resistor("back2", "m2", "m1", 0.01)
        .resistor("back1", "m1", "m0", 0.01)
        .sink("standing", "p6", "m2", 0.08)
        .powerSink("sound", "p6", "m2", 6, 3)
        .regulator("regulator", "p6", "five", "m2", 5, 0.85)
        .sink("camera", "five", "m2", 0.3)
        .resistor("front resistor", "motor+", "front", 680)
        .drop("front lamp", "front", "m2", 3.1, 10)
        .resistor("rear resistor", "motor+", "rear", 680)
        .drop("rear lamp", "rear", "m2", 2.1, 10)
        .resistor("lead", "p6", "bulb+", 0.02)
        .resistor("bulb", "bulb+", "bulb-", 200)
        .resistor("return", "bulb-", "m2", 0.02)
        .resistor("cab resistor", "bulb+", "cab", 1000)
        .drop("cab lamp 1", "cab", "cab mid", 2.0, 5)
        .drop("cab lamp 2", "cab mid", "bulb-", 2.0, 5)
        .network();
  }
}

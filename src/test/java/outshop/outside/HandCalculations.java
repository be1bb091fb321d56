package outshop.outside;

import java.nio.file.Path;
import java.util.List;
import outshop.acceptance.Sample;
import outshop.circuit.LoadCase;
import outshop.figures.Bench;

/**
 * The blocked motor's current of demo plans, worked out by hand from the parts' data: with sinks
 * for electronics, sound and lamps the loop from the pack through the motor is one linear equation,
 *
 * <p>{@code E - Ie R1 - Is (R1 + R2) - U = Im (R1 + R2 + R3 + Rm)}.
 *
 * <p>E: full pack. R1: from the pack's cells to the receiver and back. R2: from the receiver's
 * input to the decoder's rails. R3: from the rails to the motor and back. Rm: test voltage /
 * blocked current. Ie: electronics. Is: sound and lamps. U: the receiver's drop and the decoder's
 * bridge. Wire: 20 AWG has 0.033309 ohm/m (1.7241e-8 ohm m / 0.51761 mm2).
 */
final class HandCalculations {
  private static final double WITHIN = 0.001;
  private static final double AWG20 = 0.033309;

  /** A few contacts of a milliohm that only keep the network solvable. */
  private static final double TINY = 1e-3;

  private record Loop(
      String plan,
      double e,
      double r1,
      double r2,
      double r3,
      double rm,
      double ie,
      double is,
      double u) {
    double motorAmps() {
      return (e - ie * r1 - is * (r1 + r2) - u) / (r1 + r2 + r3 + rm);
    }
  }

  private HandCalculations() {}

  static List<OutsideCheck> all() {
    CheckList list =
        new CheckList("hand calculations")
            .from("Ohm's and Kirchhoff's laws, worked out by hand from the parts' data");
    for (Loop loop : loops()) {
      list.within(
          WITHIN * loop.motorAmps(),
          loop.plan(),
          loop.plan() + ": motor, wheels blocked, pack full",
          Digits.six(loop.motorAmps()),
          "A",
          () -> solvedAmps(loop.plan()));
    }
    return list.all();
  }

  private static double solvedAmps(String plan) {
    Path file = Sample.FOLDER.resolve("plans").resolve(plan + ".yaml");
    LoadCase blocked = new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.BLOCKED);
    return Bench.of(Sample.plan(file), List.of()).cases().amps(blocked, "motor").get().value();
  }

  private static Loop[] loops() {
    // 4 cells x 35 mohm / 2 strings + 25 mohm; two contacts of 4 mohm; fuse 26; switch 10; break
    // contact 20 mohm.
    double pack = 4 * 0.035 / 2 + 0.025;
    double tankFeed = 2 * 0.004 + 0.026 + 0.010 + 0.020;
    // 70 mm and 50 mm to the fuse and from pack minus, the jack's lead 120 mm, half the feed of 250
    // mm twice, and back once.
    double tankWire = AWG20 * (0.070 + 0.050 + 0.120 + 0.125 + 0.125 + 0.250);
    double receiver = 0.060 + TINY + 2 * AWG20 * 0.05;
    double decoder = 2 * TINY;
    double motorLeads = 0.120 + TINY + 2 * AWG20 * 0.150;
    return new Loop[] {
      new Loop(
          "sallowmere-tank",
          16.8,
          pack + tankFeed + tankWire,
          receiver + decoder,
          motorLeads,
          7 / 1.5,
          0.095,
          0.360,
          0.15 + 1.2),
      new Loop(
          "two-speakers",
          16.8,
          pack + tankFeed + tankWire,
          receiver + decoder,
          motorLeads,
          7 / 1.5,
          0.095,
          0.360,
          0.15 + 1.2),
      new Loop(
          "weak-switch",
          16.8,
          pack + 2 * 0.004 + 0.0105 + 0.030 + 0.020 + tankWire / AWG20 * 0.084215,
          0.060 + TINY + 2 * 0.084215 * 0.05 + decoder,
          0.120 + TINY + 2 * 0.084215 * 0.150,
          7 / 1.5,
          0.095,
          0.360,
          0.15 + 1.2),
      new Loop(
          "five-cells-too-many",
          21,
          5 * 0.035 / 2 + 0.025 + tankFeed + tankWire,
          receiver + decoder,
          motorLeads,
          7 / 1.5,
          0.095,
          0.360,
          0.15 + 1.2),
      // Three cells, 38 mohm, two strings; fuse 35 mohm; no jack; 13 V receiver of 120 mohm;
      // decoder of 180 mohm; bulb 80 mA.
      new Loop(
          "hollowpit-shunter",
          12.6,
          3 * 0.038 / 2
              + 0.025
              + 2 * 0.004
              + 0.035
              + 0.010
              + AWG20 * (0.050 + 0.050 + 0.050 + 0.050 + 0.100),
          0.120 + TINY + 2 * AWG20 * 0.05 + decoder,
          0.180 + TINY + 2 * AWG20 * 0.120,
          7 / 0.8,
          0.065,
          0.080,
          0.15 + 1.2),
      // Wired by hand: no connector; pack to fuse 70 mm, fuse to jack and switch 120 mm, 130 mm,
      // 120 mm and 250 mm back.
      new Loop(
          "jack-the-wrong-way",
          16.8,
          pack + 0.026 + 0.010 + 0.020 + AWG20 * (0.070 + 0.120 + 0.130 + 0.120 + 0.250),
          receiver + decoder,
          motorLeads,
          7 / 1.5,
          0.095,
          0.360,
          0.15 + 1.2),
    };
  }
}

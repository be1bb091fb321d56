package outshop.circuit.solve;

import java.util.Random;

/** Networks that nobody would build, of every kind of element, made from a seed. */
final class RandomNetwork {
  private RandomNetwork() {}

  /** Three to twenty nets, all joined by resistors, and as many other elements across them. */
  static Network of(long seed) {
    Random random = new Random(seed);
    int nets = 3 + random.nextInt(18);
    Sketch sketch = new Sketch();
    for (int net = 1; net < nets; net++) {
      sketch.resistor("wire" + net, "n" + net, "n" + random.nextInt(net), ohms(random));
    }
    int others = 2 + random.nextInt(nets + 4);
    for (int number = 0; number < others; number++) {
      add(sketch, number == 0 ? 0 : random.nextInt(16), number, nets, random);
    }
    return sketch.network();
  }

  private static void add(Sketch sketch, int kind, int number, int nets, Random random) {
    String a = "n" + random.nextInt(nets);
    String b = "n" + random.nextInt(nets);
    switch (kind) {
      case 0 -> sketch.source("pack" + number, a, b, 26 * random.nextDouble(), ohms(random));
      case 1, 2, 3 -> sketch.resistor("bulb" + number, a, b, 1 + 500 * random.nextDouble());
      case 4, 5 -> sketch.sink("radio" + number, a, b, 3 * random.nextDouble());
      case 6, 7, 8 -> sketch.drop("lamp" + number, a, b, 3.5 * random.nextDouble(), ohms(random));
      case 9, 10 ->
          sketch.powerSink(
              "sound" + number, a, b, 15 * random.nextDouble(), 1 + 5 * random.nextDouble());
      case 11 -> sketch.supply("charger" + number, a, b, 2 * random.nextDouble());
      default -> regulator(sketch, number, a, b, random);
    }
  }

  /**
   * A regulator with a load of its own behind it; now and then one that does not share its minus.
   */
  private static void regulator(Sketch sketch, int number, String a, String b, Random random) {
    String out = "out" + number;
    String back = random.nextInt(4) == 0 ? "back" + number : b;
    double volts = 1 + 11 * random.nextDouble();
    double efficiency = random.nextBoolean() ? 0 : 0.7 + 0.3 * random.nextDouble();
    sketch.regulator("regulator" + number, a, b, out, back, volts, efficiency);
    sketch.sink("standing" + number, out, back, random.nextDouble());
    sketch.resistor("warm" + number, out, back, 1 + 100 * random.nextDouble());
    sketch.powerSink("busy" + number, out, back, 5 * random.nextDouble(), 1);
  }

  /** From 0.1 milliohm to 100 ohm, as many small as large. */
  private static double ohms(Random random) {
    return Math.pow(10, -4 + 6 * random.nextDouble());
  }
}

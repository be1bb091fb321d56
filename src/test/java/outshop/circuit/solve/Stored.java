package outshop.circuit.solve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Compares a solution with what ngspice makes of the same network: with a run of it where it is
 * installed, and always with the results of an earlier run, kept in {@code
 * src/test/resources/ngspice}. They are made anew with {@code -Doutshop.store=true}.
 *
 * <p>Where the environment says {@code CI=true} ngspice has to be there; elsewhere its absence is
 * printed, once.
 */
public final class Stored {
  /** Two figures may differ by this share, and by a millionth of a volt or ampere. */
  public static final double WITHIN = 0.001;

  /** The same where a load of constant power is in the network. */
  public static final double WITHIN_FOR_CONSTANT_POWER = 0.005;

  private static final double TOO_SMALL = 1e-6;

  /**
   * Where no current flows, what leakage leaves of a voltage below a tenth of a volt is each
   * program's own.
   */
  private static final double IDLE_AMPS = 1e-9;

  private static final double IDLE_VOLTS = 0.1;
  private static final String HEADING = "element\tamps\tvolts";
  private static final Path DIRECTORY =
      Path.of(System.getProperty("basedir", "."), "src", "test", "resources", "ngspice");
  private static final AtomicBoolean ABSENCE_PRINTED = new AtomicBoolean();

  private Stored() {}

  /**
   * Compares, with a run if there can be one and with the stored results.
   *
   * @param name of the file, small letters and hyphens
   * @return the largest difference found, as a share
   * @throws AssertionError if a figure differs by more than allowed, the stored results are missing
   *     or of another network, or ngspice has to be there and is not
   */
  public static double check(String name, Network network, Solution solution) {
    double largest = 0;
    if (Ngspice.present()) {
      Map<String, double[]> live = Ngspice.run(network);
      if (Boolean.getBoolean("outshop.store")) {
        write(name, live);
      }
      largest = compare(name + ", run now", network, solution, live);
    } else {
      allowAbsence();
    }
    return Math.max(largest, differenceFromStored(name, network, solution));
  }

  /** As {@link #check}, with the stored results alone. */
  private static double differenceFromStored(String name, Network network, Solution solution) {
    return compare(name + ", stored", network, solution, read(name));
  }

  /**
   * The largest difference from the stored results, in amps or volts, whichever is more.
   *
   * @throws AssertionError as {@link #check}
   */
  public static double apartFromStored(String name, Network network, Solution solution) {
    differenceFromStored(name, network, solution);
    double largest = 0;
    for (Map.Entry<String, double[]> stored : read(name).entrySet()) {
      double[] result = stored.getValue();
      double amps = solution.amps(stored.getKey());
      double volts = solution.volts(stored.getKey());
      if (!(idle(amps, volts) && idle(result[0], result[1]))) {
        double apart = Math.max(Math.abs(amps - result[0]), Math.abs(volts - result[1]));
        largest = Math.max(largest, apart);
      }
    }
    return largest;
  }

  /** As {@link #check}, with these results. */
  static double compare(
      String what, Network network, Solution solution, Map<String, double[]> results) {
    List<String> names = network.elements().stream().map(Element::name).toList();
    if (!List.copyOf(results.keySet()).equals(names)) {
      throw new AssertionError(
          what + ": results of " + results.keySet() + ", elements are " + names);
    }
    double within = within(network);
    double largest = 0;
    for (String element : names) {
      double[] result = results.get(element);
      double amps = difference(solution.amps(element), result[0]);
      double volts = difference(solution.volts(element), result[1]);
      if (idle(solution.amps(element), solution.volts(element)) && idle(result[0], result[1])) {
        continue;
      }
      if (!(amps <= within && volts <= within)) {
        throw new AssertionError(
            String.format(
                Locale.ROOT,
                "%s: %s has %.9g A and %.9g V, ngspice %.9g A and %.9g V",
                what,
                element,
                solution.amps(element),
                solution.volts(element),
                result[0],
                result[1]));
      }
      largest = Math.max(largest, Math.max(amps, volts));
    }
    return largest;
  }

  private static boolean idle(double amps, double volts) {
    return Math.abs(amps) < IDLE_AMPS && Math.abs(volts) < IDLE_VOLTS;
  }

  private static double within(Network network) {
    boolean constantPower =
        network.elements().stream()
            .anyMatch(
                element ->
                    element instanceof Element.PowerSink
                        || (element instanceof Element.Regulator regulator
                            && regulator.efficiency() > 0));
    return constantPower ? WITHIN_FOR_CONSTANT_POWER : WITHIN;
  }

  /** As a share of the simulator's figure; none if it lies in the last millionth. */
  private static double difference(double ours, double theirs) {
    double apart = Math.abs(ours - theirs);
    return apart <= TOO_SMALL ? 0 : apart / Math.abs(theirs);
  }

  private static void allowAbsence() {
    if ("true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI=true, but ngspice is not installed");
    }
    if (Boolean.getBoolean("outshop.store")) {
      throw new AssertionError("nothing to store: ngspice is not installed");
    }
    if (ABSENCE_PRINTED.compareAndSet(false, true)) {
      System.out.println("ngspice is not installed: compared with its stored results only");
    }
  }

  private static Path file(String name) {
    return DIRECTORY.resolve(name + ".txt");
  }

  private static void write(String name, Map<String, double[]> results) {
    StringBuilder text = new StringBuilder();
    text.append("# ").append(Ngspice.version()).append(", operating point\n");
    text.append(HEADING).append('\n');
    results.forEach(
        (element, figures) ->
            text.append(element)
                .append('\t')
                .append(figures[0])
                .append('\t')
                .append(figures[1])
                .append('\n'));
    try {
      Files.createDirectories(DIRECTORY);
      Files.writeString(file(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Map<String, double[]> read(String name) {
    Path file = file(name);
    if (!Files.exists(file)) {
      throw new AssertionError(
          "no stored results " + file.getFileName() + "; make them with -Doutshop.store=true");
    }
    Map<String, double[]> results = new LinkedHashMap<>();
    try {
      List<String> lines =
          Files.readAllLines(file).stream().filter(line -> !line.startsWith("#")).toList();
      if (lines.isEmpty() || !lines.get(0).equals(HEADING)) {
        throw new AssertionError(file.getFileName() + " does not start with: " + HEADING);
      }
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split("\t", -1);
        if (cells.length != 3) {
          throw new AssertionError(file.getFileName() + " has a line of its own kind: " + line);
        }
        double amps = Double.parseDouble(cells[1]);
        results.put(cells[0], new double[] {amps, Double.parseDouble(cells[2])});
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return results;
  }
}

package outshop.circuit.solve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs ngspice, a general circuit simulator, on the netlist of a network. */
public final class Ngspice {
  private static final String COMMAND = "ngspice";
  private static final long MOST_SECONDS = 60;
  private static final Pattern PRINTED =
      Pattern.compile("(?m)^((?:amps|volts)_\\w+) = ([-+0-9.eE]+)\\s*$");

  /**
   * It ends with 0 after these, with figures that mean nothing. Not among them is a singular
   * matrix: it says that on the way to a solution too.
   */
  private static final List<String> COMPLAINTS =
      List.of("error", "timestep too small", "resistance to low", "no such", "not available");

  private Ngspice() {}

  /** Whether it is on the path. */
  public static boolean present() {
    return Presence.PRESENT;
  }

  /**
   * Works out the currents and voltages of {@code network}.
   *
   * @return by element name, in the order of the network: amps from a to b, volts of a against b
   * @throws AssertionError if it fails, complains or takes too long; with what it said
   */
  public static Map<String, double[]> run(Network network) {
    SpiceNetlist netlist = SpiceNetlist.of("network", network);
    Map<String, Double> printed = printed(output(netlist.text()));
    Map<String, double[]> figures = new LinkedHashMap<>();
    for (Element element : network.elements()) {
      String name = element.name();
      double amps = figure(printed, netlist.ampsName(name));
      double volts = figure(printed, netlist.voltsName(name));
      figures.put(name, new double[] {amps, volts});
    }
    return figures;
  }

  private static double figure(Map<String, Double> printed, String name) {
    Double figure = printed.get(name);
    if (figure == null) {
      throw new AssertionError(COMMAND + " printed no " + name);
    }
    return figure;
  }

  private static Map<String, Double> printed(String output) {
    Map<String, Double> figures = new LinkedHashMap<>();
    Matcher matcher = PRINTED.matcher(output);
    while (matcher.find()) {
      figures.put(matcher.group(1), Double.valueOf(matcher.group(2)));
    }
    return figures;
  }

  private static String output(String netlist) {
    try {
      Path directory = Files.createTempDirectory("netlist");
      Path file = directory.resolve("network.cir");
      Path output = directory.resolve("output.txt");
      try {
        Files.writeString(file, netlist);
        return output(file, output, netlist);
      } finally {
        Files.deleteIfExists(file);
        Files.deleteIfExists(output);
        Files.deleteIfExists(directory);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String output(Path file, Path output, String netlist) throws IOException {
    Process process =
        new ProcessBuilder(COMMAND, "-n", "-b", file.toString())
            .directory(file.getParent().toFile())
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    int code = exitCode(process);
    String said = Files.readString(output, StandardCharsets.ISO_8859_1);
    String lower = said.toLowerCase(Locale.ROOT);
    if (code != 0 || COMPLAINTS.stream().anyMatch(lower::contains)) {
      throw new AssertionError(COMMAND + " ended with " + code + ":\n" + said + "\n" + netlist);
    }
    return said;
  }

  private static int exitCode(Process process) {
    try {
      if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError(COMMAND + " took more than " + MOST_SECONDS + " s");
      }
      return process.exitValue();
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted while " + COMMAND + " ran", e);
    }
  }

  /**
   * What it calls itself, such as "ngspice-39".
   *
   * @throws AssertionError if it is not there
   */
  static String version() {
    Matcher matcher = Pattern.compile("ngspice-\\w+").matcher(Presence.SAID);
    if (!matcher.find()) {
      throw new AssertionError(COMMAND + " does not say its version: " + Presence.SAID);
    }
    return matcher.group();
  }

  /** Asked once. */
  private static final class Presence {
    static final String SAID = said();
    static final boolean PRESENT = !SAID.isEmpty();

    private Presence() {}

    /** What it says of its version; nothing where it is not there. */
    private static String said() {
      try {
        Process process =
            new ProcessBuilder(COMMAND, "--version").redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return exitCode(process) == 0 ? said : "";
      } catch (IOException e) {
        return ""; // not on the path
      }
    }
  }
}

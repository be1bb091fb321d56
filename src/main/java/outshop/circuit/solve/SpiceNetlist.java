package outshop.circuit.solve;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A network as a SPICE netlist, so that an outside circuit simulator can work out the same figures.
 * Every element stands behind an ammeter (a source of 0 V), loads that are not linear are B sources
 * with the formulas of {@link Element}, and a control block prints the current and the voltage of
 * every element under the names of {@link #ampsName} and {@link #voltsName}.
 *
 * <p>The reference net of every island is node 0. Parts of the network that do not touch then share
 * a node, which carries no current between them.
 */
public final class SpiceNetlist {
  private static final String LEAK = number(Element.Drop.LEAK);

  private final String text;
  private final Map<String, String> names;

  private SpiceNetlist(String text, Map<String, String> names) {
    this.text = text;
    this.names = names;
  }

  /**
   * Writes {@code network}.
   *
   * @param title the first line; line ends in it become spaces
   */
  public static SpiceNetlist of(String title, Network network) {
    Map<String, String> names = new LinkedHashMap<>();
    Set<String> taken = new HashSet<>();
    for (Element element : network.elements()) {
      names.put(element.name(), plain(element.name(), taken));
    }
    Writer writer = new Writer(network, names);
    return new SpiceNetlist(writer.write(oneLine(title)), names);
  }

  /** The netlist, lines ended by a line feed. */
  public String text() {
    return text;
  }

  /** Under what name the current of {@code element} is printed, in amps from a to b. */
  public String ampsName(String element) {
    return "amps_" + plainName(element);
  }

  /** Under what name the voltage of {@code element} is printed, in volts of a against b. */
  public String voltsName(String element) {
    return "volts_" + plainName(element);
  }

  private String plainName(String element) {
    String name = names.get(element);
    if (name == null) {
      throw new IllegalArgumentException("no element " + element);
    }
    return name;
  }

  /**
   * Small letters, digits and single underscores: SPICE does not tell capitals from small letters,
   * and two underscores mark the inner parts of an element.
   */
  private static String plain(String name, Set<String> taken) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_|_$", "");
    String free = plain.isEmpty() ? "x" : plain;
    String stem = free;
    for (int number = 2; !taken.add(free); number++) {
      free = stem + "_" + number;
    }
    return free;
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  private static String number(double value) {
    return Double.toString(value);
  }

  private static final class Writer {
    private final Network network;
    private final Map<String, String> names;
    private final String[] nodes;
    private final StringBuilder out = new StringBuilder();

    Writer(Network network, Map<String, String> names) {
      this.network = network;
      this.names = names;
      nodes = nodes(network);
    }

    String write(String title) {
      line(title);
      for (int net = 0; net < nodes.length; net++) {
        line("* node " + nodes[net] + ": " + oneLine(network.nets().get(net)));
      }
      for (Element element : network.elements()) {
        line("* " + oneLine(element.name()));
        write(element, names.get(element.name()));
      }
      line(".options reltol=1e-9 abstol=1e-15 vntol=1e-12 itl1=2000");
      control();
      line(".end");
      return out.toString();
    }

    private void write(Element element, String name) {
      if (element instanceof Element.Source source) {
        String inner = name + "__emf";
        line("V" + name, node(source.a()), inner, "DC " + number(source.emfVolts()));
        line("R" + name, inner, node(source.b()), number(source.ohms()));
        return;
      }
      if (element instanceof Element.Regulator regulator) {
        output(regulator, name);
      }
      String inner = name + "__in";
      line("V" + name, node(element.a()), inner, "DC 0");
      behindAmmeter(element, name, inner);
    }

    private void behindAmmeter(Element element, String name, String inner) {
      String end = node(element.b());
      String volts = across(element.a(), element.b());
      if (element instanceof Element.Resistor resistor) {
        line("R" + name, inner, end, number(resistor.ohms()));
      } else if (element instanceof Element.Supply supply) {
        line("I" + name, end, inner, "DC " + number(supply.amps()));
      } else if (element instanceof Element.Drop drop) {
        String above = "(" + volts + "-" + number(drop.volts()) + ")/" + number(drop.ohms());
        current(name, inner, end, "max(" + above + "," + volts + "*" + LEAK + ")");
      } else if (element instanceof Element.Sink sink) {
        String share = share(volts, number(Element.Sink.KNEE_VOLTS));
        current(name, inner, end, number(sink.amps()) + "*" + share + reversed(volts));
      } else if (element instanceof Element.PowerSink sink) {
        // Above the knee the share is 1; below it, watts / knee x V / knee.
        String knee = number(sink.kneeVolts());
        String full = number(sink.watts()) + "/max(" + volts + "," + knee + ")";
        current(name, inner, end, full + "*" + share(volts, knee) + reversed(volts));
      } else if (element instanceof Element.Regulator regulator) {
        String given = "i(V" + name + "__out)" + drawn(regulator, volts);
        String idle = "max(0," + volts + ")*" + LEAK;
        current(name, inner, end, "max(" + given + "," + idle + ")" + reversed(volts));
      }
    }

    /** A regulator's output, with an ammeter that counts what it gives. */
    private void output(Element.Regulator regulator, String name) {
      String inner = name + "__held";
      String held =
          "min("
              + number(regulator.outVolts())
              + ",max(0,"
              + across(regulator.a(), regulator.b())
              + "))";
      String room = "(" + held + "-" + across(regulator.outA(), regulator.outB()) + ")";
      String given = "max(" + room + "/" + number(regulator.outOhms()) + "," + room + "*" + LEAK;
      current(name + "__out", node(regulator.outB()), inner, given + ")");
      line("V" + name + "__out", inner, node(regulator.outA()), "DC 0");
    }

    /** What the input draws for each amp given. */
    private static String drawn(Element.Regulator regulator, String inVolts) {
      if (regulator.efficiency() == 0) {
        return "";
      }
      String volts = number(regulator.outVolts());
      String efficiency = number(regulator.efficiency());
      return "*" + volts + "/(max(" + inVolts + "," + volts + ")*" + efficiency + ")";
    }

    private static String share(String volts, String knee) {
      return "max(0,min(1," + volts + "/" + knee + "))";
    }

    /** What a load leaks at a reversed voltage. */
    private static String reversed(String volts) {
      return "+min(0," + volts + ")*" + LEAK;
    }

    private void current(String name, String from, String to, String formula) {
      line("B" + name, from, to, "I=" + formula);
    }

    private void control() {
      line(".control");
      line("op");
      line("set numdgt=12");
      for (Element element : network.elements()) {
        String name = names.get(element.name());
        line("let amps_" + name + " = i(v" + name + ")");
        line("print amps_" + name);
        line("let volts_" + name + " = " + across(element.a(), element.b()));
        line("print volts_" + name);
      }
      line("quit 0");
      line(".endc");
    }

    private String node(int net) {
      return nodes[net];
    }

    private String across(int a, int b) {
      return "(" + volts(a) + "-" + volts(b) + ")";
    }

    private String volts(int net) {
      return nodes[net].equals("0") ? "0" : "v(" + nodes[net] + ")";
    }

    private void line(String... words) {
      out.append(String.join(" ", words)).append('\n');
    }

    private static String[] nodes(Network network) {
      Islands islands = network.layout().islands;
      List<String> nets = network.nets();
      String[] nodes = new String[nets.size()];
      for (int net = 0; net < nodes.length; net++) {
        nodes[net] = islands.reference(net) == net ? "0" : "n" + net;
      }
      return nodes;
    }
  }
}

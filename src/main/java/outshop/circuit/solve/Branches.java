package outshop.circuit.solve;

import java.util.List;

/**
 * The live elements of a network laid out in arrays, with the law of each: a branch an element, and
 * two for a regulator (its output, then its input). The voltage of a branch counts from its {@link
 * #offset}, the voltage at which a source, drop or regulator carries nothing; so a battery's few
 * millivolts of sag keep all their digits beside its volts.
 */
final class Branches {
  static final int NONE = -1;

  private static final int LINEAR = 0;
  private static final int SUPPLY = 1;
  private static final int DROP = 2;
  private static final int SINK = 3;
  private static final int POWER_SINK = 4;
  private static final int REGULATOR_OUT = 5;
  private static final int REGULATOR_IN = 6;

  int count;
  final int[] from;
  final int[] to;

  /** Which element of the network the branch belongs to. */
  final int[] element;

  /** The other branch of a regulator; NONE elsewhere and where its input is dead. */
  final int[] partner;

  final double[] offset;

  /**
   * Results of the laws: current, its change per volt of the branch, and per volt of the partner.
   */
  final double[] amps;

  final double[] slope;
  final double[] cross;

  /** The highest voltage a source or regulator holds up. */
  double highestEmf;

  /**
   * The share of every source's emf and every supply's current that is at work; 1 but on the way.
   */
  double drive = 1;

  private final int[] kind;

  /** Siemens, amps or watts; of a regulator's input the efficiency. */
  private final double[] size;

  /** A knee in volts; of a regulator's branches the volts it holds. */
  private final double[] bend;

  Branches(List<Element> elements, Islands islands) {
    int most = elements.size();
    for (Element element : elements) {
      if (element instanceof Element.Regulator) {
        most++;
      }
    }
    from = new int[most];
    to = new int[most];
    element = new int[most];
    partner = new int[most];
    kind = new int[most];
    offset = new double[most];
    size = new double[most];
    bend = new double[most];
    amps = new double[most];
    slope = new double[most];
    cross = new double[most];
    for (int index = 0; index < elements.size(); index++) {
      lay(elements.get(index), index, islands);
    }
  }

  boolean isSupply(int branch) {
    return kind[branch] == SUPPLY;
  }

  /** Whether its current is in proportion to its voltage above the offset. */
  boolean isLinear(int branch) {
    return kind[branch] == LINEAR;
  }

  /** Whether it is the output of a regulator, whose current is not that of the element. */
  boolean isRegulatorOutput(int branch) {
    return kind[branch] == REGULATOR_OUT;
  }

  /**
   * Ohms at the currents last worked out, or while it conducts well if there are none yet; endless
   * for a load, which may draw the same at any voltage.
   */
  double ohms(int branch) {
    return switch (kind[branch]) {
      case LINEAR -> 1 / size[branch];
      case DROP, REGULATOR_OUT -> 1 / (slope[branch] > 0 ? slope[branch] : size[branch]);
      default -> Double.POSITIVE_INFINITY;
    };
  }

  private void lay(Element element, int index, Islands islands) {
    boolean live = islands.live(element.a());
    if (element instanceof Element.Regulator regulator) {
      layRegulator(regulator, index, islands);
    } else if (!live) {
      return;
    } else if (element instanceof Element.Source source) {
      highestEmf = Math.max(highestEmf, Math.abs(source.emfVolts()));
      add(LINEAR, source.a(), source.b(), index, source.emfVolts(), 1 / source.ohms(), 0);
    } else if (element instanceof Element.Resistor resistor) {
      add(LINEAR, resistor.a(), resistor.b(), index, 0, 1 / resistor.ohms(), 0);
    } else if (element instanceof Element.Drop drop) {
      add(DROP, drop.a(), drop.b(), index, drop.volts(), 1 / drop.ohms(), 0);
    } else if (element instanceof Element.Sink sink) {
      add(SINK, sink.a(), sink.b(), index, 0, sink.amps(), Element.Sink.KNEE_VOLTS);
    } else if (element instanceof Element.PowerSink sink) {
      add(POWER_SINK, sink.a(), sink.b(), index, 0, sink.watts(), sink.kneeVolts());
    } else if (element instanceof Element.Supply supply) {
      add(SUPPLY, supply.a(), supply.b(), index, 0, supply.amps(), 0);
    }
  }

  private void layRegulator(Element.Regulator regulator, int index, Islands islands) {
    double volts = regulator.outVolts();
    boolean fed = islands.live(regulator.a());
    int output = count;
    if (islands.live(regulator.outA())) {
      highestEmf = Math.max(highestEmf, volts);
      // Without an input it holds nothing, and only leaks backwards.
      double held = fed ? volts : 0;
      double siemens = 1 / regulator.outOhms();
      add(REGULATOR_OUT, regulator.outA(), regulator.outB(), index, held, siemens, held);
    }
    if (fed) {
      add(REGULATOR_IN, regulator.a(), regulator.b(), index, 0, regulator.efficiency(), volts);
      partner[output] = output + 1;
      partner[output + 1] = output;
    }
  }

  private void add(
      int ofKind, int a, int b, int index, double offsetVolts, double howMuch, double bendVolts) {
    kind[count] = ofKind;
    from[count] = a;
    to[count] = b;
    element[count] = index;
    partner[count] = NONE;
    offset[count] = offsetVolts;
    size[count] = howMuch;
    bend[count] = bendVolts;
    count++;
  }

  /**
   * Works out every current and slope.
   *
   * @param volts of each branch, above its offset
   */
  void evaluate(double[] volts) {
    for (int k = 0; k < count; k++) {
      double v = volts[k];
      switch (kind[k]) {
        case LINEAR -> set(k, (v + (1 - drive) * offset[k]) * size[k], size[k]);
        case SUPPLY -> set(k, -drive * size[k], 0);
        case DROP -> drop(k, v);
        case SINK -> sink(k, v);
        case POWER_SINK -> powerSink(k, v);
        case REGULATOR_OUT -> {
          int input = partner[k];
          regulate(k, input, v, input == NONE ? 0 : volts[input]);
        }
        default -> {
          // the input of a regulator is done with its output
        }
      }
    }
  }

  /**
   * The opening guess, as a straight line for each branch through its current at no voltage above
   * its offset: drops and regulators conduct, loads draw what they want.
   */
  void guess() {
    for (int k = 0; k < count; k++) {
      switch (kind[k]) {
        case LINEAR, DROP -> set(k, 0, size[k]);
        case REGULATOR_OUT -> set(k, 0, partner[k] == NONE ? Element.Drop.LEAK : size[k]);
        case SUPPLY -> set(k, -size[k], 0);
        case SINK -> set(k, size[k], 0);
        case POWER_SINK -> {
          double volts = Math.max(bend[k], highestEmf);
          set(k, 2 * size[k] / volts, -size[k] / (volts * volts));
        }
        default -> {
          set(k, 0, 0);
          double volts = Math.max(bend[k], highestEmf);
          cross[k] = -share(k, volts) * size[partner[k]];
        }
      }
    }
  }

  private void set(int k, double current, double perVolt) {
    amps[k] = current;
    slope[k] = perVolt;
    cross[k] = 0;
  }

  private void drop(int k, double above) {
    double conducting = above * size[k];
    double leaking = (above + offset[k]) * Element.Drop.LEAK;
    if (conducting > leaking) {
      set(k, conducting, size[k]);
    } else {
      set(k, leaking, Element.Drop.LEAK);
    }
  }

  private void sink(int k, double v) {
    if (v >= bend[k]) {
      set(k, size[k], 0);
    } else if (v >= 0) {
      set(k, size[k] * (v / bend[k]), size[k] / bend[k]);
    } else {
      leak(k, v);
    }
  }

  private void powerSink(int k, double v) {
    if (v >= bend[k]) {
      set(k, size[k] / v, -size[k] / (v * v));
    } else if (v >= 0) {
      double perVolt = size[k] / (bend[k] * bend[k]);
      set(k, perVolt * v, perVolt);
    } else {
      leak(k, v);
    }
  }

  private void leak(int k, double v) {
    set(k, v * Element.Drop.LEAK, Element.Drop.LEAK);
  }

  /** A regulator: {@code out} and {@code in} are its branches. */
  private void regulate(int out, int in, double outAbove, double inVolts) {
    boolean starved = inVolts < bend[out];
    boolean follows = starved && inVolts >= 0;
    double held = starved ? Math.max(0, inVolts) : bend[out];
    double room = (held - bend[out]) - outAbove;
    double siemens = room > 0 ? size[out] : Element.Drop.LEAK;
    double given = room * siemens;
    set(out, -given, siemens);
    cross[out] = follows ? -siemens : 0;
    if (in != NONE) {
      draw(in, inVolts, given, siemens, follows);
    }
  }

  /** What the input of a regulator draws for what its output gives. */
  private void draw(int in, double inVolts, double given, double siemens, boolean follows) {
    double share = share(in, inVolts);
    double drawn = given * share;
    double leaking = inVolts * Element.Drop.LEAK;
    if (drawn <= Math.max(0, leaking)) {
      leak(in, inVolts);
      return;
    }
    if (inVolts < 0) {
      set(in, drawn + leaking, Element.Drop.LEAK);
    } else {
      boolean falling = size[in] > 0 && inVolts > bend[in];
      double rising = follows ? share * siemens : 0;
      set(in, drawn, falling ? rising - drawn / inVolts : rising);
    }
    cross[in] = -share * siemens;
  }

  /** Input amps for one output amp. */
  private double share(int in, double inVolts) {
    double efficiency = size[in];
    return efficiency == 0 ? 1 : bend[in] / (Math.max(inVolts, bend[in]) * efficiency);
  }
}

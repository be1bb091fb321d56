package outshop.circuit.solve;

import java.util.List;

/** What {@link Element} promises of its values. */
final class ElementRanges {
  private ElementRanges() {}

  static void check(List<Element> elements) {
    for (Element element : elements) {
      check(element);
    }
  }

  /** Refuses an element that names a net beyond those there are. */
  static void requireNets(Element element, int nets) {
    boolean there = within(element.a(), nets) && within(element.b(), nets);
    if (element instanceof Element.Regulator regulator) {
      there &= within(regulator.outA(), nets) && within(regulator.outB(), nets);
    }
    require(there, element, "has no such net");
  }

  private static void check(Element element) {
    if (element instanceof Element.Source source) {
      require(Double.isFinite(source.emfVolts()), element, "needs a finite emf");
      require(above(source.ohms()), element, "needs a resistance above zero");
    } else if (element instanceof Element.Resistor resistor) {
      require(above(resistor.ohms()), element, "needs a resistance above zero");
    } else if (element instanceof Element.Drop drop) {
      require(notBelow(drop.volts()), element, "needs a drop of zero or more");
      require(above(drop.ohms()), element, "needs a resistance above zero");
      require(drop.ohms() * Element.Drop.LEAK < 1, element, "conducts less than it leaks");
    } else if (element instanceof Element.Sink sink) {
      require(notBelow(sink.amps()), element, "needs a current of zero or more");
    } else if (element instanceof Element.PowerSink sink) {
      require(notBelow(sink.watts()), element, "needs a power of zero or more");
      require(above(sink.kneeVolts()), element, "needs a knee above zero");
    } else if (element instanceof Element.Supply supply) {
      require(notBelow(supply.amps()), element, "needs a current of zero or more");
    } else if (element instanceof Element.Regulator regulator) {
      check(regulator);
    }
  }

  private static void check(Element.Regulator regulator) {
    require(above(regulator.outVolts()), regulator, "needs an output voltage above zero");
    require(above(regulator.outOhms()), regulator, "needs a resistance above zero");
    boolean conducts = regulator.outOhms() * Element.Drop.LEAK < 1;
    require(conducts, regulator, "conducts less than it leaks");
    boolean share = regulator.efficiency() >= 0 && regulator.efficiency() <= 1;
    require(share, regulator, "needs an efficiency from 0 to 1");
  }

  private static boolean within(int net, int nets) {
    return net >= 0 && net < nets;
  }

  private static boolean above(double value) {
    return value > 0 && value < Double.POSITIVE_INFINITY;
  }

  private static boolean notBelow(double value) {
    return value >= 0 && value < Double.POSITIVE_INFINITY;
  }

  private static void require(boolean holds, Element element, String what) {
    if (!holds) {
      throw new IllegalArgumentException(element.name() + " " + what + ": " + element);
    }
  }
}

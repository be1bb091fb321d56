package outshop.outside;

import static outshop.circuit.solve.Sketch.NO_OHMS;

import java.util.List;
import outshop.circuit.solve.Sketch;

/** Textbook circuits of long wires, lamps, LEDs and motors. */
final class LoadCircuits {
  private static final String CONDUCTORS =
      Sources.LESSONS + "ch. 12, Physics of Conductors and Insulators";
  private static final String POWER = Sources.COLLEGE + "section 20.4, module m42714, ";
  private static final String BACK_EMF = Sources.COLLEGE + "section 23.6, module m42411, ";
  private static final String COILS = Sources.UNIVERSITY + "section 13.6, module m58481, ";

  private final CheckList list = new CheckList("textbook circuits: loads");

  private LoadCircuits() {}

  static List<OutsideCheck> all() {
    LoadCircuits circuits = new LoadCircuits();
    circuits.wires();
    circuits.aircraftWires();
    circuits.lamps();
    circuits.leds();
    circuits.coils();
    circuits.problems();
    circuits.seriesWound();
    return circuits.list.all();
  }

  private void wires() {
    list.from(CONDUCTORS + ": two wires to 250 ohm on 14 V, at 20 and 35 C");
    wires("cool", 15, "50", "12.5", "0.75");
    wires("warm", 15.909, "49.677", "12.42", "0.79");
    Solved house =
        new Solved(
            battery(230)
                .resistor("there", "plus", "a", 0.2)
                .sink("load", "a", "b", 25)
                .resistor("back", "b", "0", 0.2));
    list.from(CONDUCTORS + ": 230 V, 25 A, 0.2 ohm a wire")
        .whole("house", "lost in each wire", "5", "V", house.volts("there"));
    list.from(POWER + "problem on a cord at 5.00 A")
        .printed("cord", "lost in 0.0600 ohm", "1.50", "W", cord(0.0600).watts("cord"))
        .printed("cheap-cord", "lost in 0.300 ohm", "7.50", "W", cord(0.300).watts("cord"));
  }

  private void wires(String id, double ohms, String milliamps, String load, String each) {
    Solved solved =
        new Solved(
            battery(14)
                .resistor("there", "plus", "a", ohms)
                .resistor("load", "a", "b", 250)
                .resistor("back", "b", "0", ohms));
    String what = "wires of " + ohms + " ohm, ";
    list.printed(id + "-amps", what + "current", milliamps, "mA", solved.milliamps("load"))
        .printed(id + "-load-volts", what + "at the load", load, "V", solved.volts("load"))
        .printed(id + "-there-volts", what + "lost there", each, "V", solved.volts("there"))
        .printed(id + "-back-volts", what + "lost back", each, "V", solved.volts("back"));
  }

  private static Solved cord(double ohms) {
    return new Solved(
        battery(120).resistor("cord", "plus", "end", ohms).sink("load", "end", "0", 5.00));
  }

  private void aircraftWires() {
    list.from(Sources.CIRCULAR + "Table 11-7, examples: ohms a foot x feet x amps");
    lost("107-feet", 0.00044, 107, "0.942");
    lost("90-feet", 0.00028, 90, "0.504");
    lost("100-feet", 0.00306, 100, "6.12");
    list.from(Sources.CIRCULAR + "Table 11-7, example; it rounds 3.555 up");
    list.within(0.05, "88-feet", lost(0.00202, 88), "3.60", "V", wire(0.00202, 88).volts("wire"));
    list.from(Sources.CIRCULAR + "Table 11-8, example; it prints .366, a misprint: worked out");
    lost("19.5-feet", 0.00126, 19.5, "0.4914");
    list.from(Sources.CIRCULAR + "Table 11-8, examples: ohms a foot x feet x amps");
    lost("39-feet", 0.00126, 39, "0.98");
    lost("156-feet", 0.00126, 156, "3.93");
    lost("273-feet", 0.00126, 273, "6.88");
  }

  private void lost(String id, double ohmsPerFoot, double feet, String volts) {
    list.printed(id, lost(ohmsPerFoot, feet), volts, "V", wire(ohmsPerFoot, feet).volts("wire"));
  }

  private static String lost(double ohmsPerFoot, double feet) {
    return "lost in %s ft of %s ohm a foot, 20 A"
        .formatted(Digits.six(feet), Digits.six(ohmsPerFoot));
  }

  private static Solved wire(double ohmsPerFoot, double feet) {
    return new Solved(
        battery(28)
            .resistor("wire", "plus", "far", ohmsPerFoot * feet)
            .sink("load", "far", "0", 20));
  }

  private void lamps() {
    list.from(Sources.LESSONS + "ch. 2, Ohm's Law: a lamp of 3 ohm")
        .whole("lamp-18-amps", "on 18 V", "6", "A", lamp(18, 3).amps("lamp"))
        .whole("lamp-18-watts", "on 18 V", "108", "W", lamp(18, 3).watts("lamp"))
        .whole("lamp-36-amps", "on 36 V", "12", "A", lamp(36, 3).amps("lamp"))
        .whole("lamp-36-watts", "on 36 V", "432", "W", lamp(36, 3).watts("lamp"));
    Solved hot = new Solved(battery(12.0).sink("lamp", "plus", "0", 2.50));
    list.from(POWER + "headlight on 12.0 V")
        .printed("headlight-hot", "hot, 2.50 A", "30.0", "W", hot.watts("lamp"))
        .printed("headlight-cold", "cold, 0.350 ohm", "411", "W", lamp(12.0, 0.350).watts("lamp"))
        .printed(
            "headlight-inrush", "cold, 0.350 ohm", "34.3", "A", lamp(12.0, 0.350).amps("lamp"));
  }

  private static Solved lamp(double volts, double ohms) {
    return new Solved(battery(volts).resistor("lamp", "plus", "0", ohms));
  }

  private void leds() {
    list.from("T. R. Kuphaldt, Lessons in Electric Circuits, vol. III, ch. 3, LEDs: 1.6 V, 20 mA")
        .whole("led-6-amps", "6 V, 220 ohm", "20", "mA", led(6, 220).milliamps("resistor"))
        .printed(
            "led-6-watts", "6 V, 220 ohm: resistor", "0.088", "W", led(6, 220).watts("resistor"))
        .whole("led-24-amps", "24 V, 1.12 kohm", "20", "mA", led(24, 1120).milliamps("resistor"))
        .printed(
            "led-24-watts",
            "24 V, 1.12 kohm: resistor",
            "0.448",
            "W",
            led(24, 1120).watts("resistor"));
  }

  private static Solved led(double volts, double ohms) {
    return new Solved(
        battery(volts)
            .resistor("resistor", "plus", "anode", ohms)
            .drop("led", "anode", "0", 1.6, NO_OHMS));
  }

  private void coils() {
    list.from(BACK_EMF + "and " + COILS + "48.0 V on coils of 0.400 ohm")
        .whole("rest-amps", "at rest", "120", "A", motor(48.0, 0.400, 0).amps("coils"))
        .printed("rest-watts", "heat at rest", "5.76E3", "W", motor(48.0, 0.400, 0).watts("coils"))
        .whole("turning-amps", "back emf 40.0 V", "20", "A", motor(48.0, 0.400, 40).amps("coils"))
        .whole(
            "turning-watts",
            "heat, back emf 40.0 V",
            "160",
            "W",
            motor(48.0, 0.400, 40).watts("coils"));
  }

  private void problems() {
    list.from(BACK_EMF + "problems")
        .printed(
            "120-start", "120 V, 12.00 ohm, start", "10.0", "A", motor(120, 12, 0).amps("coils"))
        .printed(
            "120-running",
            "120 V, 12.00 ohm, 100 V",
            "1.67",
            "A",
            motor(120, 12, 100).amps("coils"))
        .printed("20-start", "120 V, 6.00 ohm, start", "20.0", "A", motor(120, 6, 0).amps("coils"))
        .printed(
            "20-running", "120 V, 6.00 ohm, 72.0 V", "8.00", "A", motor(120, 6, 72).amps("coils"));
    Solved onCells =
        new Solved(
            new Sketch()
                .source("cell 1", "1", "0", 1.5, 0.100)
                .source("cell 2", "2", "1", 1.5, 0.100)
                .source("cell 3", "3", "2", 1.5, 0.100)
                .source("cell 4", "4", "3", 1.5, 0.100)
                .resistor("coils", "4", "turning", 0.100)
                .source("back emf", "turning", "0", 4.50, NO_OHMS));
    list.printed(
        "toy-cells", "4 cells, coils 0.100 ohm, 4.50 V", "3.00", "A", onCells.amps("coils"));
    list.from(BACK_EMF + "problem on a toy motor, 6.00 V, 0.500 ohm; answer worked out")
        .printed("toy-running", "back emf 4.50 V", "3.00", "A", motor(6, 0.5, 4.5).amps("coils"))
        .printed("toy-start", "start", "12.0", "A", motor(6, 0.5, 0).amps("coils"));
  }

  private void seriesWound() {
    list.from(COILS + "example: series-wound, 2.0 ohm, 120 V");
    seriesWound("light", 100, "10", "1.0E3", "2.0E2", "1.2E3");
    seriesWound("heavy", 80, "20", "1.6E3", "8.0E2", "2.4E3");
  }

  private void seriesWound(
      String id, double backEmf, String amps, String shaft, String copper, String input) {
    Solved solved = motor(120, 2.0, backEmf);
    String what = "back emf " + Digits.six(backEmf) + " V, ";
    list.printed(id + "-amps", what + "current", amps, "A", solved.amps("coils"))
        .printed(id + "-shaft", what + "mechanical power", shaft, "W", solved.watts("back emf"))
        .printed(id + "-copper", what + "heat in the coils", copper, "W", solved.watts("coils"))
        .printed(id + "-input", what + "input", input, "W", solved.wattsFrom("battery"));
  }

  private static Solved motor(double volts, double ohms, double backEmf) {
    return new Solved(
        battery(volts)
            .resistor("coils", "plus", "turning", ohms)
            .source("back emf", "turning", "0", backEmf, NO_OHMS));
  }

  private static Sketch battery(double volts) {
    return new Sketch().source("battery", "plus", "0", volts, NO_OHMS);
  }
}

package outshop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.circuit.solve.Element;
import outshop.circuit.solve.Network;
import outshop.circuit.solve.Solution;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Want;

/**
 * The network of one case: which elements stand between which terminals, with values that may carry
 * a range.
 */
final class CaseNetwork {
  /** In series with an ideal drop, only so that the network stays solvable. */
  private static final double SMALL_OHMS = 1e-3;

  /**
   * A LED's own resistance past its forward voltage: a typical small one, from memory. It matters
   * only without a resistor.
   */
  private static final double LED_OHMS = 10;

  /** The net of a terminal that nothing reaches. */
  private static final int DEAD = -1;

  /** What receiver and decoder draw in a load case. */
  private static final Amount AS_STATED =
      Plan.fixed(1, outshop.units.Unit.SHARE, "own current", "as stated");

  private final Plan plan;
  private final Circuit circuit;
  private final Map<String, Integer> nets = new LinkedHashMap<>();
  private final List<Draft> drafts = new ArrayList<>();
  private final TreeSet<Want> wants = new TreeSet<>();
  private final Map<String, Amount.Known> inputs = new LinkedHashMap<>();

  /** Whether a pack's volts carry a range, so that they are to be moved by themselves. */
  private boolean openSource;

  /** What happens to a value at the ends of the ranges. */
  private enum Role {
    /** Resistances and drops: more of it, fewer volts at the load. */
    PATH,
    /** Currents and powers drawn. */
    LOAD,
    /** What a pack gives without load. */
    SOURCE
  }

  /** Picks a value at one end of its range. */
  private interface Pick {
    double of(Amount.Known value, Role role);
  }

  /** An element whose values are still amounts. */
  private interface Draft {
    Element with(Pick pick);
  }

  private CaseNetwork(Plan plan, Circuit circuit) {
    this.plan = plan;
    this.circuit = circuit;
  }

  static CaseNetwork running(Plan plan, Circuit circuit, LoadCase loadCase) {
    CaseNetwork network = new CaseNetwork(plan, circuit);
    network.links(circuit.running());
    network.packs(loadCase.charge());
    network.loads(Optional.of(loadCase));
    return network;
  }

  static CaseNetwork charging(Plan plan, Circuit circuit) {
    CaseNetwork network = new CaseNetwork(plan, circuit);
    network.links(circuit.charging());
    network.packs(LoadCase.Charge.FULL);
    for (Device charger : circuit.devices(Device.Sort.CHARGER)) {
      Amount amps = charger.part().orElseThrow().amount("charge_amps");
      network.add(
          amps,
          a ->
              pick ->
                  new Element.Supply(
                      charger.name(),
                      network.enter(charger.terminal("plus")),
                      network.enter(charger.terminal("minus")),
                      pick.of(a, Role.LOAD)));
    }
    network.loads(Optional.empty());
    return network;
  }

  /** What a trial feeds, with only what it asks for at work. */
  static CaseNetwork trial(Plan plan, Circuit circuit, Trial trial) {
    CaseNetwork network = new CaseNetwork(plan, circuit);
    network.links(trial.state());
    network.feed(trial.feed());
    network.receivers(trial.ownShare());
    for (Device decoder : circuit.devices(Device.Sort.DECODER)) {
      network.decoderOf(trial, decoder);
    }
    for (Device motor : circuit.devices(Device.Sort.MOTOR)) {
      if (trial.turning().containsKey(motor.name())) {
        network.motor(motor, trial.turning().get(motor.name()));
      }
    }
    for (Device lamp : circuit.devices()) {
      if (trial.lit().containsKey(lamp.name())) {
        network.lamp(lamp, trial.lit().get(lamp.name()));
      }
    }
    network.passives();
    return network;
  }

  List<Want> wants() {
    return List.copyOf(wants);
  }

  /** The values that went in, the telling ones first. */
  List<Amount.Known> inputs() {
    return List.copyOf(inputs.values());
  }

  Network nominal() {
    return new Network(List.copyOf(nets.keySet()), elements((value, role) -> value.middle()));
  }

  /**
   * The network at its nominal values, then those at the ends of the ranges; the first alone if
   * nothing is assumed.
   */
  List<Network> nominalAndEnds() {
    Network nominal = nominal();
    if (inputs.values().stream().noneMatch(i -> i.low() != i.high())) {
      return List.of(nominal);
    }
    List<Network> all = new ArrayList<>();
    all.add(nominal);
    boolean[] both = {false, true};
    for (boolean pathHigh : both) {
      for (boolean loadHigh : both) {
        for (boolean sourceHigh : openSource ? both : new boolean[] {loadHigh}) {
          all.add(
              nominal.with(
                  elements(
                      (value, role) -> {
                        boolean high =
                            switch (role) {
                              case PATH -> pathHigh;
                              case LOAD -> loadHigh;
                              case SOURCE -> sourceHigh;
                            };
                        return high ? value.high() : value.low();
                      })));
        }
      }
    }
    return all;
  }

  /** The net of a terminal, {@link #DEAD} where nothing reaches. */
  int net(String terminal) {
    return nets.getOrDefault(terminal, DEAD);
  }

  /** Volts of a net against the pack's minus; 0 where nothing reaches. */
  static double volts(Solution solution, int net) {
    return net == DEAD ? 0 : solution.netVolts(net);
  }

  private List<Element> elements(Pick pick) {
    List<Element> elements = new ArrayList<>(drafts.size());
    for (Draft draft : drafts) {
      elements.add(draft.with(pick));
    }
    return elements;
  }

  /** The net of a terminal, which it enters if it is the first to name it. */
  private int enter(String terminal) {
    return nets.computeIfAbsent(terminal, t -> nets.size());
  }

  /**
   * Turns a value into an element, or notes that it is wanted. An absent value makes no element.
   */
  private void add(Amount amount, java.util.function.Function<Amount.Known, Draft> element) {
    if (amount instanceof Amount.Missing missing) {
      wants.addAll(missing.wants());
    } else if (amount instanceof Amount.Known known) {
      inputs.putIfAbsent(known.label(), known);
      drafts.add(element.apply(known));
    }
  }

  /** A joint inside a part, as good as none. */
  private void joint(String name, int a, int b) {
    Element joint = new Element.Resistor(name, a, b, SMALL_OHMS);
    drafts.add(pick -> joint);
  }

  private void links(State state) {
    for (Link link : circuit.links()) {
      if (link.closed().in(state)) {
        int a = enter(link.from());
        int b = enter(link.to());
        add(
            link.ohms(),
            ohms ->
                pick ->
                    new Element.Resistor(
                        link.name(), a, b, Math.max(1e-6, pick.of(ohms, Role.PATH))));
      }
    }
  }

  private void packs(LoadCase.Charge charge) {
    for (Device device : circuit.devices(Device.Sort.PACK)) {
      PackValues pack = PackValues.of(device.part().orElseThrow());
      source(
          device.name(),
          enter(device.terminal("plus")),
          enter(device.terminal("minus")),
          pack.volts(charge),
          pack.ohms());
    }
  }

  /** What feeds a trial, between the ends that the packs leave. */
  private void feed(Trial.Feed feed) {
    Optional<PackEnds> ends = PackEnds.of(circuit);
    if (ends.isEmpty()) {
      wants.add(new Want("parts", "pack", "choose a pack"));
      return;
    }
    source(
        feed.name(),
        enter(ends.get().plus()),
        enter(ends.get().minus()),
        feed.volts(),
        feed.ohms());
  }

  private void source(String name, int plus, int minus, Amount volts, Amount ohms) {
    if (ohms instanceof Amount.Missing missing) {
      wants.addAll(missing.wants());
      return;
    }
    openSource |= volts instanceof Amount.Known v && v.low() != v.high();
    add(
        volts,
        emf ->
            pick ->
                new Element.Source(
                    name,
                    plus,
                    minus,
                    pick.of(emf, Role.SOURCE),
                    Math.max(1e-4, pick.of(ohms.get(), Role.PATH))));
    inputs.putIfAbsent(ohms.get().label(), ohms.get());
  }

  /**
   * What draws current: everything but the motor, and the motor as the case asks. Without a case
   * the motor stands.
   */
  private void loads(Optional<LoadCase> loadCase) {
    LoadCase.Drive drive = loadCase.map(LoadCase::drive).orElse(LoadCase.Drive.STANDING);
    receivers(AS_STATED);
    for (Device decoder : circuit.devices(Device.Sort.DECODER)) {
      decoder(decoder, drive);
    }
    motors(drive);
    lamps();
    passives();
  }

  /** What hangs in the circuit whatever it does. */
  private void passives() {
    for (Device regulator : circuit.devices(Device.Sort.REGULATOR)) {
      regulator(regulator);
    }
    for (Device resistor : circuit.devices(Device.Sort.RESISTOR)) {
      resistor(resistor);
    }
  }

  /** A current that is stated, at the volts of the case. */
  private static Amount own(Amount stated, Amount share) {
    return share == AS_STATED || !stated.isKnown()
        ? stated
        : Amount.computed(
            stated.get().label(),
            stated.get().unit(),
            "as stated x what its volts make of it",
            v -> v[0] * v[1],
            stated,
            share);
  }

  private void receivers(Amount share) {
    Amount electronics = plan.amount("measured.electronics");
    for (Device device : circuit.devices(Device.Sort.RECEIVER)) {
      Fitted part = device.part().orElseThrow();
      int plus = enter(device.terminal("in+"));
      int minus = enter(device.terminal("in-"));
      int outA = enter(device.terminal("out-a"));
      int outB = enter(device.terminal("out-b"));
      String own = device.name() + " own";
      add(
          own(electronics.orElse(part.amount("own_milliamps")), share),
          amps -> pick -> new Element.Sink(own, plus, minus, pick.of(amps, Role.LOAD)));
      path(device.name(), part.amount("drop_volts"), part.amount("path_milliohms"), plus, outA);
      joint(device.name() + " return", outB, minus);
    }
  }

  /** A one-way path with a drop and a resistance, both of which may be assumed. */
  private void path(String name, Amount drop, Amount ohms, int from, int to) {
    if (drop instanceof Amount.Missing missing) {
      wants.addAll(missing.wants());
      return;
    }
    add(
        ohms.isAbsent()
            ? Plan.fixed(SMALL_OHMS, outshop.units.Unit.OHMS, name + ": path", "as good as none")
            : ohms,
        r ->
            pick ->
                new Element.Drop(
                    name,
                    from,
                    to,
                    drop instanceof Amount.Known d ? pick.of(d, Role.PATH) : 0,
                    Math.max(SMALL_OHMS, pick.of(r, Role.PATH))));
    if (drop instanceof Amount.Known d) {
      inputs.putIfAbsent(d.label(), d);
    }
  }

  private void decoder(Device device, LoadCase.Drive drive) {
    Fitted part = device.part().orElseThrow();
    int railPlus = enter(device.terminal("rail+"));
    int railMinus = enter(device.terminal("rail-"));
    decoderInput(device, part, AS_STATED, railPlus, railMinus);
    sound(device, part, drive, railPlus, railMinus);
    if (drive != LoadCase.Drive.STANDING) {
      motorOutput(device, part, railPlus, railMinus);
    }
    functionOutputs(device, part, railPlus, railMinus);
  }

  private void decoderOf(Trial trial, Device device) {
    Fitted part = device.part().orElseThrow();
    int railPlus = enter(device.terminal("rail+"));
    int railMinus = enter(device.terminal("rail-"));
    decoderInput(device, part, trial.ownShare(), railPlus, railMinus);
    if (trial.sounding()) {
      sound(device, part, LoadCase.Drive.STANDING, railPlus, railMinus);
    }
    if (!trial.turning().isEmpty()) {
      motorOutput(device, part, railPlus, railMinus);
    }
    functionOutputs(device, part, railPlus, railMinus);
  }

  private void decoderInput(Device device, Fitted part, Amount share, int railPlus, int railMinus) {
    path(
        device.name(),
        part.amount("bridge_drop_volts"),
        new Amount.Absent("bridge"),
        enter(device.terminal("in-a")),
        railPlus);
    int inB = enter(device.terminal("in-b"));
    joint(device.name() + " return", railMinus, inB);
    if (plan.amount("measured.electronics").isMissing()) {
      String own = device.name() + " own";
      add(
          own(part.amount("own_milliamps"), share),
          amps -> pick -> new Element.Sink(own, railPlus, railMinus, pick.of(amps, Role.LOAD)));
    }
  }

  private void motorOutput(Device device, Fitted part, int railPlus, int railMinus) {
    int motorPlus = enter(device.terminal("motor+"));
    int motorMinus = enter(device.terminal("motor-"));
    String output = device.name() + " motor";
    add(
        part.amount("path_milliohms"),
        ohms ->
            pick ->
                new Element.Resistor(
                    output, railPlus, motorPlus, Math.max(SMALL_OHMS, pick.of(ohms, Role.PATH))));
    joint(device.name() + " motor return", motorMinus, railMinus);
  }

  private void sound(
      Device device, Fitted part, LoadCase.Drive drive, int railPlus, int railMinus) {
    SpeakerValues speakers = SpeakerValues.of(plan);
    if (!part.said("sound").is("yes") || speakers.members().isEmpty()) {
      return;
    }
    boolean loudest = drive == LoadCase.Drive.BLOCKED;
    Amount stated = plan.amount(loudest ? "measured.sound_peak" : "measured.sound_average");
    String name = device.name() + " sound";
    if (stated.isKnown()) {
      add(
          stated,
          amps -> pick -> new Element.Sink(name, railPlus, railMinus, pick.of(amps, Role.LOAD)));
      return;
    }
    Amount watts =
        loudest ? speakers.peakSupplyWatts(plan, part) : speakers.averageSupplyWatts(plan, part);
    add(
        watts,
        w -> pick -> new Element.PowerSink(name, railPlus, railMinus, pick.of(w, Role.LOAD), 4.0));
  }

  private void functionOutputs(Device device, Fitted part, int railPlus, int railMinus) {
    boolean switchesPlus = part.said("common").is("minus");
    int common = enter(device.terminal("common"));
    joint(
        device.name() + " common",
        switchesPlus ? common : railPlus,
        switchesPlus ? railMinus : common);
    for (String number : plan.names("outputs")) {
      String decoder = plan.text("outputs." + number + ".decoder").orElse(first(Kind.DECODER));
      if (decoder.equals(device.name())) {
        int out = enter(device.terminal(number));
        path(
            device.name() + " " + number,
            part.amount("function_drop_volts"),
            new Amount.Absent("output"),
            switchesPlus ? railPlus : out,
            switchesPlus ? out : railMinus);
      }
    }
  }

  private String first(Kind kind) {
    List<Fitted> found = plan.parts(kind);
    return found.isEmpty() ? "" : found.get(0).name();
  }

  private void motors(LoadCase.Drive drive) {
    if (drive == LoadCase.Drive.STANDING) {
      return;
    }
    Amount nominal = nominalVolts();
    for (Device device : circuit.devices(Device.Sort.MOTOR)) {
      MotorValues motor = MotorValues.of(plan, device.name(), nominal);
      int plus = enter(device.terminal("plus"));
      int minus = enter(device.terminal("minus"));
      switch (drive) {
        case BLOCKED ->
            add(
                motor.ohms(),
                ohms ->
                    pick ->
                        new Element.Resistor(device.name(), plus, minus, pick.of(ohms, Role.PATH)));
        case SLIPPING -> motor(device, motor.slippingAmps());
        case CRUISING -> motor(device, motor.cruisingAmps());
        case STANDING -> throw new IllegalStateException("a standing motor draws nothing");
      }
    }
  }

  private void motor(Device device, Amount drawn) {
    int plus = enter(device.terminal("plus"));
    int minus = enter(device.terminal("minus"));
    add(
        drawn,
        amps -> pick -> new Element.Sink(device.name(), plus, minus, pick.of(amps, Role.LOAD)));
  }

  private Amount nominalVolts() {
    List<Device> packs = circuit.devices(Device.Sort.PACK);
    return packs.isEmpty()
        ? Amount.missing("parts", "pack", "choose a pack")
        : PackValues.of(packs.get(0).part().orElseThrow()).nominalVolts();
  }

  private void lamps() {
    Amount together = plan.amount("measured.lamps");
    if (together.isKnown()) {
      for (Device decoder : circuit.devices(Device.Sort.DECODER)) {
        int plus = enter(decoder.terminal("rail+"));
        int minus = enter(decoder.terminal("rail-"));
        add(
            together,
            amps ->
                pick -> new Element.Sink("lamps together", plus, minus, pick.of(amps, Role.LOAD)));
        return;
      }
    }
    for (Device device : circuit.devices()) {
      switch (device.sort()) {
        case BULB -> lamp(device, LampValues.of(plan, device).ampsOrUsual());
        case SMOKE_HEATER, LED -> lamp(device, LampValues.of(plan, device).amps());
        default -> {
          // Draws through another element.
        }
      }
    }
  }

  private void lamp(Device device, Amount drawn) {
    if (device.sort() == Device.Sort.LED) {
      led(device);
      return;
    }
    int a = enter(device.terminal("a"));
    int b = enter(device.terminal("b"));
    add(drawn, amps -> pick -> new Element.Sink(device.name(), a, b, pick.of(amps, Role.LOAD)));
  }

  /**
   * A LED behind its resistor, or fed by a regulated output. One with neither burns at once and
   * then carries nothing.
   */
  private void led(Device device) {
    LampValues led = LampValues.of(plan, device);
    int a = enter(device.terminal("anode"));
    int b = enter(device.terminal("cathode"));
    Optional<String> output = outputOf(device.name());
    boolean regulated =
        output.isPresent()
            && firstDecoder()
                .map(d -> d.said("function_output").is("current-regulated"))
                .orElse(false);
    if (regulated) {
      Amount amps = firstDecoder().orElseThrow().amount("function_regulated_milliamps");
      add(
          amps.isKnown() ? amps : led.amps().isKnown() ? led.amps() : led.ampsOrUsual(),
          known -> pick -> new Element.Sink(device.name(), a, b, pick.of(known, Role.LOAD)));
      return;
    }
    boolean limited =
        led.seriesOhms().isKnown()
            || output.flatMap(o -> plan.text("outputs." + o + ".resistor")).isPresent();
    if (!limited) {
      return;
    }
    double own = led.seriesOhms() instanceof Amount.Known k ? k.value() + LED_OHMS : LED_OHMS;
    add(
        led.forwardVolts()
            .orElse(
                Amount.assumed(
                    2.5,
                    1.6,
                    3.6,
                    outshop.units.Unit.VOLTS,
                    device.name() + ": forward volts",
                    "not stated; any small LED")),
        volts -> pick -> new Element.Drop(device.name(), a, b, pick.of(volts, Role.PATH), own));
  }

  private Optional<Fitted> firstDecoder() {
    List<Fitted> decoders = plan.parts(Kind.DECODER);
    return decoders.isEmpty() ? Optional.empty() : Optional.of(decoders.get(0));
  }

  private Optional<String> outputOf(String load) {
    for (String number : plan.names("outputs")) {
      if (plan.list("outputs." + number + ".feeds").orElse(List.of()).contains(load)) {
        return Optional.of(number);
      }
    }
    return Optional.empty();
  }

  private void regulator(Device device) {
    Fitted part = device.part().orElseThrow();
    boolean linear = part.said("style").is("linear");
    Amount efficiency = part.amount("efficiency_percent");
    int inPlus = enter(device.terminal("in+"));
    int inMinus = enter(device.terminal("in-"));
    int outPlus = enter(device.terminal("out+"));
    int outMinus = enter(device.terminal("out-"));
    add(
        part.amount("output_volts"),
        volts ->
            pick ->
                new Element.Regulator(
                    device.name(),
                    inPlus,
                    inMinus,
                    outPlus,
                    outMinus,
                    pick.of(volts, Role.LOAD),
                    0.05,
                    linear || !efficiency.isKnown() ? 0 : pick.of(efficiency.get(), Role.PATH)));
  }

  private void resistor(Device device) {
    int a = enter(device.terminal("a"));
    int b = enter(device.terminal("b"));
    add(
        device.part().orElseThrow().amount("resistance_ohms"),
        ohms -> pick -> new Element.Resistor(device.name(), a, b, pick.of(ohms, Role.PATH)));
  }
}

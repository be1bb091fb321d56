package outshop.sheets;

import static outshop.sheets.Steps.between;
import static outshop.sheets.Steps.high;
import static outshop.sheets.Steps.low;
import static outshop.sheets.Steps.none;
import static outshop.sheets.Steps.own;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import outshop.catalogue.Kind;
import outshop.circuit.ChargingWay;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.LampValues;
import outshop.circuit.Link;
import outshop.circuit.LoadCase;
import outshop.circuit.MotorValues;
import outshop.circuit.PackEnds;
import outshop.circuit.PackValues;
import outshop.circuit.SpeakerValues;
import outshop.circuit.State;
import outshop.figures.Bench;
import outshop.plan.Plan;
import outshop.sheets.BenchSheet.Step;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * The steps with nothing powered: what hangs on the decoder, what must be apart from frame and
 * rails, and who is joined to whom with the plug in and out and at each position of the switches.
 */
final class UnpoweredSteps {
  /** Leads that are apart read at least this much: common practice, no source. */
  private static final double APART_OHMS = 1e6;

  /** One reading of a winding, filament or coil against the next, as in the measuring sheet. */
  private static final double[] SCATTER = {1, 0.9, 1.1};

  /** A speaker's d.c. reading against its nominal impedance: common practice, no source. */
  private static final double[] COIL = {0.82, 0.75, 0.9};

  private final Bench bench;
  private final Plan plan;
  private final Circuit circuit;
  private final Ways ways;
  private final Steps steps = new Steps();

  private UnpoweredSteps(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
    this.circuit = bench.circuit();
    this.ways = ways(bench);
  }

  static Ways ways(Bench bench) {
    return new Ways(bench.circuit(), !ChargingWay.packTakenOut(bench.plan()));
  }

  static List<Step> of(Bench bench) {
    UnpoweredSteps unpowered = new UnpoweredSteps(bench);
    unpowered.motors();
    unpowered.lamps();
    unpowered.speakers();
    unpowered.isolation();
    Optional<PackEnds> ends = PackEnds.of(unpowered.circuit);
    Optional<LoadEnds> load = LoadEnds.of(unpowered.circuit);
    if (ends.isPresent() && load.isPresent()) {
      unpowered.feed(ends.get(), load.get());
      unpowered.otherSwitches(ends.get(), load.get());
    }
    ends.ifPresent(unpowered::charging);
    ends.ifPresent(unpowered::wholeLoad);
    return unpowered.steps.list();
  }

  /** Each motor at the ends of its leads; several on one pair of leads read side by side. */
  private void motors() {
    List<Device> motors = circuit.devices(Device.Sort.MOTOR);
    Optional<String> drive = motorOutput();
    if (motors.isEmpty() || drive.isEmpty()) {
      return;
    }
    String plus = drive.get() + (plan.parts(Kind.DECODER).isEmpty() ? ".out-a" : ".motor+");
    String minus = drive.get() + (plan.parts(Kind.DECODER).isEmpty() ? ".out-b" : ".motor-");
    List<Amount> each = new ArrayList<>();
    for (Device motor : motors) {
      each.add(windingOhms(motor, plus, minus));
    }
    String name = motors.size() == 1 ? motors.get(0).name() : "motors";
    steps.add(
        name + "-ohms",
        Line.of(
            "{}: leads off {}; turn the wheels slowly, take the lowest steady reading",
            own(String.join(", ", motors.stream().map(Device::name).toList())),
            own(drive.get())),
        Line.of("the leads for {} and {}", own(plus), own(minus)),
        Meter.window(name + "-ohms", Unit.OHMS, sideBySide(name + ": reading", spread(each))),
        low("a short in the leads, or old parts still across the motor"),
        high("a poor joint, worn brushes or dirt on the commutator; turn it and read again"),
        none("open: a lead is off or broken, or a brush does not touch"));
  }

  private Optional<String> motorOutput() {
    return bench
        .first(Kind.DECODER)
        .or(() -> bench.first(Kind.RECEIVER).filter(r -> r.said("output").is("motor-drive")))
        .map(p -> p.name());
  }

  private Amount windingOhms(Device motor, String plus, String minus) {
    Amount own =
        plan.amount("locomotive.motors." + motor.name() + ".winding")
            .orElse(MotorValues.of(plan, motor.name(), new Amount.Absent("pack")).ohms());
    List<Amount> all = new ArrayList<>(List.of(own));
    ways.ohms(circuit.running(), plus, motor.terminal("plus")).ifPresent(all::add);
    ways.ohms(circuit.running(), minus, motor.terminal("minus")).ifPresent(all::add);
    return Amount.sum(motor.name() + " with its leads", Unit.OHMS, all);
  }

  /** The filaments and heaters of each output, at the ends of its leads. A LED does not tell. */
  private void lamps() {
    for (String output : plan.names("outputs")) {
      List<String> feeds = plan.list("outputs." + output + ".feeds").orElse(List.of());
      List<Device> fed = circuit.devices().stream().filter(d -> feeds.contains(d.name())).toList();
      boolean plain =
          fed.stream()
              .allMatch(d -> d.sort() == Device.Sort.BULB || d.sort() == Device.Sort.SMOKE_HEATER);
      if (fed.isEmpty() || !plain || plan.text("outputs." + output + ".resistor").isPresent()) {
        continue;
      }
      String decoder = decoderOf(output);
      String step = output + "-ohms";
      List<Amount> each = fed.stream().map(this::coldOhms).toList();
      steps.add(
          step,
          Line.of(
              "{}: both leads off {}, cold",
              own(String.join(", ", fed.stream().map(Device::name).toList())),
              own(decoder)),
          Line.of("the leads for {} and the common", own(decoder + "." + output)),
          Meter.window(step, Unit.OHMS, sideBySide(output + ": reading", spread(each))),
          low("another lamp than planned, or a short: an output may burn out"),
          high("another lamp than planned, or a poor joint"),
          none("open: a lamp is broken or a lead is off"));
    }
  }

  private String decoderOf(String output) {
    return plan.text("outputs." + output + ".decoder")
        .or(() -> bench.first(Kind.DECODER).map(d -> d.name()))
        .orElse("decoder");
  }

  private Amount coldOhms(Device lamp) {
    LampValues values = LampValues.of(plan, lamp);
    if (lamp.sort() == Device.Sort.BULB) {
      return values.coldOhms();
    }
    return Amount.computed(
        lamp.name() + ": resistance",
        Unit.OHMS,
        "rated volts / rated current",
        v -> v[0] / v[1],
        values.ratedVolts(),
        values.amps());
  }

  private void speakers() {
    SpeakerValues speakers = SpeakerValues.of(plan);
    Optional<String> decoder =
        bench.first(Kind.DECODER).filter(d -> d.said("sound").is("yes")).map(d -> d.name());
    if (speakers.members().isEmpty() || decoder.isEmpty()) {
      return;
    }
    List<Amount> coils = speakers.members().stream().map(this::coilOhms).toList();
    boolean series = coils.size() > 1 && plan.said("speakers.join").is("series");
    Amount together =
        series
            ? Amount.sum("speakers: reading", Unit.OHMS, spread(coils))
            : sideBySide("speakers: reading", spread(coils));
    steps.add(
        "speaker-ohms",
        Line.of("Speaker: both leads off {}", own(decoder.get())),
        Line.of("the leads for {} and speaker-", own(decoder.get() + ".speaker+")),
        Meter.window("speaker-ohms", Unit.OHMS, together),
        low(
            "two speakers side by side where one was meant, or a short: the amplifier may burn out"),
        high("another speaker than planned, or a poor joint"),
        none("open: the coil is broken or a lead is off"));
  }

  private Amount coilOhms(SpeakerValues.Member member) {
    Amount stated =
        member
            .part()
            .map(p -> p.amount("dc_ohms"))
            .orElseGet(() -> plan.amount("locomotive.old_speaker.reading"));
    if (stated.isKnown()) {
      return stated;
    }
    return Amount.computed(
        member.name() + ": coil",
        Unit.OHMS,
        "impedance x what a coil reads of it",
        v -> v[0] * v[1],
        member.ohms(),
        Amount.assumed(
            COIL[0], COIL[1], COIL[2], Unit.SHARE, member.name() + ": coil", "usual of speakers"));
  }

  private static List<Amount> spread(List<Amount> each) {
    return each.stream()
        .map(
            one ->
                Amount.computed(
                    one instanceof Amount.Known k ? k.label() : "reading",
                    Unit.OHMS,
                    "with 10 % either way",
                    v -> v[0] * v[1],
                    one,
                    Amount.assumed(
                        SCATTER[0],
                        SCATTER[1],
                        SCATTER[2],
                        Unit.SHARE,
                        "scatter",
                        "one reading against the next")))
        .toList();
  }

  private static Amount sideBySide(String label, List<Amount> each) {
    return each.size() == 1
        ? each.get(0)
        : Amount.computed(
            label,
            Unit.OHMS,
            "1 / sum of 1 / resistance",
            v -> {
              double siemens = 0;
              for (double ohms : v) {
                siemens += 1 / ohms;
              }
              return 1 / siemens;
            },
            each);
  }

  /** Frame and rails against everything that must not meet them, every switch off. */
  private void isolation() {
    State off = off();
    boolean metal =
        !plan.said("locomotive.frame.material").is("plastic")
            && !plan.said("locomotive.frame.material").is("wood");
    if (metal) {
      isolated(
          "frame-apart", "Leads on again, switches off. From the frame", List.of("frame"), off);
    }
    isolated(
        "rails-apart",
        (metal ? "The same from the" : "Leads on again, switches off. From the")
            + " wheels and pickups of each rail",
        List.of("left-rail", "right-rail"),
        off);
  }

  private State off() {
    Map<String, String> switches = new TreeMap<>(circuit.running().switches());
    circuit
        .positions()
        .forEach(
            (name, positions) -> {
              if (positions.contains("off")) {
                switches.put(name, "off");
              }
            });
    return new State(false, switches, true, false);
  }

  private void isolated(String step, String from, List<String> bodies, State off) {
    List<String> apart = new ArrayList<>();
    List<String> joined = new ArrayList<>();
    for (String other : exposed()) {
      boolean meets = bodies.stream().anyMatch(body -> ways.joined(off, body, other));
      (meets ? joined : apart).add(other);
    }
    if (apart.isEmpty()) {
      return;
    }
    Line act = Line.of(from + " to each lead in turn; note the lowest");
    if (!joined.isEmpty()) {
      act = act.and(Line.of(" (joined as the plan has it: {})", own(String.join(", ", joined))));
    }
    steps.add(
        step,
        act,
        Line.names(bodies).and(Line.of(" against ")).and(Line.names(apart)),
        new Expected.Apart(new Figure(step + ".from", APART_OHMS, Unit.OHMS)),
        low(
            "a bared wire, a brush, a lamp holder or the jack's thread touches: find it before any power"));
  }

  /** The leads a person can reach that must stay apart from frame and rails. */
  private List<String> exposed() {
    Set<String> exposed = new LinkedHashSet<>();
    PackEnds.of(circuit).ifPresent(e -> exposed.addAll(List.of(e.plus(), e.minus())));
    LoadEnds.of(circuit).ifPresent(l -> exposed.addAll(List.of(l.plus(), l.minus())));
    for (Device motor : circuit.devices(Device.Sort.MOTOR)) {
      exposed.add(motor.terminal("plus"));
      exposed.add(motor.terminal("minus"));
    }
    for (Device decoder : circuit.devices(Device.Sort.DECODER)) {
      exposed.add(decoder.terminal("common"));
      if (decoder.part().orElseThrow().said("sound").is("yes")) {
        exposed.add(decoder.terminal("speaker+"));
      }
    }
    return List.copyOf(exposed);
  }

  private void feed(PackEnds ends, LoadEnds load) {
    pole("plus", ends.plus(), load.plus());
    pole("minus", ends.minus(), load.minus());
  }

  /** One pole of the feed through every state that makes a difference to it. */
  private void pole(String pole, String from, String to) {
    Set<String> telling = ways.telling(from, to);
    for (State state : ways.states(from, to)) {
      continuity(
          pole + ways.slug(state, telling),
          state,
          ways.words(state, telling),
          from,
          to,
          ways.joined(state, from, to));
    }
  }

  private void continuity(
      String step, State state, Line set, String from, String to, boolean joined) {
    Line act = set.isEmpty() ? Line.of("As it runs") : set;
    if (!joined) {
      steps.add(
          step,
          act,
          between(from, to),
          new Expected.Apart(new Figure(step + ".from", APART_OHMS, Unit.OHMS)),
          low("joined where it must not be: a lead on the wrong lug, or a bridge of solder"));
      return;
    }
    Optional<Figure> most =
        ways.ohms(state, from, to)
            .filter(Amount::isKnown)
            .map(a -> Figure.up(step + ".to", Meter.most(a.get().high(), Unit.OHMS), Unit.OHMS));
    List<String> along = ways.along(state, from, to);
    String onTheWay = along.isEmpty() ? "the wire between them" : String.join(", ", along);
    steps.add(
        step,
        act,
        between(from, to),
        new Expected.Joined(most),
        high("a poor joint or a dirty contact on the way: {}", own(onTheWay)),
        none("open on the way: {}", own(onTheWay)));
  }

  /** Switches that neither pole passes: each contact at each position. */
  private void otherSwitches(PackEnds ends, LoadEnds load) {
    Set<String> covered = new LinkedHashSet<>(ways.telling(ends.plus(), load.plus()));
    covered.addAll(ways.telling(ends.minus(), load.minus()));
    for (Link link : circuit.links()) {
      if (link.sort() == Link.Sort.SWITCH
          && link.closed() instanceof Link.Closed.AtSwitch at
          && !covered.contains(at.switchName())) {
        for (String position : circuit.positions().get(at.switchName())) {
          Map<String, String> turned = new TreeMap<>(circuit.running().switches());
          turned.put(at.switchName(), position);
          State state = new State(false, turned, true, false);
          continuity(
              link.name().replace(' ', '-') + "-at-" + position,
              state,
              Line.of("{} " + position, own(at.switchName())),
              link.from(),
              link.to(),
              ways.joined(state, link.from(), link.to()));
        }
      }
    }
  }

  /** With an empty plug in the jack, its contacts reach the pack's own poles. */
  private void charging(PackEnds ends) {
    if (ChargingWay.packTakenOut(plan)) {
      return;
    }
    for (Device charger : circuit.devices(Device.Sort.CHARGER)) {
      for (String pole : List.of("plus", "minus")) {
        String from = charger.terminal(pole);
        String to = pole.equals("plus") ? ends.plus() : ends.minus();
        State state = ChargingStates.charging(bench);
        Set<String> telling = ways.telling(from, to);
        continuity(
            charger.name() + "-" + pole,
            state,
            Line.of("An empty plug, for the charger's {}, ", own(pole))
                .and(ways.words(state, telling)),
            from,
            to,
            ways.joined(state, from, to));
      }
    }
  }

  /** Plus against minus: no reading may be lower than the load at its hardest is. */
  private void wholeLoad(PackEnds ends) {
    Optional<Amount> least = leastLoadOhms(ends);
    String step = "plus-to-minus";
    Expected expected =
        least.isPresent() && least.get() instanceof Amount.Known k
            ? Meter.atLeast(step, k.low(), Unit.OHMS)
            : new Expected.Untold(
                Unit.OHMS,
                least
                    .map(
                        a ->
                            a instanceof Amount.Missing m
                                ? m.wants()
                                : List.<outshop.units.Want>of())
                    .orElse(List.of()));
    steps.add(
        step,
        Line.of(
            "Every plug and switch position in turn, all joined up; wait till it settles, note the lowest"),
        Steps.red(ends.plus(), ends.minus()),
        expected,
        low("a short, or a part that draws more than the plan allows: no power until it is found"),
        none("open is nothing to mind: electronics may not conduct at a meter's volts"));
  }

  private Optional<Amount> leastLoadOhms(PackEnds ends) {
    if (bench.pack().isEmpty()) {
      return Optional.empty();
    }
    PackValues pack = bench.pack().get();
    LoadCase hardest = new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.BLOCKED);
    Amount amps =
        bench
            .cases()
            .givenAmps(
                hardest, circuit.devices(Device.Sort.PACK).stream().map(Device::name).toList());
    Amount load =
        Amount.computed(
            "the load at its hardest",
            Unit.OHMS,
            "volts / current, wheels blocked, pack full",
            v -> v[1] > 0 ? v[0] / v[1] : APART_OHMS,
            bench.cases().volts(hardest, ends.plus(), ends.minus()),
            amps);
    Amount fuse =
        bench
            .first(Kind.FUSE)
            .map(
                f ->
                    Amount.computed(
                        "what would blow the fuse",
                        Unit.OHMS,
                        "pack full / rating of the fuse",
                        v -> v[0] / v[1],
                        pack.fullVolts(),
                        f.amount("rated_amps")))
            .orElse(load);
    return Optional.of(load.isKnown() || !fuse.isKnown() ? load : fuse);
  }
}

package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.MotorValues;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** Motors: what their leads touch, what is left in them, and whether their readings agree. */
final class MotorFigures {
  /**
   * The slowest chopping that a motor without iron in its rotor takes well: its small inductance no
   * longer smooths the current below. Common practice, no source.
   */
  private static final double CORELESS_HERTZ = 16_000;

  private final Bench bench;
  private final Nets nets;

  private MotorFigures(Bench bench) {
    this.bench = bench;
    this.nets = new Nets(bench);
  }

  static List<Object> of(Bench bench) {
    MotorFigures figures = new MotorFigures(bench);
    List<Object> facts = new ArrayList<>();
    Map<Device, List<Device>> byDrive = new LinkedHashMap<>();
    for (Device motor : bench.circuit().devices(Device.Sort.MOTOR)) {
      facts.add(figures.joined(motor));
      facts.add(figures.leads(motor));
      facts.add(figures.blocked(motor));
      figures
          .drive(motor)
          .ifPresent(
              drive -> {
                facts.add(figures.driven(motor, drive));
                byDrive.computeIfAbsent(drive, d -> new ArrayList<>()).add(motor);
              });
    }
    byDrive.forEach(
        (drive, motors) -> {
          if (motors.size() > 1) {
            facts.add(figures.together(drive, motors));
          }
        });
    return facts;
  }

  private static String key(Device motor, String value) {
    return "locomotive.motors." + motor.name() + "." + value;
  }

  private MotorJoined joined(Device motor) {
    Set<String> plus = nets.component(motor.terminal("plus"));
    Set<String> all = new TreeSet<>(plus);
    all.addAll(nets.component(motor.terminal("minus")));
    boolean onFrame = all.contains(Nets.FRAME);
    Set<String> meets = strangers(all, onFrame);
    if (plus.contains(motor.terminal("minus"))) {
      meets.add("its other lead");
    }
    boolean frameRead = bench.plan().list("locomotive.frame.joined_to").isPresent();
    Standing standing;
    if (!meets.isEmpty() || onFrame && !frameRead) {
      standing = Standing.of("joined");
    } else if (onFrame) {
      standing = Standing.of("frame-alone");
    } else {
      standing =
          bench.plan().list(key(motor, "joined_to")).isPresent()
              ? Standing.FINE
              : Standing.open(bench.plan().said(key(motor, "joined_to")));
    }
    return new MotorJoined(Places.of(motor), standing, words(onFrame, meets));
  }

  private static String words(boolean onFrame, Set<String> meets) {
    List<String> all = new ArrayList<>();
    if (onFrame) {
      all.add("the frame");
    }
    all.addAll(meets);
    return Nets.words(all);
  }

  /** What belongs neither to a motor nor to its drive; through the frame, lamps count as well. */
  private Set<String> strangers(Set<String> terminals, boolean onFrame) {
    Set<String> strangers = new LinkedHashSet<>(Nets.rails(terminals));
    for (String terminal : onFrame ? terminals : nets.live(terminals)) {
      bench
          .circuit()
          .deviceAt(terminal)
          .filter(d -> !isOwn(d, terminal))
          .ifPresent(d -> strangers.add(terminal));
    }
    return strangers;
  }

  private static boolean isOwn(Device device, String terminal) {
    return switch (device.sort()) {
      case MOTOR -> true;
      case DECODER ->
          terminal.equals(device.terminal("motor+")) || terminal.equals(device.terminal("motor-"));
      case RECEIVER ->
          terminal.equals(device.terminal("out-a")) || terminal.equals(device.terminal("out-b"));
      default -> false;
    };
  }

  private MotorLeads leads(Device motor) {
    Optional<List<String>> left = bench.plan().list(key(motor, "left_in_leads"));
    if (left.isEmpty()) {
      Standing open = Standing.open(bench.plan().said(key(motor, "left_in_leads")));
      return new MotorLeads(Places.of(motor), open, open, "");
    }
    List<String> suppressors = new ArrayList<>(left.get());
    boolean board = suppressors.removeIf("board"::equals);
    return new MotorLeads(
        Places.of(motor),
        board ? Standing.of("left") : Standing.FINE,
        suppressors.isEmpty() ? Standing.FINE : Standing.of("left"),
        String.join(" and ", suppressors));
  }

  private BlockedCurrent blocked(Device motor) {
    Plan plan = bench.plan();
    Amount measured = plan.amount(key(motor, "blocked"));
    Amount test = plan.amount(key(motor, "blocked_at"));
    Amount winding = plan.amount(key(motor, "winding"));
    Amount ohms = ohms(motor);
    Standing known =
        measured.isKnown() && test.isKnown()
            ? Standing.FINE
            : winding.isKnown()
                ? Standing.of("winding-only")
                : Standing.open(Standing.wants(measured, test));
    return new BlockedCurrent(
        Places.of(motor),
        known,
        measured,
        Readings.amps(motor.name() + ": blocked, by its winding", test, winding),
        Readings.amps(motor.name() + ": blocked, pack at nominal volts", packVolts(false), ohms),
        Readings.amps(motor.name() + ": blocked, pack full", packVolts(true), ohms),
        plan.amount(key(motor, "cruising")),
        plan.amount(key(motor, "slipping")));
  }

  private Amount ohms(Device motor) {
    return MotorValues.of(bench.plan(), motor.name(), packVolts(false)).ohms();
  }

  private Amount packVolts(boolean full) {
    Optional<PackValues> pack = bench.pack();
    return pack.isEmpty()
        ? Amount.missing("parts", "pack", "choose a pack")
        : full ? pack.get().fullVolts() : pack.get().nominalVolts();
  }

  /** The decoder or receiver whose motor output a motor hangs on. */
  private Optional<Device> drive(Device motor) {
    Set<String> plus = nets.component(motor.terminal("plus"));
    for (Device device : bench.circuit().devices()) {
      List<String> outputs =
          switch (device.sort()) {
            case DECODER -> List.of("motor+", "motor-");
            case RECEIVER -> List.of("out-a", "out-b");
            default -> List.of();
          };
      if (outputs.stream().map(device::terminal).anyMatch(plus::contains)) {
        return Optional.of(device);
      }
    }
    return Optional.empty();
  }

  private MotorDrive driven(Device motor, Device drive) {
    Amount hertz = drive.part().orElseThrow().amount("drive_khz");
    return new MotorDrive(Places.of(motor), hertz, leastHertz(motor, hertz), drive.name());
  }

  private Amount leastHertz(Device motor, Amount hertz) {
    Said kind = bench.plan().said(key(motor, "kind"));
    boolean fastEnough =
        hertz instanceof Amount.Known known && !Exact.below(known.value(), CORELESS_HERTZ);
    if (kind instanceof Said.Unsaid unsaid && !fastEnough) {
      return new Amount.Missing(List.of(unsaid.want()));
    }
    return kind.is("brushed")
        ? new Amount.Absent(motor.name() + ": least frequency")
        : Plan.fixed(
            CORELESS_HERTZ,
            Unit.HERTZ,
            motor.name() + ": least frequency, if coreless",
            "common practice, no source");
  }

  private MotorsTogether together(Device drive, List<Device> motors) {
    List<Amount> ohms = motors.stream().map(this::ohms).toList();
    List<Said> kinds = motors.stream().map(m -> bench.plan().said(key(m, "kind"))).toList();
    List<Amount> ratings = motors.stream().map(m -> bench.plan().amount(key(m, "rated"))).toList();
    Set<String> kindWords = new TreeSet<>();
    kinds.forEach(k -> kindWords.add(k.or("")));
    kindWords.remove("");
    Optional<String> volts = differingVolts(ratings);
    List<Want> wants = new ArrayList<>(Standing.wants(kinds.toArray(Said[]::new)));
    wants.addAll(Standing.wants(ratings.toArray(Amount[]::new)));
    Standing alike =
        kindWords.size() > 1
            ? Standing.of("kinds")
            : volts.isPresent()
                ? Standing.of("ratings")
                : wants.isEmpty() ? Standing.FINE : Standing.open(wants);
    return new MotorsTogether(
        Places.of(drive),
        Cases.greatest(ohms),
        Cases.least(ohms),
        alike,
        kindWords.size() > 1 ? String.join(" and ", kindWords) : volts.orElse(""));
  }

  /** The least and the greatest of the ratings, if they differ. */
  private static Optional<String> differingVolts(List<Amount> ratings) {
    double[] volts =
        ratings.stream()
            .filter(Amount::isKnown)
            .mapToDouble(r -> r.get().value())
            .sorted()
            .toArray();
    if (volts.length < 2 || Exact.same(volts[0], volts[volts.length - 1])) {
      return Optional.empty();
    }
    return Optional.of(
        AmountText.text(volts[0], Unit.VOLTS)
            + " and "
            + AmountText.text(volts[volts.length - 1], Unit.VOLTS));
  }
}

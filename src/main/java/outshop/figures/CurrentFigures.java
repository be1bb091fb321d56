package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import outshop.catalogue.Kind;
import outshop.circuit.Joins;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;

/** Amps through the parts that deliver or carry them, beside what each of them may. */
final class CurrentFigures {
  static final Pieces<CurrentFigures> PIECES =
      new Pieces<>(
          CurrentFigures::new,
          List.of(
              CurrentFigures::deliveries,
              CurrentFigures::tripCurrents,
              figures -> ContactFigures.of(figures.bench, figures.demands),
              figures -> WireFigures.of(figures.bench, figures.demands),
              figures -> OutputFigures.of(figures.bench, figures.demands),
              figures -> RegulatorFigures.of(figures.bench, figures.demands)));

  private final Bench bench;
  private final Demands demands;
  private final Joins running;

  private CurrentFigures(Bench bench) {
    this.bench = bench;
    this.demands = new Demands(bench);
    this.running = new Joins(bench.circuit(), bench.circuit().running());
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private List<Object> deliveries() {
    List<Object> facts = new ArrayList<>();
    Plan plan = bench.plan();
    for (Fitted pack : plan.parts(Kind.PACK)) {
      facts.add(delivery(pack, pack.name(), motor -> true));
    }
    for (Fitted receiver : plan.parts(Kind.RECEIVER)) {
      facts.add(delivery(receiver, receiver.name(), motor -> true));
    }
    for (Fitted decoder : drivingDecoders()) {
      Delivery delivery =
          delivery(decoder, decoder.name() + " motor", motor -> drives(decoder.name(), motor));
      if (!Demands.isNothing(delivery.sustainedAmps())) {
        facts.add(delivery);
      }
    }
    return facts;
  }

  /** The decoders that have a motor; the first where none has, so that the motor is missed. */
  private List<Fitted> drivingDecoders() {
    List<Fitted> decoders = bench.plan().parts(Kind.DECODER);
    List<String> motors = bench.plan().names("locomotive.motors");
    List<Fitted> driving =
        decoders.stream()
            .filter(d -> motors.stream().anyMatch(motor -> drives(d.name(), motor)))
            .toList();
    return driving.isEmpty() ? decoders.stream().limit(1).toList() : driving;
  }

  private Delivery delivery(Fitted part, String element, Predicate<String> motors) {
    Demands.Peak peak = demands.peak(element, motors);
    return new Delivery(
        Places.of(part), part, demands.sustained(element), peak.amps(), peak.moment());
  }

  /** Whether a lead of the motor is joined to the decoder's motor output. */
  private boolean drives(String decoder, String motor) {
    return running.joined(decoder + ".motor+", motor + ".plus")
        || running.joined(decoder + ".motor+", motor + ".minus");
  }

  private List<Object> tripCurrents() {
    List<Object> facts = new ArrayList<>();
    for (Fitted pack : bench.plan().parts(Kind.PACK)) {
      Amount delay = pack.amount("protection_trip_milliseconds");
      Demands.Peak peak = demands.peak(pack.name(), motor -> outlasts(motor, delay));
      Amount trip =
          pack.said("protection").is("no")
              ? new Amount.Absent(pack.name() + ": protection")
              : pack.amount("protection_trip_amps");
      facts.add(
          new TripCurrent(
              Places.of(pack), trip, demands.sustained(pack.name()), peak.amps(), peak.moment()));
    }
    return facts;
  }

  /** Whether a start surge may last longer than a delay; it counts where either is not stated. */
  private boolean outlasts(String motor, Amount delay) {
    Amount lasts = bench.plan().amount("locomotive.motors." + motor + ".start_surge_lasts");
    return !(lasts instanceof Amount.Known l)
        || !(delay instanceof Amount.Known d)
        || Exact.above(l.value(), d.value());
  }
}

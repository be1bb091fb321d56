package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Cases;
import outshop.circuit.ChargingWay;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * Chargers against packs, by their data. A supply that is no charger and a pack that must not be
 * charged are faults by themselves; beside them no voltage or current is compared.
 */
final class ChargerFigures {
  /** Longer than overnight: common practice. */
  private static final double LONG_HOURS = 12;

  private final Bench bench;
  private final Fitted charger;
  private final At at;
  private final List<Object> facts = new ArrayList<>();

  private ChargerFigures(Bench bench, Fitted charger) {
    this.bench = bench;
    this.charger = charger;
    this.at = Places.of(charger);
  }

  /** Each charger by itself. */
  static List<Object> alone(Bench bench) {
    List<Object> facts = new ArrayList<>();
    for (Fitted charger : bench.plan().parts(Kind.CHARGER)) {
      ChargerFigures figures = new ChargerFigures(bench, charger);
      figures.itself();
      facts.addAll(figures.facts);
    }
    return facts;
  }

  static List<Object> chemistries(Bench bench) {
    return each(bench, (figures, chains) -> chains.forEach(figures::chemistries));
  }

  static List<Object> currents(Bench bench) {
    return each(bench, (figures, chains) -> chains.forEach(figures::currents));
  }

  static List<Object> nickel(Bench bench) {
    return each(bench, (figures, chains) -> chains.forEach(figures::nickel));
  }

  static List<Object> volts(Bench bench) {
    return each(bench, (figures, chains) -> chains.forEach(figures::volts));
  }

  static List<Object> times(Bench bench) {
    return each(bench, ChargerFigures::times);
  }

  /** Each charger with the packs that it may charge. */
  private static List<Object> each(Bench bench, BiConsumer<ChargerFigures, List<Chain>> with) {
    List<Object> facts = new ArrayList<>();
    List<Chain> chains = Chain.of(bench).stream().filter(ChargerFigures::mayBeCharged).toList();
    for (Fitted charger : bench.plan().parts(Kind.CHARGER)) {
      if (!charger.isOpen("type") && !charger.said("type").is("plain-supply")) {
        ChargerFigures figures = new ChargerFigures(bench, charger);
        with.accept(figures, chains);
        facts.addAll(figures.facts);
      }
    }
    return facts;
  }

  private static boolean mayBeCharged(Chain chain) {
    return chain.packs().stream()
        .noneMatch(p -> p.isOpen("chemistry") || CellCharge.primary(p.said("chemistry")));
  }

  private void itself() {
    facts.add(new ChargerKind(at, charger.said("type")));
    Said mains = charger.said("mains");
    if (!mains.is("no")) {
      facts.add(new ChargerApproval(at, approval(mains)));
    }
  }

  private Standing approval(Said mains) {
    Said approval = charger.said("approval");
    if (approval.is("stated")) {
      return Standing.FINE;
    }
    List<Want> wants = Standing.wants(mains, approval);
    return wants.isEmpty() ? Standing.of("unapproved") : Standing.open(wants);
  }

  private void chemistries(Chain chain) {
    chain.packs().forEach(this::chemistry);
  }

  private void currents(Chain chain) {
    chain.packs().forEach(this::current);
  }

  private void nickel(Chain chain) {
    if (!CellCharge.nickel(chain.chemistry())) {
      return;
    }
    chain.packs().forEach(this::nickelEnd);
    Amount madeFor = charger.amount("cells_count");
    if (!madeFor.isAbsent()) {
      facts.add(
          new ChargerCells(
              at, chain.name(), madeFor, chain.cells(), sameCells(madeFor, chain.cells())));
    }
  }

  private void chemistry(Fitted pack) {
    Said cells = pack.said("chemistry");
    Said madeFor = charger.said("chemistry");
    facts.add(new ChargerChemistry(at, pack.name(), madeFor, cells, suits(madeFor, cells)));
  }

  private static Standing suits(Said madeFor, Said cells) {
    List<Want> wants = Standing.wants(madeFor, cells);
    if (!wants.isEmpty()) {
      return Standing.open(wants);
    }
    if (madeFor.is(cells.or(""))) {
      return Standing.FINE;
    }
    boolean lead = madeFor.is("lead-acid") && CellCharge.lithium(cells);
    return Standing.of(lead ? "lead-on-lithium" : "other");
  }

  private void volts(Chain chain) {
    if (CellCharge.nickel(chain.chemistry())) {
      return;
    }
    facts.add(
        new ChargerVolts(
            at,
            chain.name(),
            charger.amount("cells_count"),
            chain.cells(),
            chargerVolts(),
            chain.chargeVolts(false),
            tolerated(chain)));
  }

  /** As stated, else what its cells are charged to. */
  private Amount chargerVolts() {
    Amount stated = charger.amount("charge_volts");
    Optional<CellCharge> cell =
        CellCharge.of(charger.said("chemistry")).filter(CellCharge::byVolts);
    if (stated.isKnown()
        || charger.isOpen("charge_volts")
        || cell.isEmpty()
        || !charger.amount("cells_count").isKnown()) {
      return stated;
    }
    return Amount.computed(
        charger.name() + ": charge volts",
        Unit.VOLTS,
        "not stated; cells it is made for x " + cell.get().mostVolts() + " V",
        v -> v[0] * cell.get().mostVolts(),
        charger.amount("cells_count"));
  }

  private static Amount tolerated(Chain chain) {
    Amount volts = chain.chargeVolts(true);
    Amount cells = chain.cells();
    if (CellCharge.lithium(chain.chemistry()) && cells.isKnown()) {
      return Amount.computed(
          chain.name() + ": charge volts with tolerance",
          Unit.VOLTS,
          "charge volts + 50 mV a cell",
          v -> v[0] + v[1] * CellCharge.LITHIUM_TOLERANCE_VOLTS,
          volts,
          cells);
    }
    return volts.times(
        1 + CellCharge.OTHER_TOLERANCE_SHARE,
        chain.name() + ": charge volts with tolerance",
        "charge volts + 1 %");
  }

  private static Standing sameCells(Amount madeFor, Amount cells) {
    List<Want> wants = Standing.wants(madeFor, cells);
    if (!wants.isEmpty()) {
      return Standing.open(wants);
    }
    double made = madeFor.get().value();
    double there = cells.get().value();
    if (Exact.same(made, there)) {
      return Standing.FINE;
    }
    return Standing.of(Exact.above(made, there) ? "more" : "fewer");
  }

  private void current(Fitted pack) {
    Amount amps = charger.amount("charge_amps");
    Amount most = pack.amount("max_charge_amps");
    Amount usual = usualAmps(pack);
    facts.add(new ChargeCurrent(at, pack.name(), amps, most, usual, unstated(amps, most, usual)));
  }

  /**
   * More than is usual is doubtful even where the pack may stand it; less is not known to be little
   * enough.
   */
  private static Standing unstated(Amount amps, Amount most, Amount usual) {
    boolean fast =
        amps instanceof Amount.Known a
            && usual instanceof Amount.Known u
            && Exact.above(a.value(), u.value());
    if (fast) {
      return Standing.of("fast");
    }
    List<Want> wants = Standing.wants(amps, most);
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  private static Amount usualAmps(Fitted pack) {
    Optional<CellCharge> cell = CellCharge.of(pack.said("chemistry"));
    Amount capacity = pack.amount("capacity_ah");
    if (cell.isEmpty()) {
      return new Amount.Missing(Standing.wants(pack.said("chemistry")));
    }
    double rate = cell.get().usualRate();
    return Amount.computed(
        pack.name() + ": usual charge current",
        Unit.AMPS,
        "capacity x " + rate + " per hour, usual for " + pack.said("chemistry").or(""),
        v -> v[0] * rate,
        capacity);
  }

  private void nickelEnd(Fitted pack) {
    Amount capacity = pack.amount("capacity_ah");
    Amount rate =
        Amount.computed(
            "charge rate of " + pack.name(),
            Unit.PER_HOUR,
            "charge current / capacity",
            v -> v[0] / v[1],
            charger.amount("charge_amps"),
            capacity);
    Amount slow = Plan.fixed(CellCharge.SLOW_RATE, Unit.PER_HOUR, "slow charge", "common practice");
    Said ends = charger.said("ends_by");
    facts.add(new NickelEnd(at, pack.name(), rate, slow, ends, ended(ends, rate, slow)));
    if (ends.is("timer")) {
      facts.add(
          new TimedCharge(
              at,
              pack.name(),
              Amount.computed(
                  "charge put into " + pack.name(),
                  Unit.AMPERE_HOURS,
                  "charge current x hours of the timer",
                  v -> v[0] * v[1],
                  charger.amount("charge_amps"),
                  charger.amount("timer_hours")),
              capacity.times(
                  CellCharge.MOST_TIMED,
                  "most that goes into " + pack.name(),
                  "capacity x 1.6: 0.1 C for 16 hours")));
    }
  }

  private static Standing ended(Said ends, Amount rate, Amount slow) {
    if (ends.is("delta-v") || ends.is("temperature") || ends.is("timer")) {
      return Standing.FINE;
    }
    if (rate instanceof Amount.Known k && !Exact.above(k.value(), slow.get().value())) {
      return Standing.of("slow");
    }
    List<Want> wants = new ArrayList<>(Standing.wants(ends));
    wants.addAll(Standing.wants(rate));
    return wants.isEmpty() ? Standing.of("endless") : Standing.open(wants);
  }

  /** Packs side by side are charged at once; one that is taken out is charged alone. */
  private void times(List<Chain> chains) {
    Plan plan = bench.plan();
    if (ChargingWay.packTakenOut(plan) || chains.size() == 1) {
      chains.forEach(c -> time(c.name(), capacity(c), c.chemistry()));
    } else if (!chains.isEmpty()) {
      String name = String.join(" and ", chains.stream().map(Chain::name).toList());
      Amount all =
          Amount.sum(
              name + ": capacity",
              Unit.AMPERE_HOURS,
              chains.stream().map(ChargerFigures::capacity).toList());
      time(name, all, chains.get(0).chemistry());
    }
  }

  /** The same current passes every pack of a chain, so the smallest is full first. */
  private static Amount capacity(Chain chain) {
    return Cases.least(chain.packs().stream().map(p -> p.amount("capacity_ah")).toList());
  }

  private void time(String pack, Amount capacity, Said chemistry) {
    Amount hours =
        CellCharge.of(chemistry)
            .map(cell -> hours(pack, capacity, cell))
            .orElseGet(() -> new Amount.Missing(Standing.wants(chemistry)));
    Amount asked = bench.plan().amount("wishes.charging");
    Amount usual =
        Plan.fixed(LONG_HOURS, Unit.HOURS, "longest usual charge", "common practice: overnight");
    facts.add(new ChargeTime(at, pack, hours, asked.orElse(usual), charger.amount("timer_hours")));
  }

  private Amount hours(String pack, Amount capacity, CellCharge cell) {
    double factor = cell.chargedPerCapacity();
    String how = Exact.same(factor, 1.2) ? "x 1.2" : "/ 0.7";
    return Amount.computed(
        "time to charge " + pack,
        Unit.HOURS,
        "capacity / charge current " + how,
        v -> v[0] / v[1] * factor,
        capacity,
        charger.amount("charge_amps"));
  }
}

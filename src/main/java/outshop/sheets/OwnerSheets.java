package outshop.sheets;

import static outshop.sheets.Line.number;
import static outshop.sheets.Line.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import outshop.catalogue.Kind;
import outshop.circuit.ChargingWay;
import outshop.circuit.Chemistry;
import outshop.circuit.State;
import outshop.figures.Bench;
import outshop.figures.ChargeTime;
import outshop.figures.LeftOn;
import outshop.figures.RunTime;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.report.Report;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Unit;

/** Draws up the owner's sheet of a plan. */
public final class OwnerSheets {
  private final Bench bench;
  private final Plan plan;
  private final List<Object> facts;
  private final Report report;

  private OwnerSheets(Bench bench, List<Object> facts, Report report) {
    this.bench = bench;
    this.plan = bench.plan();
    this.facts = facts;
    this.report = report;
  }

  /**
   * The owner's sheet.
   *
   * @param facts every fact of the plan
   */
  public static OwnerSheet of(Bench bench, List<Object> facts, Report report) {
    OwnerSheets sheets = new OwnerSheets(bench, facts, report);
    List<OwnerSheet.Chapter> chapters = new ArrayList<>();
    chapters.add(new OwnerSheet.Chapter("running", "Running", sheets.running()));
    if (!bench.plan().parts(Kind.CHARGER).isEmpty()) {
      chapters.add(new OwnerSheet.Chapter("charging", "Charging", sheets.charging()));
    }
    chapters.add(new OwnerSheet.Chapter("storing", "Putting it away", sheets.storing()));
    chapters.add(new OwnerSheet.Chapter("trouble", "If something is wrong", sheets.trouble()));
    chapters.add(
        new OwnerSheet.Chapter("cautions", "Mind", BenchSheets.cautions("This sheet", report)));
    return new OwnerSheet(
        report.title(), report.planFile(), BenchSheets.standing(report), sheets.parts(), chapters);
  }

  private List<OwnerSheet.Part> parts() {
    List<OwnerSheet.Part> parts = new ArrayList<>();
    plan.parts(Kind.PACK).forEach(p -> parts.add(new OwnerSheet.Part("gives the power", pack(p))));
    each(parts, Kind.FUSE, "blows on a short, and must be replaced by the same sort");
    each(parts, Kind.SWITCH, "switches it on and off");
    each(parts, Kind.JACK, "takes the charger's plug");
    each(parts, Kind.CHARGER, "charges the pack; use no other");
    each(parts, Kind.RECEIVER, "hears the handset");
    each(parts, Kind.HANDSET, "drives it");
    boolean sound = plan.parts(Kind.DECODER).stream().anyMatch(d -> d.said("sound").is("yes"));
    each(parts, Kind.DECODER, sound ? "drives motor, lamps and sound" : "drives motor and lamps");
    each(parts, Kind.SPEAKER, "makes the sound heard");
    each(parts, Kind.SMOKE_HEATER, "makes smoke, and gets hot");
    return parts;
  }

  private void each(List<OwnerSheet.Part> parts, Kind kind, String does) {
    plan.parts(kind).forEach(p -> parts.add(new OwnerSheet.Part(does, seated(p))));
  }

  private Line seated(Fitted part) {
    Line what = Line.of("{}", own(part.part().title()));
    return plan.text("parts." + part.name() + ".bay")
        .map(bay -> what.and(Line.of(", in {}", own(bay))))
        .orElse(what);
  }

  private Line pack(Fitted pack) {
    Line what = seated(pack);
    if (pack.amount("capacity_ah") instanceof Amount.Known ah) {
      what = what.and(Line.of("; {}", number(Figure.of(pack.name() + ".capacity", ah))));
    }
    if (pack.amount("energy_wh") instanceof Amount.Known wh) {
      what = what.and(Line.of(", {}", number(Figure.of(pack.name() + ".energy", wh))));
    }
    return what;
  }

  private List<Line> running() {
    List<Line> rules = new ArrayList<>();
    rules.add(
        Line.of(
            "Before each outing look it over: nothing loose, no smell, no swollen or dented pack, no bared wire."));
    runTime().ifPresent(rules::add);
    bench
        .first(Kind.SWITCH)
        .ifPresent(
            s ->
                rules.add(
                    Line.of(
                        "Its switch ({}) on to run, and off whenever it stands for long.",
                        own(s.name()))));
    for (String output : plan.names("outputs")) {
      List<String> feeds = plan.list("outputs." + output + ".feeds").orElse(List.of());
      if (!feeds.isEmpty()) {
        rules.add(
            Line.of(
                "Output {} of the decoder switches {}.",
                own(output),
                own(String.join(", ", feeds))));
      }
    }
    rules.add(
        Line.of(
            "When it slows or its sound cuts out, the pack is empty: stop, do not squeeze out the rest."));
    rules.add(
        Line.of(
            "If it stands with its wheels blocked, close the throttle at once: that is the hardest"
                + " for motor, fuse and pack."));
    return rules;
  }

  private <T> Optional<T> fact(Class<T> type) {
    return facts.stream().filter(type::isInstance).map(type::cast).findFirst();
  }

  private Optional<Line> runTime() {
    Optional<RunTime> time = fact(RunTime.class);
    if (time.isEmpty()) {
      return Optional.empty();
    }
    if (!(time.get().hours() instanceof Amount.Known hours)) {
      return Optional.of(
          Line.of("How long it runs on a charge cannot be told: a measurement is missing."));
    }
    Line line = Line.of("One charge lasts about {}", number(Figure.of("run-time", hours)));
    if (!Exact.same(hours.low(), hours.high())) {
      line =
          line.and(
              Line.of(
                  " ({} to {})",
                  number(new Figure("run-time.low", hours.low(), Unit.HOURS)),
                  number(new Figure("run-time.high", hours.high(), Unit.HOURS))));
    }
    if (time.get().coldHours() instanceof Amount.Known cold) {
      line =
          line.and(
              Line.of(
                  " as it was planned to run, about {} in frost",
                  number(Figure.of("run-time-cold", cold))));
    }
    return Optional.of(line.and(Line.of(". An estimate: yours may differ.")));
  }

  private List<Line> charging() {
    List<Line> rules = new ArrayList<>();
    Fitted charger = plan.parts(Kind.CHARGER).get(0);
    rules.add(
        Line.of(
            "Only with {}. A charger whose plug fits is not a charger that suits.",
            own(charger.part().title())));
    rules.add(how());
    rules.add(Line.of("Stay by it, on a surface that does not burn, nothing that burns near it."));
    bench
        .first(Kind.PACK)
        .ifPresent(
            pack -> {
              if (pack.amount("charge_min_celsius") instanceof Amount.Known low
                  && pack.amount("charge_max_celsius") instanceof Amount.Known high) {
                rules.add(
                    Line.of(
                        "Never below {} or above {}; let a cold or hot locomotive come to room"
                            + " temperature first.",
                        number(Figure.of("charge-min", low)),
                        number(Figure.of("charge-max", high))));
              } else {
                rules.add(
                    Line.of(
                        "Never in frost or heat: the pack's maker says within which temperatures"
                            + " (the plan does not)."));
              }
            });
    chargeTime().ifPresent(rules::add);
    rules.add(
        Line.of(
            "Unplug when the charger says full. If pack or charger gets hot, smells or swells: unplug"
                + " at the wall, leave it alone, get help."));
    return rules;
  }

  private Line how() {
    if (ChargingWay.packTakenOut(plan)) {
      return Line.of(
          "Switch off, take the pack out, join it to the charger outside the locomotive.");
    }
    State state = ChargingStates.charging(bench);
    List<String> stand = new ArrayList<>();
    new TreeMap<>(state.switches())
        .forEach(
            (name, position) -> {
              if (bench.circuit().positions().get(name).size() > 1 && !position.equals("on")) {
                stand.add(name + " to " + position);
              }
            });
    Line set =
        stand.isEmpty()
            ? Line.of("Switch off, put the plug into the jack, then switch the charger on")
            : Line.of(
                "First {}; then the plug into the jack, then the charger on",
                own(String.join(", ", stand)));
    return set.and(
        ChargingStates.loaded(bench.circuit(), state)
            ? Line.of(".")
            : Line.of(". The locomotive is dead meanwhile: that is meant so."));
  }

  private Optional<Line> chargeTime() {
    return fact(ChargeTime.class)
        .map(
            time -> {
              if (!(time.hours() instanceof Amount.Known hours)) {
                return Line.of("How long a charge takes cannot be told from the plan.");
              }
              return Line.of(
                  "From empty to full takes about {}. Much longer, or much shorter: have it looked at.",
                  number(Figure.of("charge-time", hours)));
            });
  }

  private List<Line> storing() {
    List<Line> rules = new ArrayList<>();
    rules.add(Line.of("Switch off. For more than a few days unplug the pack as well."));
    fact(LeftOn.class)
        .filter(l -> l.days() instanceof Amount.Known)
        .ifPresent(
            l ->
                rules.add(
                    Line.of(
                        "Left switched on, even standing still, the pack is flat after about {}.",
                        number(Figure.of("left-on", l.days().get())))));
    bench.first(Kind.PACK).ifPresent(p -> rules.add(rest(p)));
    rules.add(
        Line.of(
            "A worn or damaged pack goes to a collection point for batteries, its contacts taped over."));
    return rules;
  }

  private static Line rest(Fitted pack) {
    boolean lithium =
        Chemistry.of(pack.said("chemistry").or("")).map(Chemistry::lithium).orElse(false);
    return lithium
        ? Line.of(
            "Over winter: about half charged, cool and dry, off the frost, looked at every few months"
                + " (common practice; the pack's maker comes first).")
        : Line.of("Over winter: cool and dry, as the maker of the pack says.");
  }

  private List<Line> trouble() {
    List<Line> rules = new ArrayList<>();
    rules.add(
        Line.of(
            "Smoke, hissing, a sharp smell or a swelling pack: keep away, keep others away, call the"
                + " fire brigade; do not breathe the smoke."));
    rules.add(Line.of("It does nothing: switch, then charge; then somebody who knows it."));
    bench
        .first(Kind.FUSE)
        .ifPresent(
            f -> {
              Line same =
                  Line.of("A blown fuse has a reason: let it be found. The same sort again, ");
              rules.add(
                  f.amount("rated_amps") instanceof Amount.Known amps
                      ? same.and(
                          Line.of("{}, never a bigger one.", number(Figure.of("fuse", amps))))
                      : same.and(Line.of("never a bigger one.")));
            });
    rules.add(
        Line.of(
            "Anything inside, and the charger's mains side: for the makers and for qualified people."));
    return rules;
  }
}

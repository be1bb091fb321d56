package outshop.sheets;

import static outshop.sheets.Steps.own;

import java.util.ArrayList;
import java.util.List;
import outshop.circuit.PackEnds;
import outshop.figures.Bench;
import outshop.findings.Outcome;
import outshop.report.Report;
import outshop.sheets.BenchSheet.Power;
import outshop.sheets.BenchSheet.Stage;
import outshop.sheets.BenchSheet.Standing;
import outshop.sheets.BenchSheet.Step;
import outshop.units.Unit;

/** Draws up the bench sheet of a plan. */
public final class BenchSheets {
  private BenchSheets() {}

  /** The bench sheet of a plan and the report on it. */
  public static BenchSheet of(Bench bench, Report report) {
    List<Standing> standing = standing(report);
    boolean barred = !standing.isEmpty();
    List<Stage> stages = new ArrayList<>();
    add(
        stages,
        Power.NOTHING,
        "Nothing powered",
        unpowered(bench),
        UnpoweredSteps.of(bench),
        false);
    add(
        stages,
        Power.SUPPLY,
        "Bench supply in place of the pack",
        supplied(bench),
        SupplySteps.of(bench),
        barred);
    add(stages, Power.PACK, "The pack", packed(), PackSteps.of(bench), barred);
    add(stages, Power.CHARGER, "Charging", charging(), PackSteps.charging(bench), barred);
    return new BenchSheet(
        report.title(), report.planFile(), standing, cautions(report), assumptions(bench), stages);
  }

  private static void add(
      List<Stage> stages,
      Power power,
      String title,
      List<Line> before,
      List<Step> steps,
      boolean barred) {
    if (!steps.isEmpty()) {
      stages.add(new Stage(power, title, before, steps, barred));
    }
  }

  /** The violations that count. */
  static List<Standing> standing(Report report) {
    return report.findings().stream()
        .filter(f -> f.outcome() == Outcome.VIOLATION)
        .map(f -> new Standing(f.rule(), f.at().name(), f.headline()))
        .toList();
  }

  private static List<Line> cautions(Report report) {
    List<Line> cautions = new ArrayList<>();
    cautions.addAll(cautions("This sheet", report));
    cautions.add(
        Line.of(
            "One step after the other; where a reading is off, stop and mend before the next. Stop at"
                + " once where something smells, smokes or gets too hot to touch."));
    int open = report.count(Outcome.CANNOT_TELL);
    if (open > 0) {
      cautions.add(
          Line.of(
              "Checks that the report could not tell about: {}. Read it before you power anything.",
              Line.number(Figure.count("cannot-tell", open))));
    }
    return cautions;
  }

  /** The report's cautions, of which the first speaks of the sheet instead. */
  static List<Line> cautions(String paper, Report report) {
    List<Line> cautions = new ArrayList<>();
    cautions.add(
        Line.of(
            paper
                + " compares data; it cannot see the wiring, and it does not say that anything is"
                + " without danger. The makers' instructions, local codes and qualified people come"
                + " first."));
    report.cautions().stream().skip(1).forEach(c -> cautions.add(Line.of(c)));
    return cautions;
  }

  private static List<Line> unpowered(Bench bench) {
    List<Line> before = new ArrayList<>();
    String ends =
        PackEnds.of(bench.circuit())
            .map(e -> e.plus() + " and " + e.minus())
            .orElse("the pack's ends");
    before.add(
        Line.of(
            "Pack and charger out of the locomotive and out of reach; {} are the ends of the leads"
                + " that the pack will meet. \"Plug in\" is an empty plug, joined to nothing.",
            own(ends)));
    return before;
  }

  private static List<Line> supplied(Bench bench) {
    BenchSupply supply = BenchSupply.of(bench);
    List<Line> before = new ArrayList<>();
    before.add(
        Line.of(
            "Only when every step above is inside its window. Pack and charger stay out. Wheels off"
                + " the bench, fingers away from rods and gears."));
    if (supply.running() instanceof outshop.units.Amount.Known volts) {
      before.add(
          Line.of(
              "{} is chosen as the least at which all of it runs: 5 % above the most that receiver,"
                  + " its cut-off and decoder ask for, never under 7 V, up to the next half volt.",
              Line.number(Figure.of("run-volts", volts))));
    }
    return before;
  }

  private static List<Line> packed() {
    return List.of(
        Line.of(
            "Only when every step above is inside its window. Supply away, charger out, fuse in"
                + " place. Rings and watches off; a slipped probe across a pack burns."));
  }

  private static List<Line> charging() {
    return List.of(
        Line.of(
            "Only when every step above is inside its window. On a surface that does not burn, watched"
                + " all the time, as the makers of pack and charger say."));
  }

  private static List<Line> assumptions(Bench bench) {
    List<Line> lines = new ArrayList<>();
    lines.add(
        Line.of(
            "Windows: the circuit solved at both ends of what is not known, and on top what a plain"
                + " meter adds: volts {} and {}, amps {} and {}, ohms {} and {} (from memory; your"
                + " meter's own figures come first).",
            figure("meter-volts-share", Meter.VOLTS_SHARE, Unit.SHARE),
            figure("meter-volts", Meter.VOLTS_PLUS, Unit.VOLTS),
            figure("meter-amps-share", Meter.AMPS_SHARE, Unit.SHARE),
            figure("meter-amps", Meter.AMPS_PLUS, Unit.AMPS),
            figure("meter-ohms-share", Meter.OHMS_SHARE, Unit.SHARE),
            figure("meter-ohms", Meter.OHMS_PLUS, Unit.OHMS)));
    lines.add(
        Line.of(
            "Assumed: electronics draw the same current or the same power at other volts; a motor"
                + " running free draws a tenth to the whole of its current with a train; a lamp"
                + " follows the filament law, 10 % either way; readings scatter by 10 %."));
    return lines;
  }

  private static Line.Piece figure(String name, double value, Unit unit) {
    return Line.number(new Figure(name, value, unit));
  }
}

package outshop.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.circuit.LoadCase;
import outshop.circuit.Station;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.report.PowerPath;
import outshop.report.Report;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;
import outshop.units.Want;

/** Reports for the renderers' tests. Every plan, part and place in them is invented. */
public final class Reports {
  private static final Want STALL =
      new Want(
          "main",
          "blocked",
          "hold the wheels, current-limited supply at a low voltage, one second, read the current");
  private static final Want SWITCH_AMPS =
      new Want("switch", "dc_amps", "the switch's data sheet, its rating for direct current");

  private Reports() {}

  /** A report with something of everything. */
  public static Report full() {
    return new Report(
        "Sallowmere tank engine",
        "plans/reedholm.yaml",
        List.of(shortCircuit(), overMaximum(), drop(), tooSmall(), softer(), quieter()),
        List.of(
            unknown("current/motor-against-decoder", Consequence.DESTROYS, STALL),
            unknown("current/pack-peak", Consequence.HARM, STALL),
            unknown("current/switch", Consequence.HARM, SWITCH_AMPS, STALL)),
        List.of(
            fine("protection/fuse-too-small", "fuse", amps(1.4), amps(5), 0.75, true),
            fine("voltage/decoder-under-minimum", "decoder", volts(13.1), volts(7), 1, false),
            fine("voltage/lamp-at-its-limit", "front", volts(12), volts(12), 1, true),
            met("protection/short-in-a-state", "plan", "No state joins the pack's plus and minus")),
        List.of(new Report.Accepted(noBox(), "the tank itself is the box,\n\tand it is closed")),
        List.of("sound/polarity at speaker: accepted, but there is no such finding; take it out"),
        List.of(
            new Report.Wanted(
                STALL,
                List.of("current/motor-against-decoder", "current/pack-peak", "current/switch"),
                Consequence.HARM),
            new Report.Wanted(SWITCH_AMPS, List.of("current/switch"), Consequence.HARM)),
        List.of(
            new Report.PartLine(
                "pack",
                "pack",
                "pack",
                "pack-4s2p-li",
                "4S 2P pack",
                Optional.of(64.5),
                "data sheet"),
            new Report.PartLine(
                "radio",
                "receiver",
                "receiver",
                "rx-4a",
                "radio receiver, 4 A",
                Optional.empty(),
                "guess")),
        path(),
        cases(),
        List.of(
            "This report compares data; it cannot see the wiring.",
            "Lithium packs can catch fire when charged below 0 °C: stay by the charger."),
        List.of(
            new Problem(
                Problem.Severity.UNLIKELY,
                new Place("catalogue/pack.csv", 12, 7, "row 11, column capacity_ah"),
                "3400",
                "looks like a slip of the unit",
                "a value between 0.1 and 40, such as 3.4")),
        66,
        plots());
  }

  /** A plot with a value of each sort. */
  private static List<Plot> plots() {
    Mark known =
        new Mark(Meaning.NO_LOAD, Optional.of(LoadCase.Charge.FULL), Optional.empty(), volts(16.8));
    Mark along = new Mark(Meaning.CRUISING, Optional.empty(), Optional.of(amps(1.4)), volts(16.2));
    Mark missing =
        new Mark(
            Meaning.BLOCKED,
            Optional.empty(),
            Optional.empty(),
            new Amount.Missing(List.of(STALL)));
    Mark absent =
        new Mark(
            Meaning.TAKES_LEAST,
            Optional.empty(),
            Optional.empty(),
            new Amount.Absent("no window"));
    Row row = new Row("pack", "pack (4S 2P pack)", List.of(known, along, missing, absent));
    return List.of(
        new Plot(Plot.Subject.VOLTAGE_WINDOWS, "", List.of(row), List.of("Not drawn: nothing.")));
  }

  /** A report in which no rule objects. */
  public static Report clear() {
    return withFindings(
        "Lowmoor railcar",
        List.of(),
        List.of(
            fine("voltage/receiver-over-maximum", "receiver", volts(16.8), volts(24), 0.97, true)));
  }

  /** A report with one rule that objects in many places. */
  public static Report manyOfOneRule() {
    List<Finding> findings = new ArrayList<>();
    for (int i = 1; i <= 7; i++) {
      findings.add(
          FindingBuilder.of("lighting/led-current", Outcome.WARNING, Consequence.DESTROYS)
              .at(Station.LIGHTS, "lamp-" + i, "lamp-" + i)
              .says("lamp-" + i + " gets more than it may")
              .why("It burns out")
              .build());
    }
    return withFindings("Seven lamps", findings, List.of());
  }

  /** A report with these findings and what is fine, and nothing else. */
  public static Report withFindings(String title, List<Finding> findings, List<Finding> fine) {
    return new Report(
        title,
        "plan.yaml",
        findings,
        List.of(),
        fine,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        PowerPath.NONE,
        List.of(),
        List.of(),
        List.of(),
        66,
        List.of());
  }

  private static PowerPath path() {
    return new PowerPath(
        List.of(
            stop(Station.PACK, "pack", "4S 2P pack"),
            stop(Station.FUSE, "fuse", "blade fuse, 5 A"),
            stop(Station.JACK, "jack", "charging jack, 5 A"),
            stop(Station.RADIO, "receiver", "radio receiver, 4 A"),
            stop(Station.DECODER, "decoder", "sound decoder")),
        List.of(stop(Station.MOTOR, "main", ""), stop(Station.SOUND, "speaker", "speaker")),
        List.of(stop(Station.CHARGER, "charger", "charger for four cells")),
        2,
        true,
        List.of(
            new PowerPath.Stop(Station.WIRING, List.of(), true),
            new PowerPath.Stop(Station.PLAN, List.of(), true)));
  }

  private static PowerPath.Stop stop(Station station, String name, String title) {
    return new PowerPath.Stop(station, List.of(new PowerPath.Fitting(name, title)), true);
  }

  private static Finding shortCircuit() {
    return FindingBuilder.of(
            "protection/conductor-before-fuse", Outcome.VIOLATION, Consequence.HARM)
        .at(Station.JACK, "jack", "jack (charging jack, 5 A)")
        .says("The pack feeds the charging lead without a fuse while the plug is out")
        .why(
            "A wire that chafes through between pack and fuse has nothing to stop the current, which"
                + " glows within a second")
        .cure("Move the fuse to the pack's own lead, before the jack")
        .basis("cp", "common practice, no source")
        .sureness(Origin.PLAN)
        .build();
  }

  private static Finding overMaximum() {
    return FindingBuilder.of(
            "voltage/receiver-over-maximum", Outcome.VIOLATION, Consequence.DESTROYS)
        .at(Station.RADIO, "receiver", "receiver (radio receiver, 4 A)")
        .says("receiver takes at most 14 V and a full pack gives it 16.8 V")
        .compares(
            Amount.known(
                16.8,
                Unit.VOLTS,
                Origin.STANDARD,
                "pack full",
                "cells in series x full volts of a cell"),
            true,
            Amount.known(
                14,
                Unit.VOLTS,
                Origin.DATA_SHEET,
                "receiver: input max volts",
                "data sheet of rx-4a"),
            1)
        .step("pack: cells series count", "4", "data sheet of pack-4s2p-li")
        .step("pack full", "16.8 V", "cells in series x 4.2 V")
        .step("receiver: input max volts", "14 V", "data sheet of rx-4a")
        .why(
            "Electronics that are fed above their highest input voltage break down at once or within"
                + " hours, and what hangs on them may go with them")
        .cure("Choose a pack with fewer cells in series, or of another chemistry")
        .cure("Choose a receiver that takes at least 16.8 V")
        .basis(
            "part, hb",
            "the receiver's data sheet; a lithium-ion cell is charged to 4.20 V, +/- 50 mV")
        .build();
  }

  private static Finding drop() {
    return FindingBuilder.of("wiring/voltage-drop", Outcome.WARNING, Consequence.DEGRADES)
        .at(Station.WIRING, "feed", "the feed from pack to decoder")
        .says("The feed loses 0.94 V of 14.8 V")
        .compares(
            Amount.known(
                0.94,
                Unit.VOLTS,
                Origin.MEASURED,
                "feed loses, wheels slipping",
                "circuit solved, wheels slipping, pack at nominal volts"),
            true,
            Amount.known(
                14.8, Unit.VOLTS, Origin.DATA_SHEET, "pack nominal", "data sheet of pack-4s2p-li"),
            0.05)
        .why(
            "What is lost in wires is missing at the motor and heats the bay (60 °C at most, 0.5 mm² here)")
        .cure("Use a wire of 18 AWG, or a shorter one")
        .basis("cp", "common practice, no source")
        .build();
  }

  private static Finding tooSmall() {
    return FindingBuilder.of("protection/fuse-cannot-open", Outcome.WARNING, Consequence.HARM)
        .at(Station.FUSE, "fuse", "fuse (blade fuse, 5 A)")
        .says("A short at the far end draws 14.2 A, less than 3.5 times the fuse's 5 A")
        .compares(amps(14.2), false, amps(5), 3.5)
        .why("A fuse that sees little more than its rating takes minutes to open")
        .basis("std", "a fuse standard's gates")
        .build();
  }

  private static Finding softer() {
    return FindingBuilder.of(
            "current/receiver-output-sustained", Outcome.WARNING, Consequence.DESTROYS)
        .at(Station.RADIO, "receiver", "receiver (radio receiver, 4 A)")
        .says("receiver gives 4 A for long and 4.31 A are asked of it")
        .compares(amps(4.31), true, amps(4), 1)
        .why("It heats until it stops or burns out")
        .assumes("main slipping 1.4 A")
        .assumes("volume 60 %")
        .softened()
        .build();
  }

  private static Finding quieter() {
    return FindingBuilder.of("sound/impedance-high", Outcome.ADVICE, Consequence.DEGRADES)
        .at(Station.SOUND, "speaker", "speaker (round speaker, 8 Ω)")
        .says("8 Ω on an amplifier for 4 Ω: 3.01 dB quieter")
        .why("Half the power reaches it")
        .sureness(Origin.GUESS)
        .build();
  }

  private static Finding noBox() {
    return FindingBuilder.of("sound/no-enclosure", Outcome.ADVICE, Consequence.DEGRADES)
        .at(Station.SOUND, "speaker", "speaker")
        .says("speaker sits in no box")
        .build();
  }

  private static Finding unknown(String rule, Consequence worst, Want... wants) {
    FindingBuilder builder =
        FindingBuilder.of(rule, Outcome.CANNOT_TELL, worst)
            .at(Station.DECODER, "decoder", "decoder")
            .says("Cannot tell about decoder");
    for (Want want : wants) {
      builder.wants(want);
    }
    return builder.build();
  }

  private static Finding fine(
      String rule,
      String name,
      Amount.Known has,
      Amount.Known limit,
      double factor,
      boolean upper) {
    return FindingBuilder.of(rule, Outcome.FINE, Consequence.NUISANCE)
        .at(Station.DECODER, name, name)
        .says(name + " is within its bounds")
        .compares(has, upper, limit, factor)
        .step("has", "1", "read")
        .build();
  }

  private static Finding met(String rule, String name, String words) {
    return FindingBuilder.of(rule, Outcome.FINE, Consequence.NUISANCE)
        .at(Station.PLAN, name, name)
        .says(words)
        .build();
  }

  private static List<Report.CaseFigures> cases() {
    return List.of(
        new Report.CaseFigures(
            "standing, pack full",
            List.of(
                new Report.ElementFigures("fuse", 0.0012, 0.06, 0.000072),
                new Report.ElementFigures("pack", 16.8, -0.1 * 3, -16.8 * 0.1 * 3)),
            List.of()),
        new Report.CaseFigures("wheels blocked, pack full", List.of(), List.of(STALL)));
  }

  private static Amount.Known amps(double amps) {
    return Amount.known(amps, Unit.AMPS, Origin.DATA_SHEET, "current", "data sheet");
  }

  private static Amount.Known volts(double volts) {
    return Amount.known(volts, Unit.VOLTS, Origin.DATA_SHEET, "voltage", "data sheet");
  }
}

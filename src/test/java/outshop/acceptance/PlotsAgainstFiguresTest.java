package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.catalogue.Kind;
import outshop.circuit.LoadCase;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.figures.FuseFault;
import outshop.figures.RunTime;
import outshop.figures.SpeakerLoad;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Plots;
import outshop.plots.Row;
import outshop.render.json.JsonPlots;
import outshop.render.json.JsonReport;
import outshop.report.Report;
import outshop.units.Amount;
import outshop.units.Exact;

/** The data of the plots against the report's other figures, for every demo plan. */
final class PlotsAgainstFiguresTest {
  static Stream<Path> plans() {
    return Sample.plans().stream();
  }

  private static <T> List<T> all(List<Object> facts, Class<T> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static Plot plot(List<Plot> plots, Plot.Subject subject) {
    return plots.stream().filter(p -> p.subject() == subject).findFirst().orElseThrow();
  }

  private static Optional<Row> row(Plot plot, String name) {
    return plot.rows().stream().filter(r -> r.name().equals(name)).findFirst();
  }

  /** The solved figure of an element in a case of the report. */
  private static Optional<Report.ElementFigures> element(Report report, LoadCase in, String name) {
    return report.cases().stream()
        .filter(c -> c.name().equals(in.words()))
        .flatMap(c -> c.elements().stream())
        .filter(e -> e.element().equals(name))
        .findFirst();
  }

  /** Volts at the pack and at the receiver's input, as the report's cases have them. */
  @ParameterizedTest
  @MethodSource("plans")
  void voltsAreThoseOfTheSolvedCases(Path path) {
    Report report = Sample.report(path);
    Plot windows = plot(report.plots(), Plot.Subject.VOLTAGE_WINDOWS);
    int compared = 0;
    for (LoadCase in : LoadCase.all()) {
      for (String[] pair : new String[][] {{"pack", "pack"}, {"receiver", "receiver own"}}) {
        Meaning meaning = Meaning.valueOf(in.drive().name());
        Optional<Amount.Known> drawn =
            row(windows, pair[0]).flatMap(r -> r.known(meaning, in.charge()));
        Optional<Report.ElementFigures> solved = element(report, in, pair[1]);
        if (drawn.isPresent() && solved.isPresent()) {
          assertThat(drawn.get().value())
              .as("%s, %s", pair[0], in.words())
              .isCloseTo(Math.abs(solved.get().volts()), within(1e-9));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(5);
  }

  /** Each current of the ladder is the greatest of the report's cases. */
  @ParameterizedTest
  @MethodSource("plans")
  void ampsAreTheGreatestOfTheSolvedCases(Path path) {
    Report report = Sample.report(path);
    int compared = 0;
    for (Row row : plot(report.plots(), Plot.Subject.CURRENT_LADDER).rows()) {
      for (LoadCase.Drive drive : LoadCase.Drive.values()) {
        double most = 0;
        for (LoadCase.Charge charge : LoadCase.Charge.values()) {
          LoadCase in = new LoadCase(charge, drive);
          most =
              Math.max(
                  most, element(report, in, row.name()).map(e -> Math.abs(e.amps())).orElse(0.0));
        }
        Optional<Amount.Known> drawn = row.known(Meaning.valueOf(drive.name()));
        if (drawn.isPresent() && most > 0) {
          assertThat(drawn.get().value()).as(row.name()).isCloseTo(most, within(1e-9));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(4);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void aFullerPackGivesMoreAndMoreLoadLeavesLess(Path path) {
    Plot windows = plot(Sample.report(path).plots(), Plot.Subject.VOLTAGE_WINDOWS);
    List<Meaning> drives = List.of(Meaning.NO_LOAD, Meaning.CRUISING, Meaning.SLIPPING);
    int compared = 0;
    for (Row row : windows.rows()) {
      for (Meaning meaning : drives) {
        compared +=
            falls(
                row.known(meaning, LoadCase.Charge.FULL),
                row.known(meaning, LoadCase.Charge.NOMINAL));
        compared +=
            falls(
                row.known(meaning, LoadCase.Charge.NOMINAL),
                row.known(meaning, LoadCase.Charge.EMPTY));
      }
      for (LoadCase.Charge charge : LoadCase.Charge.values()) {
        compared += falls(row.known(Meaning.NO_LOAD, charge), row.known(Meaning.CRUISING, charge));
        compared += falls(row.known(Meaning.CRUISING, charge), row.known(Meaning.SLIPPING, charge));
      }
    }
    assertThat(compared).isGreaterThan(5);
  }

  private static int falls(Optional<Amount.Known> more, Optional<Amount.Known> less) {
    if (more.isEmpty() || less.isEmpty()) {
      return 0;
    }
    assertThat(Exact.above(less.get().value(), more.get().value()))
        .as("%s over %s", less.get(), more.get())
        .isFalse();
    return 1;
  }

  @ParameterizedTest
  @MethodSource("plans")
  void runTimeFuseAndSpeakerAreThoseOfTheFacts(Path path) {
    Bench bench = Bench.of(Sample.plan(path), List.of());
    List<Object> facts = Facts.of(bench);
    List<Plot> plots = Plots.of(bench, facts, Sample.catalogue().of(Kind.SPEAKER));

    Plot run = plot(plots, Plot.Subject.RUN_TIME);
    for (RunTime fact : all(facts, RunTime.class)) {
      Mark mark = row(run, "the duty asked for").orElseThrow().find(Meaning.HOURS).orElseThrow();
      assertThat(mark.amount()).isEqualTo(fact.hours());
      assertThat(mark.along()).contains(fact.meanAmps());
    }
    Plot gates = plot(plots, Plot.Subject.FUSE_GATES);
    for (FuseFault fact : all(facts, FuseFault.class)) {
      if (fact.at().name().equals(gates.of())) {
        assertThat(
                gates.rows().stream()
                    .flatMap(r -> r.find(Meaning.SHORT_MOST).stream())
                    .map(Mark::amount))
            .containsExactly(fact.mostAmps());
      }
    }
    for (SpeakerLoad fact : all(facts, SpeakerLoad.class)) {
      Amount rated =
          row(plot(plots, Plot.Subject.LOUDNESS), "rated load")
              .orElseThrow()
              .find(Meaning.BY_LOAD)
              .orElseThrow()
              .amount();
      assertThat(rated.get().value()).isCloseTo(fact.quieterDecibels().get().value(), within(1e-9));
    }
  }

  /** One charge is one charge: run time x mean current is the usable charge at every duty. */
  @ParameterizedTest
  @MethodSource("plans")
  void runTimeTimesCurrentIsTheUsableCharge(Path path) {
    Plot run = plot(Sample.report(path).plots(), Plot.Subject.RUN_TIME);
    Optional<Amount.Known> charge = run.rows().get(0).known(Meaning.CHARGE);
    for (Row row : run.rows()) {
      row.find(Meaning.HOURS)
          .filter(Mark::isKnown)
          .ifPresent(
              m ->
                  assertThat(m.amount().get().value() * m.along().get().get().value())
                      .isCloseTo(charge.orElseThrow().value(), within(1e-9)));
      row.known(Meaning.ALLOWED)
          .ifPresent(
              allowed ->
                  assertThat(allowed.value() * row.known(Meaning.ASKED).orElseThrow().value())
                      .isCloseTo(charge.orElseThrow().value(), within(1e-9)));
    }
  }

  /** ISO 8820-3 as cited beside the gates: 135 %, from 0.75 s to 600 s; 200 %, 0.15 s to 5 s. */
  @Test
  void theGatesAreThePublishedOnes() {
    Plot gates =
        plot(
            Sample.report(Sample.FOLDER.resolve("plans/sallowmere-tank.yaml")).plots(),
            Plot.Subject.FUSE_GATES);
    Row row = row(gates, "gates").orElseThrow();

    assertThat(at(row, Meaning.SHORTEST, 4 * 1.35)).isEqualTo(0.75);
    assertThat(at(row, Meaning.LONGEST, 4 * 1.35)).isEqualTo(600);
    assertThat(at(row, Meaning.SHORTEST, 4 * 2.0)).isEqualTo(0.15);
    assertThat(at(row, Meaning.LONGEST, 4 * 2.0)).isEqualTo(5);
  }

  private static double at(Row row, Meaning meaning, double amps) {
    return row.marks().stream()
        .filter(m -> m.meaning() == meaning)
        .filter(m -> Exact.same(m.along().orElseThrow().get().value(), amps))
        .findFirst()
        .orElseThrow()
        .amount()
        .get()
        .value();
  }

  /** An amplifier limited by voltage: half the impedance is 3.01 dB more, by 10 log10 2. */
  @Test
  void halfTheImpedanceIsThreeDecibelsLouder() {
    Plot loud =
        plot(
            Sample.report(Sample.FOLDER.resolve("plans/sallowmere-tank.yaml")).plots(),
            Plot.Subject.LOUDNESS);

    Row four = row(loud, "speaker-4-50-box").orElseThrow();
    assertThat(four.known(Meaning.BY_LOAD).orElseThrow().value()).isCloseTo(3.0103, within(1e-4));
    assertThat(four.known(Meaning.BY_ALL).orElseThrow().value()).isCloseTo(4.0103, within(1e-4));
    assertThat(
            row(loud, "speaker (fitted)").orElseThrow().known(Meaning.BY_ALL).orElseThrow().value())
        .isZero();
  }

  /** Its amplifier stands no less than 8 ohm, so the speakers of 4 ohm are named, not drawn. */
  @Test
  void aSpeakerBelowTheAmplifiersLeastIsLeftOutWithAWord() {
    Plot loud =
        plot(
            Sample.report(Sample.FOLDER.resolve("plans/newcomer.yaml")).plots(),
            Plot.Subject.LOUDNESS);

    assertThat(row(loud, "speaker-4-50-box")).isEmpty();
    assertThat(row(loud, "speaker-8-50-box")).isPresent();
    assertThat(loud.remarks())
        .contains("Not drawn, as the amplifier stands no less than 8 ohm: speaker-4-50-box.");
  }

  /** The JSON of the same run holds every value of every plot. */
  @ParameterizedTest
  @MethodSource("plans")
  void theJsonHoldsTheSameNumbers(Path path) {
    Report report = Sample.report(path);
    List<String> values = new ArrayList<>();
    for (Plot plot : report.plots()) {
      for (Row row : plot.rows()) {
        for (Mark mark : row.marks()) {
          if (mark.amount() instanceof Amount.Known known) {
            values.add(
                JsonPlots.line(
                    plot.subject().word(),
                    row.name(),
                    mark.meaning().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    known.value(),
                    known.low(),
                    known.high()));
          }
        }
      }
    }
    assertThat(JsonPlots.lines(JsonReport.text(report))).isEqualTo(values).isNotEmpty();
  }
}

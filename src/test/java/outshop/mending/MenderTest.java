package outshop.mending;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outshop.acceptance.Sample;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.mend.Change;
import outshop.mend.Mend;
import outshop.mend.Mender;
import outshop.mend.Mending;
import outshop.mend.Need;
import outshop.plan.EditedText;
import outshop.plan.Plan;
import outshop.report.Report;
import outshop.rulecases.WholePlansTest;

/**
 * What a mend promises is held against the report of the plan with the mend written into its text
 * and read again, and what the search leaves out against trying everything.
 */
final class MenderTest {
  private static final int FEW_CHECKS = 120;

  private static Mending mend(Plan plan, Catalogue catalogue, Mender.Aim aim) {
    return new Mender(Sample.ENGINE, catalogue, List.of()).mend(plan, aim);
  }

  private static Path demo(String name) {
    return Sample.FOLDER.resolve("plans").resolve(name + ".yaml");
  }

  private static Report written(String name, byte[] text, List<Change> changes, Catalogue from) {
    byte[] edited =
        EditedText.of(text, changes.stream().flatMap(c -> c.edits().stream()).toList())
            .orElseThrow();
    return Sample.report(Sample.plan(name, edited, from));
  }

  /** Rule and place of each finding of an outcome, with how often it stands there. */
  private static Map<String, Integer> places(Report report, Outcome outcome) {
    Map<String, Integer> places = new HashMap<>();
    Stream.concat(report.findings().stream(), report.cannotTell().stream())
        .filter(f -> f.outcome() == outcome)
        .forEach(f -> places.merge(f.rule() + " at " + f.at().name(), 1, Integer::sum));
    return places;
  }

  private static String place(Finding finding) {
    return finding.rule() + " at " + finding.at().name();
  }

  /** Every mend that is offered for a whole plan does what it says. */
  @TestFactory
  Stream<DynamicTest> everyMendOfAWholePlanDoesWhatItSays() throws IOException {
    return WholePlansTest.plans().entrySet().stream()
        .map(p -> DynamicTest.dynamicTest(p.getKey(), () -> keeps(p.getKey(), p.getValue())));
  }

  private static void keeps(String name, byte[] text) {
    Plan plan = Sample.plan(name, text, Sample.catalogue());
    Report before = Sample.report(plan);
    Mending mending = mend(plan, Sample.catalogue(), new Mender.Aim(false, 2, FEW_CHECKS, 2));

    assertThat(mending.toClear()).hasSize(before.count(Outcome.VIOLATION));
    assertThat(mending.tally().checks()).isLessThanOrEqualTo(FEW_CHECKS + Mender.MOST_CHANGES * 10);
    for (Mend mend : mending.mends()) {
      Report after = written(name, text, mend.changes(), Sample.catalogue());
      assertThat(places(after, Outcome.VIOLATION)).as("%s", mend.changes()).isEmpty();
      says(before, after, mend);
    }
    mending
        .nearest()
        .ifPresent(n -> says(before, written(name, text, n.changes(), Sample.catalogue()), n));
  }

  /** What it clears is gone, what it brings is there, and nothing worse came that it hides. */
  private static void says(Report before, Report after, Mend mend) {
    for (Outcome outcome : List.of(Outcome.VIOLATION, Outcome.WARNING, Outcome.CANNOT_TELL)) {
      Map<String, Integer> expected = new HashMap<>(places(before, outcome));
      mend.clears().stream()
          .filter(f -> f.outcome() == outcome)
          .forEach(f -> expected.merge(place(f), -1, Integer::sum));
      mend.brings().stream()
          .filter(f -> f.outcome() == outcome)
          .forEach(f -> expected.merge(place(f), 1, Integer::sum));
      expected.values().removeIf(n -> n == 0);
      assertThat(places(after, outcome))
          .as("%s of %s", outcome, mend.changes())
          .isEqualTo(expected);
    }
    assertThat(mend.brings()).noneMatch(f -> f.outcome() == Outcome.VIOLATION);
  }

  /**
   * Every single change is made and checked on its own; the mends among them are the ones found.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {"bare-cells", "two-speakers", "charging-the-receiver", "jack-the-wrong-way"})
  void noSingleChangeThatMendsIsMissed(String name) throws IOException {
    byte[] text = Files.readAllBytes(demo(name));
    Plan plan = Sample.plan(demo(name));
    Report before = Sample.report(plan);
    TreeSet<String> expected = new TreeSet<>();
    for (Change change : Mender.changes(plan, Sample.catalogue())) {
      if (isMended(before, written(name, text, List.of(change), Sample.catalogue()), change)) {
        expected.add(change.words());
      }
    }
    Mending mending = mend(plan, Sample.catalogue(), new Mender.Aim(false, 1000, 2000, 2));

    assertThat(expected).isNotEmpty();
    assertThat(mending.mends())
        .allSatisfy(m -> assertThat(m.changes()).hasSize(1))
        .extracting(m -> m.changes().get(0).words())
        .containsExactlyInAnyOrderElementsOf(expected);
  }

  /**
   * No violation; nothing untold that was told where the rule might find one; and for a part less,
   * no new warning.
   */
  private static boolean isMended(Report before, Report after, Change change) {
    Map<String, Integer> untold = places(before, Outcome.CANNOT_TELL);
    boolean hides =
        places(after, Outcome.CANNOT_TELL).entrySet().stream()
            .filter(e -> e.getValue() > untold.getOrDefault(e.getKey(), 0))
            .anyMatch(e -> mayViolate(e.getKey().substring(0, e.getKey().indexOf(" at "))));
    Map<String, Integer> warned = places(before, Outcome.WARNING);
    boolean newWarning =
        places(after, Outcome.WARNING).entrySet().stream()
            .anyMatch(e -> e.getValue() > warned.getOrDefault(e.getKey(), 0));
    return after.count(Outcome.VIOLATION) == 0
        && !hides
        && !(change instanceof Change.Remove && newWarning);
  }

  private static boolean mayViolate(String rule) {
    var text = Sample.ENGINE.book().find(rule).orElseThrow();
    return Stream.concat(
            text.bounds().stream().map(b -> b.outcome()),
            text.situations().values().stream().map(s -> s.outcome()))
        .anyMatch(o -> o == Outcome.VIOLATION);
  }

  private static Catalogue only(String... ids) {
    return new Catalogue(
        Stream.of(ids).map(id -> Sample.catalogue().find(id).orElseThrow()).toList());
  }

  /**
   * On a small catalogue every pair is made and checked; the pairs that mend are the ones found.
   */
  @Test
  void noPairThatMendsIsMissed() throws IOException {
    Catalogue small =
        only(
            "fuse-blade-2",
            "fuse-blade-3",
            "fuse-blade-5",
            "switch-toggle-10a",
            "switch-rocker-16a",
            "wire-20-red",
            "speaker-8-50-box");
    byte[] text = Files.readAllBytes(demo("weak-switch"));
    Plan plan = Sample.plan(demo("weak-switch"));
    Report before = Sample.report(plan);
    List<Change> changes = Mender.changes(plan, small);
    List<String> expected = new ArrayList<>();
    int tried = 0;
    for (int i = 0; i < changes.size(); i++) {
      for (int k = i + 1; k < changes.size(); k++) {
        Change one = changes.get(i);
        Change other = changes.get(k);
        if (!one.slot().equals(other.slot())
            && one.givesUp().isEmpty()
            && other.givesUp().isEmpty()) {
          tried++;
          Report after = written("x", text, List.of(one, other), Sample.catalogue());
          Change less = one instanceof Change.Remove ? one : other;
          if (isMended(before, after, less)) {
            expected.add(one.words() + " + " + other.words());
          }
        }
      }
    }
    Mending mending = mend(plan, small, new Mender.Aim(false, 1000, 5000, 2));
    List<String> found =
        mending.mends().stream()
            .filter(m -> m.givesUp().isEmpty())
            .map(m -> m.changes().get(0).words() + " + " + m.changes().get(1).words())
            .toList();

    assertThat(tried).isGreaterThan(100);
    assertThat(expected).isNotEmpty();
    assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
  }

  @Test
  void theAnswerIsTheSameWhateverTheNumberOfThreads() {
    Plan plan = Sample.plan(demo("weak-switch"));
    List<String> one = told(mend(plan, Sample.catalogue(), new Mender.Aim(false, 50, 300, 1)));

    assertThat(one).isNotEmpty();
    assertThat(told(mend(plan, Sample.catalogue(), new Mender.Aim(false, 50, 300, 2))))
        .isEqualTo(one);
  }

  private static List<String> told(Mending mending) {
    List<String> told = new ArrayList<>(List.of(mending.tally().toString()));
    mending.mends().forEach(m -> told.add(m.changes() + " " + m.cost() + m.brings() + m.after()));
    mending.nearest().ifPresent(m -> told.add(m.changes().toString()));
    return told;
  }

  @Test
  void theBestComeFirst() {
    List<Mend> mends =
        mend(
                Sample.plan(demo("two-speakers")),
                Sample.catalogue(),
                new Mender.Aim(false, 1000, 2000, 2))
            .mends();

    assertThat(mends.get(0).changes().get(0).words()).startsWith("Join the speakers in series");
    assertThat(
            mends
                .get(0)
                .after()
                .loudness()
                .get()
                .louderThan(mends.get(0).before().loudness().get()))
        .hasValueSatisfying(db -> assertThat(db).isBetween(-6.03, -6.01));
    assertThat(mends)
        .extracting(
            m ->
                m.givesUp().size()
                    + (int) m.brings().stream().filter(f -> f.outcome() == Outcome.WARNING).count())
        .isSorted();
  }

  /** Five cells on a receiver for 18 V, and no other pack or receiver that would do. */
  @Test
  void whereNothingHelpsItSaysWhatAPartWouldNeed() {
    Mending mending =
        mend(
            Sample.plan(demo("five-cells-too-many")),
            only("receiver-dcc-13v-2a", "receiver-dcc-phone", "bulb-24v-50", "pack-5s2p-li"),
            new Mender.Aim(false, 3, 400, 2));

    assertThat(mending.mends()).isEmpty();
    assertThat(mending.nearest()).isPresent();
    assertThat(mending.nearest().get().brings()).noneMatch(f -> f.outcome() == Outcome.VIOLATION);
    Need need =
        mending.needs().stream().filter(n -> n.part().equals("receiver")).findFirst().orElseThrow();
    assertThat(need.meeting()).isZero();
    assertThat(need.tried()).isEqualTo(2);
    assertThat(need.asks())
        .anySatisfy(
            ask -> {
              assertThat(ask.column()).isEqualTo("input_max_volts");
              assertThat(ask.atLeast()).isTrue();
              assertThat(ask.value()).isEqualTo("21 V");
              assertThat(ask.stands()).isTrue();
              assertThat(ask.meeting()).isZero();
            })
        .anySatisfy(
            ask -> {
              assertThat(ask.column()).isEqualTo("continuous_amps");
              assertThat(ask.stands()).isFalse();
              assertThat(ask.meeting()).isEqualTo(2);
            });
  }

  /** A receiver whose highest voltage nobody stated clears nothing: it only cannot be told. */
  @Test
  void aFaultIsNotClearedByHidingIt() {
    Part receiver = Sample.catalogue().find("receiver-dcc-22v-4a").orElseThrow();
    Map<String, Double> numbers = new HashMap<>(receiver.numbers());
    assertThat(numbers.remove("input_max_volts")).isNotNull();
    Part blank =
        new Part(
            Kind.RECEIVER,
            receiver.id(),
            numbers,
            receiver.words(),
            receiver.notes(),
            receiver.origin(),
            receiver.place());
    List<Part> others =
        List.of(
            Sample.catalogue().find("bulb-24v-50").orElseThrow(),
            Sample.catalogue().find("handset-curlew").orElseThrow());

    assertThat(mendsWith(others, receiver)).isPositive();
    assertThat(mendsWith(others, blank)).isZero();
  }

  private static int mendsWith(List<Part> others, Part receiver) {
    List<Part> parts = new ArrayList<>(others);
    parts.add(receiver);
    Mender.Aim aim = new Mender.Aim(false, 100, 2000, 2);
    return mend(Sample.plan(demo("five-cells-too-many")), new Catalogue(parts), aim).mends().size();
  }

  @Test
  void warningsCanBeClearedAsWell() {
    Plan plan = Sample.plan(demo("five-cells-too-many"));
    Mending mending = mend(plan, Sample.catalogue(), new Mender.Aim(true, 3, 400, 2));

    assertThat(mending.toClear()).extracting(Finding::outcome).contains(Outcome.WARNING);
    assertThat(mending.mends()).isNotEmpty();
    for (Mend mend : mending.mends()) {
      assertThat(Sample.report(mend.plan()).count(Outcome.WARNING)).isZero();
      assertThat(Sample.report(mend.plan()).count(Outcome.VIOLATION)).isZero();
    }
  }

  @Test
  void theLimitHoldsAndIsSaid() {
    Plan plan = Sample.plan(demo("newcomer"));
    Mending mending = mend(plan, Sample.catalogue(), new Mender.Aim(false, 3, 40, 2));

    assertThat(mending.mends()).isEmpty();
    assertThat(mending.tally().cut()).isTrue();
    assertThat(mending.tally().checks()).isLessThanOrEqualTo(40);
    assertThat(mending.tally().atLeast()).isGreaterThanOrEqualTo(3);
  }

  @Test
  void aSoundPlanNeedsNothing() {
    Mending mending =
        mend(
            Sample.plan(demo("sallowmere-tank")),
            Sample.catalogue(),
            new Mender.Aim(true, 3, 100, 1));

    assertThat(mending.toClear()).isEmpty();
    assertThat(mending.mends()).isEmpty();
    assertThat(mending.needs()).isEmpty();
    assertThat(mending.nearest()).isEqualTo(Optional.empty());
  }
}

package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

final class MendCommandTest {
  private static final Path SAMPLE = Path.of("catalog-sample");
  private static final String CATALOGUE = SAMPLE.resolve("catalogue").toString();

  @TempDir Path folder;

  private static Path demo(String name) {
    return SAMPLE.resolve("plans").resolve(name + ".yaml");
  }

  /** Every faulty demo plan is mended, written, and then nothing is left to complain of. */
  @TestFactory
  Stream<DynamicTest> everyFaultyDemoPlanIsMendedAndTheMendedOneIsClean() throws IOException {
    List<Path> faulty;
    try (Stream<Path> plans = Files.list(SAMPLE.resolve("plans"))) {
      faulty =
          plans.filter(p -> Run.of("check", p.toString()).code() == Exit.FOUND).sorted().toList();
    }
    assertThat(faulty).hasSizeGreaterThanOrEqualTo(11);
    return faulty.stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> mendAndCheck(p)));
  }

  private void mendAndCheck(Path plan) throws IOException {
    Path mended = folder.resolve("mended-" + plan.getFileName());
    Run run =
        Run.of(
            "mend",
            plan.toString(),
            "--catalogue",
            CATALOGUE,
            "--best",
            "1",
            "--write",
            mended.toString());
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.err()).contains("mend 1 written");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);

    Run check = Run.of("check", mended.toString(), "--catalogue", CATALOGUE);
    assertThat(check.code()).as(check.out()).isZero();
    assertThat(check.out()).contains(" 0 violations");
    assertThat(Files.readString(mended)).startsWith(Files.readAllLines(plan).get(0));
  }

  @Test
  void theFirstScreenOfAMend() {
    Run run = Run.of("mend", demo("two-speakers").toString(), "--best", "1");

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains(
            """
            Highbarrowby express engine (catalog-sample/plans/two-speakers.yaml)
            --------------------------------------------------------------------
            To be cleared:
            o==  violation: the 2 speakers: 2 ohm together, and the amplifier takes no less
                 than 4 ohm: it overheats and burns out; join two speakers one after the
                 other (in series) instead of side by side (in parallel)

            What clears it
            --------------
            1    Join the speakers in series (one after the other) instead of in parallel
                 clears      1 violation
                 costs       nothing more
                 run time    5.44 h, as before
                 loudness    6.0 dB quieter
                 headroom    a full pack stands 1.2 V below the most that receiver takes, as
                             before

            And 4 more that rank behind these (--best).
            """);
  }

  @Test
  void thePlanItselfIsChangedOnlyWhereItIsNamed() throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.copy(demo("two-speakers"), plan);
    String before = Files.readString(plan);
    Path other = folder.resolve("other.yaml");
    Files.writeString(other, "mine");

    Run refused = write(plan, other);
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.told()).contains("is there already; name another file");
    assertThat(Files.readString(other)).isEqualTo("mine");
    assertThat(Files.readString(plan)).isEqualTo(before);

    assertThat(write(plan, plan).code()).isZero();
    assertThat(Files.readString(plan))
        .isEqualTo(before.replace("{join: parallel,", "{join: series,"));
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactlyInAnyOrder(plan, other);
    }
  }

  private static Run write(Path plan, Path to) {
    return Run.of("mend", plan.toString(), "--catalogue", CATALOGUE, "--write", to.toString());
  }

  @Test
  void aTextThatCannotBeFollowedIsNotWrittenOver() throws IOException {
    Path plan = folder.resolve("plan.yaml");
    String text = Files.readString(demo("two-speakers"));
    String odd = text.replace("join: parallel", "join:\n  parallel");
    assertThat(odd).isNotEqualTo(text);
    Files.writeString(plan, odd.replace("join:\n  parallel", "join: !!str parallel"));
    assertThat(write(plan, folder.resolve("new.yaml")).code()).isEqualTo(2);
    assertThat(folder.resolve("new.yaml")).doesNotExist();
  }

  @Test
  void numbersThatAreNoneAreRefused() {
    String plan = demo("two-speakers").toString();
    for (String bad : List.of("0", "-1", "x", "99999999999", "1.5", "\u0661")) {
      for (String option : List.of("--best", "--checks")) {
        Run run = Run.of("mend", plan, option, bad);
        assertThat(run.code()).as("%s %s", option, bad).isEqualTo(2);
        assertThat(run.told()).contains(option + " takes a whole number from 1 to ");
        assertThat(run.out()).isEmpty();
      }
    }
    assertThat(Run.of("mend", plan, "--number", "2").told()).contains("--number needs --write");
    assertThat(
            Run.of("mend", plan, "--number", "9", "--write", folder.resolve("x").toString()).told())
        .contains("mend 9 was asked for, and only 5 was found");
    assertThat(folder.resolve("x")).doesNotExist();
  }

  @Test
  void aSoundPlanIsLeftAlone() {
    Path to = folder.resolve("x.yaml");
    Run run = Run.of("mend", demo("sallowmere-tank").toString(), "--write", to.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("There is nothing to mend");
    assertThat(run.err()).contains("nothing was written");
    assertThat(to).doesNotExist();
  }

  @Test
  void whereNothingHelpsItEndsWithOneAndSaysWhatIsWanted() throws IOException {
    Path small = Files.createDirectory(folder.resolve("catalogue"));
    for (String kind :
        List.of(
            "connector",
            "charger",
            "plug",
            "jack",
            "fuse",
            "switch",
            "handset",
            "decoder",
            "speaker",
            "wire")) {
      Files.copy(Path.of(CATALOGUE, kind + ".csv"), small.resolve(kind + ".csv"));
    }
    keep(small, "pack.csv", "id,", "pack-5s2p-li,");
    keep(small, "receiver.csv", "id,", "receiver-dcc-18v-5a,", "receiver-dcc-13v-2a,");
    Run run =
        Run.of(
            "mend",
            demo("five-cells-too-many").toString(),
            "--catalogue",
            small.toString(),
            "--checks",
            "200");

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.shown())
        .contains(
            "Nothing was found that clears them all",
            "Wanted is a receiver with",
            "input_max_volts of at least 21 V",
            "No receiver of the catalogue has all of that.",
            "Not all tried");
  }

  private static void keep(Path folder, String file, String... beginnings) throws IOException {
    List<String> lines =
        Files.readAllLines(Path.of(CATALOGUE, file)).stream()
            .filter(l -> Stream.of(beginnings).anyMatch(l::startsWith))
            .toList();
    assertThat(lines).hasSize(beginnings.length);
    Files.write(folder.resolve(file), lines);
  }

  @Test
  void otherProgramsGetJson() {
    Run run = Run.of("mend", demo("two-speakers").toString(), "--as", "json", "--best", "2");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("{\n  \"outshopMend\" : 1,")
        .contains("\"kind\" : \"rewire\"", "\"at\" : \"speakers.join\"", "\"cost\" : 0.0")
        .endsWith("}\n");
  }

  @Test
  void anUnusablePlanIsRefused() throws IOException {
    Path plan = folder.resolve("bad.yaml");
    Files.writeString(plan, "outshop_plan: 1\nparts: [");
    Run run = Run.of("mend", plan.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("1 error in the input");
  }
}

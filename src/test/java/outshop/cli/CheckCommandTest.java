package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outshop.render.json.ReportSchema;

final class CheckCommandTest {
  @TempDir Path folder;

  @Test
  void aPlanWithoutFaultsEndsWithNought() throws IOException {
    Run run = check(Plans.good(folder));
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Base plan", "0 violations, 0 warnings");
    assertThat(run.code()).isZero();
  }

  @Test
  void aViolationEndsWithOne() throws IOException {
    Run run = check(Plans.withReceiverFor(folder, "14 V"));
    assertThat(run.out()).contains("Stop: ", "receiver takes at most 14 V", "over by   20 %");
    assertThat(run.code()).isEqualTo(1);
  }

  @Test
  void aWarningCountsOnlyWhenStrict() throws IOException {
    Path plan = Plans.withReceiverFor(folder, "17 V");
    Run run = check(plan);
    assertThat(run.out()).contains("Caution: 0 violations, 1 warning");
    assertThat(run.code()).isZero();
    assertThat(check(plan, "--strict").code()).isEqualTo(1);
  }

  @Test
  void whatCannotBeToldCountsOnlyWhenStrict() throws IOException {
    Path plan = Plans.withoutReceiverLimit(folder);
    Run run = check(plan);
    assertThat(run.out()).contains("Caution: ", "receiver: input_max_volts", "get it");
    assertThat(run.code()).isZero();
    assertThat(check(plan, "--strict").code()).isEqualTo(1);
    assertThat(check(Plans.good(folder), "--strict").code()).isZero();
  }

  @Test
  void everyProblemOfAnUnusablePlanIsListedAndNothingIsReported() throws IOException {
    Path plan = folder.resolve("bad.yaml");
    Files.writeString(plan, "outshop_plan: 1\ntitel: x\nparts:\n  pack: {kind: pak}\n");
    Run run = check(plan);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("errors in the input", "bad.yaml:2", "bad.yaml:4");
    assertThat(run.err())
        .contains("did you mean")
        .doesNotContain("Exception")
        .doesNotContain("\tat ");
  }

  @Test
  void anAcceptanceWithoutEffectSaysWhy() throws IOException {
    Path plan = Plans.withoutReceiverLimit(folder);
    String accepted =
        """
        accepted:
          - {rule: voltage/reciever-over-maximum, where: receiver, reason: mistyped}
          - {rule: voltage/receiver-over-maximum, where: receiver, reason: cannot be told}
          - {rule: sound/polarity, where: speaker, reason: there is one speaker}
        """;
    Files.writeString(plan, Files.readString(plan) + accepted);
    assertThat(check(plan).out().replaceAll("\\s+", " "))
        .contains(
            "no such rule (did you mean \"voltage/receiver-over-maximum\"?)",
            "what cannot be told cannot be accepted; state the value that is wanted",
            "sound/polarity at speaker: accepted, but there is no such finding");
  }

  @Test
  void moreThingsThanALocomotiveHasAreRefusedAtOnce() throws IOException {
    Path plan = folder.resolve("many.yaml");
    for (int lamps : new int[] {100, 101}) {
      StringBuilder text = new StringBuilder("outshop_plan: 1\nlocomotive:\n  lamps:\n");
      for (int i = 1; i <= lamps; i++) {
        text.append("    l").append(i).append(": {rated: 12 V}\n");
      }
      Files.writeString(plan, text);
      Run run = check(plan);
      assertThat(run.code()).isEqualTo(lamps == 100 ? 1 : 2);
      assertThat(run.told().contains("more than a plan can hold")).isEqualTo(lamps == 101);
    }
  }

  @Test
  void moreSwitchesThanCanBeFollowedAreRefused() throws IOException {
    Path plan = folder.resolve("switches.yaml");
    for (int switches : new int[] {8, 9}) {
      StringBuilder text = new StringBuilder("outshop_plan: 1\nparts:\n");
      for (int i = 1; i <= switches; i++) {
        text.append("  s").append(i).append(": {kind: switch, dc_amps: 5 A}\n");
      }
      Files.writeString(plan, text);
      Run run = check(plan);
      assertThat(run.code()).isEqualTo(switches == 8 ? 1 : 2);
      assertThat(run.told().contains("more switches than can be followed"))
          .isEqualTo(switches == 9);
    }
  }

  @Test
  void aFileWithoutANameIsNotLookedFor() {
    assertThat(Run.of("check", "").code()).isEqualTo(2);
    assertThat(Run.of("check", "").err()).contains("without a name");
  }

  @Test
  void aPlanThatIsNotThereIsUnusable() {
    Run run = Run.of("check", folder.resolve("none.yaml").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .contains("none.yaml: there is no such file")
        .doesNotContain("Exception", "catalogue");
  }

  @Test
  void aCatalogueThatIsNotThereIsUnusable() throws IOException {
    Run run = check(Plans.good(folder), "--catalogue", folder.resolve("none").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.told()).contains("there is no such file or folder");
  }

  @Test
  void theCatalogueBesideThePlanOrBesideItsFolderIsTaken() throws IOException {
    Path plans = Files.createDirectories(folder.resolve("plans"));
    Files.createDirectories(folder.resolve("catalogue"));
    Files.writeString(folder.resolve("catalogue/receiver.csv"), "id,titel\nrx,Receiver\n");
    Run beside = check(Plans.good(folder));
    assertThat(beside.err() + beside.out()).contains("receiver.csv");
    Run above = check(Plans.good(plans));
    assertThat(above.err() + above.out()).contains("receiver.csv");
    Path deep = Files.createDirectories(plans.resolve("deep"));
    Run below = check(Plans.good(deep));
    assertThat(below.shown()).contains("no catalogue was found").doesNotContain("receiver.csv");
  }

  @Test
  void withoutACatalogueTheReportSaysSo() throws IOException {
    Run run = Run.of("check", Plans.good(folder).toString());
    assertThat(run.shown()).contains("no catalogue was found");
  }

  @Test
  void theJsonFitsTheSchemaAndIsTheSameEveryTime() throws IOException {
    for (Path plan :
        List.of(
            Plans.good(folder),
            Plans.withReceiverFor(folder, "14 V"),
            Plans.withoutReceiverLimit(folder))) {
      Run one = check(plan, "--as", "json");
      Run two = check(plan, "--as=json");
      assertThat(ReportSchema.faults(one.out())).isEmpty();
      assertThat(one.out()).contains("\"outshopReport\" : 1").isEqualTo(two.out());
    }
  }

  @Test
  void thePageIsTheSameInAFileAndOnTheOutput() throws IOException {
    Path plan = Plans.withReceiverFor(folder, "14 V");
    Path to = folder.resolve("report.html");
    Run printed = check(plan, "--as", "page");
    Run written = check(plan, "--as", "page", "--to", to.toString());
    assertThat(printed.code()).isEqualTo(1);
    assertThat(written.code()).isEqualTo(1);
    assertThat(written.shown()).startsWith("Stop: ").contains("report.html)");
    assertThat(Files.readString(to))
        .startsWith("<!DOCTYPE html>\n")
        .contains("receiver takes at most 14 V", "0 °C")
        .isEqualTo(printed.out());
  }

  @Test
  void thePageIsUtf8WhateverTheCharset() throws IOException {
    String plan = Plans.good(folder).toString();
    Run run = Run.in(Map.of(), false, StandardCharsets.ISO_8859_1, "check", plan, "--as", "page");
    byte[] bytes = run.out().getBytes(StandardCharsets.ISO_8859_1);
    assertThat(new String(bytes, StandardCharsets.UTF_8)).contains("0 °C", "charset=\"utf-8\"");
  }

  @Test
  void textAndJsonAreTheSameInEveryLocale() throws IOException {
    String plan = Plans.withReceiverFor(folder, "14 V").toString();
    Run here = Run.of("check", plan, "--working");
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Run.of("check", plan, "--working")).isEqualTo(here);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theReportGoesIntoAFileAsAWhole() throws IOException {
    Path plan = Plans.withReceiverFor(folder, "14 V");
    Path to = folder.resolve("report.txt");
    Files.writeString(to, "what stood there before, and was longer than a line");
    Run run = check(plan, "--to", to.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.shown()).startsWith("Stop: ").contains("report.txt)");
    assertThat(run.out()).doesNotContain("receiver takes");
    assertThat(Files.readString(to)).contains("receiver takes at most 14 V", "0 °C");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(f -> f.getFileName().toString())).noneMatch(n -> n.contains(".part"));
    }
  }

  @Test
  void aFileThatCannotBeWrittenIsUnusable() throws IOException {
    Path plan = Plans.good(folder);
    Run noFolder = check(plan, "--to", folder.resolve("none/report.txt").toString());
    assertThat(noFolder.code()).isEqualTo(2);
    assertThat(noFolder.told()).contains("there is no such folder");
    Run isFolder = check(plan, "--to", folder.toString());
    assertThat(isFolder.code()).isEqualTo(2);
    assertThat(isFolder.told()).contains("is no file");
  }

  @Test
  void theReportNeverTakesThePlaceOfThePlan() throws IOException {
    Path plan = Plans.good(folder);
    String before = Files.readString(plan);
    Run run = check(plan, "--to", folder.resolve("./good.yaml").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.told()).contains("would write over");
    assertThat(plan).hasContent(before);
  }

  @Test
  void colourFollowsTheTerminalAndTheEnvironment() throws IOException {
    String plan = Plans.withReceiverFor(folder, "14 V").toString();
    assertThat(coloured(Map.of(), true, plan)).isTrue();
    assertThat(coloured(Map.of(), false, plan)).isFalse();
    assertThat(coloured(Map.of("NO_COLOR", "1"), true, plan)).isFalse();
    assertThat(coloured(Map.of("NO_COLOR", ""), true, plan)).isTrue();
    assertThat(coloured(Map.of("TERM", "dumb"), true, plan)).isFalse();
    assertThat(coloured(Map.of("NO_COLOR", "1"), false, plan, "--colour", "always")).isTrue();
    assertThat(coloured(Map.of(), true, plan, "--colour=never")).isFalse();
  }

  private static boolean coloured(
      Map<String, String> environment, boolean terminal, String plan, String... more) {
    String[] arguments =
        Stream.concat(Stream.of("check", plan), Stream.of(more)).toArray(String[]::new);
    return Run.in(environment, terminal, StandardCharsets.UTF_8, arguments)
        .out()
        .contains("\u001b[");
  }

  @Test
  void aWiderTerminalIsUsedUpToAHundredColumns() throws IOException {
    String plan = Plans.good(folder).toString();
    assertThat(widest(Map.of("COLUMNS", "200"), true, plan)).isBetween(81, 100);
    assertThat(widest(Map.of("COLUMNS", "60"), true, plan)).isLessThanOrEqualTo(60);
    assertThat(widest(Map.of("COLUMNS", "200"), false, plan)).isLessThanOrEqualTo(80);
    assertThat(widest(Map.of("COLUMNS", "wide"), true, plan)).isLessThanOrEqualTo(80);
    assertThat(widest(Map.of("COLUMNS", ""), true, plan)).isLessThanOrEqualTo(80);
  }

  private static int widest(Map<String, String> environment, boolean terminal, String plan) {
    Run run =
        Run.in(environment, terminal, StandardCharsets.UTF_8, "check", plan, "--colour", "never");
    return run.out().lines().mapToInt(String::length).max().orElse(0);
  }

  @Test
  void inAnotherCharsetNothingIsLost() throws IOException {
    String plan = Plans.good(folder).toString();
    Run run = Run.in(Map.of(), false, StandardCharsets.US_ASCII, "check", plan);
    assertThat(run.out()).contains("below 0 C").doesNotContain("?");
  }

  @Test
  void hostileTitlesReachTheScreenHarmless() throws IOException {
    for (String title :
        List.of(
            "\\e[2J\\u202Eevil\\u2028\\a\\u009B31m", "x".repeat(10_000), "\\U0001F682 \\0 end")) {
      String plan = Plans.titled(folder, title).toString();
      for (String form : List.of("text", "json", "page")) {
        Run run = Run.of("check", plan, "--as", form);
        assertThat((run.out() + run.err()).codePoints().filter(c -> c != '\n'))
            .allSatisfy(
                c ->
                    assertThat(Character.getType(c))
                        .isNotIn((int) Character.CONTROL, (int) Character.FORMAT));
        assertThat(run.out() + run.err()).isNotEmpty();
      }
    }
  }

  @Test
  void theWordsOfTheReportAreOurs() throws IOException {
    for (Path plan : List.of(Plans.good(folder), Plans.withReceiverFor(folder, "14 V"))) {
      assertThat(check(plan, "--working", "--all").out().toLowerCase(Locale.ROOT))
          .doesNotContainPattern("\\b(safe|safely|please|invalid|illegal|simply)\\b");
    }
  }

  private static Run check(Path plan, String... more) {
    return Run.of(
        Stream.concat(Stream.of("check", plan.toString()), Stream.of(more)).toArray(String[]::new));
  }
}

package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WiringCommandTest {
  private static final String TENDER = "catalog-sample/plans/thistlewick-tender.yaml";
  private static final String WRONG = "catalog-sample/plans/jack-the-wrong-way.yaml";

  @TempDir Path folder;

  @Test
  void theDrawingGoesToTheOutputOrToAFileAlike() throws IOException {
    Run shown = Run.of("wiring", WRONG);
    assertThat(shown.code()).isZero();
    assertThat(shown.out())
        .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .endsWith("</svg>\n")
        .contains("data-state=\"as wired\"", "violation 1");
    Path file = folder.resolve("wiring.svg");
    Run written = Run.of("wiring", WRONG, "--to", file.toString());
    assertThat(written.code()).isZero();
    assertThat(written.shown()).startsWith("Written: ");
    assertThat(Files.readString(file)).isEqualTo(shown.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          plug in                         | plug in, switch run
          switch charge ,  plug in        | plug in, switch charge
          vehicles parted, on live rails  | plug out, switch run, vehicles parted, on live rails
          plug out                        | plug out, switch run
          """)
  void aStateIsNamedByWhatIsOtherThanRunning(String words, String drawn) {
    Run run = Run.of("wiring", TENDER, "--state", words);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("data-state=\"" + drawn + "\"", "data-live=\"pack plus");
  }

  @Test
  void everyStateListedCanBeDrawn() {
    List<String> states = Run.of("wiring", TENDER, "--as", "states").out().lines().toList();
    assertThat(states).hasSize(16).doesNotHaveDuplicates().startsWith("plug out, switch run");
    String last = states.get(states.size() - 1);
    assertThat(Run.of("wiring", TENDER, "--state", last).out())
        .contains("data-state=\"" + last + "\"");
  }

  @Test
  void anUnknownStateNamesTheNearestAndAll() {
    Run run = Run.of("wiring", TENDER, "--state", "plug inn");
    assertThat(run.code()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.told())
        .contains("there is no \"plug inn\" (did you mean \"plug in\"?)")
        .contains("plug out, plug in, switch run, switch charge, vehicles coupled, vehicles parted")
        .contains("off live rails, on live rails");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void theListHasALineForEveryWire() {
    Run run = Run.of("wiring", TENDER, "--as", "list");
    assertThat(run.code()).isZero();
    List<String> lines = run.out().lines().toList();
    assertThat(lines.get(0).split(" +"))
        .containsExactly("no.", "from", "to", "gauge", "length", "colour");
    List<String> wires = lines.stream().filter(l -> l.matches("[0-9].*")).toList();
    assertThat(wires).hasSize(21);
    assertThat(wires.get(6).split("  +"))
        .containsExactly("7", "switch.charge", "jack.pin", "20 AWG", "100 mm", "red");
    assertThat(run.out()).contains("the wire chosen is red: mark both ends black");
  }

  @Test
  void aStateGoesWithADrawingOnly() {
    Run run = Run.of("wiring", TENDER, "--as", "list", "--state", "plug in");
    assertThat(run.code()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.told()).contains("--state goes with a drawing, not with --as list");
  }

  @Test
  void thePlanIsNotWrittenOver() throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.copy(Path.of(TENDER), plan);
    String before = Files.readString(plan);
    Run run =
        Run.of(
            "wiring",
            plan.toString(),
            "--catalogue",
            "catalog-sample/catalogue",
            "--to",
            plan.toString());
    assertThat(run.code()).isEqualTo(Exit.UNUSABLE);
    assertThat(Files.readString(plan)).isEqualTo(before);
  }
}

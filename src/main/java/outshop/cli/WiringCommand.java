package outshop.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import outshop.circuit.Circuit;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.State;
import outshop.drawing.WireList;
import outshop.drawing.WiringDrawing;
import outshop.findings.Finding;
import outshop.input.UnusableInput;
import outshop.render.drawing.WireTable;
import outshop.render.drawing.WiringSvg;
import outshop.render.terminal.Look;
import outshop.render.terminal.Sheet;
import outshop.rules.RuleEngine;

/** {@code wiring}: the wiring drawing of a plan, its wire list, the states it can be drawn in. */
final class WiringCommand implements Command {
  private static final String DRAWING = "drawing";
  private static final String LIST = "list";
  private static final String STATES = "states";

  @Override
  public Spec spec() {
    return new Spec(
        "wiring",
        List.of("PLAN"),
        "draw the wiring of a plan as an SVG picture, or list its wires",
        List.of(
            PlanFiles.CATALOGUE,
            Option.oneOf(
                "--as",
                List.of(DRAWING, LIST, STATES),
                "the picture, the wires as a table, or the states it can be drawn in; drawing if"
                    + " left out"),
            Option.valued(
                "--state",
                "WORDS",
                "draw this state and mark what is live, such as \"plug in, switch off\"; as wired if"
                    + " left out"),
            Option.valued("--to", "FILE", "write it there; else it goes to the output")));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Path path = Paths.of(given.operand(0));
    PlanFiles files = PlanFiles.read(path, Paths.optional(given.value("--catalogue")));
    String form = given.value("--as").orElse(DRAWING);
    if (given.has("--state") && !form.equals(DRAWING)) {
      throw new UsageFault("--state goes with a drawing, not with --as " + form);
    }
    Optional<Path> to = Paths.optional(given.value("--to"));
    if (to.isPresent()) {
      OutFile.refuseInput("--to", to.get(), List.of(path), files.catalogue());
    }
    Circuit circuit = CircuitBuilder.build(files.plan());
    String text =
        switch (form) {
          case LIST -> WireTable.text(WireList.of(circuit));
          case STATES -> states(circuit);
          default -> drawing(given, files, circuit);
        };
    write(text, form, to, around);
    return Exit.OK;
  }

  private static void write(String text, String form, Optional<Path> to, Surroundings around)
      throws UsageFault {
    if (to.isPresent()) {
      OutFile.write(to.get(), text);
      around.say("Written: " + to.get());
    } else if (form.equals(DRAWING)) {
      around.printUtf8(text);
    } else {
      Sheet sheet = new Sheet(new Look(Look.WIDEST, false, around.charset()));
      text.lines().forEach(line -> sheet.verbatim(0, line));
      around.print(sheet.text());
    }
  }

  private static String drawing(Given given, PlanFiles files, Circuit circuit) throws UsageFault {
    Optional<String> words = given.value("--state");
    Optional<State> state = Optional.empty();
    if (words.isPresent()) {
      state = Optional.of(StateWords.read(words.get(), circuit));
    }
    Check.Checked checked = new Check(RuleEngine.load()).checked(files.plan(), files.problems());
    List<Finding> findings = checked.report().findings();
    WiringDrawing drawing = checked.wiring();
    return state
        .map(s -> WiringSvg.in(s, drawing, findings))
        .orElseGet(() -> WiringSvg.asWired(drawing, findings));
  }

  private static String states(Circuit circuit) {
    StringBuilder text = new StringBuilder();
    circuit.states().forEach(state -> text.append(state.words()).append('\n'));
    return text.toString();
  }
}

package outshop.cli;

import java.util.List;
import java.util.Optional;
import outshop.input.Nearest;
import outshop.input.Shown;
import outshop.render.terminal.Sheet;

/** {@code help}: what the program and its commands take. */
final class HelpCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec("help", List.of("[COMMAND]"), "this list, or what a command takes", List.of());
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault {
    Optional<String> name = given.optionalOperand(0);
    if (name.isEmpty()) {
      around.print(overview(around));
      return Exit.OK;
    }
    Optional<Command> command = Commands.find(name.get());
    if (command.isEmpty()) {
      throw new UsageFault(
          "there is no command \""
              + Shown.text(name.get())
              + '"'
              + Nearest.hint(name.get(), Commands.NAMES));
    }
    around.print(of(command.get().spec(), around));
    return Exit.OK;
  }

  /** Every command in a line or two. */
  static String overview(Surroundings around) {
    Sheet sheet = new Sheet(around.look(false));
    sheet.paragraph(
        0,
        "Outshop checks a garden locomotive's battery, radio and sound plan before anything is"
            + " bought. It compares data and cannot see the wiring: the makers' instructions, local"
            + " codes and qualified people come first.");
    sheet.blank();
    for (String name : Commands.NAMES) {
      Spec spec = Commands.find(name).orElseThrow().spec();
      String takes = String.join(" ", spec.operands());
      String first = "  " + name + (takes.isEmpty() ? "" : " " + takes);
      sheet.hanging(first + " ".repeat(Math.max(2, 26 - first.length())), spec.summary());
    }
    sheet.blank();
    sheet.paragraph(0, "outshop help COMMAND tells what a command takes. Exit codes:");
    exitCodes(sheet);
    return sheet.text();
  }

  /** One command with its options. */
  static String of(Spec spec, Surroundings around) {
    Sheet sheet = new Sheet(around.look(false));
    sheet.hanging("outshop ", spec.usage());
    sheet.blank();
    String summary = spec.summary();
    sheet.paragraph(0, Character.toUpperCase(summary.charAt(0)) + summary.substring(1) + ".");
    sheet.blank();
    for (Option option : spec.allOptions()) {
      sheet.paragraph(2, option.name() + (option.isFlag() ? "" : " " + option.value()));
      sheet.paragraph(8, option.help());
    }
    sheet.blank();
    sheet.paragraph(0, "Exit codes: outshop help lists them.");
    return sheet.text();
  }

  private static void exitCodes(Sheet sheet) {
    for (String words : Exit.WORDS) {
      sheet.hanging("  " + words.substring(0, 3), words.substring(3));
    }
  }
}

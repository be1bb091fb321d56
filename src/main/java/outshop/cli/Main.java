package outshop.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import outshop.input.Nearest;
import outshop.input.Problem;
import outshop.input.Shown;
import outshop.input.UnusableInput;
import outshop.render.terminal.Sheet;

/** The program: finds the command, reads its arguments, runs it, turns every end into a code. */
public final class Main {
  /** The program's own version. */
  static final String VERSION = "0.1.0";

  /** Problems that are shown before the rest is only counted. */
  static final int MOST_SHOWN = 100;

  private Main() {}

  public static void main(String[] arguments) {
    int code = run(List.of(arguments), Surroundings.ofProcess());
    // Everything is written and flushed; there is nothing that an orderly end would still do.
    Runtime.getRuntime().halt(code);
  }

  /** Runs one command line and returns its exit code; nothing is thrown. */
  static int run(List<String> arguments, Surroundings around) {
    try {
      return dispatch(arguments, around);
    } catch (UsageFault fault) {
      around.complain(usage(fault, around));
      return Exit.UNUSABLE;
    } catch (UnusableInput unusable) {
      around.complain(problems(unusable.problems(), around));
      return Exit.UNUSABLE;
    } catch (RuntimeException | Error own) {
      around.complain(ownFault(own, arguments.contains(Option.TRACE.name()), around));
      return Exit.OWN_FAULT;
    }
  }

  private static int dispatch(List<String> arguments, Surroundings around)
      throws UsageFault, UnusableInput {
    if (arguments.isEmpty()) {
      around.complain(HelpCommand.overview(around));
      return Exit.UNUSABLE;
    }
    String name = alias(arguments.get(0));
    Optional<Command> command = Commands.find(name);
    if (command.isEmpty()) {
      throw new UsageFault(
          "there is no command \""
              + Shown.text(name)
              + '"'
              + Nearest.hint(name, Commands.NAMES)
              + "; outshop help lists them");
    }
    Given given = ArgumentReader.read(command.get().spec(), arguments.subList(1, arguments.size()));
    if (given.has(Option.HELP.name())) {
      around.print(HelpCommand.of(command.get().spec(), around));
      return Exit.OK;
    }
    return command.get().run(given, around);
  }

  private static String alias(String name) {
    return switch (name) {
      case "--help", "-h" -> "help";
      case "--version" -> "version";
      default -> name;
    };
  }

  private static String usage(UsageFault fault, Surroundings around) {
    Sheet sheet = new Sheet(around.look(false));
    for (String words : fault.faults()) {
      sheet.hanging("outshop: ", words);
    }
    return sheet.text();
  }

  /** The problems of the input, errors before all else; where there are very many, the first. */
  static String problems(List<Problem> problems, Surroundings around) {
    Sheet sheet = new Sheet(around.look(false));
    int errors = 0;
    for (Problem problem : problems) {
      errors += problem.severity() == Problem.Severity.ERROR ? 1 : 0;
    }
    problems.stream()
        .sorted(Comparator.comparing(Problem::severity))
        .limit(MOST_SHOWN)
        .forEach(problem -> sheet.hanging("  - ", problem.line() + severity(problem)));
    if (problems.size() > MOST_SHOWN) {
      int more = problems.size() - MOST_SHOWN;
      sheet.hanging("  - ", "and " + more + " more: mend these first, then run it again");
    }
    Sheet first = new Sheet(around.look(false));
    String count = errors == 0 ? "no error" : errors == 1 ? "1 error" : errors + " errors";
    first.hanging("outshop: ", count + " in the input" + (errors == 0 ? ", but:" : ":"));
    return first.text() + sheet.text();
  }

  private static String severity(Problem problem) {
    return switch (problem.severity()) {
      case ERROR -> "";
      case UNLIKELY -> " (unlikely, not an error)";
      case NOTE -> " (a note, not an error)";
    };
  }

  private static String ownFault(Throwable own, boolean trace, Surroundings around) {
    Sheet sheet = new Sheet(around.look(false));
    String message = own.getMessage() == null ? "" : ": " + own.getMessage();
    sheet.hanging(
        "outshop: ",
        "a fault of the program itself, not of your files: "
            + own.getClass().getSimpleName()
            + message);
    sheet.hanging(
        "         ",
        "Report it to whoever gave you the program, with the plan and the catalogue"
            + (trace ? "." : "; --trace shows where it happened."));
    if (!trace) {
      return sheet.text();
    }
    StringWriter stack = new StringWriter();
    own.printStackTrace(new PrintWriter(stack));
    for (String line : Arrays.asList(stack.toString().split("\\R"))) {
      sheet.verbatim(2, line.replace("\t", "    "));
    }
    return sheet.text();
  }
}

package outshop.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.input.Nearest;
import outshop.input.Shown;

/**
 * Reads the arguments of one command: {@code --name value}, {@code --name=value}, {@code --name},
 * operands in between, and only operands after {@code --}. Everything wrong is told at once.
 */
final class ArgumentReader {
  private final Spec spec;
  private final List<String> operands = new ArrayList<>();
  private final Map<String, String> options = new HashMap<>();
  private final List<String> faults = new ArrayList<>();

  private ArgumentReader(Spec spec) {
    this.spec = spec;
  }

  /** The arguments as read. Errors: {@link UsageFault} with everything wrong with them. */
  static Given read(Spec spec, List<String> arguments) throws UsageFault {
    ArgumentReader reader = new ArgumentReader(spec);
    reader.read(arguments);
    if (!reader.options.containsKey(Option.HELP.name())) {
      reader.checkOperands();
    }
    if (!reader.faults.isEmpty()) {
      throw new UsageFault(reader.faults);
    }
    return new Given(reader.operands, reader.options);
  }

  private void read(List<String> arguments) {
    for (int i = 0; i < arguments.size(); i++) {
      String argument = arguments.get(i);
      if (argument.equals("--")) {
        operands.addAll(arguments.subList(i + 1, arguments.size()));
        return;
      }
      if (argument.startsWith("-") && !argument.equals("-")) {
        boolean next = i + 1 < arguments.size() && !isOption(arguments.get(i + 1));
        i += option(argument, next ? Optional.of(arguments.get(i + 1)) : Optional.empty());
      } else {
        operands.add(argument);
      }
    }
  }

  /** Takes one option, and tells how many of the arguments after it went with it. */
  private int option(String argument, Optional<String> next) {
    String name = name(argument);
    boolean hasValue = !name.equals(argument);
    Optional<Option> option = find(name);
    if (option.isEmpty()) {
      unknown(name);
    } else if (option.get().isFlag()) {
      flag(option.get(), hasValue);
    } else if (hasValue) {
      put(option.get(), argument.substring(name.length() + 1));
    } else {
      put(option.get(), next.orElse(""));
      return next.isPresent() ? 1 : 0;
    }
    return 0;
  }

  private static String name(String argument) {
    int equals = argument.indexOf('=');
    return equals < 0 ? argument : argument.substring(0, equals);
  }

  private Optional<Option> find(String name) {
    for (Option option : spec.allOptions()) {
      if (option.name().equals(name)) {
        return Optional.of(option);
      }
    }
    return Optional.empty();
  }

  private boolean isOption(String argument) {
    return argument.equals("--") || find(name(argument)).isPresent();
  }

  private void unknown(String name) {
    List<String> names = spec.allOptions().stream().map(Option::name).toList();
    faults.add(
        "\""
            + spec.name()
            + "\" has no option "
            + Shown.text(name)
            + Nearest.hint(name, names)
            + "; it has "
            + String.join(", ", names));
  }

  private void flag(Option option, boolean hasValue) {
    if (hasValue) {
      faults.add(option.name() + " takes nothing after it");
    } else {
      put(option, "");
    }
  }

  private void put(Option option, String value) {
    if (!option.isFlag() && value.isEmpty()) {
      faults.add(option.name() + " needs " + option.value() + " after it");
    } else if (!option.words().isEmpty() && !option.words().contains(value)) {
      faults.add(
          option.name()
              + " takes "
              + String.join(", ", option.words())
              + ", not \""
              + Shown.text(value)
              + '"'
              + Nearest.hint(value, option.words()));
    } else if (options.put(option.name(), value) != null && !option.isFlag()) {
      faults.add(option.name() + " is given twice");
    }
  }

  private void checkOperands() {
    if (operands.size() < spec.required()) {
      faults.add(
          "\"" + spec.name() + "\" needs " + String.join(" ", spec.operands()) + " after it");
    }
    for (int i = spec.operands().size(); i < operands.size(); i++) {
      String takes = spec.operands().isEmpty() ? "nothing" : "one " + spec.operands().get(0);
      String over = spec.operands().isEmpty() ? "too much" : "one too many";
      faults.add(
          "\""
              + spec.name()
              + "\" takes "
              + takes
              + " after it; \""
              + Shown.text(operands.get(i))
              + "\" is "
              + over);
    }
  }
}

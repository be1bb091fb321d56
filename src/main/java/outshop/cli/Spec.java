package outshop.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * What a command is called and takes.
 *
 * @param operands in order, in capitals; one that may be left out stands in brackets
 * @param summary one sentence without a full stop
 * @param options its own, without those that every command has
 */
record Spec(String name, List<String> operands, String summary, List<Option> options) {

  /** Its own options and those that every command has. */
  List<Option> allOptions() {
    List<Option> all = new ArrayList<>(options);
    all.add(Option.TRACE);
    all.add(Option.HELP);
    return all;
  }

  /** How many operands it must have. */
  int required() {
    int required = 0;
    for (String operand : operands) {
      required += operand.startsWith("[") ? 0 : 1;
    }
    return required;
  }

  /** {@code check PLAN [--catalogue DIR]...}. */
  String usage() {
    StringBuilder usage = new StringBuilder(name);
    for (String operand : operands) {
      usage.append(' ').append(operand);
    }
    for (Option option : options) {
      usage.append(" [").append(option.name());
      if (!option.isFlag()) {
        usage.append('\u00a0').append(option.value());
      }
      usage.append(']');
    }
    return usage.toString();
  }
}

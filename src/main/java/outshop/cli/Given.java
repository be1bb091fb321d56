package outshop.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The arguments as read. */
final class Given {
  private final List<String> operands;
  private final Map<String, String> options;

  /**
   * Arguments that fit a command.
   *
   * @param options by name with its dashes; a flag has an empty value
   */
  Given(List<String> operands, Map<String, String> options) {
    this.operands = List.copyOf(operands);
    this.options = Map.copyOf(options);
  }

  /** An operand that must be there. */
  String operand(int index) {
    return operands.get(index);
  }

  /** An operand that may be left out. */
  Optional<String> optionalOperand(int index) {
    return index < operands.size() ? Optional.of(operands.get(index)) : Optional.empty();
  }

  boolean has(String option) {
    return options.containsKey(option);
  }

  Optional<String> value(String option) {
    return Optional.ofNullable(options.get(option));
  }
}

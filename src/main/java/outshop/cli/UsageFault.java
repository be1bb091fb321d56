package outshop.cli;

import java.util.List;

/** Arguments that cannot be used: everything wrong with them. Exit code 2. */
final class UsageFault extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<String> faults;

  UsageFault(List<String> faults) {
    super(String.join("; ", faults));
    this.faults = List.copyOf(faults);
  }

  UsageFault(String fault) {
    this(List.of(fault));
  }

  /** Each in one sentence without a full stop. */
  List<String> faults() {
    return faults;
  }
}

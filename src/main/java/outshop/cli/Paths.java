package outshop.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import outshop.input.Shown;

/** Turns arguments into paths. */
final class Paths {
  private Paths() {}

  /** Errors: {@link UsageFault} for a text that no file can be called. */
  static Path of(String argument) throws UsageFault {
    if (argument.isBlank()) {
      throw new UsageFault("a file or folder without a name cannot be found");
    }
    try {
      return Path.of(argument);
    } catch (InvalidPathException e) {
      boolean strange = argument.indexOf('\ufffd') >= 0;
      throw new UsageFault(
          "no file can be called \""
              + Shown.text(argument)
              + '"'
              + (strange ? "; set the terminal's language to one with UTF-8" : ""));
    }
  }

  static Optional<Path> optional(Optional<String> argument) throws UsageFault {
    return argument.isEmpty() ? Optional.empty() : Optional.of(of(argument.get()));
  }
}

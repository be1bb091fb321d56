package outshop.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import outshop.input.Shown;

/** Writes a file so that it is never half there: beside its place first, then moved. */
final class OutFile {
  private OutFile() {}

  /**
   * Writes a text as UTF-8 in place of what may stand there. Errors: {@link UsageFault} where that
   * cannot be done; what stood there then stands there still.
   */
  static void write(Path file, String text) throws UsageFault {
    String name = Shown.text(file.toString());
    try {
      Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
      if (Files.exists(target) && !Files.isRegularFile(target)) {
        throw new UsageFault("cannot write " + name + ": it is there and is no file");
      }
      Path beside =
          target.resolveSibling(
              "." + target.getFileName() + ".part" + ProcessHandle.current().pid());
      try {
        Files.writeString(
            beside,
            text,
            StandardCharsets.UTF_8,
            StandardOpenOption.CREATE_NEW,
            StandardOpenOption.WRITE);
        move(beside, target);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw new UsageFault("cannot write " + name + ": " + reason(e));
    }
  }

  /**
   * What is written must not take the place of what it was made from. Errors: {@link UsageFault}
   * where it would.
   *
   * @param option with which it was asked for
   */
  static void refuseInput(String option, Path to, List<Path> read, Optional<Path> catalogue)
      throws UsageFault {
    try {
      if (!Files.exists(to)) {
        return;
      }
      Path real = to.toRealPath();
      boolean over = catalogue.isPresent() && real.startsWith(catalogue.get().toRealPath());
      for (Path file : read) {
        over |= Files.exists(file) && real.equals(file.toRealPath());
      }
      if (over) {
        throw new UsageFault(
            option
                + " "
                + Shown.text(to.toString())
                + " would write over the plan or the catalogue");
      }
    } catch (IOException e) {
      throw new UsageFault(option + " " + Shown.text(to.toString()) + " cannot be looked at");
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static String reason(IOException e) {
    if (e instanceof java.nio.file.NoSuchFileException) {
      return "there is no such folder";
    }
    if (e instanceof java.nio.file.AccessDeniedException) {
      return "it may not be written";
    }
    return e.getClass().getSimpleName() + " " + Shown.text(String.valueOf(e.getMessage()));
  }
}

package outshop.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.BooleanSupplier;
import outshop.render.terminal.Look;
import outshop.render.terminal.Sheet;

/**
 * What surrounds the program: where it writes, in which charset, whether a person looks at it.
 *
 * @param out the report goes here
 * @param err problems go here
 * @param charset of both
 * @param environment variables by name
 * @param terminal asked only when it matters: whether {@code out} is a terminal
 */
record Surroundings(
    OutputStream out,
    OutputStream err,
    Charset charset,
    Map<String, String> environment,
    BooleanSupplier terminal) {

  /** Those of this process. */
  static Surroundings ofProcess() {
    return new Surroundings(
        new FileOutputStream(FileDescriptor.out),
        new FileOutputStream(FileDescriptor.err),
        processCharset(),
        System.getenv(),
        Surroundings::isTerminal);
  }

  private static Charset processCharset() {
    for (String property :
        new String[] {"stdout.encoding", "sun.stdout.encoding", "native.encoding"}) {
      String name = System.getProperty(property);
      if (name != null && !name.isEmpty()) {
        try {
          return Charset.forName(name);
        } catch (IllegalArgumentException e) {
          return StandardCharsets.US_ASCII;
        }
      }
    }
    return Charset.defaultCharset();
  }

  /** From Java 22 on there is a console even without a terminal; only then can it be asked. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  /** The look of what goes to {@code out}. */
  Look look(boolean colour) {
    return new Look(width(), colour, charset);
  }

  private int width() {
    String columns = environment.getOrDefault("COLUMNS", "");
    if (columns.isEmpty() || columns.length() > 4 || !terminal.getAsBoolean()) {
      return Look.USUAL;
    }
    for (int i = 0; i < columns.length(); i++) {
      if (columns.charAt(i) < '0' || columns.charAt(i) > '9') {
        return Look.USUAL;
      }
    }
    int wide = Integer.parseInt(columns);
    return wide == 0 ? Look.USUAL : wide;
  }

  /**
   * Whether to colour.
   *
   * @param word {@code auto}, {@code always} or {@code never}
   */
  boolean colour(String word) {
    return switch (word) {
      case "always" -> true;
      case "never" -> false;
      default ->
          environment.getOrDefault("NO_COLOR", "").isEmpty()
              && !environment.getOrDefault("TERM", "").equals("dumb")
              && terminal.getAsBoolean();
    };
  }

  /** Writes to {@code out} at once. Errors: {@link UsageFault} where it cannot be written. */
  void print(String text) throws UsageFault {
    print(text.getBytes(charset));
  }

  /** Prints one sentence, wrapped and cleaned. */
  void say(String words) throws UsageFault {
    Sheet sheet = new Sheet(look(false));
    sheet.paragraph(0, words);
    print(sheet.text());
  }

  /** As {@link #print(String)}, in UTF-8 whatever the charset. */
  void printUtf8(String text) throws UsageFault {
    print(text.getBytes(StandardCharsets.UTF_8));
  }

  private void print(byte[] bytes) throws UsageFault {
    try {
      out.write(bytes);
      out.flush();
    } catch (IOException e) {
      if (!isReaderGone(e)) {
        throw new UsageFault("the output cannot be written: " + e.getMessage());
      }
    }
  }

  /** Whoever reads a pipe may stop reading: that is no fault. */
  private static boolean isReaderGone(IOException e) {
    String message = String.valueOf(e.getMessage());
    return message.contains("Broken pipe") || message.contains("pipe is being closed");
  }

  /** Writes to {@code err}; if that fails there is nobody left to tell. */
  void complain(String text) {
    try {
      err.write(text.getBytes(charset));
      err.flush();
    } catch (IOException e) {
      return;
    }
  }
}

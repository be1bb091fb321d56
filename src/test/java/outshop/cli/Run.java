package outshop.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Runs a command line inside the test and keeps what it wrote. */
record Run(int code, String out, String err) {

  /** As in a pipe, in UTF-8. */
  static Run of(String... arguments) {
    return in(Map.of(), false, StandardCharsets.UTF_8, arguments);
  }

  static Run in(
      Map<String, String> environment, boolean terminal, Charset charset, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Surroundings around =
        new Surroundings(out, err, charset, new HashMap<>(environment), () -> terminal);
    int code = Main.run(List.of(arguments), around);
    return new Run(code, out.toString(charset), err.toString(charset));
  }

  /** What was complained of, each paragraph in one line however it was wrapped. */
  String told() {
    return err.replaceAll("\n +", " ");
  }

  /** What was shown, likewise. */
  String shown() {
    return out.replaceAll("\n +", " ");
  }
}

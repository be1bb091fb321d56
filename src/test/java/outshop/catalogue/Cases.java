package outshop.catalogue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import outshop.input.Problem;

/**
 * Reads the cases of {@code broken-catalogues.txt}: a name, some files, and what is said about
 * them, line by line.
 */
final class Cases {
  private static final String SAYS = "says";

  private Cases() {}

  /** One case; {@code says} holds one line for each problem, its severity first. */
  record Case(String name, Map<String, byte[]> files, List<String> says) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> all() {
    try (InputStream in = Cases.class.getResourceAsStream("/broken-catalogues.txt")) {
      return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Case> parse(String text) {
    List<Case> cases = new ArrayList<>();
    String[] blocks = text.split("(?m)^=== ");
    for (int i = 1; i < blocks.length; i++) {
      cases.add(one(blocks[i]));
    }
    return cases;
  }

  private static Case one(String block) {
    String[] sections = block.split("(?m)^--- ");
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<String> says = new ArrayList<>();
    for (int i = 1; i < sections.length; i++) {
      int lineEnd = sections[i].indexOf('\n');
      String head = sections[i].substring(0, lineEnd);
      String body = sections[i].substring(lineEnd + 1);
      if (head.equals(SAYS)) {
        says.addAll(body.lines().filter(line -> !line.isBlank()).toList());
      } else {
        files.put(head, bytes(body));
      }
    }
    return new Case(sections[0].strip(), files, says);
  }

  /** The text in UTF-8; {@code \t}, {@code \r} and {@code \xNN} stand for single bytes. */
  private static byte[] bytes(String text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      char next = i + 1 < text.length() ? text.charAt(i + 1) : ' ';
      if (c != '\\') {
        bytes.writeBytes(String.valueOf(c).getBytes(StandardCharsets.UTF_8));
      } else if (next == 'x') {
        bytes.write(Integer.parseInt(text.substring(i + 2, i + 4), 16));
        i += 3;
      } else {
        bytes.write(next == 't' ? '\t' : '\r');
        i++;
      }
    }
    return bytes.toByteArray();
  }

  static List<String> lines(List<Problem> problems) {
    List<String> lines = new ArrayList<>();
    for (Problem problem : problems) {
      lines.add(problem.severity().name().toLowerCase(Locale.ROOT) + " " + problem.line());
    }
    return lines;
  }
}

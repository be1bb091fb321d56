package outshop.input;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A file's text by lines and characters, and what makes it unfit to be parsed at all. */
final class Source {
  private final String file;
  private final String text;
  private final int[] characters;
  private final List<String> lines;

  private Source(String file, String text) {
    this.file = file;
    this.text = text;
    this.characters = text.codePoints().toArray();
    this.lines = List.of(text.split("\r\n|\r|\n", -1));
  }

  /** The text of bytes that are UTF-8, without a byte order mark; empty if they are not UTF-8. */
  static Optional<Source> decode(String file, byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(new Source(file, text.startsWith("\ufeff") ? text.substring(1) : text));
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /** The problem with bytes that are not UTF-8, at the line of the first bad one. */
  static Problem notUtf8(String file, byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    var out = java.nio.CharBuffer.allocate(bytes.length + 1);
    StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    String good = out.flip().toString();
    int line = (int) good.chars().filter(c -> c == '\n').count() + 1;
    return Problem.error(
        new Place(file, line, 0, ""),
        "",
        "the file is not UTF-8 text",
        "the file saved again with the encoding UTF-8");
  }

  String text() {
    return text;
  }

  /** A line, counted from 1; empty where there is none. */
  String line(int number) {
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
  }

  int lineCount() {
    return lines.size();
  }

  /** The character at an offset counted from 0; a line feed past the end. */
  int character(long offset) {
    return offset >= 0 && offset < characters.length ? characters[(int) offset] : '\n';
  }

  /** Tabs in front of a line, and control characters anywhere: each kind once, at its first. */
  List<Problem> unfit() {
    List<Problem> problems = new ArrayList<>();
    int tabLine = 0;
    int moreTabs = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (tabIndented(lines.get(i))) {
        moreTabs += tabLine == 0 ? 0 : 1;
        tabLine = tabLine == 0 ? i + 1 : tabLine;
      }
      OptionalInt control = control(lines.get(i));
      if (control.isPresent()) {
        problems.add(controlProblem(i + 1, control.getAsInt()));
      }
    }
    if (tabLine > 0) {
      String more = moreTabs == 0 ? "" : " (and in %d more)".formatted(moreTabs);
      problems.add(
          Problem.error(
              new Place(file, tabLine, line(tabLine).indexOf('\t') + 1, ""),
              "",
              "a tab in front of a line" + more,
              "spaces"));
    }
    return problems;
  }

  private Problem controlProblem(int lineNumber, int index) {
    String line = line(lineNumber);
    int c = line.codePointAt(index);
    return Problem.error(
        new Place(file, lineNumber, line.codePointCount(0, index) + 1, ""),
        Character.toString(c),
        "a control character stands in the text",
        "letters, digits and signs that can be seen");
  }

  private static boolean tabIndented(String line) {
    int i = 0;
    while (i < line.length() && line.charAt(i) == ' ') {
      i++;
    }
    return i < line.length() && line.charAt(i) == '\t';
  }

  private static OptionalInt control(String line) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      boolean allowed = c == '\t' || c == '\u0085' || !Character.isISOControl(c);
      boolean noncharacter = c == '\ufffe' || c == '\uffff' || c == '\ufeff';
      if (!allowed || noncharacter) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}

package outshop.input;

import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;

/** Says in plain words why a text is no YAML, and where. */
final class SyntaxFault {
  private static final Pattern COLON_GLUED =
      Pattern.compile("\\s*(?:- +)?[^\\s:#\"'\\[{][^\\s:]*:[^\\s:/].*");

  private final String file;
  private final Source source;

  SyntaxFault(String file, Source source) {
    this.file = file;
    this.source = source;
  }

  Problem problem(JacksonException e) {
    if (e.getCause() instanceof MarkedYamlEngineException fault
        && fault.getProblemMark().isPresent()) {
      Mark at = fault.getProblemMark().get();
      return problem(
          Optional.ofNullable(fault.getContext()).orElse(""),
          fault.getContextMark().orElse(at),
          Optional.ofNullable(fault.getProblem()).orElse(""),
          at);
    }
    int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
    String what = String.valueOf(e.getOriginalMessage());
    if (what.startsWith("Expected a property name")) {
      return at(line, 0, "the key is a list, a section or an alias", "a key of plain words");
    }
    if (what.contains("nesting depth")) {
      String expected = "no more than " + Tree.DEEPEST + " levels";
      return at(line, 0, "lists and sections are nested too deep", expected);
    }
    if (what.contains("Malformed Number")) {
      return backslash(line, 0);
    }
    return unclear(line, 0, what);
  }

  private Problem problem(String context, Mark start, String problem, Mark mark) {
    int line = mark.getLine() + 1;
    int column = mark.getColumn() + 1;
    if (problem.contains("mapping values are not allowed")) {
      return colonOutOfPlace(line, column);
    }
    if (problem.contains("could not find expected ':'")) {
      return noColon(start.getLine() + 1);
    }
    if (context.contains("quoted scalar")) {
      return quotes(start, problem, line, column);
    }
    if (context.contains("flow sequence") || context.contains("flow mapping")) {
      boolean list = context.contains("sequence");
      return bracket(start.getLine() + 1, start.getColumn() + 1, list, line, column);
    }
    if (problem.contains("cannot start any token")) {
      String sign = Character.toString(source.character(mark.getIndex()));
      if (sign.equals("\t")) {
        return at(line, column, "a tab stands where a space belongs", "a space");
      }
      String what = "a value cannot begin with " + Shown.text(sign);
      return at(line, column, what, "the value in quotation marks");
    }
    return structure(context, problem, line, column);
  }

  private Problem structure(String context, String problem, int line, int column) {
    if (problem.contains("sequence entries are not allowed")) {
      return at(line, column, "a list item stands behind a key", "each \"- \" on its own line");
    }
    if (problem.contains("expected '<document start>'")) {
      return at(line, column, "the line stands further left than the first key", sameIndentation());
    }
    if (context.contains("block mapping") || context.contains("block collection")) {
      return blockBroken(context.contains("collection"), problem, line, column);
    }
    if (context.contains("anchor") || context.contains("alias") || context.contains("tag")) {
      return at(line, column, "a value cannot begin with &, * or !", "it in quotation marks");
    }
    if (problem.contains("expected the node content")) {
      return noValue(problem, line, column);
    }
    if (context.contains("block scalar")) {
      String what = "text follows the sign > or |";
      return at(line, column, what, "the whole value in quotation marks");
    }
    if (context.contains("directive")) {
      return at(line, column, "a line cannot begin with %", "a key, a colon, a space and a value");
    }
    if (problem.contains("mapping keys are not allowed")) {
      return at(line, column, "a value cannot begin with ?", "the value in quotation marks");
    }
    return unclear(line, column, problem);
  }

  private Problem noValue(String problem, int line, int column) {
    if (problem.contains("<stream end>")) {
      return at(line, column, "a bracket is opened and not closed", "its closing bracket");
    }
    if (problem.contains("'-'")) {
      return at(line, column, "a list item stands inside brackets", "items with commas between");
    }
    if (problem.contains("':'")) {
      return at(line, column, "no key before the colon", "a key, a colon, a space and a value");
    }
    return at(line, column, "a bracket or comma stands where a value belongs", "a value");
  }

  private Problem colonOutOfPlace(int line, int column) {
    String before = source.line(line).substring(0, Math.min(column - 1, width(line)));
    if (before.contains(": ")) {
      return at(line, column, "a second colon in one line", "the value in quotation marks");
    }
    int above = lineAbove(line);
    String upper = source.line(above);
    if (above > 0 && (COLON_GLUED.matcher(upper).matches() || !upper.contains(":"))) {
      return noColon(above);
    }
    if (above > 0 && indentation(line) > indentation(above)) {
      return tooFar(line, above);
    }
    return at(line, column, "a colon cannot stand here", "a key, a colon, a space and a value");
  }

  private Problem tooFar(int line, int above) {
    return at(
        line,
        indentation(line) + 1,
        "the line is indented further than line " + above + ", which already has a value",
        sameIndentation());
  }

  /** The last line before this one that holds more than a comment; 0 if there is none. */
  private int lineAbove(int line) {
    int above = line - 1;
    while (above > 0 && isEmpty(source.line(above))) {
      above--;
    }
    return above;
  }

  private Problem noColon(int line) {
    String text = source.line(line).strip();
    int column = indentation(line) + 1;
    if (text.length() > 1 && text.charAt(0) == '-' && text.charAt(1) != ' ') {
      return at(line, column, "no space after the dash", quoted("- " + text.substring(1)));
    }
    if (COLON_GLUED.matcher(text).matches()) {
      String mended = text.replaceFirst(":", ": ");
      return at(line, column, "no space after the colon", quoted(mended));
    }
    return at(line, column, "no colon after the key", "a key, a colon, a space and a value");
  }

  private Problem quotes(Mark start, String problem, int line, int column) {
    if (problem.contains("escape")) {
      return backslash(line, column);
    }
    return at(
        start.getLine() + 1,
        start.getColumn() + 1,
        "the quotation mark is not closed",
        "a second one at the end of the value");
  }

  private Problem backslash(int line, int column) {
    String expected = "single quotation marks, in which a backslash is a plain sign";
    return at(line, column, "a backslash that means nothing", expected);
  }

  private Problem bracket(int startLine, int startColumn, boolean list, int line, int column) {
    String open = list ? "[" : "{";
    String close = list ? "]" : "}";
    return at(
        startLine,
        startColumn,
        "the bracket " + open + " is not closed, or a comma is missing",
        "a comma or " + close + " before line " + line + ", column " + column);
  }

  private Problem blockBroken(boolean amongItems, String problem, int line, int column) {
    String text = source.line(line);
    String before = text.substring(0, Math.min(column - 1, text.length())).strip();
    if (problem.contains("'<scalar>'") && !before.isEmpty()) {
      String what = "text follows a value that has ended";
      return at(line, column, what, "the whole value in one pair of quotation marks");
    }
    String rest = text.strip();
    if (rest.startsWith("-")) {
      return at(line, column, "a list item stands among keys", "only \"key: value\" lines here");
    }
    if (rest.startsWith(":")) {
      return at(line, column, "no key before the colon", "a key, a colon, a space and a value");
    }
    if (amongItems) {
      return at(line, column, "a key stands among list items", "only lines that begin with \"- \"");
    }
    if (rest.startsWith("]") || rest.startsWith("}") || rest.startsWith(",")) {
      return at(line, column, "a bracket or comma stands where a key belongs", "a key");
    }
    int above = lineAbove(line);
    return above > 0 && indentation(line) > indentation(above)
        ? tooFar(line, above)
        : at(line, column, "the line is indented like no line above it", sameIndentation());
  }

  private Problem unclear(int line, int column, String parserWords) {
    String what = "the text cannot be read here (the parser says: " + Shown.text(parserWords) + ")";
    return at(line, column, what, "lines of the form \"key: value\"");
  }

  private Problem at(int line, int column, String what, String expected) {
    String found = source.line(line).strip();
    return Problem.error(new Place(file, line, column, ""), found, what, expected);
  }

  private static String sameIndentation() {
    return "as many spaces in front as the keys it belongs with";
  }

  private static String quoted(String text) {
    return "\"" + Shown.text(text) + "\"";
  }

  private int width(int line) {
    return source.line(line).length();
  }

  private int indentation(int line) {
    String text = source.line(line);
    return text.length() - text.stripLeading().length();
  }

  private static boolean isEmpty(String line) {
    String text = line.strip();
    return text.isEmpty() || text.startsWith("#");
  }
}

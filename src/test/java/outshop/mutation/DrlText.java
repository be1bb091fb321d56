package outshop.mutation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The parts of one rule's text, by where they stand in it. It knows only as much of the language as
 * cutting a rule up needs: comments, quoted texts, brackets.
 */
final class DrlText {
  private static final Pattern WHEN = Pattern.compile("(?m)^[ \\t]*when\\b");
  private static final Pattern THEN = Pattern.compile("(?m)^[ \\t]*then\\b");
  private static final Pattern END = Pattern.compile("(?m)^[ \\t]*end\\b");
  private static final Pattern PATTERN =
      Pattern.compile("(?:(\\$\\w+)\\s*:\\s*)?\\b([A-Z]\\w*(?:\\.[A-Z]\\w*)*)\\s*(?=\\()");
  private static final Pattern PREFIX = Pattern.compile("\\b(not|exists)\\s*\\(?\\s*$");

  private final String text;
  private final String masked;
  private final int when;
  private final int then;
  private final int end;

  DrlText(String text) {
    this.text = text;
    this.masked = masked(text);
    this.when = find(WHEN, 0).end();
    Matcher thenAt = find(THEN, when);
    this.then = thenAt.end();
    this.end = find(END, then).start();
  }

  /** A piece of the text, from one place up to another. */
  record Span(int from, int to) {}

  /**
   * A pattern of the left side.
   *
   * @param whole with {@code not} or {@code exists}, if one stands before it
   * @param prefix that word's place
   * @param variable the name it is bound to
   * @param name the name of its class
   * @param conditions what stands in its brackets, condition by condition
   */
  record Fact(
      Span whole,
      Optional<Span> prefix,
      Optional<String> variable,
      String name,
      List<Span> conditions) {}

  /**
   * A call of the right side.
   *
   * @param name the place of its name
   * @param arguments the places of its arguments
   */
  record Call(Span name, List<Span> arguments) {}

  String text() {
    return text;
  }

  String text(Span span) {
    return text.substring(span.from(), span.to());
  }

  /** The text with something else in that place. */
  String with(Span span, String other) {
    return text.substring(0, span.from()) + other + text.substring(span.to());
  }

  /** Whether a name is used outside of that place. */
  boolean uses(String name, Span except) {
    String rest = masked.substring(0, except.from()) + masked.substring(except.to());
    return Pattern.compile(Pattern.quote(name) + "\\b").matcher(rest).find();
  }

  /** The patterns of the left side, in order. */
  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    Matcher matcher = PATTERN.matcher(masked);
    int from = when;
    while (matcher.find(from) && matcher.start() < then) {
      int open = matcher.end();
      int close = closing(open);
      Matcher before = PREFIX.matcher(masked.substring(when, matcher.start()));
      Optional<Span> prefix =
          before.find()
              ? Optional.of(new Span(when + before.start(1), when + before.end(1)))
              : Optional.empty();
      boolean bracketed = prefix.isPresent() && before.group().contains("(");
      int last = bracketed ? closing(when + before.start() + before.group().indexOf('(')) : close;
      facts.add(
          new Fact(
              new Span(prefix.map(Span::from).orElse(matcher.start()), last + 1),
              prefix,
              Optional.ofNullable(matcher.group(1)),
              matcher.group(2),
              split(new Span(open + 1, close), ",")));
      from = close + 1;
    }
    return facts;
  }

  /** The class of a fact; {@code Object} where no import names it. */
  Class<?> type(Fact fact) {
    Matcher matcher =
        Pattern.compile("(?m)^import\\s+([\\w.]+\\." + fact.name() + ")\\s*;?\\s*$")
            .matcher(masked);
    try {
      return matcher.find() ? Class.forName(matcher.group(1)) : Object.class;
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(fact.name(), e);
    }
  }

  /** The calls of that name on the right side, in order. */
  List<Call> calls(String name) {
    List<Call> calls = new ArrayList<>();
    Matcher matcher = Pattern.compile("\\.(" + name + ")\\s*\\(").matcher(masked);
    int from = then;
    while (matcher.find(from) && matcher.start() < end) {
      int open = matcher.end() - 1;
      Span arguments = new Span(open + 1, closing(open));
      calls.add(new Call(new Span(matcher.start(1), matcher.end(1)), split(arguments, ",")));
      from = matcher.end();
    }
    return calls;
  }

  /** The trimmed pieces between separators that stand outside of all brackets. */
  List<Span> split(Span span, String separator) {
    List<Span> pieces = new ArrayList<>();
    int depth = 0;
    int from = span.from();
    for (int i = span.from(); i < span.to(); i++) {
      char c = masked.charAt(i);
      depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
      if (depth == 0 && masked.startsWith(separator, i)) {
        pieces.add(trimmed(from, i));
        from = i + separator.length();
        i = from - 1;
      }
    }
    Span last = trimmed(from, span.to());
    if (!pieces.isEmpty() || last.from() < last.to()) {
      pieces.add(last);
    }
    return pieces;
  }

  private Span trimmed(int from, int to) {
    int first = from;
    int last = to;
    while (first < last && Character.isWhitespace(text.charAt(first))) {
      first++;
    }
    while (last > first && Character.isWhitespace(text.charAt(last - 1))) {
      last--;
    }
    return new Span(first, last);
  }

  private int closing(int open) {
    int depth = 0;
    for (int i = open; i < masked.length(); i++) {
      depth += masked.charAt(i) == '(' ? 1 : masked.charAt(i) == ')' ? -1 : 0;
      if (depth == 0) {
        return i;
      }
    }
    throw new IllegalArgumentException("a bracket stays open in: " + text);
  }

  private Matcher find(Pattern pattern, int from) {
    Matcher matcher = pattern.matcher(masked);
    if (!matcher.find(from)) {
      throw new IllegalArgumentException("no " + pattern + " in: " + text);
    }
    return matcher;
  }

  /** The text, as long as it is, with blanks for comments and points for what is quoted. */
  private static String masked(String text) {
    StringBuilder masked = new StringBuilder(text);
    Matcher matcher =
        Pattern.compile("//[^\\n]*|/\\*(?s:.*?)\\*/|\"(?:\\\\.|[^\"\\\\\\n])*\"").matcher(text);
    while (matcher.find()) {
      boolean quoted = matcher.group().startsWith("\"");
      for (int i = matcher.start(); i < matcher.end(); i++) {
        if (text.charAt(i) != '\n') {
          masked.setCharAt(i, quoted ? '.' : ' ');
        }
      }
    }
    return masked.toString();
  }
}

package outshop.plan;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.input.Tree;

/**
 * A YAML text whose values can be set, added and taken away where they stand. Every change gives a
 * new text, read anew, so places are always right. What cannot be followed (a value over several
 * lines that is not read as it is written) is refused with {@link NotFollowed}.
 */
final class YamlText {
  private static final String BLANKS = " \t";

  private final String text;
  private final Tree.Node root;
  private final List<Integer> lineStarts = new ArrayList<>();

  /** The layout of the text cannot be followed. */
  static final class NotFollowed extends Exception {
    private static final long serialVersionUID = 1;
  }

  private YamlText(String text, Tree.Node root) {
    this.text = text;
    this.root = root;
    lineStarts.add(0);
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\n') {
        lineStarts.add(i + 1);
      }
    }
  }

  /** A text without a byte order mark. Errors: {@link NotFollowed} if it cannot be read. */
  static YamlText of(String text) throws NotFollowed {
    Tree.Read read = Tree.read("", text.getBytes(StandardCharsets.UTF_8));
    if (read.root().isEmpty() || !read.problems().isEmpty()) {
      throw new NotFollowed();
    }
    return new YamlText(text, read.root().get());
  }

  String text() {
    return text;
  }

  /** A text as a value: bare where that is read back as it is, else between single quotes. */
  static String scalar(String value) {
    boolean plain = value.matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._/+-]*( [\\p{L}\\p{N}._/%+-]+)*");
    return plain ? value : "'" + value.replace("'", "''") + "'";
  }

  /** What stands at a path, rows by number from 1; empty if there is no such key or row. */
  Optional<Tree.Node> at(List<String> steps) {
    Optional<Tree.Node> node = Optional.of(root);
    for (String step : steps) {
      node = node.flatMap(n -> below(n, step));
    }
    return node;
  }

  private static Optional<Tree.Node> below(Tree.Node node, String step) {
    if (node instanceof Tree.Fields fields) {
      return fields.find(step).map(Tree.Entry::value);
    }
    boolean row = node instanceof Tree.Rows rows && isRow(rows, step);
    return row
        ? Optional.of(((Tree.Rows) node).items().get(Integer.parseInt(step) - 1))
        : Optional.empty();
  }

  private static boolean isRow(Tree.Rows rows, String step) {
    return step.matches("[1-9][0-9]{0,3}") && Integer.parseInt(step) <= rows.items().size();
  }

  /** The text with a value at a path; sections on the way that are not there are made. */
  YamlText with(List<String> steps, String value) throws NotFollowed {
    Optional<Tree.Node> there = at(steps);
    if (there.isPresent()) {
      return valued(steps, there.get(), value);
    }
    String key = steps.get(steps.size() - 1);
    List<String> above = steps.subList(0, steps.size() - 1);
    Optional<Tree.Node> parent = at(above);
    if (parent.isEmpty() || isBlank(parent.get())) {
      return with(above, "{" + key + ": " + value + "}");
    }
    if (parent.get() instanceof Tree.Fields fields) {
      return added(fields, key + ": " + value);
    }
    throw new NotFollowed();
  }

  private YamlText valued(List<String> steps, Tree.Node there, String value) throws NotFollowed {
    if (isBlank(there)) {
      int colon = colon(entry(steps));
      return spliced(colon + 1, colon + 1, " " + value);
    }
    return spliced(start(there), end(there, isFlow(steps)), value);
  }

  /** The text with the key at a path renamed, and another value behind it. */
  YamlText renamed(List<String> steps, String key, String value) throws NotFollowed {
    Tree.Entry entry = entry(steps);
    return spliced(
        offset(entry.line(), entry.column()),
        end(entry.value(), isFlow(steps)),
        key + ": " + value);
  }

  /** The text without what stands at a path; where nothing stands there, the same text. */
  YamlText without(List<String> steps) throws NotFollowed {
    if (at(steps).isEmpty()) {
      return this;
    }
    List<String> above = steps.subList(0, steps.size() - 1);
    Tree.Node parent = at(above).orElseThrow(NotFollowed::new);
    boolean flow = isFlow(steps);
    int from;
    int to;
    if (parent instanceof Tree.Fields) {
      Tree.Entry entry = entry(steps);
      from = offset(entry.line(), entry.column());
      to = isBlank(entry.value()) ? colon(entry) + 1 : end(entry.value(), flow);
    } else {
      Tree.Node item = at(steps).get();
      from = start(item);
      to = end(item, flow);
    }
    return flow ? withoutInFlow(from, to) : withoutLines(parent, from, to);
  }

  /** The text without some keys of the section at a path. */
  YamlText without(List<String> section, List<String> keys) throws NotFollowed {
    YamlText left = this;
    boolean lines = at(section).filter(n -> !isFlowStart(n)).isPresent() && !isFlow(section);
    StringBuilder cut = new StringBuilder(text);
    for (int i = keys.size() - 1; i >= 0; i--) {
      List<String> steps = new ArrayList<>(section);
      steps.add(keys.get(i));
      if (lines) {
        Tree.Entry entry = entry(steps);
        int from = offset(entry.line(), entry.column());
        int to = isBlank(entry.value()) ? colon(entry) + 1 : end(entry.value(), false);
        int first = lineOf(from);
        int start = lineStarts.get(first);
        if (!text.substring(start, from).isBlank()) {
          throw new NotFollowed();
        }
        cut.delete(start, lineEnd(lineOf(to)));
      } else {
        left = left.without(steps);
      }
    }
    return lines && !keys.isEmpty() ? of(cut.toString()) : left;
  }

  private int lineEnd(int line) {
    return line + 1 < lineStarts.size() ? lineStarts.get(line + 1) : text.length();
  }

  /** Also the comma that parted it from its neighbour. */
  private YamlText withoutInFlow(int from, int to) throws NotFollowed {
    int after = skip(to);
    if (after < text.length() && text.charAt(after) == ',') {
      int next = after + 1;
      while (next < text.length() && BLANKS.indexOf(text.charAt(next)) >= 0) {
        next++;
      }
      return spliced(from, next, "");
    }
    int before = from;
    while (before > 0 && Character.isWhitespace(text.charAt(before - 1))) {
      before--;
    }
    boolean comma = before > 0 && text.charAt(before - 1) == ',';
    return spliced(comma ? before - 1 : from, to, "");
  }

  private YamlText withoutLines(Tree.Node parent, int from, int to) throws NotFollowed {
    int first = lineOf(parent instanceof Tree.Rows ? dash(from) : from);
    int start = lineStarts.get(first);
    String lead = text.substring(start, parent instanceof Tree.Rows ? dash(from) + 1 : from);
    boolean ownLine = parent instanceof Tree.Rows ? lead.strip().equals("-") : lead.isBlank();
    if (!ownLine) {
      throw new NotFollowed();
    }
    int end = lineEnd(lineOf(to));
    boolean onlyRow = parent instanceof Tree.Rows rows && rows.items().size() == 1;
    return onlyRow
        ? spliced(start, end, lead.replace('-', ' ') + " []" + eol())
        : spliced(start, end, "");
  }

  /** The text with one more row at the end of a list, which is made if it is not there. */
  YamlText appended(List<String> steps, String row) throws NotFollowed {
    Optional<Tree.Node> there = at(steps);
    if (there.isEmpty() || isBlank(there.get())) {
      return with(steps, "[" + row + "]");
    }
    if (!(there.get() instanceof Tree.Rows rows)) {
      throw new NotFollowed();
    }
    if (isFlowStart(rows)) {
      return spliceBeforeEnd(rows, rows.items().isEmpty(), row);
    }
    Tree.Node last = rows.items().get(rows.items().size() - 1);
    int dash = dash(start(last));
    String lead = text.substring(lineStarts.get(lineOf(dash)), dash + 1);
    if (!lead.strip().equals("-")) {
      throw new NotFollowed();
    }
    return newLine(end(last, false), lead + " " + row);
  }

  /** The dash of the row that begins at an offset; it may stand in a line above. */
  private int dash(int row) throws NotFollowed {
    int at = row - 1;
    while (at >= 0 && Character.isWhitespace(text.charAt(at))) {
      at--;
    }
    if (at < 0 || text.charAt(at) != '-') {
      throw new NotFollowed();
    }
    return at;
  }

  private YamlText added(Tree.Fields fields, String entry) throws NotFollowed {
    if (fields.entries().isEmpty() || isFlowStart(fields)) {
      return spliceBeforeEnd(fields, fields.entries().isEmpty(), entry);
    }
    Tree.Entry first = fields.entries().get(0);
    Tree.Entry last = fields.entries().get(fields.entries().size() - 1);
    int end = isBlank(last.value()) ? colon(last) + 1 : end(last.value(), false);
    return newLine(end, " ".repeat(first.column() - 1) + entry);
  }

  private YamlText spliceBeforeEnd(Tree.Node flow, boolean empty, String item) throws NotFollowed {
    int close = end(flow, true) - 1;
    int at = close;
    while (at > 0 && Character.isWhitespace(text.charAt(at - 1))) {
      at--;
    }
    return spliced(at, at, (empty ? "" : ", ") + item);
  }

  private YamlText newLine(int after, String line) throws NotFollowed {
    int next = lineOf(after) + 1;
    return next < lineStarts.size()
        ? spliced(lineStarts.get(next), lineStarts.get(next), line + eol())
        : spliced(text.length(), text.length(), eol() + line);
  }

  private String eol() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  private YamlText spliced(int from, int to, String with) throws NotFollowed {
    return of(text.substring(0, from) + with + text.substring(to));
  }

  private Tree.Entry entry(List<String> steps) throws NotFollowed {
    Optional<Tree.Node> parent = at(steps.subList(0, steps.size() - 1));
    if (parent.isPresent() && parent.get() instanceof Tree.Fields fields) {
      return fields.find(steps.get(steps.size() - 1)).orElseThrow(NotFollowed::new);
    }
    throw new NotFollowed();
  }

  private static boolean isBlank(Tree.Node node) {
    return node instanceof Tree.Text t && t.isBlank();
  }

  /** Whether what stands at a path lies between brackets. */
  private boolean isFlow(List<String> steps) {
    for (int i = 0; i < steps.size(); i++) {
      Optional<Tree.Node> above = at(steps.subList(0, i));
      if (above.isPresent() && isFlowStart(above.get())) {
        return true;
      }
    }
    return false;
  }

  private boolean isFlowStart(Tree.Node node) {
    int start = start(node);
    boolean inside = start < text.length();
    return inside
        && !(node instanceof Tree.Text)
        && (text.charAt(start) == '{' || text.charAt(start) == '[');
  }

  private int start(Tree.Node node) {
    return offset(node.line(), node.column());
  }

  private int offset(int line, int column) {
    int start = lineStarts.get(Math.min(line, lineStarts.size()) - 1);
    int end = line < lineStarts.size() ? lineStarts.get(line) : text.length();
    int characters = text.codePointCount(start, end);
    return text.offsetByCodePoints(start, Math.min(column - 1, characters));
  }

  private int lineOf(int offset) {
    int line = 0;
    while (line + 1 < lineStarts.size() && lineStarts.get(line + 1) <= offset) {
      line++;
    }
    return line;
  }

  private int colon(Tree.Entry entry) throws NotFollowed {
    int at = offset(entry.line(), entry.column());
    char first = text.charAt(at);
    at = first == '"' || first == '\'' ? quoteEnd(at) : at + entry.key().length();
    at = skip(at);
    if (at >= text.length() || text.charAt(at) != ':') {
      throw new NotFollowed();
    }
    return at;
  }

  private int skip(int from) {
    int at = from;
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** Where a value ends, after its last character. */
  private int end(Tree.Node node, boolean inFlow) throws NotFollowed {
    int start = start(node);
    if (isFlowStart(node)) {
      return bracketEnd(start);
    }
    if (node instanceof Tree.Fields fields) {
      Tree.Entry last = fields.entries().get(fields.entries().size() - 1);
      return isBlank(last.value()) ? colon(last) + 1 : end(last.value(), false);
    }
    if (node instanceof Tree.Rows rows) {
      Tree.Node last = rows.items().get(rows.items().size() - 1);
      return isBlank(last) ? start(last) : end(last, false);
    }
    Tree.Text scalar = (Tree.Text) node;
    char first = text.charAt(start);
    if (first == '"' || first == '\'') {
      return quoteEnd(start);
    }
    if (first == '|' || first == '>') {
      throw new NotFollowed();
    }
    return plainEnd(start, scalar.text(), inFlow);
  }

  /** A plain text ends in its line; one that goes on in the next is refused. */
  private int plainEnd(int start, String value, boolean inFlow) throws NotFollowed {
    int end = start + value.length();
    if (!text.startsWith(value, start)) {
      throw new NotFollowed();
    }
    int after = end;
    while (after < text.length() && BLANKS.indexOf(text.charAt(after)) >= 0) {
      after++;
    }
    boolean ends =
        after == text.length()
            || "\r\n".indexOf(text.charAt(after)) >= 0
            || (text.charAt(after) == '#' && after > end)
            || (inFlow && ",]}".indexOf(text.charAt(after)) >= 0);
    if (!ends) {
      throw new NotFollowed();
    }
    return end;
  }

  private int quoteEnd(int start) throws NotFollowed {
    char quote = text.charAt(start);
    for (int i = start + 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote == '"' && c == '\\') {
        i++;
      } else if (c == quote && quote == '\'' && text.startsWith("''", i)) {
        i++;
      } else if (c == quote) {
        return i + 1;
      }
    }
    throw new NotFollowed();
  }

  private int bracketEnd(int start) throws NotFollowed {
    int depth = 0;
    int i = start;
    while (i < text.length()) {
      char c = text.charAt(i);
      boolean first = i == 0 || "{[, \t\r\n:".indexOf(text.charAt(i - 1)) >= 0;
      if ((c == '"' || c == '\'') && first) {
        i = quoteEnd(i);
        continue;
      }
      if (c == '#' && Character.isWhitespace(text.charAt(i - 1))) {
        i = text.indexOf('\n', i) < 0 ? text.length() : text.indexOf('\n', i);
        continue;
      }
      depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
      i++;
      if (depth == 0) {
        return i;
      }
    }
    throw new NotFollowed();
  }
}

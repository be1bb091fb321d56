package outshop.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/** Builds a {@link Tree} from the parser's tokens. */
final class TreeReader {
  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<Long> refused = new HashSet<>();
  private Optional<Source> source = Optional.empty();
  private boolean tooDeep;

  TreeReader(String file) {
    this.file = file;
  }

  Tree.Read read(byte[] bytes) {
    source = Source.decode(file, bytes);
    if (source.isEmpty()) {
      return new Tree.Read(Optional.empty(), List.of(Source.notUtf8(file, bytes)));
    }
    problems.addAll(text().unfit());
    Optional<Tree.Node> root = problems.isEmpty() ? parsed() : Optional.empty();
    problems.sort(
        Comparator.comparingInt((Problem p) -> p.place().line())
            .thenComparingInt(p -> p.place().column()));
    return new Tree.Read(root, problems);
  }

  private Source text() {
    return source.orElseThrow();
  }

  private Optional<Tree.Node> parsed() {
    YAMLFactory factory = YAMLFactory.builder().build();
    try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text().text())) {
      JsonToken first = parser.nextToken();
      if (first == null) {
        return Optional.of(new Tree.Fields(List.of(), 1, 1));
      }
      Tree.Node root = node(parser, first, 0);
      if (parser.nextToken() != null) {
        refuse(parser, "", "a second document begins", "one document, without a line \"---\"");
      }
      return tooDeep ? Optional.empty() : Optional.of(root);
    } catch (JacksonException e) {
      if (!tooDeep) {
        problems.add(new SyntaxFault(file, text()).problem(e));
      }
      return Optional.empty();
    }
  }

  private Tree.Node node(JsonParser parser, JsonToken token, int depth) {
    refuseYamlTricks(parser);
    TokenStreamLocation at = parser.currentTokenLocation();
    if (!token.isStructStart()) {
      int c = text().character(at.getCharOffset());
      boolean quoted = c == '"' || c == '\'' || c == '|' || c == '>';
      return new Tree.Text(parser.getString(), quoted, at.getLineNr(), at.getColumnNr());
    }
    if (depth == Tree.DEEPEST) {
      return tooDeep(parser, at);
    }
    return token == JsonToken.START_OBJECT ? fields(parser, at, depth) : rows(parser, at, depth);
  }

  private Tree.Node tooDeep(JsonParser parser, TokenStreamLocation at) {
    if (!tooDeep) {
      refuse(
          parser,
          "",
          "lists and sections are nested too deep",
          "no more than " + Tree.DEEPEST + " levels");
    }
    tooDeep = true;
    parser.skipChildren();
    return new Tree.Text("", false, at.getLineNr(), at.getColumnNr());
  }

  private Tree.Fields fields(JsonParser parser, TokenStreamLocation at, int depth) {
    List<Tree.Entry> entries = new ArrayList<>();
    Map<String, Integer> lines = new HashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      refuseYamlTricks(parser);
      String key = parser.currentName();
      TokenStreamLocation place = parser.currentTokenLocation();
      Integer firstLine = lines.putIfAbsent(key, place.getLineNr());
      boolean merge = key.equals("<<");
      if (merge) {
        refuse(parser, key, "a merge key is not read here", "the keys themselves, written out");
      } else if (firstLine != null) {
        refuse(
            parser,
            key,
            "the key stands twice",
            "one of the two; the other is on line " + firstLine);
      }
      JsonToken token = parser.nextToken();
      boolean alias = ((YAMLParser) parser).isCurrentAlias();
      Tree.Node value = node(parser, token, depth + 1);
      if (!merge && firstLine == null && !alias) {
        entries.add(new Tree.Entry(key, place.getLineNr(), place.getColumnNr(), value));
      }
    }
    return new Tree.Fields(entries, at.getLineNr(), at.getColumnNr());
  }

  private Tree.Rows rows(JsonParser parser, TokenStreamLocation at, int depth) {
    List<Tree.Node> items = new ArrayList<>();
    for (JsonToken token = parser.nextToken();
        token != JsonToken.END_ARRAY;
        token = parser.nextToken()) {
      boolean alias = ((YAMLParser) parser).isCurrentAlias();
      Tree.Node item = node(parser, token, depth + 1);
      if (!alias) {
        items.add(item);
      }
    }
    return new Tree.Rows(items, at.getLineNr(), at.getColumnNr());
  }

  /** Anchors, aliases and tags: what stands at the token's own place begins with their sign. */
  private void refuseYamlTricks(JsonParser parser) {
    int sign = text().character(parser.currentTokenLocation().getCharOffset());
    if (((YAMLParser) parser).isCurrentAlias()) {
      refuseOnce(parser, "an alias (*) is not read here", "the value, written out");
    } else if (sign == '&') {
      refuseOnce(parser, "an anchor (&) is not read here", "the value alone");
    } else if (sign == '!') {
      refuseOnce(parser, "a tag (!) is not read here", "the value alone");
    }
  }

  private void refuseOnce(JsonParser parser, String what, String expected) {
    TokenStreamLocation at = parser.currentTokenLocation();
    if (refused.add(at.getCharOffset())) {
      String line = text().line(at.getLineNr()).strip();
      refuse(parser, line, what, expected);
    }
  }

  private void refuse(JsonParser parser, String found, String what, String expected) {
    TokenStreamLocation at = parser.currentTokenLocation();
    Place place = new Place(file, at.getLineNr(), at.getColumnNr(), "");
    problems.add(Problem.error(place, found, what, expected));
  }
}

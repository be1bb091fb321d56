package outshop.render.json;

import java.io.Writer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** How the JSON is laid out: two spaces a level, the same line end on every system. */
final class Layout {
  private Layout() {}

  static JsonGenerator generator(Writer out) {
    JsonFactory factory =
        JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();
    return factory.createGenerator(new Indented(), out);
  }

  /**
   * Writes as escapes what JSON allows to stand as it is but a person would not see, or would see
   * turned round. Such characters can only stand inside texts, so the JSON says the same.
   */
  static String visible(String json) {
    StringBuilder escaped = new StringBuilder();
    int done = 0;
    for (int i = 0; i < json.length(); ) {
      int c = json.codePointAt(i);
      int next = i + Character.charCount(c);
      if (c != '\n' && isHidden(c)) {
        escaped.append(json, done, i);
        for (char half : Character.toChars(c)) {
          escaped.append("\\u%04x".formatted((int) half));
        }
        done = next;
      }
      i = next;
    }
    return done == 0 ? json : escaped.append(json, done, json.length()).toString();
  }

  private static boolean isHidden(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  private static final class Indented extends ObjectWriteContext.Base {
    private final DefaultPrettyPrinter printer = new DefaultPrettyPrinter();

    Indented() {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      printer.indentObjectsWith(indenter);
      printer.indentArraysWith(indenter);
    }

    @Override
    public PrettyPrinter getPrettyPrinter() {
      return printer;
    }

    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }
  }
}

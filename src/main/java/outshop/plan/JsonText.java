package outshop.plan;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** Writes maps, lists, texts, numbers and truth values as JSON, two spaces a level. */
final class JsonText {
  private final StringBuilder out = new StringBuilder();

  private JsonText() {}

  /** The JSON text of a value, with a line feed at its end. */
  static String of(Object value) {
    JsonText text = new JsonText();
    text.value(value, 0);
    return text.out.append('\n').toString();
  }

  private void value(Object value, int depth) {
    if (value instanceof Map<?, ?> map) {
      list('{', map.entrySet().iterator(), '}', depth);
    } else if (value instanceof List<?> list) {
      list('[', list.iterator(), ']', depth);
    } else if (value instanceof String text) {
      text(text);
    } else if (value instanceof Boolean || value instanceof Integer) {
      out.append(value);
    } else {
      throw new IllegalArgumentException("no JSON for " + value);
    }
  }

  private void list(char open, Iterator<?> items, char close, int depth) {
    out.append(open);
    boolean any = items.hasNext();
    while (items.hasNext()) {
      line(depth + 1);
      Object item = items.next();
      if (item instanceof Map.Entry<?, ?> entry && open == '{') {
        text((String) entry.getKey());
        out.append(": ");
        value(entry.getValue(), depth + 1);
      } else {
        value(item, depth + 1);
      }
      out.append(items.hasNext() ? "," : "");
    }
    if (any) {
      line(depth);
    }
    out.append(close);
  }

  private void line(int depth) {
    out.append('\n').append("  ".repeat(depth));
  }

  private void text(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ') {
        out.append("\\u%04x".formatted((int) c));
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }
}

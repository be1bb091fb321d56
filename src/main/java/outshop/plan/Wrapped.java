package outshop.plan;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into lines at its spaces. */
final class Wrapped {
  private Wrapped() {}

  /** Lines of at most {@code width} characters; a longer word is broken. */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > width) {
      int space = rest.lastIndexOf(' ', width);
      int cut = space > 0 ? space : width;
      lines.add(rest.substring(0, cut).stripTrailing());
      rest = rest.substring(space > 0 ? cut + 1 : cut);
    }
    lines.add(rest);
    return lines;
  }
}

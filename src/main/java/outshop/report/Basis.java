package outshop.report;

import java.util.ArrayList;
import java.util.List;

/** Says in words where a bound comes from. */
public final class Basis {
  private Basis() {}

  /**
   * The words for a rule's basis: {@code part, hb} becomes {@code the part's own data; handbook or
   * physics}. A code not known here stays as it is.
   */
  public static String words(String basis) {
    List<String> words = new ArrayList<>();
    for (String code : basis.split(",")) {
      words.add(
          switch (code.trim()) {
            case "std" -> "published standard";
            case "hb" -> "handbook or physics";
            case "part" -> "the part's own data";
            case "cp" -> "common practice";
            default -> code.trim();
          });
    }
    return String.join("; ", words);
  }

  /**
   * Basis and source in one sentence; a source that says itself of what kind it is stands alone.
   */
  public static String words(String basis, String source) {
    String words = words(basis);
    return source.startsWith(words) ? source : words + ": " + source;
  }
}

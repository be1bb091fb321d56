package outshop.report;

import java.util.ArrayList;
import java.util.List;

/** Says in words where a bound comes from. */
public final class Basis {
  private Basis() {}

  private static final String PRACTICE = "common practice";

  /**
   * Where a bound comes from, in one sentence: the words for its basis, then its source. A source
   * that says itself that it is common practice needs no word for that in front.
   */
  public static String sentence(String basis, String source) {
    List<String> words = new ArrayList<>(List.of(words(basis).split("; ")));
    if (source.contains(PRACTICE)) {
      words.remove(PRACTICE);
    }
    if (words.isEmpty()) {
      return source;
    }
    return String.join("; ", words) + (source.startsWith(PRACTICE) ? "; " : ": ") + source;
  }

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
            case "cp" -> PRACTICE;
            default -> code.trim();
          });
    }
    return String.join("; ", words);
  }
}

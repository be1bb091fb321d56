package outshop.outside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What stands behind one rule outside the program.
 *
 * @param reading how far its source was read; empty if the source does not say
 * @param own checks that run the rule itself or compare its bound
 * @param figures other checks of figures that it compares or names, or of what these are made of
 * @param solved whether it reads the solved circuit, and the checks of that bear on it
 */
public record Proof(
    Optional<Reading> reading, List<OutsideCheck> own, List<OutsideCheck> figures, boolean solved) {

  /** Of a rule on which no check bears. */
  public Proof(String source) {
    this(Reading.of(source), List.of(), List.of(), false);
  }

  /** Those of the rule itself first; without those of the solved circuit. */
  public List<OutsideCheck> checks() {
    List<OutsideCheck> checks = new ArrayList<>(own);
    checks.addAll(figures);
    return checks;
  }

  /** What is lacking, in words; empty if the source says how far it was read, or a check bears. */
  public Optional<String> gap() {
    return reading.isPresent() || !checks().isEmpty() || solved
        ? Optional.empty()
        : Optional.of(
            "no proof outside: its source must say whether it was read, worked out, second-hand,"
                + " from memory, or is \"common practice, no source\", the part's data sheet or the"
                + " circuit");
  }

  /** Such as {@code second-hand; 12 checks, 4 of the rule itself; solved circuits}. */
  public String words() {
    List<String> words = new ArrayList<>();
    words.add(reading.map(Reading::words).orElse("source does not say"));
    if (!checks().isEmpty()) {
      words.add(count(checks().size()) + ofItself(own.size(), checks().size()));
    }
    if (solved) {
      words.add("solved circuits");
    }
    return String.join("; ", words);
  }

  private static String count(int checks) {
    return checks == 1 ? "1 check" : checks + " checks";
  }

  private static String ofItself(int own, int all) {
    return own == 0 ? "" : (own == all ? "" : ", " + own) + " of the rule itself";
  }

  /**
   * How many of which area, such as {@code fuse 5 of the rule itself; wire 22; solved circuits}.
   */
  String byArea() {
    Map<String, Integer> all = counts(checks());
    Map<String, Integer> ofRule = counts(own);
    List<String> areas = new ArrayList<>();
    all.forEach((area, n) -> areas.add(area + " " + n + ofItself(ofRule.getOrDefault(area, 0), n)));
    List<String> words = new ArrayList<>();
    if (!areas.isEmpty()) {
      words.add(String.join("; ", areas));
    }
    if (solved) {
      words.add("solved circuits");
    }
    return words.isEmpty() ? "none" : String.join("; ", words);
  }

  private static Map<String, Integer> counts(List<OutsideCheck> checks) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    checks.forEach(check -> counts.merge(check.area(), 1, Integer::sum));
    return counts;
  }
}

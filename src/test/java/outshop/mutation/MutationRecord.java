package outshop.mutation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import outshop.rules.RuleText;

/** What the last run put on record of each rule, as its page has it. */
public final class MutationRecord {
  private static final String RUN_AGAIN = "; run rule-mutation (see DEVELOPERS.md)";

  private final Map<String, Score> scores;

  private MutationRecord(Map<String, Score> scores) {
    this.scores = scores;
  }

  /**
   * The record of one rule.
   *
   * @param score empty if there is none
   * @param gaps what is wrong with it, in words
   */
  public record Entry(Optional<Score> score, List<String> gaps) {}

  public static MutationRecord load() {
    try {
      return of(Files.readAllLines(RuleMutation.PAGE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The table by rule of such a page. */
  static MutationRecord of(List<String> page) {
    Map<String, Score> scores = new TreeMap<>();
    int heading = page.indexOf(MutationPage.BY_RULE);
    List<String> below = heading < 0 ? List.of() : page.subList(heading + 1, page.size());
    for (String line : below) {
      if (line.startsWith("#")) {
        break;
      }
      List<String> cells = List.of(line.split("\\|", -1));
      if (cells.size() > 2 && cells.get(1).contains("/")) {
        scores.put(cells.get(1).strip(), Score.of(cells.subList(2, cells.size())));
      }
    }
    return new MutationRecord(scores);
  }

  /**
   * The record of a rule. It has a gap where there is none, where mutants survive, or where it is
   * of another number of mutants than are made of the rule now.
   */
  public Entry of(RuleText rule) {
    Optional<Score> score = Optional.ofNullable(scores.get(rule.name()));
    return new Entry(
        score,
        score.map(s -> gaps(rule, s)).orElse(List.of("no record of its mutants" + RUN_AGAIN)));
  }

  private static List<String> gaps(RuleText rule, Score score) {
    List<String> gaps = new ArrayList<>();
    if (score.survive() > 0) {
      gaps.add("mutants that no example notices: " + score.survive());
    }
    int now = MutationRun.mutants(rule).size();
    if (score.made() != now) {
      gaps.add("a record of " + score.made() + " mutants where there are " + now + RUN_AGAIN);
    }
    return gaps;
  }
}

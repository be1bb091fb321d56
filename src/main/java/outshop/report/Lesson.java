package outshop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import outshop.catalogue.Kind;
import outshop.findings.Finding;
import outshop.findings.Silence;
import outshop.plan.Plan;
import outshop.ranking.Ranking;
import outshop.units.Amount;

/**
 * What one rule makes of one plan, whatever the outcome: a violation, a warning, advice, what is
 * fine, what cannot be told, and why it says nothing where it says nothing.
 *
 * @param planTitle the plan's own title
 * @param planFile as the user named it
 * @param answers worst first, what is fine last, tightest first
 * @param silences where the rule had nothing to compare
 * @param reads the kinds of part and the other things the rule's answers depend on; empty where
 *     that is not recorded
 * @param lacking those of them that the plan does not have
 * @param caution what to mind whatever the answer
 */
public record Lesson(
    String planTitle,
    String planFile,
    List<Answer> answers,
    List<Silence> silences,
    List<String> reads,
    List<String> lacking,
    String caution) {

  public Lesson {
    answers = List.copyOf(answers);
    silences = List.copyOf(silences);
    reads = List.copyOf(reads);
    lacking = List.copyOf(lacking);
  }

  /**
   * One answer of the rule.
   *
   * @param bounds every bound of the rule as it stands against this answer's limit, in words; none
   *     where nothing was compared
   * @param accepted the owner's reason, where the owner accepted the finding and it counts no more
   */
  public record Answer(Finding finding, List<String> bounds, Optional<String> accepted) {
    public Answer {
      bounds = List.copyOf(bounds);
    }
  }

  /**
   * What a rule made of a plan.
   *
   * @param rule family and name
   * @param bounds gives the rule's bounds as they stand against a limit, in words
   */
  public static Lesson of(
      String rule,
      List<String> reads,
      Function<Amount.Known, List<String>> bounds,
      Plan plan,
      Report report,
      List<Silence> silences) {
    List<Finding> counted =
        Stream.of(report.findings(), report.cannotTell(), report.fine())
            .flatMap(List::stream)
            .filter(f -> f.rule().equals(rule))
            .toList();
    List<Answer> answers = new ArrayList<>();
    for (Finding finding : Ranking.ranked(counted)) {
      answers.add(answer(finding, bounds, Optional.empty()));
    }
    for (Report.Accepted accepted : report.accepted()) {
      if (accepted.finding().rule().equals(rule)) {
        answers.add(answer(accepted.finding(), bounds, Optional.of(accepted.reason())));
      }
    }
    return new Lesson(
        report.title(),
        report.planFile(),
        answers,
        silences.stream().filter(s -> s.rule().equals(rule)).toList(),
        reads,
        reads.stream().filter(word -> lacks(plan, word)).toList(),
        Cautions.GENERAL);
  }

  private static Answer answer(
      Finding finding, Function<Amount.Known, List<String>> bounds, Optional<String> accepted) {
    return new Answer(finding, finding.limit().map(bounds).orElse(List.of()), accepted);
  }

  /** Where the rule answered or looked, by name, each once, in order. */
  public List<String> places() {
    TreeSet<String> names = new TreeSet<>();
    answers.forEach(a -> names.add(a.finding().at().name()));
    silences.forEach(s -> names.add(s.at().name()));
    return List.copyOf(names);
  }

  /** Only what belongs to one place. */
  public Lesson at(String name) {
    return new Lesson(
        planTitle,
        planFile,
        answers.stream().filter(a -> a.finding().at().name().equals(name)).toList(),
        silences.stream().filter(s -> s.at().name().equals(name)).toList(),
        reads,
        lacking,
        caution);
  }

  /** Whether a plan has no such thing. Only of what can be counted; a setting is never lacking. */
  private static boolean lacks(Plan plan, String word) {
    if (word.equals(Kind.SMOKE_HEATER.word())) {
      return plan.parts(Kind.SMOKE_HEATER).isEmpty() && none(plan, "locomotive.smoke");
    }
    Optional<Kind> kind = Kind.of(word);
    if (kind.isPresent()) {
      Kind one = kind.get();
      return plan.parts(one).isEmpty() && plan.materials().stream().noneMatch(m -> m.is(one));
    }
    return switch (word) {
      case "motor" -> none(plan, "locomotive.motors");
      case "lamp" -> none(plan, "locomotive.lamps");
      case "old speaker" -> none(plan, "locomotive.old_speaker");
      default -> false;
    };
  }

  private static boolean none(Plan plan, String path) {
    return plan.names(path).isEmpty();
  }
}

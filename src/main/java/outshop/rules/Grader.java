package outshop.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.kie.api.definition.rule.Rule;
import outshop.circuit.At;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.findings.Silence;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Want;

/**
 * Grades what the rules hand in.
 *
 * <p>A comparison is graded three times: at its values, at the kindest end of the ranges that
 * assumptions leave open, and at the worst end. It is a violation only if it is one at the kindest
 * end as well, or if the rule protects people; else it is softened to a warning that says so. It is
 * fine only if it is fine at the worst end as well; else it cannot be told, and the assumed values
 * are what is wanted. So a value left blank can turn neither a fault into "fine" nor a guess into a
 * violation.
 */
final class Grader implements Desk {
  private final RuleBook book;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Silence> silences = new ArrayList<>();

  Grader(RuleBook book) {
    this.book = book;
  }

  Judged judged() {
    return new Judged(findings, silences);
  }

  @Override
  public Judgement judge(Rule rule, At at) {
    return new Open(book.text(rule.getName()), at);
  }

  /** One judgement on its way to a finding. */
  private final class Open implements Judgement {
    private final RuleText rule;
    private final At at;
    private final Phrases phrases;

    Open(RuleText rule, At at) {
      this.rule = rule;
      this.at = at;
      this.phrases = new Phrases(rule, at);
    }

    @Override
    public Judgement with(String name, Amount amount) {
      phrases.add(name, amount);
      return this;
    }

    @Override
    public Judgement with(String name, String word) {
      phrases.add(name, word);
      return this;
    }

    @Override
    public Judgement with(String name, Said said) {
      phrases.add(name, said);
      return this;
    }

    @Override
    public void atMost(Amount demand, Amount limit) {
      compare(demand, limit, true);
    }

    @Override
    public void atLeast(Amount demand, Amount limit) {
      compare(demand, limit, false);
    }

    private void compare(Amount demand, Amount limit, boolean over) {
      Comparison compared = Comparison.of(rule, demand, limit, over);
      switch (compared.state()) {
        case SILENT -> silences.add(new Silence(rule.name(), at, compared.absent()));
        case MISSING -> cannotTell(List.copyOf(compared.wants()));
        case OPEN, JUDGED -> grade(compared, demand.get(), limit.get(), over);
      }
    }

    private void grade(Comparison compared, Amount.Known demand, Amount.Known limit, boolean over) {
      Bound here = compared.here();
      phrases.compared(demand, limit);
      if (compared.state() == Comparison.State.OPEN) {
        cannotTell(wantsOf(demand, limit));
        return;
      }
      Outcome outcome = compared.outcome();
      String sentence = outcome == Outcome.FINE ? rule.fine() : rule.headline(here);
      Finding.Mark mark = mark(here, limit, over);
      add(
          outcome,
          here.consequence(),
          sentence,
          Optional.of(demand),
          Optional.of(limit),
          Optional.of(mark),
          past(demand, mark),
          List.of(),
          compared.softened());
    }

    /** The bound that was passed, or else the first one ahead. */
    private Finding.Mark mark(Bound passed, Amount.Known limit, boolean over) {
      Bound bound =
          passed.outcome() == Outcome.FINE ? rule.bounds().get(rule.bounds().size() - 1) : passed;
      return new Finding.Mark(limit.value() * bound.factor(), over);
    }

    /** How far past the bound, or (below zero) how much room is left to it, as a share of it. */
    private static double past(Amount.Known demand, Finding.Mark mark) {
      if (mark.value() == 0 || Exact.same(demand.value(), mark.value())) {
        return 0;
      }
      double ratio = demand.value() / mark.value();
      return mark.upper() ? ratio - 1 : 1 - ratio;
    }

    @Override
    public void expect(Said said, String word) {
      if (said instanceof Said.Unsaid unsaid) {
        cannotTell(List.of(unsaid.want()));
      } else if (said.is(word)) {
        fine();
      } else {
        phrases.add("said", said.or(""));
        found("otherwise");
      }
    }

    @Override
    public void found(String name) {
      Situation situation = rule.situations().get(name);
      if (situation == null) {
        throw new RuleBookException(rule.name(), "its page knows no situation \"" + name + "\"");
      }
      add(
          situation.outcome(),
          situation.consequence(),
          situation.headline(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          0,
          List.of(),
          false);
    }

    @Override
    public void settle(String situation, List<Want> wants) {
      switch (situation) {
        case "fine" -> fine();
        case "unknown" -> cannotTell(wants);
        default -> found(situation);
      }
    }

    @Override
    public void fine() {
      add(
          Outcome.FINE,
          Consequence.NUISANCE,
          rule.fine(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          0,
          List.of(),
          false);
    }

    @Override
    public void cannotTell(List<Want> wants) {
      if (wants.isEmpty()) {
        throw new RuleBookException(rule.name(), "cannot tell, but names nothing that is missing");
      }
      add(
          Outcome.CANNOT_TELL,
          worstConsequence(),
          "",
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          0,
          wants,
          false);
    }

    /** Of what cannot be told, the worst that might be hidden. */
    private Consequence worstConsequence() {
      Consequence worst = Consequence.NUISANCE;
      for (Bound bound : rule.bounds()) {
        worst = worst.compareTo(bound.consequence()) <= 0 ? worst : bound.consequence();
      }
      for (Situation situation : rule.situations().values()) {
        worst = worst.compareTo(situation.consequence()) <= 0 ? worst : situation.consequence();
      }
      return worst;
    }

    private void add(
        Outcome outcome,
        Consequence consequence,
        String sentence,
        Optional<Amount.Known> demand,
        Optional<Amount.Known> limit,
        Optional<Finding.Mark> mark,
        double past,
        List<Want> wants,
        boolean softened) {
      if (outcome == Outcome.CANNOT_TELL) {
        phrases.cannotTell(wants);
      } else {
        phrases.say(sentence, outcome != Outcome.FINE);
      }
      findings.add(
          new Finding(
              rule.name(),
              outcome,
              consequence,
              at,
              phrases,
              demand,
              limit,
              mark,
              past,
              rule.why(),
              rule.basis(),
              rule.source(),
              wants,
              phrases.sureness(),
              softened));
    }
  }

  private static List<Want> wantsOf(Amount.Known... amounts) {
    TreeSet<Want> wants = new TreeSet<>();
    for (Amount.Known amount : amounts) {
      for (Amount.Known leaf : amount.assumptions()) {
        int colon = leaf.label().indexOf(": ");
        String where = colon < 0 ? leaf.label() : leaf.label().substring(0, colon);
        String what = colon < 0 ? "value" : leaf.label().substring(colon + 2);
        wants.add(
            new Want(
                where,
                what,
                "state it: between "
                    + AmountText.text(leaf.low(), leaf.unit())
                    + " and "
                    + AmountText.text(leaf.high(), leaf.unit())
                    + " is usual, and that decides here"));
      }
    }
    return List.copyOf(wants);
  }
}

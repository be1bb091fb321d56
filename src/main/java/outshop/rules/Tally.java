package outshop.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.kie.api.definition.rule.Rule;
import outshop.circuit.At;
import outshop.findings.Outcome;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Want;

/** A desk that keeps how each rule ended and no text. It judges by the policy of the grader. */
final class Tally implements Desk {
  private final RuleBook book;
  private final List<Verdict> verdicts = new ArrayList<>();

  Tally(RuleBook book) {
    this.book = book;
  }

  List<Verdict> verdicts() {
    return verdicts;
  }

  @Override
  public Judgement judge(Rule rule, At at) {
    return new Open(book.text(rule.getName()), at);
  }

  private final class Open implements Judgement {
    private final RuleText rule;
    private final At at;

    Open(RuleText rule, At at) {
      this.rule = rule;
      this.at = at;
    }

    @Override
    public Judgement with(String name, Amount amount) {
      return this;
    }

    @Override
    public Judgement with(String name, String word) {
      return this;
    }

    @Override
    public Judgement with(String name, Said said) {
      return this;
    }

    @Override
    public void atMost(Amount demand, Amount limit) {
      compare(Comparison.of(rule, demand, limit, true));
    }

    @Override
    public void atLeast(Amount demand, Amount limit) {
      compare(Comparison.of(rule, demand, limit, false));
    }

    private void compare(Comparison compared) {
      if (compared.state() != Comparison.State.SILENT) {
        verdicts.add(
            new Verdict(
                rule.name(),
                at,
                compared.outcome(),
                compared.kindest().outcome(),
                compared.worst().outcome(),
                true,
                compared.wants()));
      }
    }

    @Override
    public void expect(Said said, String word) {
      if (said instanceof Said.Unsaid unsaid) {
        cannotTell(List.of(unsaid.want()));
      } else if (said.is(word)) {
        fine();
      } else {
        found("otherwise");
      }
    }

    @Override
    public void found(String name) {
      Map<String, Situation> situations = rule.situations();
      if (!situations.containsKey(name)) {
        throw new RuleBookException(rule.name(), "its page knows no situation \"" + name + "\"");
      }
      plain(situations.get(name).outcome(), List.of());
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
      plain(Outcome.FINE, List.of());
    }

    @Override
    public void cannotTell(List<Want> wants) {
      plain(Outcome.CANNOT_TELL, wants);
    }

    private void plain(Outcome outcome, List<Want> wants) {
      verdicts.add(
          new Verdict(rule.name(), at, outcome, outcome, outcome, false, new HashSet<>(wants)));
    }
  }
}

package outshop.bench;

import java.util.List;
import org.kie.api.definition.rule.Rule;
import outshop.circuit.At;
import outshop.rules.Desk;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Want;

/** A desk that counts what rules hand in and throws it away: what is left is the engine itself. */
final class Deaf implements Desk, Desk.Judgement {
  private int handedIn;

  int handedIn() {
    return handedIn;
  }

  @Override
  public Judgement judge(Rule rule, At at) {
    handedIn++;
    return this;
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
  public void atMost(Amount demand, Amount limit) {}

  @Override
  public void atLeast(Amount demand, Amount limit) {}

  @Override
  public void expect(Said said, String word) {}

  @Override
  public void found(String situation) {}

  @Override
  public void settle(String situation, List<Want> wants) {}

  @Override
  public void fine() {}

  @Override
  public void cannotTell(List<Want> wants) {}
}

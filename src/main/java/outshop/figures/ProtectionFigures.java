package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;

/**
 * What protects against fire and runaway: fuses, cut-offs, protection circuits, the switch, and
 * that plus never meets minus.
 */
final class ProtectionFigures {
  private ProtectionFigures() {}

  static List<Object> of(Bench bench) {
    List<InState> states = InState.all(bench.circuit());
    List<Object> facts = new ArrayList<>();
    facts.addAll(PackFusing.all(bench, states));
    facts.addAll(new FuseFigures(bench, states).facts());
    for (Fitted pack : bench.plan().parts(Kind.PACK)) {
      facts.add(PackBuild.of(bench, pack));
      DischargeGuard.of(bench, pack).ifPresent(facts::add);
    }
    bench.pack().ifPresent(pack -> facts.addAll(CutoffCells.all(bench, pack)));
    for (Fitted receiver : bench.plan().parts(Kind.RECEIVER)) {
      facts.add(LinkLoss.of(receiver));
    }
    SwitchedOff.of(bench).ifPresent(facts::add);
    facts.addAll(PlusToMinus.all(bench, states));
    return facts;
  }
}

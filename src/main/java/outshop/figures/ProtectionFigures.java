package outshop.figures;

import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;

/**
 * What protects against fire and runaway: fuses, cut-offs, protection circuits, the switch, and
 * that plus never meets minus.
 */
final class ProtectionFigures {
  static final Pieces<ProtectionFigures> PIECES =
      new Pieces<>(
          ProtectionFigures::new,
          List.of(
              figures -> PackFusing.all(figures.bench, figures.states),
              figures -> figures.fuses().places(),
              figures -> figures.fuses().loads(),
              figures -> figures.fuses().faults(),
              figures -> figures.fuses().builds(),
              ProtectionFigures::builds,
              ProtectionFigures::guards,
              figures ->
                  figures
                      .bench
                      .pack()
                      .map(p -> CutoffCells.all(figures.bench, p))
                      .orElse(List.of()),
              ProtectionFigures::linkLosses,
              figures -> SwitchedOff.of(figures.bench).stream().toList(),
              figures -> PlusToMinus.all(figures.bench, figures.states)));

  private final Bench bench;
  private final List<InState> states;
  private Optional<FuseFigures> fuses = Optional.empty();

  private ProtectionFigures(Bench bench) {
    this.bench = bench;
    this.states = InState.all(bench.circuit());
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private FuseFigures fuses() {
    if (fuses.isEmpty()) {
      fuses = Optional.of(new FuseFigures(bench, states));
    }
    return fuses.get();
  }

  private List<PackBuild> builds() {
    return bench.plan().parts(Kind.PACK).stream().map(p -> PackBuild.of(bench, p)).toList();
  }

  private List<DischargeGuard> guards() {
    return bench.plan().parts(Kind.PACK).stream()
        .flatMap(p -> DischargeGuard.of(bench, p).stream())
        .toList();
  }

  private List<LinkLoss> linkLosses() {
    return bench.plan().parts(Kind.RECEIVER).stream().map(LinkLoss::of).toList();
  }
}

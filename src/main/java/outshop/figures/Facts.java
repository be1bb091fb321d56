package outshop.figures;

import java.util.ArrayList;
import java.util.List;

/** Every fact of one plan, family by family, in a fixed order. */
public final class Facts {
  private Facts() {}

  public static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    facts.addAll(bench.plan().parts());
    facts.addAll(VoltageFigures.of(bench));
    facts.addAll(CurrentFigures.of(bench));
    facts.addAll(ProtectionFigures.of(bench));
    facts.addAll(ChargingFigures.of(bench));
    facts.addAll(SoundFigures.of(bench));
    facts.addAll(LightingFigures.of(bench));
    facts.addAll(MotorFigures.of(bench));
    facts.addAll(FitFigures.of(bench));
    facts.addAll(EnduranceFigures.of(bench));
    facts.addAll(ControlFigures.of(bench));
    facts.addAll(RailFigures.of(bench));
    facts.addAll(WiringFigures.of(bench));
    facts.addAll(CompletenessFigures.of(bench));
    facts.addAll(DataFigures.of(bench));
    return facts;
  }
}

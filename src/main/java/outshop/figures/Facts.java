package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Every fact of one plan, family by family, in a fixed order. */
public final class Facts {
  private static final List<Function<Bench, List<?>>> FAMILIES =
      List.of(
          bench -> List.copyOf(bench.plan().parts()),
          VoltageFigures::of,
          CurrentFigures::of,
          ProtectionFigures::of,
          ChargingFigures::of,
          SoundFigures::of,
          LightingFigures::of,
          MotorFigures::of,
          FitFigures::of,
          EnduranceFigures::of,
          ControlFigures::of,
          RailFigures::of,
          WiringFigures::of,
          CompletenessFigures::of,
          DataFigures::of);

  private Facts() {}

  public static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    for (int family = 0; family < FAMILIES.size(); family++) {
      facts.addAll(family(bench, family));
    }
    return facts;
  }

  /** How many families there are; they are numbered from 0. */
  public static int families() {
    return FAMILIES.size();
  }

  /** The facts of one family alone. */
  public static List<?> family(Bench bench, int family) {
    return FAMILIES.get(family).apply(bench);
  }
}

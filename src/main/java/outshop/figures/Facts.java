package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

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

  /** What a rule's fact may be found in without working out the rest of its family. */
  private static final List<Function<Bench, List<?>>> PIECES =
      Stream.of(
              VoltageFigures.PIECES,
              CurrentFigures.PIECES,
              ProtectionFigures.PIECES,
              ChargingFigures.PIECES,
              new Pieces<Bench>(
                  bench -> bench,
                  List.of(SoundFigures::of, MotorFigures::of, RailFigures::of, DataFigures::of)),
              LightingFigures.PIECES,
              FitFigures.PIECES,
              EnduranceFigures.PIECES,
              ControlFigures.PIECES,
              WiringFigures.PIECES,
              CompletenessFigures.PIECES)
          .flatMap(pieces -> pieces.each().stream())
          .toList();

  private Facts() {}

  public static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    FAMILIES.forEach(family -> facts.addAll(family.apply(bench)));
    return facts;
  }

  /** How many pieces of families there are; they are numbered from 0. */
  public static int pieces() {
    return PIECES.size();
  }

  /**
   * The facts of one piece of a family. All pieces together are all facts but the parts themselves,
   * of which no rule asks alone.
   */
  public static List<?> piece(Bench bench, int piece) {
    return PIECES.get(piece).apply(bench);
  }
}

package outshop.mend;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import outshop.catalogue.Kind;

/** What a change touches, in the words in which the rules' pages say what a rule reads. */
final class Touches {
  static final String CIRCUIT = "circuit";
  static final String WIRING = "wiring";
  static final String WISHES = "wishes";
  static final String OUTPUT = "function output";

  /** Kinds through which no current of a load case flows. */
  private static final Set<Kind> APART =
      EnumSet.of(Kind.PLUG, Kind.SLEEVE, Kind.HANDSET, Kind.CHARGER);

  /** Kinds that take up room in a bay, or give off heat there. */
  private static final Set<Kind> IN_A_BAY =
      EnumSet.of(
          Kind.PACK,
          Kind.RECEIVER,
          Kind.DECODER,
          Kind.SPEAKER,
          Kind.CAPACITOR,
          Kind.REGULATOR,
          Kind.SMOKE_HEATER);

  private Touches() {}

  /** Another part of a kind. */
  static List<String> of(Kind kind) {
    List<String> words = new ArrayList<>(List.of(kind.word()));
    if (!APART.contains(kind)) {
      words.add(CIRCUIT);
    }
    if (IN_A_BAY.contains(kind)) {
      words.add("bay");
    }
    if (kind == Kind.RESISTOR || kind == Kind.LED || kind == Kind.BULB) {
      words.add("lamp");
    }
    return words;
  }

  /** A part more or less, which changes the wiring as well. */
  static List<String> ofPresence(Kind kind) {
    List<String> words = new ArrayList<>(of(kind));
    words.add(WIRING);
    words.add(OUTPUT);
    return words;
  }

  /** Whether something that reads these words can see a change that touches those. */
  static boolean meets(List<String> reads, List<String> touches) {
    return reads.isEmpty() || reads.stream().anyMatch(touches::contains);
  }
}

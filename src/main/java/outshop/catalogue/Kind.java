package outshop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The kinds of part, in the order of the power path. */
public enum Kind {
  CHARGER("charger"),
  PLUG("plug"),
  JACK("jack"),
  PACK("pack"),
  FUSE("fuse"),
  SWITCH("switch"),
  CONNECTOR("connector"),
  CABLE("cable"),
  WIRE("wire"),
  SLEEVE("sleeve"),
  CAPACITOR("capacitor"),
  REGULATOR("regulator"),
  HANDSET("handset"),
  RECEIVER("receiver"),
  DECODER("decoder"),
  RESISTOR("resistor"),
  BULB("bulb"),
  LED("led"),
  SMOKE_HEATER("smoke-heater"),
  SPEAKER("speaker");

  private final String word;

  Kind(String word) {
    this.word = word;
  }

  /** The word used in file names, in plans and in reports. */
  public String word() {
    return word;
  }

  public static Optional<Kind> of(String word) {
    for (Kind kind : values()) {
      if (kind.word.equals(word)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  public static List<String> words() {
    List<String> words = new ArrayList<>();
    for (Kind kind : values()) {
      words.add(kind.word);
    }
    return words;
  }
}

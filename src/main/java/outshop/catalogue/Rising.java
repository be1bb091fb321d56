package outshop.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Columns whose values must not fall from one to the next: a minimum not above its maximum, what is
 * carried for ever not above what is carried for a moment.
 */
final class Rising {
  /** One line for each chain: the kind, then its columns, lowest value first. */
  private static final List<String> CHAINS =
      List.of(
          "pack empty_volts nominal_volts full_volts",
          "pack nominal_volts charge_volts",
          "pack cutoff_volts full_volts",
          "pack continuous_amps peak_amps",
          "charger plug_bore_mm plug_outer_mm",
          "jack pin_mm outer_mm",
          "plug bore_mm outer_mm",
          "fuse hold_warm_amps hold_amps trip_amps trip_test_amps",
          "fuse rated_amps breaking_amps",
          "receiver cutoff_volts input_max_volts",
          "receiver continuous_amps peak_amps",
          "decoder motor_continuous_amps motor_peak_amps",
          "decoder function_amps function_peak_amps",
          "decoder speaker_min_ohms rated_ohms",
          "connector all_loaded_amps contact_amps",
          "cable all_loaded_amps contact_amps",
          "sleeve recovered_bore_mm supplied_bore_mm");

  private static final Map<Kind, List<List<String>>> BY_KIND = byKind();

  private Rising() {}

  static List<List<String>> of(Kind kind) {
    return BY_KIND.get(kind);
  }

  private static Map<Kind, List<List<String>>> byKind() {
    Map<Kind, List<List<String>>> byKind = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      byKind.put(kind, minimaAndMaxima(kind));
    }
    for (String line : CHAINS) {
      List<String> words = List.of(line.split(" "));
      Kind kind = Kind.of(words.get(0)).orElseThrow();
      List<String> chain = words.subList(1, words.size());
      for (String column : chain) {
        Columns.require(kind, column);
      }
      byKind.get(kind).add(chain);
    }
    return byKind;
  }

  /** The pairs that follow from the names: {@code input_min_volts}, {@code input_max_volts}. */
  private static List<List<String>> minimaAndMaxima(Kind kind) {
    List<List<String>> pairs = new ArrayList<>();
    for (Column column : Columns.of(kind)) {
      String most = column.name().replace("_min_", "_max_");
      if (column.name().contains("_min_") && Columns.find(kind, most).isPresent()) {
        pairs.add(List.of(column.name(), most));
      }
    }
    return pairs;
  }
}

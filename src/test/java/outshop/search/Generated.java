package outshop.search;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.plan.Fitted;
import outshop.plan.OpenPart;
import outshop.plan.Plan;
import outshop.plan.PlanReader;
import outshop.units.Origin;
import outshop.units.Unit;

/**
 * Spaces to choose from, made by a seed: the parts of the plan that every rule's examples start
 * from, each varied many times in its numbers and words, some cells left blank.
 */
final class Generated {
  private static final double[] FACTORS = {0.3, 0.5, 0.7, 0.85, 1, 1, 1.2, 1.5, 2, 3};

  private static final List<String> PLACES =
      List.of(
          "charger",
          "decoder",
          "fuse",
          "handset",
          "jack",
          "pack",
          "plug",
          "receiver",
          "speaker",
          "switch");

  private final Random random;
  private final double changed;

  private Generated(long seed, double changed) {
    this.random = new Random(seed);
    this.changed = changed;
  }

  static Plan base() {
    return PlanReader.read(Path.of("rules/base-plan.yaml"), new Catalogue(List.of())).plan();
  }

  /** So many parts for each of the ten places of which there is something to choose. */
  static Map<String, Integer> everywhere(int each) {
    Map<String, Integer> sizes = new TreeMap<>();
    PLACES.forEach(name -> sizes.put(name, each));
    return sizes;
  }

  /**
   * A space with some of the base plan's parts open.
   *
   * @param sizes how many parts there are to choose from, by the name of the place
   * @param changed the share of the columns in which a part differs from the base plan's
   */
  static Space space(long seed, Map<String, Integer> sizes, double changed) {
    Generated generated = new Generated(seed, changed);
    Plan base = base();
    List<Slot> slots = new ArrayList<>();
    List<Fitted> kept = new ArrayList<>(base.materials());
    for (Fitted fitted : base.parts()) {
      if (sizes.containsKey(fitted.name())) {
        slots.add(generated.slot(fitted, sizes.get(fitted.name())));
      } else {
        kept.add(fitted);
      }
    }
    return new Space(base.withParts(kept), List.of(), slots);
  }

  private Slot slot(Fitted fitted, int size) {
    List<Part> choices = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      choices.add(varied(fitted.part(), "%s-%04d".formatted(fitted.kind().word(), i), i));
    }
    Place place = Place.whole("generated");
    OpenPart open =
        new OpenPart(fitted.name(), fitted.kind(), Map.of(), Map.of(), Optional.empty(), place);
    return new Slot(open, choices, false);
  }

  private Part varied(Part base, String id, int row) {
    Map<String, Double> numbers = new HashMap<>(base.numbers());
    Map<String, String> words = new HashMap<>(base.words());
    words.remove("title");
    for (Column column : Columns.of(base.kind())) {
      if (random.nextDouble() < changed) {
        vary(column, numbers, words);
      }
    }
    if (base.kind() == Kind.PACK) {
      cells(numbers);
    }
    numbers.put(
        "price_each",
        Math.rint(base.numbers().get("price_each") * (50 + random.nextInt(100))) / 100);
    if (random.nextInt(25) == 0) {
      numbers.remove("price_each");
    }
    Place place = new Place("generated-" + base.kind().word(), row + 2, 1, id);
    return new Part(base.kind(), id, numbers, words, Map.of(), Origin.DATA_SHEET, place);
  }

  private void vary(Column column, Map<String, Double> numbers, Map<String, String> words) {
    String name = column.name();
    if (random.nextInt(8) == 0) {
      numbers.remove(name);
      words.remove(name);
    } else if (column.isNumber() && numbers.containsKey(name) && !numbers.get(name).isNaN()) {
      boolean whole = column.unit() == Unit.COUNT || column.unit() == Unit.GAUGE;
      double value = numbers.get(name) * FACTORS[random.nextInt(FACTORS.length)];
      numbers.put(name, whole ? Math.max(1, Math.rint(value)) : Math.rint(value * 1e6) / 1e6);
    } else if (column.type() == Column.Type.WORD && words.containsKey(name)) {
      words.put(name, column.words().get(random.nextInt(column.words().size())));
    }
  }

  /** Volts and energy that fit the number of cells, so that not every pack contradicts itself. */
  private void cells(Map<String, Double> numbers) {
    int cells = 3 + random.nextInt(3);
    numbers.put("cells_series_count", (double) cells);
    numbers.put("nominal_volts", 3.6 * cells);
    numbers.put("full_volts", 4.2 * cells);
    numbers.put("empty_volts", 3.0 * cells);
    numbers.put("charge_volts", 4.2 * cells);
    numbers.remove("energy_wh");
  }
}

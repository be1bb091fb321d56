package outshop.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.plan.Fitted;
import outshop.plan.OpenPart;
import outshop.plan.Plan;
import outshop.rules.RuleEngine;
import outshop.units.Origin;

/**
 * A general constraint solver is given the conditions between parts in this test's own words, and
 * nothing of the rules: what it counts and what it finds cheapest is what the search does. The
 * parts differ in the columns that these conditions speak of, and in price, in nothing else.
 */
final class ConditionsTest {
  private static final int PARTS = 8;
  private static final int BEST = 60;
  private static final RuleEngine ENGINE = RuleEngine.load();

  private static final Map<String, Map<String, List<Double>>> NUMBERS =
      Map.of(
          "pack",
          Map.of("charge_volts", List.of(16.0, 16.4, 16.8), "max_charge_amps", List.of(1.0, 2.0)),
          "charger",
          Map.of("charge_volts", List.of(16.2, 16.7, 17.0, 17.2), "charge_amps", List.of(1.0, 1.5)),
          "plug",
          Map.of("bore_mm", List.of(2.1e-3, 2.5e-3), "outer_mm", List.of(5.5e-3, 4.0e-3)),
          "jack",
          Map.of("pin_mm", List.of(2.1e-3, 2.5e-3), "outer_mm", List.of(5.5e-3, 4.0e-3)),
          "receiver",
          Map.of(
              "input_max_volts", List.of(16.2, 16.6, 20.0), "band_mhz", List.of(868.3e6, 2405e6)),
          "handset",
          Map.of("band_mhz", List.of(868.1e6, 2450e6), "transmit_watts", List.of(0.005)),
          "decoder",
          Map.of("speaker_min_ohms", List.of(4.0, 8.0)),
          "speaker",
          Map.of("impedance_ohms", List.of(4.0, 8.0, 16.0)));

  private static final Map<String, Map<String, List<String>>> WORDS =
      Map.of(
          "charger", Map.of("chemistry", List.of("li-ion", "li-ion", "li-ion", "lifepo4")),
          "receiver", Map.of("links", List.of("heron", "wren", "heron wren")),
          "handset", Map.of("links", List.of("heron", "wren", "plover wren")));

  /** What must hold between the parts of two places. */
  private record Condition(String one, String other, BiPredicate<Part, Part> holds) {}

  private static final List<Condition> CONDITIONS =
      List.of(
          new Condition(
              "charger",
              "pack",
              (charger, pack) ->
                  number(charger, "charge_volts") <= number(pack, "charge_volts") + 4 * 0.05 + 1e-9
                      && number(charger, "charge_amps") <= number(pack, "max_charge_amps")
                      && charger.words().get("chemistry").equals(pack.words().get("chemistry"))),
          new Condition(
              "plug",
              "jack",
              (plug, jack) ->
                  number(plug, "bore_mm") == number(jack, "pin_mm")
                      && number(plug, "outer_mm") == number(jack, "outer_mm")),
          new Condition(
              "handset",
              "receiver",
              (handset, receiver) ->
                  shareAWord(handset.words().get("links"), receiver.words().get("links"))
                      && (number(handset, "band_mhz") > 2e9)
                          == (number(receiver, "band_mhz") > 2e9)),
          new Condition(
              "pack",
              "receiver",
              (pack, receiver) ->
                  number(pack, "full_volts") <= number(receiver, "input_max_volts")),
          new Condition(
              "speaker",
              "decoder",
              (speaker, decoder) ->
                  number(speaker, "impedance_ohms") >= number(decoder, "speaker_min_ohms")));

  private static double number(Part part, String column) {
    return part.numbers().get(column);
  }

  private static boolean shareAWord(String one, String other) {
    Set<String> words = new HashSet<>(Arrays.asList(one.split(" ")));
    words.retainAll(Arrays.asList(other.split(" ")));
    return !words.isEmpty();
  }

  @Test
  void aSolverThatKnowsOnlyTheConditionsAgrees() {
    Space space = space(new Random(17));
    assertThat(space.size().longValueExact()).isEqualTo((long) Math.pow(PARTS, 8));

    Answer answer =
        new Search(ENGINE, space)
            .run(new Search.Asked(Order.COST, BEST, true, 2, Stop.whenAsked()), Watched.NOBODY);

    assertThat(answer.isComplete()).isTrue();
    assertThat(answer.best()).hasSize(BEST);
    long counted = 0;
    Model all = model(space, Integer.MAX_VALUE);
    while (all.getSolver().solve()) {
      counted++;
    }
    assertThat(counted).isBetween(1000L, space.size().longValueExact() / 10);
    assertThat(answer.works().longValueExact()).isEqualTo(counted);

    int last = cents(answer.best().get(BEST - 1).parts());
    Set<List<String>> cheaper = new HashSet<>();
    answer.best().stream()
        .filter(f -> cents(f.parts()) < last)
        .forEach(f -> cheaper.add(f.parts().stream().map(Part::id).toList()));
    assertThat(cheaper).isNotEmpty().isEqualTo(solutions(space, last - 1));
  }

  /** The ids of all combinations that meet the conditions and cost so much at most. */
  private static Set<List<String>> solutions(Space space, int mostCents) {
    Set<List<String>> found = new HashSet<>();
    Model model = model(space, mostCents);
    while (model.getSolver().solve()) {
      List<String> ids = new ArrayList<>();
      for (int s = 0; s < space.slots().size(); s++) {
        ids.add(space.part(s, ((IntVar) model.getVar(s)).getValue()).id());
      }
      found.add(ids);
    }
    return found;
  }

  private static Model model(Space space, int mostCents) {
    Model model = new Model();
    IntVar[] places = new IntVar[space.slots().size()];
    Map<String, Integer> at = new HashMap<>();
    for (int s = 0; s < places.length; s++) {
      places[s] = model.intVar(space.slots().get(s).name(), 0, PARTS - 1);
      at.put(space.slots().get(s).name(), s);
    }
    for (Condition condition : CONDITIONS) {
      int one = at.get(condition.one());
      int other = at.get(condition.other());
      Tuples allowed = new Tuples(true);
      for (int i = 0; i < PARTS; i++) {
        for (int j = 0; j < PARTS; j++) {
          if (condition.holds().test(space.part(one, i), space.part(other, j))) {
            allowed.add(i, j);
          }
        }
      }
      model.table(places[one], places[other], allowed).post();
    }
    if (mostCents < Integer.MAX_VALUE) {
      IntVar[] prices = new IntVar[places.length];
      for (int s = 0; s < places.length; s++) {
        int[] cents = new int[PARTS];
        for (int i = 0; i < PARTS; i++) {
          cents[i] = cents(List.of(space.part(s, i)));
        }
        prices[s] = model.intVar("price " + s, cents);
        model.element(prices[s], cents, places[s]).post();
      }
      model.sum(prices, "<=", mostCents).post();
    }
    return model;
  }

  private static int cents(List<Part> parts) {
    return parts.stream()
        .mapToInt(part -> (int) Math.round(number(part, "price_each") * 100))
        .sum();
  }

  private static Space space(Random random) {
    Plan base = Generated.base();
    List<Slot> slots = new ArrayList<>();
    List<Fitted> kept = new ArrayList<>(base.materials());
    for (Fitted fitted : base.parts()) {
      if (NUMBERS.containsKey(fitted.name())) {
        slots.add(slot(fitted, random));
      } else {
        kept.add(fitted);
      }
    }
    return new Space(base.withParts(kept), List.of(), slots);
  }

  private static Slot slot(Fitted fitted, Random random) {
    List<Part> choices = new ArrayList<>();
    for (int i = 0; i < PARTS; i++) {
      Map<String, Double> numbers = new HashMap<>(fitted.part().numbers());
      Map<String, String> words = new HashMap<>(fitted.part().words());
      // Sorted: the order of Map.of is another one in every run.
      new TreeMap<>(NUMBERS.getOrDefault(fitted.name(), Map.of()))
          .forEach((column, some) -> numbers.put(column, some.get(random.nextInt(some.size()))));
      new TreeMap<>(WORDS.getOrDefault(fitted.name(), Map.of()))
          .forEach((column, some) -> words.put(column, some.get(random.nextInt(some.size()))));
      if (fitted.name().equals("pack")) {
        numbers.put("full_volts", numbers.get("charge_volts"));
      }
      numbers.put("price_each", (200 + random.nextInt(2000)) / 100.0);
      String id = fitted.name() + "-" + i;
      Place place = new Place("conditions", i + 2, 1, id);
      choices.add(new Part(fitted.kind(), id, numbers, words, Map.of(), Origin.DATA_SHEET, place));
    }
    OpenPart open =
        new OpenPart(
            fitted.name(),
            fitted.kind(),
            Map.of(),
            Map.of(),
            Optional.empty(),
            Place.whole("conditions"));
    return new Slot(open, choices, false);
  }
}

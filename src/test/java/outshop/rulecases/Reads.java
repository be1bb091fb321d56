package outshop.rulecases;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.findings.Finding;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Want;

/**
 * What each rule reads, recorded while its examples run: the kinds of part and the other things of
 * a plan that an example changes, that an answer is about, that stand behind the compared values,
 * or that are wanted when a value is missing. Behind a solved value stands the whole circuit; that
 * is recorded as {@code circuit}.
 */
public final class Reads {
  /** Beginnings of paths in a plan, of labels and of names of what is wanted. */
  private static final Map<String, String> THINGS =
      Map.ofEntries(
          Map.entry("motors", "motor"),
          Map.entry("lamps", "lamp"),
          Map.entry("bays", "bay"),
          Map.entry("smoke", Kind.SMOKE_HEATER.word()),
          Map.entry("old_speaker", "old speaker"),
          Map.entry("frame", "frame"),
          Map.entry("pickups", "pickups"),
          Map.entry("outputs", "function output"),
          Map.entry("speakers", Kind.SPEAKER.word()),
          Map.entry("wiring", "wiring"),
          Map.entry("wishes", "wishes"),
          Map.entry("measured", "measured"),
          Map.entry("vehicles", "vehicles"));

  private static final List<String> ORDER = order();

  private final Plan base = Answered.basePlan();

  /** By rule: the words, in the order of the power path, then the rest. */
  public static Map<String, List<String>> recorded() {
    return Recorded.ALL;
  }

  /** Recorded once, for all tests and pages that ask. */
  private static final class Recorded {
    static final Map<String, List<String>> ALL = record();
  }

  private static Map<String, List<String>> record() {
    Reads reads = new Reads();
    Map<String, TreeSet<String>> byRule = new TreeMap<>();
    for (Answered answered : Answered.all()) {
      byRule
          .computeIfAbsent(
              answered.example().rule(),
              r -> new TreeSet<>(Comparator.comparingInt(ORDER::indexOf)))
          .addAll(reads.of(answered));
    }
    Map<String, List<String>> recorded = new TreeMap<>();
    byRule.forEach((rule, words) -> recorded.put(rule, List.copyOf(words)));
    return Collections.unmodifiableMap(recorded);
  }

  private List<String> of(Answered answered) {
    List<String> words = new ArrayList<>();
    for (String path : answered.example().change().keySet()) {
      words.addAll(thing(answered.plan(), withoutOwner(path)));
    }
    for (Finding finding : answered.answers()) {
      words.addAll(thing(answered.plan(), finding.at().name()));
      finding.demand().ifPresent(value -> behind(answered.plan(), value, words));
      finding.limit().ifPresent(value -> behind(answered.plan(), value, words));
      for (Want want : finding.wants()) {
        words.addAll(thing(answered.plan(), want.where()));
      }
    }
    return words;
  }

  private static String withoutOwner(String path) {
    return path.replaceFirst("^(parts|locomotive)\\.", "");
  }

  private void behind(Plan plan, Amount.Known value, List<String> words) {
    if (value.how().startsWith("circuit solved")) {
      words.add("circuit");
      return;
    }
    words.addAll(thing(plan, value.label()));
    value.from().forEach(input -> behind(plan, input, words));
  }

  /**
   * What a path, a label or a name speaks of: by its longest beginning that is known. A wire is
   * called after its two ends.
   */
  private List<String> thing(Plan plan, String text) {
    if (text.contains(" - ")) {
      return List.of("wiring");
    }
    for (int end = text.length(); end > 0; end = cut(text, end)) {
      Optional<String> word = known(plan, text.substring(0, end));
      if (word.isPresent()) {
        return List.of(word.get());
      }
    }
    return List.of();
  }

  private static int cut(String text, int end) {
    int last = -1;
    for (char mark : new char[] {'.', ' ', ':'}) {
      last = Math.max(last, text.lastIndexOf(mark, end - 1));
    }
    return last;
  }

  private Optional<String> known(Plan plan, String name) {
    Optional<String> kind =
        plan.part(name).or(() -> base.part(name)).map(fitted -> fitted.kind().word());
    if (kind.isPresent()) {
      return kind;
    }
    for (String group : List.of("motors", "lamps", "bays", "smoke")) {
      if (plan.names("locomotive." + group).contains(name)) {
        return Optional.of(THINGS.get(group));
      }
    }
    return plan.names("outputs").contains(name)
        ? Optional.of(THINGS.get("outputs"))
        : Optional.ofNullable(THINGS.get(name));
  }

  private static List<String> order() {
    List<String> order = new ArrayList<>(Kind.words());
    THINGS.values().stream().sorted().filter(w -> !order.contains(w)).forEach(order::add);
    order.add("circuit");
    return order;
  }
}

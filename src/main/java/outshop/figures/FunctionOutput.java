package outshop.figures;

import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;

/**
 * A function output of a decoder, as the plan uses it.
 *
 * @param name its terminal, such as {@code out-1}
 */
record FunctionOutput(String name, Fitted decoder) {

  /** Every output that the plan uses, in its order. */
  static List<FunctionOutput> all(Bench bench) {
    return bench.plan().names("outputs").stream().flatMap(n -> at(bench, n).stream()).toList();
  }

  /** The output that feeds a load; empty where none does. */
  static Optional<FunctionOutput> feeding(Bench bench, String load) {
    return all(bench).stream().filter(o -> o.feeds(bench).contains(load)).findFirst();
  }

  private static Optional<FunctionOutput> at(Bench bench, String name) {
    return bench
        .plan()
        .text("outputs." + name + ".decoder")
        .flatMap(bench.plan()::part)
        .or(() -> bench.first(Kind.DECODER))
        .map(decoder -> new FunctionOutput(name, decoder));
  }

  /** The key of one of its values. */
  String key(String value) {
    return "outputs." + name + "." + value;
  }

  /** The names of what hangs on it, side by side. */
  List<String> feeds(Bench bench) {
    return bench.plan().list(key("feeds")).orElse(List.of());
  }

  /** The resistor in its lead. */
  Optional<Fitted> resistor(Bench bench) {
    return bench
        .plan()
        .text(key("resistor"))
        .flatMap(bench.plan()::part)
        .filter(part -> part.is(Kind.RESISTOR));
  }
}

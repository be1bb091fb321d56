package outshop.figures;

import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Circuit;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.PackValues;
import outshop.input.Problem;
import outshop.plan.Fitted;
import outshop.plan.Plan;

/**
 * What every family of figures is computed from: the plan, its circuit, its load cases.
 *
 * @param problems what the readers found unlikely in the files, for the data rules
 */
public record Bench(Plan plan, Circuit circuit, Cases cases, List<Problem> problems) {

  public static Bench of(Plan plan, List<Problem> problems) {
    Circuit circuit = CircuitBuilder.build(plan);
    return new Bench(plan, circuit, new Cases(plan, circuit), List.copyOf(problems));
  }

  /** The first part of a kind, which is the one that counts where a plan has only one. */
  public Optional<Fitted> first(Kind kind) {
    List<Fitted> found = plan.parts(kind);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  /** The pack's values; empty if the plan has no pack. */
  public Optional<PackValues> pack() {
    return first(Kind.PACK).map(PackValues::of);
  }
}

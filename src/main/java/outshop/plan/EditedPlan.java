package outshop.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.QuantityReader;

/** Makes edits to a plan as read. The plan it begins with stays as it is. */
public final class EditedPlan {
  private final Place place;
  private final PlanDraft draft;

  private EditedPlan(Plan plan) {
    this.place = Place.whole(plan.file());
    this.draft = PlanDraft.of(plan);
  }

  /** The plan with the edits made, one after the other. */
  public static Plan of(Plan plan, List<Edit> edits) {
    EditedPlan edited = new EditedPlan(plan);
    edits.forEach(edited::make);
    return edited.draft.plan(plan.file());
  }

  private void make(Edit edit) {
    if (edit instanceof Edit.Say say) {
      output(say.path());
      draft.state(say.path(), new Plan.Stated(say.texts(), 0, place));
    } else if (edit instanceof Edit.Measure measure) {
      double value = held(Written.like(Rows.requireKey(measure.path())), measure.value());
      draft.state(measure.path(), new Plan.Stated(List.of(), value, place));
    } else if (edit instanceof Edit.Drop drop) {
      draft.drop(drop.path());
    } else if (edit instanceof Edit.Fit fit) {
      fit(fit.path(), fit.part());
    } else if (edit instanceof Edit.Adjust adjust) {
      adjust(adjust);
    } else if (edit instanceof Edit.Wire wire) {
      wire(wire);
    }
  }

  /** An output is stated by its name, before anything is said of it. */
  private void output(String path) {
    String[] steps = path.split("\\.");
    String output = String.join(".", List.of(steps).subList(0, Math.min(2, steps.length)));
    if (steps[0].equals("outputs") && draft.at(output).isEmpty()) {
      draft.state(output, new Plan.Stated(List.of(), 0, place));
    }
  }

  private void fit(String path, Part part) {
    draft.state(path, new Plan.Stated(List.of(part.id()), 0, place));
    draft.refit(nameOf(path), part, place);
  }

  /** The name under which a part at a path is fitted: its own, or the path of a material. */
  static String nameOf(String path) {
    return path.startsWith("parts.") ? path.substring("parts.".length()) : path;
  }

  private void adjust(Edit.Adjust adjust) {
    Part part = draft.fitted(nameOf(adjust.path()));
    Map<String, Double> numbers = new LinkedHashMap<>(part.numbers());
    new TreeMap<>(adjust.numbers())
        .forEach(
            (name, value) -> {
              Column column = Columns.require(part.kind(), name);
              numbers.put(name, held(Written.like(column), value));
            });
    fit(
        adjust.path(),
        new Part(
            part.kind(),
            part.id(),
            numbers,
            part.words(),
            part.notes(),
            part.origin(),
            part.place()));
  }

  private void wire(Edit.Wire wire) {
    int row = draft.names(PlanDraft.WIRES).size() + 1;
    String path = PlanDraft.WIRES + "." + row;
    if (row == 1) {
      draft.state(PlanDraft.WIRES, new Plan.Stated(List.of(), 0, place));
    }
    draft.state(path, new Plan.Stated(List.of(), 0, place));
    List<Edit> fields = new ArrayList<>();
    fields.add(new Edit.Say(path + ".from", List.of(wire.from())));
    fields.add(new Edit.Say(path + ".to", List.of(wire.to())));
    wire.wire().ifPresent(part -> fields.add(new Edit.Fit(path + ".wire", part)));
    wire.metres().ifPresent(metres -> fields.add(new Edit.Measure(path + ".length", metres)));
    fields.forEach(this::make);
  }

  /** A value as it comes back when it has been written and read. */
  static double held(Written written, double value) {
    return QuantityReader.read(written.text(value), written.unit())
            instanceof QuantityReader.Read read
        ? read.value()
        : value;
  }

  /** The terminal mentions of a plan: path and text of everything that names a terminal. */
  static Map<String, List<String>> mentions(Plan plan) {
    Map<String, List<String>> mentions = new LinkedHashMap<>();
    plan.stated()
        .forEach(
            (path, stated) -> {
              Optional<Key> key = Rows.key(path);
              boolean names =
                  key.isPresent()
                      && (key.get().type() == Key.Type.NAME || key.get().type() == Key.Type.NAMES);
              if (names && Refers.of(key.get()).isTerminal()) {
                mentions.put(path, stated.texts());
              }
            });
    return mentions;
  }

  /**
   * The terminals of one thing that the plan names somewhere, without the thing's own name: {@code
   * in+}. A part that takes its place must have them all.
   */
  public static List<String> terminalsNamed(Plan plan, String thing) {
    String prefix = thing + ".";
    List<String> named = new ArrayList<>();
    mentions(plan).values().stream()
        .flatMap(List::stream)
        .filter(t -> t.startsWith(prefix))
        .map(t -> t.substring(prefix.length()))
        .distinct()
        .forEach(named::add);
    return named;
  }
}

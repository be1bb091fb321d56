package outshop.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.plan.Plan.Stated;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Origin;
import outshop.units.Unit;

/** What has been read of a plan so far, by full path; rows by number. */
final class PlanDraft {
  static final String WIRES = "wiring.wires";
  private static final List<String> DUTY = List.of("standing", "cruising", "slipping");

  private final Map<String, Stated> stated = new LinkedHashMap<>();
  private final Map<String, Part> rowParts = new LinkedHashMap<>();
  private final List<Fitted> fitted = new ArrayList<>();

  /** A plan taken apart again, to be changed and put together anew. */
  static PlanDraft of(Plan plan) {
    PlanDraft draft = new PlanDraft();
    draft.stated.putAll(plan.stated());
    draft.fitted.addAll(plan.parts());
    draft.fitted.addAll(plan.materials());
    List<String> rows = draft.names(WIRES);
    for (int i = 0; i < rows.size(); i++) {
      String own = WIRES + "." + rows.get(i) + ".wire";
      if (draft.stated.containsKey(own)) {
        draft.rowParts.put(own, plan.wires().get(i).wire());
      }
    }
    return draft;
  }

  void state(String path, Stated value) {
    stated.put(path, value);
  }

  /** As if a path, and everything below it, had never been stated; later rows of a list move up. */
  void drop(String path) {
    String below = path + ".";
    stated.keySet().removeIf(p -> p.equals(path) || p.startsWith(below));
    rowParts.keySet().removeIf(p -> p.equals(path) || p.startsWith(below));
    String name = EditedPlan.nameOf(path);
    fitted.removeIf(f -> f.name().equals(name));
    int point = path.lastIndexOf('.');
    boolean isRow =
        point > 0
            && Keys.find(path.substring(0, point))
                .filter(k -> k.type() == Key.Type.ROWS)
                .isPresent();
    if (isRow) {
      moveUp(path.substring(0, point), Integer.parseInt(path.substring(point + 1)));
    }
  }

  private void moveUp(String list, int gone) {
    Map<String, Stated> moved = new LinkedHashMap<>();
    stated.forEach((path, value) -> moved.put(movedUp(path, list, gone), value));
    stated.clear();
    stated.putAll(moved);
    Map<String, Part> parts = new LinkedHashMap<>();
    rowParts.forEach((path, part) -> parts.put(movedUp(path, list, gone), part));
    rowParts.clear();
    rowParts.putAll(parts);
  }

  private static String movedUp(String path, String list, int gone) {
    if (!path.startsWith(list + ".")) {
      return path;
    }
    String rest = path.substring(list.length() + 1);
    int point = rest.indexOf('.');
    int row = Integer.parseInt(point < 0 ? rest : rest.substring(0, point));
    String below = point < 0 ? "" : rest.substring(point);
    return row > gone ? list + "." + (row - 1) + below : path;
  }

  /** A part in the place of what stands under its name, or added. */
  void refit(String name, Part part, Place place) {
    fitted.removeIf(f -> f.name().equals(name));
    fit(name, part, place);
  }

  /** The part of that name. Errors: {@link IllegalArgumentException} if there is none. */
  Part fitted(String name) {
    return fitted.stream()
        .filter(f -> f.name().equals(name))
        .findFirst()
        .map(Fitted::part)
        .orElseThrow(() -> new IllegalArgumentException("no part " + name));
  }

  Optional<Stated> at(String path) {
    return Optional.ofNullable(stated.get(path));
  }

  /** A part under its name, or at its key. */
  void fit(String name, Part part, Place place) {
    if (name.startsWith(WIRES + ".")) {
      rowParts.put(name, part);
    } else {
      fitted.add(new Fitted(name, part, place));
    }
  }

  /** The names or row numbers stated under a path, in order. */
  List<String> names(String path) {
    String prefix = path + ".";
    return stated.keySet().stream()
        .filter(p -> p.startsWith(prefix) && p.indexOf('.', prefix.length()) < 0)
        .map(p -> p.substring(prefix.length()))
        .toList();
  }

  /** The parts of a kind, in the order of the file. */
  List<Fitted> parts(Kind kind) {
    return fitted.stream().filter(f -> f.is(kind)).toList();
  }

  /** The problem with the shares of the duty, if all three are stated and do not make a whole. */
  Optional<Problem> dutyProblem() {
    List<Stated> shares =
        DUTY.stream().flatMap(share -> at("wishes.duty." + share).stream()).toList();
    double sum = shares.stream().mapToDouble(Stated::value).sum();
    if (shares.size() < DUTY.size() || Exact.same(sum, 1)) {
      return Optional.empty();
    }
    Place first =
        shares.stream()
            .map(Stated::place)
            .min(Comparator.comparingInt(Place::line).thenComparingInt(Place::column))
            .orElseThrow();
    String found = new Written(Unit.SHARE, "%", 0.01, "100 %").text(sum);
    Place place = new Place(first.file(), first.line(), first.column(), "wishes.duty");
    return Optional.of(
        Problem.error(place, found, "the three shares do not make a whole", "100 % in all"));
  }

  Plan plan(String file) {
    return new Plan(file, stated, fitted, wires(), accepted());
  }

  private List<WireRow> wires() {
    List<WireRow> wires = new ArrayList<>();
    for (String row : names(WIRES)) {
      String path = WIRES + "." + row;
      Optional<String> from = text(path + ".from");
      Optional<String> to = text(path + ".to");
      if (from.isPresent() && to.isPresent()) {
        Place place = stated.get(path).place();
        wires.add(new WireRow(from.get(), to.get(), wire(path, place), length(path), place));
      }
    }
    return wires;
  }

  /** The row's own wire; else the wire of the power path; else one of which nothing is known. */
  private Part wire(String path, Place place) {
    Part own = rowParts.get(path + ".wire");
    if (own != null) {
      return own;
    }
    return fitted.stream()
        .filter(f -> f.name().equals("wiring.wire"))
        .map(Fitted::part)
        .findFirst()
        .orElseGet(
            () -> new Part(Kind.WIRE, path, Map.of(), Map.of(), Map.of(), Origin.PLAN, place));
  }

  private Amount length(String path) {
    Optional<Stated> length = at(path + ".length");
    if (length.isEmpty()) {
      return Amount.missing(path, "length", Keys.require(WIRES + ".length").how());
    }
    String label = path + ": length";
    return Amount.known(length.get().value(), Unit.METRES, Origin.PLAN, label, Origin.PLAN.words());
  }

  private List<Accepted> accepted() {
    List<Accepted> accepted = new ArrayList<>();
    for (String row : names("accepted")) {
      String path = "accepted." + row;
      Optional<String> rule = text(path + ".rule");
      Optional<String> where = text(path + ".where");
      Optional<String> reason = text(path + ".reason");
      if (rule.isPresent() && where.isPresent() && reason.isPresent()) {
        Place place = stated.get(path).place();
        accepted.add(new Accepted(rule.get(), where.get(), reason.get(), place));
      }
    }
    return accepted;
  }

  private Optional<String> text(String path) {
    return at(path).map(s -> s.texts().get(0));
  }
}

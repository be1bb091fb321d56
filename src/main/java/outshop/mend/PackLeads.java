package outshop.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.plan.Edit;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.plan.WireRow;
import outshop.units.Amount;

/**
 * The plus lead of the pack in a plan wired by hand, and how a fuse or a switch is put into it. A
 * fuse belongs as near to the pack as it goes; it is put {@value #NEAR_METRES} m from it, or half
 * way along a shorter lead (common practice, no source).
 */
final class PackLeads {
  static final double NEAR_METRES = 0.05;

  private static final String ROWS = "wiring.wires.";

  private final Plan plan;

  PackLeads(Plan plan) {
    this.plan = plan;
  }

  /** The edits that put a new part into the lead; none where there is no such lead. */
  List<Edit> inserted(String name, Part part) {
    Optional<Integer> row = lead();
    boolean changeover = part.kind() == Kind.SWITCH && part.said("function").is("changeover");
    if (row.isEmpty() || changeover) {
      return List.of();
    }
    return inserted(row.get(), name);
  }

  /** The row, from 1, that begins or ends at the plus of the only pack, if it is one alone. */
  private Optional<Integer> lead() {
    List<Fitted> packs = plan.parts(Kind.PACK);
    if (packs.size() != 1) {
      return Optional.empty();
    }
    String plus = packs.get(0).name() + ".plus";
    List<Integer> rows = rowsAt(plus);
    return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
  }

  private List<Integer> rowsAt(String terminal) {
    List<Integer> rows = new ArrayList<>();
    for (int i = 0; i < plan.wires().size(); i++) {
      WireRow wire = plan.wires().get(i);
      if (wire.from().equals(terminal) || wire.to().equals(terminal)) {
        rows.add(i + 1);
      }
    }
    return rows;
  }

  /** The row's far end moves to the part's far side; a new short row joins the pack to it. */
  private List<Edit> inserted(int row, String name) {
    WireRow wire = plan.wires().get(row - 1);
    String plus = plan.parts(Kind.PACK).get(0).name() + ".plus";
    boolean fromPack = wire.from().equals(plus);
    String end = ROWS + row + (fromPack ? ".from" : ".to");
    List<Edit> edits = new ArrayList<>();
    edits.add(new Edit.Say(end, List.of(name + ".b")));
    Optional<Double> near = Optional.empty();
    if (wire.length() instanceof Amount.Known length) {
      near = Optional.of(Math.min(NEAR_METRES, length.value() / 2));
      edits.add(new Edit.Measure(ROWS + row + ".length", length.value() - near.get()));
    }
    edits.add(new Edit.Wire(plus, name + ".a", own(row), near));
    return edits;
  }

  private Optional<Part> own(int row) {
    return plan.text(ROWS + row + ".wire").map(id -> plan.wires().get(row - 1).wire());
  }

  /**
   * Takes a part with two ends, each with one wire, out of where it is and puts it into the pack's
   * lead; the two wires become one.
   */
  List<Edit> moved(Fitted part) {
    Optional<Integer> lead = lead();
    List<Integer> atA = rowsAt(part.name() + ".a");
    List<Integer> atB = rowsAt(part.name() + ".b");
    boolean plain = atA.size() == 1 && !atB.isEmpty() && lead.isPresent();
    if (!plain || atB.contains(atA.get(0)) || lead.get().equals(atA.get(0))) {
      return List.of();
    }
    int gone = atA.get(0);
    WireRow before = plan.wires().get(gone - 1);
    boolean fromA = before.from().equals(part.name() + ".a");
    String far = fromA ? before.to() : before.from();
    List<Edit> edits = new ArrayList<>();
    for (int row : atB) {
      WireRow wire = plan.wires().get(row - 1);
      boolean from = wire.from().equals(part.name() + ".b");
      edits.add(new Edit.Say(ROWS + row + (from ? ".from" : ".to"), List.of(far)));
      if (wire.length() instanceof Amount.Known one
          && before.length() instanceof Amount.Known other) {
        edits.add(new Edit.Measure(ROWS + row + ".length", one.value() + other.value()));
      }
    }
    edits.addAll(inserted(lead.get(), part.name()));
    edits.add(new Edit.Drop(ROWS + gone));
    return edits;
  }
}

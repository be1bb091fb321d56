package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.circuit.Places;
import outshop.figures.fit.Arrangement;
import outshop.figures.fit.Box;
import outshop.figures.fit.Packing;
import outshop.figures.fit.Placed;
import outshop.figures.fit.PlacementCheck;
import outshop.figures.fit.Size;
import outshop.figures.fit.Turns;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Origin;
import outshop.units.Unit;
import outshop.units.Want;

/** The parts of one bay against its inside, and the ways they leave each other. */
final class PackingFigures {
  /**
   * Steps after which a search gives up. Eight boxes that fill most of a bay seldom need a tenth of
   * it; it takes about half a second.
   */
  private static final long STEPS = 200_000;

  /** The same for a search whose answer only adds a hint. */
  static final long FEW_STEPS = 10_000;

  /** More names than this are counted instead of listed. */
  private static final int MOST_NAMES = 3;

  private final Plan plan;
  private final Bay bay;
  private final long clearance;
  private final List<Object> facts = new ArrayList<>();

  private PackingFigures(Plan plan, Bay bay) {
    this.plan = plan;
    this.bay = bay;
    this.clearance = Bay.clearanceMicrometres(plan);
  }

  static List<Object> of(Plan plan, Bay bay) {
    PackingFigures figures = new PackingFigures(plan, bay);
    if (!bay.parts().isEmpty()) {
      figures.all();
    }
    return figures.facts;
  }

  /** The answer for boxes in a room; an arrangement that was found is checked apart. */
  static Arrangement arrange(Size room, long clearance, List<Box> boxes, long steps) {
    Arrangement answer = new Packing(room, clearance, boxes, steps).answer();
    if (answer instanceof Arrangement.Found found) {
      List<String> faults = PlacementCheck.faults(room, clearance, boxes, found.placed());
      if (!faults.isEmpty()) {
        throw new IllegalStateException("a wrong arrangement: " + faults);
      }
    }
    return answer;
  }

  private void all() {
    List<Want> wants = new ArrayList<>(bay.roomWants());
    bay.parts().forEach(part -> wants.addAll(Bay.sizeWants(part)));
    Optional<Size> room = bay.room();
    List<Box> boxes = Bay.boxes(plan, bay.parts(), Turns.ANY);
    if (room.isEmpty() || boxes.isEmpty()) {
      add(Standing.open(wants), "", nothing());
      return;
    }
    Arrangement answer = answer(room.get());
    if (answer instanceof Arrangement.None none) {
      add(Standing.of(situation(none.why())), described(none.box()), nothing());
    } else if (!wants.isEmpty()) {
      add(Standing.open(wants), "", nothing());
    } else if (answer instanceof Arrangement.Found found) {
      found(room.get(), found.placed());
    } else {
      add(Standing.open(List.of(tooMany())), "", nothing());
    }
  }

  /**
   * First with every part as its sizes are written unless the plan lets it be turned: what goes in
   * like that goes in for certain. Then with every part turned that the plan does not say may not
   * be.
   */
  private Arrangement answer(Size room) {
    Arrangement asWritten = arrange(room, Turns.NONE);
    return asWritten instanceof Arrangement.Found ? asWritten : arrange(room, Turns.ANY);
  }

  private Arrangement arrange(Size room, Turns otherwise) {
    return arrange(room, clearance, Bay.boxes(plan, bay.parts(), otherwise), STEPS);
  }

  private void found(Size room, List<Placed> placed) {
    List<Want> turned = new ArrayList<>();
    for (Placed one : placed) {
      Fitted part = part(one.name());
      if (!Bay.size(part).equals(Optional.of(one.lying()))) {
        turned.addAll(Standing.wants(Bay.turnsSaid(plan, part)));
      }
    }
    add(turned.isEmpty() ? Standing.FINE : Standing.open(turned), "", places(placed));
    if (turned.isEmpty()) {
      onlyWays(room);
    }
  }

  private void add(Standing standing, String part, Amount placed) {
    facts.add(
        new BayFit(
            bay.at(),
            parts(),
            bay.roomWords(),
            Bay.clearance(plan),
            placed,
            standing,
            part,
            Bay.cubicCentimetres(filled()),
            Bay.cubicCentimetres(inside())));
  }

  private double filled() {
    double filled = 0;
    for (Box box : Bay.boxes(plan, bay.parts(), Turns.ANY)) {
      filled += box.ways().get(0).grown(clearance).cubicMetres();
    }
    return filled;
  }

  private double inside() {
    return bay.room().map(r -> r.shrunk(clearance).cubicMetres()).orElse(0.0);
  }

  private String parts() {
    List<String> names = bay.parts().stream().map(Fitted::name).toList();
    if (names.size() > MOST_NAMES) {
      return names.size() + " parts";
    }
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  private static String situation(Arrangement.Why why) {
    return switch (why) {
      case ONE_BOX -> "one-part";
      case VOLUME -> "volume";
      case ALL_TRIED -> "all-tried";
    };
  }

  private String described(String box) {
    if (box.isEmpty()) {
      return "";
    }
    return box + " (" + Bay.words(Bay.size(part(box)).orElseThrow()) + ")";
  }

  private Fitted part(String name) {
    return bay.parts().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private Want tooMany() {
    return new Want(
        bay.name(),
        "an arrangement",
        "there are too many to try them all: put a part into another bay, or try with boxes of card");
  }

  private Amount nothing() {
    return new Amount.Absent("placed in " + bay.name());
  }

  /** The number of parts placed; where each lies is its working. */
  private Amount places(List<Placed> placed) {
    List<Amount> each = new ArrayList<>();
    for (Placed one : placed) {
      each.add(
          Amount.known(
              Size.metres(one.along()),
              Unit.METRES,
              Origin.STANDARD,
              one.name() + " from the end of " + bay.name(),
              "lying %s along, across and up; %s from the side and %s from the floor"
                  .formatted(Bay.words(one.lying()), text(one.across()), text(one.up()))));
    }
    return Amount.computed(
        "parts placed in " + bay.name(),
        Unit.COUNT,
        "one arrangement of those that fit, checked part against part",
        v -> v.length,
        each);
  }

  private static String text(long micrometres) {
    return AmountText.text(Size.metres(micrometres), Unit.METRES);
  }

  /** The parts that the others leave one way to lie, of several they would have alone. */
  private void onlyWays(Size room) {
    List<Box> boxes = Bay.boxes(plan, bay.parts(), Turns.ANY);
    if (boxes.size() < 2) {
      return;
    }
    for (Box box : boxes) {
      List<Size> alone =
          box.ways().stream().filter(w -> w.within(room.shrunk(2 * clearance))).toList();
      List<Size> left = alone.size() < 2 ? alone : left(room, boxes, box, alone);
      if (alone.size() >= 2 && left.size() == 1) {
        facts.add(onlyWay(part(box.name()), left.get(0)));
      }
    }
  }

  /** The ways a box may lie beside the others: those that are not ruled out. */
  private List<Size> left(Size room, List<Box> boxes, Box box, List<Size> ways) {
    List<Size> left = new ArrayList<>();
    for (Size way : ways) {
      List<Box> so =
          boxes.stream().map(b -> b.equals(box) ? new Box(b.name(), List.of(way)) : b).toList();
      if (!(arrange(room, clearance, so, FEW_STEPS) instanceof Arrangement.None)) {
        left.add(way);
      }
    }
    return left;
  }

  private OnlyWay onlyWay(Fitted part, Size way) {
    return new OnlyWay(
        Places.of(part),
        bay.name(),
        side(part, "along", way.along()),
        side(part, "across", way.across()),
        side(part, "up", way.up()));
  }

  private static Amount side(Fitted part, String where, long micrometres) {
    return Amount.known(
        Size.metres(micrometres),
        Unit.METRES,
        part.part().origin(),
        part.name() + " " + where,
        "the only way left by the other parts");
  }
}

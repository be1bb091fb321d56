package outshop.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.plan.Edit;
import outshop.plan.Fitted;
import outshop.plan.Keys;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Unit;

/** Settings of parts, how parts sit, and the two wishes that a decoder's settings meet. */
final class SettingChanges {
  private static final double STEP = 0.1;
  private static final double LEAST = 0.3;

  private final Plan plan;
  private final Catalogue catalogue;
  private final List<Change> found = new ArrayList<>();

  private SettingChanges(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
  }

  static List<Change> of(Plan plan, Catalogue catalogue) {
    SettingChanges changes = new SettingChanges(plan, catalogue);
    plan.parts(Kind.RECEIVER).forEach(changes::cutOff);
    plan.parts().forEach(changes::bay);
    changes.stated("grommet", "yes", "Lead %s through a grommet");
    changes.stated("other_half", "yes", "Buy the other half of %s as well");
    changes.turns();
    changes.wish("wishes.speed_limit", "Limit the speed in the decoder to ");
    changes.wish("wishes.volume", "Turn the volume down to ");
    changes.programming();
    return changes.found;
  }

  /** For every pack that there is to choose from, as far as the receiver can be set. */
  private void cutOff(Fitted receiver) {
    if (!receiver.said("cutoff_adjustable").is("yes")) {
      return;
    }
    TreeSet<CutOff> cutOffs =
        new TreeSet<>(Comparator.comparingDouble(CutOff::cells).thenComparingDouble(CutOff::volts));
    Stream.concat(
            plan.parts(Kind.PACK).stream(),
            catalogue.of(Kind.PACK).stream().map(p -> new Fitted(p.id(), p, p.place())))
        .forEach(pack -> CutOff.of(pack).ifPresent(cutOffs::add));
    String path = "parts." + receiver.name();
    for (CutOff cutOff : cutOffs) {
      if (!cutOff.isSetAt(receiver.part())) {
        found.add(
            new Change.Set(
                "Set at " + receiver.name() + " " + cutOff.words(),
                List.of(cutOff.edit(path)),
                path,
                Touches.of(Kind.RECEIVER),
                ""));
      }
    }
  }

  private void bay(Fitted part) {
    String key = "parts." + part.name() + ".bay";
    String now = plan.text(key).orElse("");
    for (String bay : now.isEmpty() ? List.<String>of() : plan.names("locomotive.bays")) {
      if (!bay.equals(now)) {
        found.add(
            new Change.Rewire(
                "Put " + part.name() + " into bay " + bay + " instead of " + now,
                List.of(new Edit.Say(key, List.of(bay))),
                key,
                List.of("bay", part.kind().word())));
      }
    }
  }

  private void stated(String key, String word, String words) {
    for (Fitted part : plan.parts()) {
      String path = "parts." + part.name() + "." + key;
      if (plan.said(path).isNot(word)) {
        found.add(
            new Change.Rewire(
                words.formatted(part.name()),
                List.of(new Edit.Say(path, List.of(word))),
                path,
                List.of(part.kind().word(), Touches.WIRING)));
      }
    }
  }

  private void turns() {
    for (Fitted part : plan.parts()) {
      String path = "parts." + part.name() + ".turns";
      if (plan.said(path).isNot("any")) {
        found.add(
            new Change.Rewire(
                "Let " + part.name() + " lie any way round",
                List.of(new Edit.Say(path, List.of("any"))),
                path,
                List.of("bay", part.kind().word())));
      }
    }
  }

  /** In steps of a tenth, the smallest first; both are wishes, so the owner gives something up. */
  private void wish(String key, String words) {
    double now = plan.amount(key) instanceof Amount.Known k ? k.value() : 1;
    for (int tenths = 9; tenths * STEP > LEAST - STEP / 2; tenths--) {
      double share = tenths / 10.0;
      if (share < now - STEP / 2) {
        found.add(
            new Change.Set(
                words + AmountText.text(share, Unit.SHARE),
                List.of(new Edit.Measure(key, share)),
                key,
                List.of(Touches.WISHES, Touches.CIRCUIT),
                key.endsWith("volume") ? "the volume wished for" : "the speed wished for"));
      }
    }
  }

  private void programming() {
    String key = "wishes.programming";
    String now = plan.said(key).or("");
    for (String word : now.isEmpty() ? List.<String>of() : Keys.require(key).words()) {
      if (!word.equals(now) && !word.equals("none")) {
        found.add(
            new Change.Set(
                word.equals("track")
                    ? "Program the decoder on a piece of track instead of by radio"
                    : "Program the decoder through the receiver",
                List.of(new Edit.Say(key, List.of(word))),
                key,
                List.of(Touches.WISHES),
                "the way of programming wished for"));
      }
    }
  }
}

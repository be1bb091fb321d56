package outshop.mend;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.plan.Edit;
import outshop.plan.EditedPlan;
import outshop.plan.Fitted;
import outshop.plan.Keys;
import outshop.plan.Plan;
import outshop.plan.Terminals;
import outshop.plan.WireRow;
import outshop.units.Amount;

/** The same parts, joined otherwise. */
final class WiringChanges {
  private static final String ROWS = "wiring.wires";
  private static final List<String> BY_WIRE =
      List.of(Touches.WIRING, Touches.CIRCUIT, "jack", "pack", "fuse", "switch");

  private final Plan plan;
  private final List<Change> found = new ArrayList<>();

  private WiringChanges(Plan plan) {
    this.plan = plan;
  }

  static List<Change> of(Plan plan) {
    WiringChanges changes = new WiringChanges(plan);
    changes.patterns();
    changes.packToFuse();
    plan.parts().forEach(changes::exchanges);
    changes.moves();
    changes.wiresLess();
    changes.outputs();
    changes.speakers();
    changes.joints();
    return changes.found;
  }

  private void rewire(String words, List<Edit> edits, String slot, List<String> touches) {
    found.add(new Change.Rewire(words, edits, slot, touches));
  }

  private void patterns() {
    String now = plan.said("wiring.pattern").or("");
    if (now.equals("by-wire")) {
      return;
    }
    for (String pattern : Keys.require("wiring.pattern").words()) {
      if (!pattern.equals(now) && !pattern.equals("by-wire") && suits(pattern)) {
        rewire(
            "Wire it by the pattern " + pattern + (now.isEmpty() ? "" : " instead of " + now),
            List.of(new Edit.Say("wiring.pattern", List.of(pattern))),
            "wiring.pattern",
            List.of(Touches.WIRING, Touches.CIRCUIT, "jack", "switch"));
      }
    }
  }

  private boolean suits(String pattern) {
    boolean jack = !plan.parts(Kind.JACK).isEmpty();
    return switch (pattern) {
      case "break-contact-jack" ->
          plan.parts(Kind.JACK).stream().anyMatch(j -> !j.said("breaks").is("none"));
      case "changeover-switch" ->
          jack
              && plan.parts(Kind.SWITCH).stream()
                  .anyMatch(s -> s.said("function").is("changeover"));
      case "plain-jack" -> jack;
      default -> !jack;
    };
  }

  private void packToFuse() {
    String key = "wiring.pack_to_fuse";
    if (plan.amount(key) instanceof Amount.Known length && length.value() > PackLeads.NEAR_METRES) {
      rewire(
          "Put the fuse nearer to the pack, 50 mm along the lead",
          List.of(new Edit.Measure(key, PackLeads.NEAR_METRES)),
          key,
          List.of(Touches.WIRING, Touches.CIRCUIT, "fuse"));
    }
    for (Fitted fuse : plan.parts(Kind.FUSE)) {
      List<Edit> edits = new PackLeads(plan).moved(fuse);
      if (!edits.isEmpty()) {
        rewire(
            "Move "
                + fuse.name()
                + " into the lead at the pack, no more than 50 mm from it, before everything"
                + " else",
            edits,
            ROWS,
            BY_WIRE);
      }
    }
  }

  /** Two terminals of one part exchanged, wherever the list of wires names them. */
  private void exchanges(Fitted part) {
    List<String> named = new ArrayList<>(EditedPlan.terminalsNamed(plan, part.name()));
    named.removeIf(t -> rowEnds(part.name() + "." + t).isEmpty());
    List<String> all = Terminals.of(part.part());
    for (int i = 0; i < named.size(); i++) {
      for (String other : all) {
        int at = named.indexOf(other);
        boolean free = at < 0;
        boolean swap = free || at > i;
        if (swap && !other.equals(named.get(i)) && matters(part, named.get(i), other)) {
          exchange(part.name() + "." + named.get(i), part.name() + "." + other, free);
        }
      }
    }
  }

  /** The ends of a fuse, a resistor or an on-off switch are alike. */
  private static boolean matters(Fitted part, String one, String other) {
    boolean alike =
        part.is(Kind.FUSE) || part.is(Kind.RESISTOR) || part.is(Kind.BULB) || part.is(Kind.CABLE);
    boolean ends = Set.of("a", "b").containsAll(Set.of(one, other));
    return !alike && !part.is(Kind.CONNECTOR) && !(part.is(Kind.SWITCH) && ends);
  }

  private void exchange(String one, String other, boolean free) {
    List<Edit> edits = new ArrayList<>();
    rowEnds(one).forEach(path -> edits.add(new Edit.Say(path, List.of(other))));
    rowEnds(other).forEach(path -> edits.add(new Edit.Say(path, List.of(one))));
    String words =
        free
            ? "Move what is wired to " + one + " to " + other
            : "Exchange the wires at " + one + " and at " + other;
    rewire(words, edits, ROWS, touching(one));
  }

  private List<String> touching(String terminal) {
    List<String> touches = new ArrayList<>(BY_WIRE);
    String owner = terminal.substring(0, terminal.indexOf('.'));
    plan.part(owner).ifPresent(p -> touches.add(p.kind().word()));
    return touches;
  }

  private List<String> rowEnds(String terminal) {
    List<String> paths = new ArrayList<>();
    for (int row = 1; row <= plan.wires().size(); row++) {
      WireRow wire = plan.wires().get(row - 1);
      if (wire.from().equals(terminal)) {
        paths.add(ROWS + "." + row + ".from");
      }
      if (wire.to().equals(terminal)) {
        paths.add(ROWS + "." + row + ".to");
      }
    }
    return paths;
  }

  /** One end of one wire moved to another terminal of the same part. */
  private void moves() {
    for (int row = 1; row <= plan.wires().size(); row++) {
      WireRow wire = plan.wires().get(row - 1);
      move(row, ".from", wire.from(), wire.to());
      move(row, ".to", wire.to(), wire.from());
    }
  }

  private void move(int row, String end, String terminal, String otherEnd) {
    int point = terminal.indexOf('.');
    Optional<Fitted> part = point < 0 ? Optional.empty() : plan.part(terminal.substring(0, point));
    if (part.isEmpty() || rowEnds(terminal).size() < 2) {
      return;
    }
    for (String name : Terminals.of(part.get().part())) {
      String other = part.get().name() + "." + name;
      boolean changes = !other.equals(terminal) && !other.equals(otherEnd);
      if (changes) {
        rewire(
            "Move the end of the wire from " + otherEnd + " from " + terminal + " to " + other,
            List.of(new Edit.Say(ROWS + "." + row + end, List.of(other))),
            ROWS,
            touching(terminal));
      }
    }
  }

  private void wiresLess() {
    for (int row = 1; row <= plan.wires().size(); row++) {
      WireRow wire = plan.wires().get(row - 1);
      rewire(
          "Leave out the wire from " + wire.from() + " to " + wire.to(),
          List.of(new Edit.Drop(ROWS + "." + row)),
          ROWS,
          touching(wire.from().contains(".") ? wire.from() : wire.from() + "."));
    }
  }

  private void outputs() {
    List<String> touches =
        List.of(Touches.OUTPUT, "lamp", "led", "resistor", Touches.WIRING, Touches.CIRCUIT);
    for (String output : plan.names("outputs")) {
      String at = "outputs." + output;
      if (plan.said(at + ".returns").isNot("common")) {
        rewire(
            "Return what hangs on " + output + " to the decoder's common lead",
            List.of(new Edit.Say(at + ".returns", List.of("common"))),
            at + ".returns",
            touches);
      }
      turned(at + ".anode", "the LED at " + output, touches);
      free(output, touches);
    }
    for (String lamp : plan.names("locomotive.lamps")) {
      turned("locomotive.lamps." + lamp + ".anode", lamp, touches);
    }
  }

  private void turned(String key, String what, List<String> touches) {
    plan.text(key)
        .ifPresent(
            now ->
                rewire(
                    "Turn " + what + " round",
                    List.of(new Edit.Say(key, List.of(now.equals("common") ? "output" : "common"))),
                    key,
                    touches));
  }

  /** What hangs on one output, on the first that is free. */
  private void free(String output, List<String> touches) {
    int n = 1;
    while (plan.names("outputs").contains("out-" + n)) {
      n++;
    }
    String from = "outputs." + output + ".";
    String to = "outputs.out-" + n + ".";
    List<Edit> edits = new ArrayList<>();
    plan.stated()
        .forEach(
            (path, stated) -> {
              if (path.startsWith(from)) {
                edits.add(new Edit.Say(to + path.substring(from.length()), stated.texts()));
              }
            });
    boolean named =
        plan.parts(Kind.DECODER).stream()
            .anyMatch(d -> EditedPlan.terminalsNamed(plan, d.name()).contains(output));
    if (!edits.isEmpty() && !named) {
      edits.add(new Edit.Drop("outputs." + output));
      rewire("Put what hangs on " + output + " on out-" + n, edits, "outputs." + output, touches);
    }
  }

  private void speakers() {
    List<String> touches = List.of(Kind.SPEAKER.word(), Touches.CIRCUIT);
    int count = plan.parts(Kind.SPEAKER).size();
    boolean old = plan.said("locomotive.old_speaker.kept").is("yes");
    if (count + (old ? 1 : 0) < 2) {
      return;
    }
    boolean series = plan.said("speakers.join").is("series");
    rewire(
        series
            ? "Join the speakers in parallel (side by side) instead of in series"
            : "Join the speakers in series (one after the other) instead of in parallel",
        List.of(new Edit.Say("speakers.join", List.of(series ? "parallel" : "series"))),
        "speakers.join",
        touches);
    if (plan.said("speakers.polarity").is("opposite")) {
      rewire(
          "Turn one speaker's leads round, so that both cones move the same way",
          List.of(new Edit.Say("speakers.polarity", List.of("same"))),
          "speakers.polarity",
          touches);
    }
  }

  /** Continuity that was found and should not be: parted, on the locomotive itself. */
  private void joints() {
    for (String motor : plan.names("locomotive.motors")) {
      part("locomotive.motors." + motor + ".joined_to", "a lead of " + motor, "motor");
      taken("locomotive.motors." + motor + ".left_in_leads", motor);
    }
    part("locomotive.frame.joined_to", "the frame", "frame");
    part("locomotive.pickups.joined_to", "the pickups", "pickups");
    part("speakers.joined_to", "the speaker's lead", Kind.SPEAKER.word());
    int row = 0;
    for (Plan.Joined pair : plan.joined()) {
      row++;
      rewire(
          "Part " + pair.one() + " from " + pair.other() + ", and measure again",
          List.of(new Edit.Drop("measured.joined." + row)),
          "measured.joined",
          List.of("measured", Touches.WIRING, Touches.CIRCUIT));
    }
  }

  private void part(String key, String what, String touched) {
    List<String> joined = plan.list(key).orElse(List.of());
    if (!joined.isEmpty()) {
      Set<String> touches =
          new LinkedHashSet<>(
              List.of(touched, "frame", "pickups", "motor", Touches.WIRING, Touches.CIRCUIT));
      touches.add("old speaker");
      rewire(
          "Part " + what + " from " + String.join(", ", joined) + ", and measure again",
          List.of(new Edit.Say(key, List.of("none"))),
          key,
          List.copyOf(touches));
    }
  }

  private void taken(String key, String motor) {
    List<String> left = plan.list(key).orElse(List.of());
    if (!left.isEmpty()) {
      found.add(
          new Change.Remove(
              "Take the " + String.join(" and the ", left) + " out of the leads of " + motor,
              List.of(new Edit.Say(key, List.of("none"))),
              key,
              List.of("motor", Touches.CIRCUIT),
              ""));
    }
  }
}

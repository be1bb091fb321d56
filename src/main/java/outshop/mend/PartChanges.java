package outshop.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.plan.Edit;
import outshop.plan.EditedPlan;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.plan.Terminals;

/** Other parts, parts more, parts less. */
final class PartChanges {
  /** What a plan without one is asked for. */
  private static final List<Kind> ADDED =
      List.of(
          Kind.CHARGER,
          Kind.PLUG,
          Kind.JACK,
          Kind.PACK,
          Kind.FUSE,
          Kind.SWITCH,
          Kind.HANDSET,
          Kind.RECEIVER,
          Kind.DECODER,
          Kind.SPEAKER);

  /** What sits in a bay. */
  private static final Set<Kind> IN_A_BAY =
      EnumSet.of(Kind.PACK, Kind.RECEIVER, Kind.DECODER, Kind.SPEAKER);

  /** Without these the rest still works; of every other kind only one too many may go. */
  private static final Set<Kind> SPARED =
      EnumSet.of(
          Kind.CHARGER,
          Kind.PLUG,
          Kind.JACK,
          Kind.CONNECTOR,
          Kind.SLEEVE,
          Kind.CAPACITOR,
          Kind.REGULATOR,
          Kind.RESISTOR);

  private static final Set<Kind> LOADS = EnumSet.of(Kind.BULB, Kind.LED, Kind.SMOKE_HEATER);

  private final Plan plan;
  private final Catalogue catalogue;
  private final List<Change> found = new ArrayList<>();

  private PartChanges(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
  }

  static List<Change> of(Plan plan, Catalogue catalogue) {
    PartChanges changes = new PartChanges(plan, catalogue);
    plan.parts().forEach(changes::swaps);
    changes.wires();
    changes.lamps();
    changes.smoke();
    changes.oldSpeaker();
    ADDED.forEach(changes::additions);
    changes.resistors();
    plan.parts().forEach(changes::removal);
    return changes.found;
  }

  private void swaps(Fitted fitted) {
    List<String> named = EditedPlan.terminalsNamed(plan, fitted.name());
    for (Part part : catalogue.of(fitted.kind())) {
      boolean same = part.id().equals(fitted.part().id());
      if (!same && named.stream().allMatch(t -> Terminals.mayHave(part, t))) {
        String path = "parts." + fitted.name();
        String words = taken(part, fitted.name()) + ", in place of " + fitted.part().title();
        String lost = lost(part);
        found.add(
            new Change.Swap(
                words, List.of(new Edit.Fit(path, part)), path, Touches.of(part.kind()), lost));
        adjusted(fitted, part, path);
      }
    }
  }

  /** A receiver whose cut-off can be set, set for the pack that is there. */
  private void adjusted(Fitted fitted, Part part, String path) {
    if (part.kind() != Kind.RECEIVER || !part.said("cutoff_adjustable").is("yes")) {
      return;
    }
    CutOff.ofThePack(plan)
        .filter(cutOff -> !cutOff.isSetAt(part))
        .ifPresent(
            cutOff ->
                found.add(
                    new Change.Swap(
                        taken(part, fitted.name())
                            + ", in place of "
                            + fitted.part().title()
                            + ", and set "
                            + cutOff.words(),
                        List.of(new Edit.Fit(path, part), cutOff.edit(path)),
                        path,
                        Touches.of(part.kind()),
                        "")));
  }

  /** What the owner wishes and this part cannot do, in words; empty if nothing. */
  private String lost(Part part) {
    String wish = plan.said("wishes.sound").or("none");
    if (part.kind() != Kind.DECODER || wish.equals("none")) {
      return "";
    }
    if (part.said("sound").is("no")) {
      return "the sound: this one makes none";
    }
    Set<String> sounds = part.several("sounds");
    return sounds.isEmpty() || sounds.contains(wish)
        ? ""
        : "the sounds of " + wish + ": this one has others";
  }

  private static String taken(Part part, String name) {
    return "Take " + titled(part) + " for " + name;
  }

  static String titled(Part part) {
    return part.title().equals(part.id()) ? part.id() : part.title() + " (" + part.id() + ")";
  }

  /** Every stretch of one material at once: the material of a key, and the rows that name it. */
  private void wires() {
    Map<String, List<String>> paths = new LinkedHashMap<>();
    Map<String, String> titles = new LinkedHashMap<>();
    for (Fitted material : plan.materials()) {
      paths.computeIfAbsent(material.part().id(), i -> new ArrayList<>()).add(material.name());
      titles.put(material.part().id(), material.part().title());
    }
    for (int row = 1; row <= plan.wires().size(); row++) {
      String path = "wiring.wires." + row + ".wire";
      Optional<String> id = plan.text(path);
      if (id.isPresent()) {
        paths.computeIfAbsent(id.get(), i -> new ArrayList<>()).add(path);
        titles.put(id.get(), plan.wires().get(row - 1).wire().title());
      }
    }
    paths.forEach((id, all) -> otherWire(id, titles.get(id), all));
  }

  private void otherWire(String id, String title, List<String> paths) {
    for (Part part : catalogue.of(Kind.WIRE)) {
      if (!part.id().equals(id)) {
        List<Edit> edits = new ArrayList<>();
        paths.forEach(path -> edits.add(new Edit.Fit(path, part)));
        String use = use(paths);
        String before = title.equals(id) && id.contains(".") ? "" : ", in place of " + title;
        found.add(
            new Change.Swap(
                "Take " + titled(part) + " for " + use + before,
                edits,
                "wire " + id,
                List.of(Kind.WIRE.word(), Touches.WIRING, Touches.CIRCUIT),
                ""));
      }
    }
  }

  private static String use(List<String> paths) {
    List<String> uses = new ArrayList<>();
    for (String path : paths) {
      String use =
          switch (path) {
            case "wiring.wire" -> "the power path";
            case "wiring.motor_wire" -> "the motor's leads";
            case "wiring.light_wire" -> "the leads to lamps and speaker";
            default -> "the wires listed one by one";
          };
      if (!uses.contains(use)) {
        uses.add(use);
      }
    }
    return String.join(" and ", uses);
  }

  /** A new bulb or LED under the name of a lamp of the locomotive. */
  private void lamps() {
    for (String lamp : plan.names("locomotive.lamps")) {
      for (Kind kind : List.of(Kind.BULB, Kind.LED)) {
        replacements("lamp", "locomotive.lamps." + lamp, lamp, kind);
      }
    }
  }

  private void smoke() {
    for (String heater : plan.names("locomotive.smoke")) {
      replacements("smoke heater", "locomotive.smoke." + heater, heater, Kind.SMOKE_HEATER);
    }
  }

  private void replacements(String what, String path, String name, Kind kind) {
    List<String> named = EditedPlan.terminalsNamed(plan, name);
    List<String> touches = new ArrayList<>(Touches.of(kind));
    touches.addAll(List.of("lamp", Touches.OUTPUT));
    for (Part part : catalogue.of(kind)) {
      if (named.stream().allMatch(t -> Terminals.mayHave(part, t))) {
        found.add(
            new Change.Swap(
                taken(part, name) + ", in place of the locomotive's own " + what,
                List.of(new Edit.Drop(path), new Edit.Fit("parts." + name, part)),
                path,
                touches,
                ""));
      }
    }
  }

  private void oldSpeaker() {
    if (!plan.said("locomotive.old_speaker.kept").is("yes")
        || !EditedPlan.terminalsNamed(plan, Terminals.OLD_SPEAKER).isEmpty()) {
      return;
    }
    String kept = "locomotive.old_speaker.kept";
    List<String> touches = new ArrayList<>(Touches.ofPresence(Kind.SPEAKER));
    touches.add("old speaker");
    for (Part part : catalogue.of(Kind.SPEAKER)) {
      for (List<Edit> fit : fits(freeName(Kind.SPEAKER), part)) {
        List<Edit> edits = new ArrayList<>(List.of(new Edit.Say(kept, List.of("no"))));
        edits.addAll(fit);
        String where = where(fit);
        found.add(
            new Change.Swap(
                "Take " + titled(part) + where + ", in place of the old speaker",
                edits,
                kept,
                touches,
                ""));
      }
    }
  }

  private void additions(Kind kind) {
    int there = plan.parts(kind).size();
    boolean another = kind == Kind.FUSE && there > 0 && there < plan.parts(Kind.PACK).size();
    if (there > 0 && !another) {
      return;
    }
    boolean byWire = plan.said("wiring.pattern").is("by-wire");
    String name = freeName(kind);
    for (Part part : catalogue.of(kind)) {
      for (List<Edit> fit : fits(name, part)) {
        List<Edit> edits = new ArrayList<>(fit);
        boolean wired = true;
        if (byWire && (kind == Kind.FUSE || kind == Kind.SWITCH)) {
          List<Edit> wires = new PackLeads(plan).inserted(name, part);
          wired = !wires.isEmpty();
          edits.addAll(wires);
        }
        if (wired) {
          found.add(
              new Change.Add(
                  "Add " + titled(part) + where(fit),
                  edits,
                  "parts." + name,
                  Touches.ofPresence(kind)));
        }
      }
    }
  }

  /** The ways a new part can be fitted: one for each bay where it needs one. */
  private List<List<Edit>> fits(String name, Part part) {
    Edit fit = new Edit.Fit("parts." + name, part);
    List<String> bays = plan.names("locomotive.bays");
    if (!IN_A_BAY.contains(part.kind()) || bays.isEmpty()) {
      return List.of(List.of(fit));
    }
    List<List<Edit>> fits = new ArrayList<>();
    for (String bay : bays) {
      List<Edit> edits = new ArrayList<>();
      edits.add(fit);
      edits.add(new Edit.Say("parts." + name + ".bay", List.of(bay)));
      if (part.kind() == Kind.PACK) {
        edits.add(new Edit.Say("parts." + name + ".held_by", List.of("strap")));
      }
      fits.add(edits);
    }
    return fits;
  }

  private static String where(List<Edit> fit) {
    return fit.size() > 1 && fit.get(1) instanceof Edit.Say say
        ? ", in bay " + say.texts().get(0)
        : "";
  }

  private String freeName(Kind kind) {
    String name = kind.word();
    for (int n = 2; isTaken(name); n++) {
      name = kind.word() + "-" + n;
    }
    return name;
  }

  private boolean isTaken(String name) {
    return plan.part(name).isPresent()
        || List.of("motors", "lamps", "smoke", "bays").stream()
            .anyMatch(s -> plan.names("locomotive." + s).contains(name));
  }

  /** A resistor in the lead of an output that has none. */
  private void resistors() {
    for (String output : plan.names("outputs")) {
      String key = "outputs." + output + ".resistor";
      if (plan.text(key).isPresent()) {
        continue;
      }
      String name = "r-" + output;
      for (Part part : isTaken(name) ? List.<Part>of() : catalogue.of(Kind.RESISTOR)) {
        found.add(
            new Change.Add(
                "Add " + titled(part) + " in the lead of " + output,
                List.of(new Edit.Fit("parts." + name, part), new Edit.Say(key, List.of(name))),
                key,
                Touches.ofPresence(Kind.RESISTOR)));
      }
    }
  }

  private void removal(Fitted fitted) {
    boolean oneTooMany = plan.parts(fitted.kind()).size() > 1;
    boolean named = !EditedPlan.terminalsNamed(plan, fitted.name()).isEmpty();
    boolean load = LOADS.contains(fitted.kind());
    if (named || (!load && !oneTooMany && !SPARED.contains(fitted.kind()))) {
      return;
    }
    boolean lost = load || fitted.is(Kind.SPEAKER) || fitted.is(Kind.PACK);
    List<Edit> edits = new ArrayList<>(List.of(new Edit.Drop("parts." + fitted.name())));
    edits.addAll(unmentioned(fitted.name()));
    found.add(
        new Change.Remove(
            "Leave out " + fitted.described(),
            edits,
            "parts." + fitted.name(),
            Touches.ofPresence(fitted.kind()),
            lost ? fitted.name() : ""));
  }

  /** Takes a name out of the keys that name a part. */
  private List<Edit> unmentioned(String name) {
    List<Edit> edits = new ArrayList<>();
    List<String> paths = new ArrayList<>(plan.stated().keySet());
    paths.sort(Comparator.naturalOrder());
    for (String path : paths) {
      boolean link = path.startsWith("wiring.") && path.endsWith("_through");
      boolean resistor = path.startsWith("outputs.") && path.endsWith(".resistor");
      if ((link || resistor) && plan.text(path).filter(name::equals).isPresent()) {
        edits.add(new Edit.Drop(path));
      }
      boolean list = path.startsWith("outputs.") && path.endsWith(".feeds");
      List<String> names = list ? plan.list(path).orElse(List.of()) : List.of();
      boolean beside = path.startsWith("locomotive.bays.") && path.endsWith(".beside");
      names = beside ? plan.list(path).orElse(List.of()) : names;
      if (names.contains(name)) {
        List<String> left = names.stream().filter(n -> !n.equals(name)).toList();
        edits.add(
            left.isEmpty() && list
                ? new Edit.Drop(path.substring(0, path.lastIndexOf('.')))
                : new Edit.Say(path, left.isEmpty() ? List.of("none") : left));
      }
      boolean decoder = path.startsWith("outputs.") && path.endsWith(".decoder");
      if (decoder && plan.text(path).filter(name::equals).isPresent()) {
        edits.add(new Edit.Drop(path));
      }
    }
    return edits;
  }
}

package outshop.plan;

import java.util.ArrayList;
import java.util.List;
import outshop.input.Shown;

/**
 * The measuring sheet: what to measure on a locomotive and how, with boxes to fill in by hand;
 * plain text, 80 columns. For a plan it asks only for what the plan does not state yet.
 */
public final class MeasuringSheet {
  private static final int WIDTH = 80;
  private static final String RULE = "-".repeat(WIDTH);
  private static final String LINE_BOX = "[______________________________]";
  private static final String PAIR_BOX = "[____________________] with [____________________]";

  /** Common practice, no source; makers' instructions and local codes come before it. */
  private static final List<String> CAUTIONS =
      List.of(
          "Leave every lithium pack, and any other charged pack, unplugged and out of the"
              + " locomotive while you measure.",
          "Use a bench supply with a current limit. Set a low voltage (7 V is common practice) and the limit"
              + " first, then connect, one pair of leads at a time.",
          "Blocked motor: hold the wheels for one second, read, switch off, let it cool.",
          "Ohmmeter: only with everything unplugged and no supply connected.",
          "Lamps, smoke heaters and blocked motors get hot; wheels and rods pinch.",
          "Leave anything that plugs into the mains closed. What is inside is for qualified"
              + " people.",
          "The makers' instructions and the local codes come first; this list is not complete.");

  /**
   * What a sheet asks for, without its layout.
   *
   * @param title of the plan; blank where nothing is known yet
   * @param cautions before anything is measured
   */
  public record Content(String title, List<String> cautions, List<Group> groups) {
    public Content {
      cautions = List.copyOf(cautions);
      groups = List.copyOf(groups);
    }
  }

  /** What is asked of one thing. */
  public record Group(String heading, List<Item> items) {
    public Group {
      items = List.copyOf(items);
    }
  }

  /**
   * One value that is asked for.
   *
   * @param what it is
   * @param how to get it
   * @param choices to tick; then there is nothing to write
   * @param unit in which a number is written; empty for a count and for words
   */
  public record Item(
      String name, String what, String how, Box box, List<String> choices, String unit) {
    public Item {
      choices = List.copyOf(choices);
    }
  }

  /** What is to be filled in. */
  public enum Box {
    CHOICES,
    NUMBER,
    NUMBER_OR_NONE,
    COUNT,
    LINE,
    LINE_OR_NONE,
    PAIRS
  }

  private final StringBuilder out = new StringBuilder();
  private final Plan plan;
  private final boolean blank;
  private final List<Group> groups = new ArrayList<>();

  private MeasuringSheet(Plan plan, boolean blank) {
    this.plan = plan;
    this.blank = blank;
  }

  /** The whole sheet, for a locomotive of which nothing is known yet. */
  public static String blank() {
    Plan nothing = new Plan("", java.util.Map.of(), List.of(), List.of(), List.of());
    return new MeasuringSheet(nothing, true).text("");
  }

  /** What a plan does not state yet, without its layout. */
  public static Content content(Plan plan) {
    return new MeasuringSheet(plan, false).content(plan.title());
  }

  private Content content(String title) {
    KeyTree locomotive = KeyTree.ROOT.named("locomotive").orElseThrow();
    for (String name : locomotive.names()) {
      group(name, locomotive.named(name).orElseThrow());
    }
    items(
        "On the bench, once receiver and decoder are there",
        "measured",
        KeyTree.ROOT.named("measured").orElseThrow());
    return new Content(title, CAUTIONS, groups);
  }

  /** What a plan does not state yet. */
  public static String of(Plan plan) {
    return new MeasuringSheet(plan, false).text(plan.title());
  }

  private String text(String title) {
    out.append("MEASURING SHEET\n");
    if (title.isBlank()) {
      out.append("Locomotive: ").append(LINE_BOX).append('\n');
    } else {
      paragraph("", Shown.text(title));
    }
    out.append("Measured by: [____________________]   Date: [____________]\n\n");
    out.append("Before you measure\n");
    Content content = content(title);
    content.cautions().forEach(caution -> paragraph("  ! ", caution));
    content.groups().forEach(this::write);
    if (content.groups().isEmpty()) {
      out.append('\n').append("Nothing is left to measure: the plan states it all.\n");
    }
    return out.toString();
  }

  private void group(String name, KeyTree at) {
    String path = at.path();
    if (at.own().isEmpty()) {
      items(heading(name), path, at);
      return;
    }
    List<String> names = plan.names(path);
    for (String own : names) {
      items(heading(name) + " \"" + own + "\"", path + "." + own, at.own().get());
    }
    if (names.isEmpty() && (blank || name.equals("bays") || name.equals("motors"))) {
      String each = heading(name) + " (one copy for each)   its name: [______________]";
      items(each, path + ".*", at.own().get());
    }
  }

  private static String heading(String section) {
    return switch (section) {
      case "frame" -> "Frame";
      case "bays" -> "Bay";
      case "motors" -> "Motor";
      case "lamps" -> "Lamp";
      case "smoke" -> "Smoke heater";
      case "old_speaker" -> "Old speaker";
      case "pickups" -> "Pickups";
      default -> throw new IllegalStateException("nobody named the section " + section);
    };
  }

  /** Asks for every key below a section that is not stated. */
  private void items(String heading, String path, KeyTree at) {
    List<Key> missing = new ArrayList<>();
    for (KeyTree place : at.below()) {
      Key key = place.key().orElseThrow();
      String full = path + "." + key.name();
      if (!plan.stated().containsKey(full) && isWorthAsking(path, key)) {
        missing.add(key);
      }
    }
    if (missing.isEmpty()) {
      return;
    }
    groups.add(new Group(heading, missing.stream().map(MeasuringSheet::item).toList()));
  }

  private void write(Group group) {
    out.append('\n').append(RULE).append('\n');
    paragraph("", group.heading());
    for (Item item : group.items()) {
      out.append('\n');
      paragraph("  ", item.name() + ": " + item.what());
      paragraph("      how: ", item.how());
      boxes(item);
    }
  }

  /**
   * A filament lamp has no anode, a speaker that goes need not be measured, and the share of the
   * capacity counted on is a decision.
   */
  private boolean isWorthAsking(String path, Key key) {
    return switch (key.path()) {
      case "locomotive.lamps.*.forward_volts", "locomotive.lamps.*.anode" ->
          !isStated(path + ".kind", "filament");
      case "locomotive.old_speaker.reading",
          "locomotive.old_speaker.nominal",
          "locomotive.old_speaker.power" ->
          !isStated(path + ".kept", "no");
      case "measured.usable" -> false;
      default -> true;
    };
  }

  private boolean isStated(String path, String word) {
    Plan.Stated at = plan.stated().get(path);
    return at != null && at.texts().contains(word);
  }

  private static Item item(Key key) {
    List<String> choices = new ArrayList<>();
    Box box =
        switch (key.type()) {
          case WORD -> {
            choices.addAll(key.words());
            yield Box.CHOICES;
          }
          case QUANTITY -> Box.NUMBER;
          case QUANTITY_OR_NONE -> Box.NUMBER_OR_NONE;
          case COUNT -> Box.COUNT;
          case NAMES -> {
            choices.addAll(key.words());
            if (!choices.isEmpty()) {
              choices.add("none");
            }
            yield choices.isEmpty() ? Box.LINE_OR_NONE : Box.CHOICES;
          }
          case ROWS -> Box.PAIRS;
          case TEXT, NAME, PART -> Box.LINE;
        };
    boolean number = box == Box.NUMBER || box == Box.NUMBER_OR_NONE;
    String unit = number ? Written.like(key).spelling() : "";
    return new Item(key.name(), key.help(), key.how(), box, choices, unit);
  }

  private void boxes(Item item) {
    switch (item.box()) {
      case CHOICES -> paragraph("      ", "( ) " + String.join("   ( ) ", item.choices()));
      case NUMBER -> box(item, "");
      case NUMBER_OR_NONE -> box(item, "   ( ) none");
      case COUNT -> paragraph("      ", "[______]");
      case LINE -> paragraph("      ", LINE_BOX);
      case LINE_OR_NONE -> paragraph("      ", LINE_BOX + "   ( ) none");
      case PAIRS -> {
        paragraph("      ", PAIR_BOX + "   ( ) none");
        paragraph("      ", PAIR_BOX);
      }
    }
  }

  private void box(Item item, String after) {
    String unit = item.unit();
    paragraph("      ", "[__________" + (unit.isEmpty() ? "" : " " + unit) + "]" + after);
  }

  private void paragraph(String lead, String text) {
    String indent = lead;
    for (String line : Wrapped.lines(text, WIDTH - lead.length())) {
      out.append(indent).append(line).append('\n');
      indent = " ".repeat(lead.length());
    }
  }
}

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

  private final StringBuilder out = new StringBuilder();
  private final Plan plan;
  private final boolean blank;
  private int asked;

  private MeasuringSheet(Plan plan, boolean blank) {
    this.plan = plan;
    this.blank = blank;
  }

  /** The whole sheet, for a locomotive of which nothing is known yet. */
  public static String blank() {
    Plan nothing = new Plan("", java.util.Map.of(), List.of(), List.of(), List.of());
    return new MeasuringSheet(nothing, true).text("");
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
    CAUTIONS.forEach(caution -> paragraph("  ! ", caution));
    KeyTree locomotive = KeyTree.ROOT.named("locomotive").orElseThrow();
    for (String name : locomotive.names()) {
      group(name, locomotive.named(name).orElseThrow());
    }
    items(
        "On the bench, once receiver and decoder are there",
        "measured",
        KeyTree.ROOT.named("measured").orElseThrow());
    if (asked == 0) {
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
    out.append('\n').append(RULE).append('\n');
    paragraph("", heading);
    for (Key key : missing) {
      asked++;
      out.append('\n');
      paragraph("  ", key.name() + ": " + key.help());
      paragraph("      how: ", key.how());
      boxes(key);
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

  private void boxes(Key key) {
    switch (key.type()) {
      case WORD -> choices(key.words());
      case QUANTITY -> box(key, "");
      case QUANTITY_OR_NONE -> box(key, "   ( ) none");
      case COUNT -> paragraph("      ", "[______]");
      case NAMES -> {
        if (key.words().isEmpty()) {
          paragraph("      ", LINE_BOX + "   ( ) none");
        } else {
          List<String> words = new ArrayList<>(key.words());
          words.add("none");
          choices(words);
        }
      }
      case ROWS -> {
        paragraph("      ", PAIR_BOX + "   ( ) none");
        paragraph("      ", PAIR_BOX);
      }
      case TEXT, NAME, PART -> paragraph("      ", LINE_BOX);
    }
  }

  private void box(Key key, String after) {
    String unit = Written.like(key).spelling();
    paragraph("      ", "[__________" + (unit.isEmpty() ? "" : " " + unit) + "]" + after);
  }

  private void choices(List<String> words) {
    paragraph("      ", "( ) " + String.join("   ( ) ", words));
  }

  private void paragraph(String lead, String text) {
    String indent = lead;
    for (String line : Wrapped.lines(text, WIDTH - lead.length())) {
      out.append(indent).append(line).append('\n');
      indent = " ".repeat(lead.length());
    }
  }
}

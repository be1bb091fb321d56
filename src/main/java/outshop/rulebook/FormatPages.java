package outshop.rulebook;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.plan.Key;
import outshop.plan.Keys;
import outshop.plan.Terminals;
import outshop.units.Origin;

/**
 * Writes the reference of the two file formats, {@code docs/catalogue.md} and {@code docs/plan.md},
 * from their definitions.
 */
public final class FormatPages {
  private FormatPages() {}

  /** Every column of every kind of part. */
  public static String catalogue() {
    StringBuilder text = new StringBuilder();
    text.append("# The catalogue\n\n");
    text.append(
        "Made from the column definitions; do not edit. A catalogue is a folder of tables, one a kind of part, named `KIND.csv`. Any\n");
    text.append(
        "spreadsheet opens and saves them: comma, semicolon or tab between cells, point or (with semicolons) comma in numbers. Columns may\n");
    text.append(
        "stand in any order; columns of your own are kept as notes. A blank cell means *unknown*, never zero; where a part is stated not to\n");
    text.append(
        "have a thing, write `none` in the columns that allow it. Rows whose id begins with `#` are skipped.\n\n");
    text.append(
        "The last word of a number's column is its unit; a cell may carry its own (`2600 mA`). Where a column has a usual value, that value\n");
    text.append(
        "is used for a blank cell, carried as the whole plausible range, and named wherever it matters.\n");
    for (Kind kind : Kind.values()) {
      text.append("\n## ").append(kind.word()).append("\n\n");
      text.append(
          "| column | what it is | holds | usual if blank | how to get it |\n| --- | --- | --- | --- | --- |\n");
      for (Column column : Columns.of(kind)) {
        text.append("| ")
            .append(column.name())
            .append(" | ")
            .append(column.help())
            .append(" | ")
            .append(holds(column))
            .append(" | ");
        column.assumed().ifPresent(a -> text.append(plain(a)));
        text.append(" | ").append(column.how()).append(" |\n");
      }
    }
    return text.toString();
  }

  /** Every key of a plan. */
  public static String plan() {
    StringBuilder text = new StringBuilder();
    text.append("# The plan\n\n");
    text.append(
        "Made from the key definitions; do not edit. A plan is a YAML file. Quantities are written with their unit (`2.4 A`, `7 V`,\n");
    text.append(
        "`22 AWG`, `1.5 m`, `8 ohm`); a key left out means *unknown*. `*` stands for a name of your own. A part is a catalogue id, or a map\n");
    text.append(
        "with `part: ID` and what differs, or a map with `kind: KIND` and the columns of that kind. The JSON Schema for editors is\n");
    text.append("[plan.schema.json](plan.schema.json).\n\n");
    text.append(
        "| key | what it is | holds | example | how to get it |\n| --- | --- | --- | --- | --- |\n");
    for (Key key : Keys.all()) {
      text.append("| `")
          .append(key.path())
          .append("` | ")
          .append(key.help())
          .append(" | ")
          .append(holds(key))
          .append(" | `");
      text.append(key.example()).append("` | ").append(key.how()).append(" |\n");
    }
    terminals(text);
    return text.toString();
  }

  private static void terminals(StringBuilder text) {
    text.append("\n## Terminals\n\n");
    text.append(
        "Where a plan names a terminal (`joined_to`, `measured.joined`, `wiring.wires`) it writes `NAME.TERMINAL`: the name the thing has in\n");
    text.append(
        "the plan, then one of these. `splice.NAME` is a joint between wires under a name of your own; `frame`, `left-rail` and `right-rail`\n");
    text.append("stand for themselves.\n\n");
    text.append("| thing | its terminals |\n| --- | --- |\n");
    terminals(text, "motor, `old_speaker`", Terminals.ofMotor(), "");
    terminals(text, "lamp or smoke heater of the locomotive", Terminals.ofSmoke(), "");
    terminals(text, "lamp of kind `led`", Terminals.ofLamp("led"), "");
    for (Kind kind : Kind.values()) {
      List<String> names = Terminals.of(nothingStated(kind));
      if (!names.isEmpty()) {
        terminals(text, kind.word(), names, more(kind));
      }
    }
  }

  private static void terminals(
      StringBuilder text, String thing, List<String> terminals, String more) {
    text.append("| ")
        .append(thing)
        .append(" | `")
        .append(String.join("` `", terminals))
        .append('`')
        .append(more)
        .append(" |\n");
  }

  private static String more(Kind kind) {
    return switch (kind) {
      case SWITCH ->
          ", of a changeover switch `common` `run` `charge`; those of a second pole end in 2 (`a2`)";
      case CONNECTOR, CABLE -> ", then `2a` `2b` and so on: contact by contact, one for each side";
      case DECODER -> ", and `out-2`, `out-3` and so on";
      default -> "";
    };
  }

  private static Part nothingStated(Kind kind) {
    Place nowhere = Place.whole("");
    return new Part(kind, "", Map.of(), Map.of(), Map.of(), Origin.GUESS, nowhere);
  }

  private static String holds(Column column) {
    if (column.isNumber()) {
      String none = column.type() == Column.Type.NUMBER_OR_NONE ? ", or `none`" : "";
      return "a number, usually " + plain(column.low()) + " to " + plain(column.high()) + none;
    }
    if (column.type() == Column.Type.TEXT) {
      return "text";
    }
    String words =
        column.words().contains("*")
            ? "words of your own"
            : "`" + String.join("` `", column.words()) + "`";
    return column.type() == Column.Type.WORDS ? "one or more of " + words : words;
  }

  private static String holds(Key key) {
    return switch (key.type()) {
      case WORD -> "`" + String.join("` `", key.words()) + "`";
      case NAMES -> "names, or `[none]`";
      case ROWS -> "a list";
      default -> key.type().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    };
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}

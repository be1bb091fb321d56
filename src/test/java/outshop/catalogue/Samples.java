package outshop.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import outshop.input.Place;
import outshop.units.Origin;
import outshop.units.Unit;

/** Makes parts and tables out of a seed. */
final class Samples {
  private static final String LETTERS = "abc xyz,;\"'=+-@#\u00b5\u00b0\u03a9\u20ac0123.";

  private final SplittableRandom random;

  Samples(long seed) {
    this.random = new SplittableRandom(seed);
  }

  SplittableRandom random() {
    return random;
  }

  static List<Part> withoutPlaces(Collection<Part> parts) {
    List<Part> bare = new ArrayList<>();
    for (Part p : parts) {
      bare.add(
          new Part(
              p.kind(), p.id(), p.numbers(), p.words(), p.notes(), p.origin(), Place.whole("")));
    }
    bare.sort(Comparator.comparing(Part::id));
    return bare;
  }

  Kind kind() {
    List<String> words = Kind.words();
    return Kind.of(words.get(random.nextInt(words.size()))).orElseThrow();
  }

  /** A plausible number as written in the column, with at most the given decimals. */
  String number(Column column, int decimals) {
    boolean whole =
        column.name().endsWith("_count")
            || column.name().equals("awg")
            || column.name().endsWith("_awg");
    double drawn = column.low() + random.nextDouble() * (column.high() - column.low());
    BigDecimal rounded = new BigDecimal(drawn).setScale(whole ? 0 : decimals, RoundingMode.HALF_UP);
    boolean inside =
        rounded.doubleValue() >= column.low() && rounded.doubleValue() <= column.high();
    return NumberForm.shown(inside ? rounded : BigDecimal.valueOf(column.high()));
  }

  /** What may stand in a cell of the column; an empty text for a blank one. */
  String cell(Column column) {
    if (random.nextInt(4) == 0) {
      return "";
    }
    return switch (column.type()) {
      case TEXT -> text();
      case WORD -> column.words().get(random.nextInt(column.words().size()));
      case WORDS -> column.words().contains("*") ? "heron-2 wren" : column.words().get(0);
      case NUMBER -> number(column, 2);
      case NUMBER_OR_NONE -> random.nextInt(3) == 0 ? "none" : number(column, 2);
    };
  }

  /** A text in one line without blanks at its ends. */
  String text() {
    StringBuilder text = new StringBuilder();
    for (int n = random.nextInt(12); n >= 0; n--) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return Blanks.inOneLine(Blanks.trimmed(text.toString()));
  }

  /** The rows of a table, the header first. */
  List<List<String>> table(Kind kind, int parts) {
    List<List<String>> rows = new ArrayList<>();
    List<String> header = new ArrayList<>();
    for (Column column : Columns.of(kind)) {
      header.add(column.name());
    }
    header.add("shelf");
    rows.add(header);
    for (int i = 0; i < parts; i++) {
      List<String> row = new ArrayList<>();
      for (Column column : Columns.of(kind)) {
        row.add(column.name().equals("id") ? kind.word() + "-" + i : cell(column));
      }
      row.add(text());
      rows.add(row);
    }
    return rows;
  }

  /** A part with numbers of any length, held exactly as a double can. */
  Part part(Kind kind, String id) {
    Map<String, Double> numbers = new HashMap<>();
    Map<String, String> words = new HashMap<>();
    for (Column column : Columns.of(kind)) {
      String cell = column.name().equals("id") ? "" : cell(column);
      if (cell.isEmpty()) {
        continue;
      }
      if (!column.isNumber()) {
        words.put(column.name(), cell);
      } else if (cell.equals("none")) {
        numbers.put(column.name(), Double.NaN);
      } else {
        numbers.put(column.name(), held(column));
      }
    }
    Map<String, String> notes = new HashMap<>();
    notes.put("=shelf", "'quoted");
    notes.put("my own", "x" + text());
    return new Part(kind, id, numbers, words, notes, origin(words), Place.whole(""));
  }

  private double held(Column column) {
    boolean whole = column.unit() == Unit.COUNT || column.unit() == Unit.GAUGE;
    double drawn = column.low() + random.nextDouble() * (column.high() - column.low());
    return whole ? Math.ceil(drawn) : drawn * column.scale();
  }

  private static Origin origin(Map<String, String> words) {
    return switch (words.getOrDefault("origin", "guess")) {
      case "data-sheet" -> Origin.DATA_SHEET;
      case "measured" -> Origin.MEASURED;
      default -> Origin.GUESS;
    };
  }

  /** The rows as CSV, every cell quoted. */
  static String csv(List<List<String>> rows) {
    StringBuilder csv = new StringBuilder();
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        csv.append(i == 0 ? "\"" : ",\"").append(row.get(i).replace("\"", "\"\"")).append('"');
      }
      csv.append('\n');
    }
    return csv.toString();
  }
}

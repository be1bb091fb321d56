package outshop.catalogue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outshop.input.Problem;
import outshop.units.Exact;
import outshop.units.QuantityReader;

/** What must hold for every table; a failure names the seed that made it. */
final class CatalogueInvariantsTest {
  private static final int ROUNDS = 60;

  @Test
  void theOrderOfRowsAndColumnsChangesNothing() {
    for (long seed = 1; seed <= ROUNDS; seed++) {
      Samples samples = new Samples(seed);
      Kind kind = samples.kind();
      List<List<String>> table = samples.table(kind, 12);
      spoil(table, samples);

      CatalogueReader.Read plain = read(kind, Samples.csv(table));
      CatalogueReader.Read shuffled = read(kind, Samples.csv(shuffled(table, seed)));

      assertThat(parts(shuffled)).as("seed %d", seed).isEqualTo(parts(plain));
      assertThat(said(shuffled)).as("seed %d", seed).isEqualTo(said(plain));
      assertThat(said(plain)).as("seed %d", seed).isNotEmpty();
    }
  }

  /** Puts nonsense into some cells, so that there is something to say. */
  private static void spoil(List<List<String>> table, Samples samples) {
    String[] nonsense = {"0", "-3", "99999999", "x y", "1,500", "7 lb", "none", "#N/A", "3.14159"};
    int columns = table.get(0).size();
    for (int n = 0; n < 10; n++) {
      int row = 1 + samples.random().nextInt(table.size() - 1);
      int column = 1 + samples.random().nextInt(columns - 1);
      table.get(row).set(column, nonsense[samples.random().nextInt(nonsense.length)]);
    }
    table.get(1).set(table.get(0).indexOf("price_each"), "free");
  }

  private static List<List<String>> shuffled(List<List<String>> table, long seed) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < table.get(0).size(); i++) {
      order.add(i);
    }
    Collections.shuffle(order, new Random(seed));
    List<List<String>> shuffled = new ArrayList<>();
    for (List<String> row : table) {
      List<String> moved = new ArrayList<>();
      for (int i : order) {
        moved.add(row.get(i));
      }
      shuffled.add(moved);
    }
    Collections.shuffle(shuffled.subList(1, shuffled.size()), new Random(seed + 1));
    return shuffled;
  }

  @Test
  void aNumberIsTheSameInEveryUnitItCanBeWrittenIn() {
    int compared = 0;
    for (long seed = 1; seed <= 5; seed++) {
      Samples samples = new Samples(seed);
      for (Kind kind : Kind.values()) {
        for (Column column : Columns.of(kind)) {
          if (column.isNumber()) {
            compared += sameInEveryUnit(column, samples.number(column, 4), seed);
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(2500);
  }

  private static int sameInEveryUnit(Column column, String number, long seed) {
    double held = held(column, number);
    int compared = 0;
    for (String spelling : QuantityReader.spellings(column.unit())) {
      double one =
          ((QuantityReader.Read) QuantityReader.read("1 " + spelling, column.unit())).value();
      BigDecimal figure =
          new BigDecimal(number)
              .multiply(BigDecimal.valueOf(column.scale()))
              .divide(BigDecimal.valueOf(one), MathContext.DECIMAL64);
      String written = NumberForm.shown(figure) + " " + spelling;
      assertThat(Exact.same(held(column, written), held))
          .as("seed %d: %s in %s against %s", seed, written, column.name(), number)
          .isTrue();
      if (!spelling.equals("in") && !spelling.equals("min")) {
        assertThat(held(column, written)).as(written).isEqualTo(held);
      }
      compared++;
    }
    return compared;
  }

  private static double held(Column column, String written) {
    return ((Cell.Quantity) Cell.read(column, written)).held();
  }

  @Test
  void aDecimalCommaIsADecimalPoint() {
    for (long seed = 1; seed <= ROUNDS; seed++) {
      Samples samples = new Samples(seed);
      Kind kind = samples.kind();
      List<List<String>> table = samples.table(kind, 8);
      List<List<String>> commas = new ArrayList<>();
      for (List<String> row : table) {
        List<String> moved = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
          boolean number =
              Columns.find(kind, table.get(0).get(i)).map(Column::isNumber).orElse(false);
          moved.add(number ? row.get(i).replace('.', ',') : row.get(i));
        }
        commas.add(moved);
      }

      assertThat(parts(read(kind, Samples.csv(commas))))
          .as("seed %d", seed)
          .isEqualTo(parts(read(kind, Samples.csv(table))));
    }
  }

  @Test
  void whatIsWrittenIsReadBack() {
    for (long seed = 1; seed <= ROUNDS; seed++) {
      Samples samples = new Samples(seed);
      Kind kind = samples.kind();
      List<Part> parts = new ArrayList<>();
      for (int i = 0; i < 10; i++) {
        parts.add(samples.part(kind, "part-" + i));
      }

      CatalogueReader.Read read = read(kind, CatalogueWriter.table(kind, parts));

      assertThat(parts(read)).as("seed %d", seed).isEqualTo(parts);
    }
  }

  @Test
  void readingTwiceSaysTheSameInTheOrderOfThePlaces() {
    for (long seed = 1; seed <= ROUNDS; seed++) {
      Samples samples = new Samples(seed);
      Kind kind = samples.kind();
      List<List<String>> table = samples.table(kind, 12);
      spoil(table, samples);

      List<Problem> problems = read(kind, Samples.csv(table)).problems();

      assertThat(read(kind, Samples.csv(table)).problems()).isEqualTo(problems);
      for (int i = 1; i < problems.size(); i++) {
        assertThat(position(problems.get(i)))
            .as("seed %d, problem %d", seed, i)
            .isGreaterThanOrEqualTo(position(problems.get(i - 1)));
      }
    }
  }

  private static long position(Problem problem) {
    return problem.place().line() * 100_000L + problem.place().column();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void nothingCrashesTheReaderOrMakesItPrint(int part) {
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    PrintStream trap = new PrintStream(printed, true, UTF_8);
    System.setOut(trap);
    System.setErr(trap);
    try {
      for (long seed = part * 1000L; seed < part * 1000L + 500; seed++) {
        byte[] bytes = seed % 2 == 0 ? randomBytes(seed) : mutated(seed);
        survive(seed, kind(seed).word() + ".csv", bytes);
      }
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
    assertThat(printed.toString(UTF_8)).isEmpty();
  }

  private static Kind kind(long seed) {
    return Kind.of(Kind.words().get((int) (seed % Kind.words().size()))).orElseThrow();
  }

  private static void survive(long seed, String name, byte[] bytes) {
    try {
      CatalogueReader.Read read = CatalogueReader.read(Map.of(name, bytes));
      for (Problem problem : read.problems()) {
        assertThat(problem.line()).as("seed %d", seed).startsWith(name).doesNotContain("\n", "\r");
        assertThat(problem.what()).as("seed %d", seed).isNotEmpty().doesNotEndWith(".");
      }
    } catch (RuntimeException e) {
      throw new AssertionError("seed " + seed + " crashed the reader", e);
    }
  }

  private static byte[] randomBytes(long seed) {
    Random random = new Random(seed);
    byte[] bytes = new byte[random.nextInt(600)];
    random.nextBytes(bytes);
    if (seed % 4 == 0) {
      String signs = "id,;\t\"\n\r'#=.-+e0159AmVnone \u00b5";
      StringBuilder text = new StringBuilder("id,nominal_volts,contact_amps,note\n");
      for (byte b : bytes) {
        text.append(signs.charAt((b & 0xff) % signs.length()));
      }
      return text.toString().getBytes(UTF_8);
    }
    return bytes;
  }

  /** A good table with some bytes changed, dropped or doubled. */
  private static byte[] mutated(long seed) {
    Samples samples = new Samples(seed);
    Kind kind = kind(seed);
    byte[] good = Samples.csv(samples.table(kind, 6)).getBytes(UTF_8);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (byte b : good) {
      int dice = samples.random().nextInt(400);
      if (dice == 0) {
        bytes.write(samples.random().nextInt(256));
      } else if (dice == 1) {
        bytes.write(b);
        bytes.write(b);
      } else if (dice != 2) {
        bytes.write(b);
      }
    }
    return bytes.toByteArray();
  }

  @Test
  void anotherLanguageOfTheMachineChangesNothing() {
    Samples samples = new Samples(7);
    List<List<String>> table = samples.table(Kind.PACK, 12);
    spoil(table, samples);
    Locale before = Locale.getDefault();
    List<String> said = Cases.lines(read(Kind.PACK, Samples.csv(table)).problems());
    try {
      for (String language : List.of("tr-TR", "de-DE", "ar-EG", "hi-IN")) {
        Locale.setDefault(Locale.forLanguageTag(language));
        assertThat(Cases.lines(read(Kind.PACK, Samples.csv(table)).problems()))
            .as(language)
            .isEqualTo(said);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private static CatalogueReader.Read read(Kind kind, String csv) {
    return CatalogueReader.read(Map.of(kind.word() + ".csv", csv.getBytes(UTF_8)));
  }

  private static List<Part> parts(CatalogueReader.Read read) {
    return Samples.withoutPlaces(read.catalogue().all());
  }

  /** The problems without their places. */
  private static List<String> said(CatalogueReader.Read read) {
    List<String> said = new ArrayList<>();
    for (Problem p : read.problems()) {
      said.add(p.severity() + "|" + p.found() + "|" + p.what() + "|" + p.expected());
    }
    Collections.sort(said);
    return said;
  }
}

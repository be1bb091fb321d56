package outshop.catalogue;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.input.Place;

/** The same table, written in the ways that spreadsheets and people write tables. */
final class SpreadsheetHabitsTest {
  private static final String PLAIN =
      """
      id,origin,chemistry,nominal_volts,capacity_ah,max_charge_amps,protection,title,shelf
      p1,measured,li-ion,14.4,5.2,none,yes,"Four cells, long",top
      p2,data-sheet,nimh,12,0.9,,,,
      """;

  static List<Arguments> habits() {
    List<Arguments> habits = new ArrayList<>();
    habits.add(habit("UTF-8 with a byte order mark", "\ufeff" + PLAIN));
    habits.add(habit("line ends of another system", PLAIN.replace("\n", "\r\n")));
    habits.add(habit("line ends of an old system", PLAIN.replace("\n", "\r")));
    habits.add(habit("no line end at the end", PLAIN.strip()));
    habits.add(habit("mixed line ends", PLAIN.replaceFirst("\n", "\r\n")));
    habits.add(
        habit(
            "semicolons and decimal commas",
            """
            id;origin;chemistry;nominal_volts;capacity_ah;max_charge_amps;protection;title;shelf
            p1;measured;li-ion;14,4;5,2;none;yes;Four cells, long;top
            p2;data-sheet;nimh;12;0,9;;;;
            """));
    habits.add(
        habit(
            "tabs",
            PLAIN
                .replace("\"Four cells, long\"", "Four cells; long")
                .replace(',', '\t')
                .replace("Four cells; long", "Four cells, long")));
    habits.add(habit("a line that names the separator", "sep=,\r\n" + PLAIN.replace("\n", "\r\n")));
    habits.add(habit("a line that names the separator, short line ends", "SEP=,\n" + PLAIN));
    habits.add(
        habit(
            "decimal commas in quoted cells",
            PLAIN.replace("14.4", "\"14,4\"").replace("5.2", "\"5,2\"")));
    habits.add(habit("empty columns at the right", PLAIN.replace("\n", ",,,\n")));
    habits.add(habit("blank rows", "\n" + PLAIN.replace("\n", "\n\n,,,,,,,,\n   \n") + "\n,,\n"));
    habits.add(habit("short rows", PLAIN.replace("0.9,,,,", "0.9")));
    habits.add(
        habit(
            "everything quoted",
            """
            "id","origin","chemistry","nominal_volts","capacity_ah","max_charge_amps","protection","title","shelf"
            "p1","measured","li-ion","14.4","5.2","none","yes","Four cells, long","top"
            "p2","data-sheet","nimh","12","0.9","","","",""
            """));
    habits.add(habit("a line break in a cell", PLAIN.replace("cells, long", "cells,\nlong")));
    habits.add(
        habit("another line break in a cell", PLAIN.replace("cells, long", "cells,\r\nlong")));
    habits.add(
        habit(
            "columns in another order",
            """
            shelf,title,protection,max_charge_amps,capacity_ah,nominal_volts,chemistry,id,origin
            top,"Four cells, long",yes,none,5.2,14.4,li-ion,p1,measured
            ,,,,0.9,12,nimh,p2,data-sheet
            """));
    habits.add(
        habit(
            "rows in another order",
            PLAIN.lines().toList().get(0)
                + "\n"
                + PLAIN.lines().toList().get(2)
                + "\n"
                + PLAIN.lines().toList().get(1)
                + "\n"));
    habits.add(
        habit(
            "headings as people write them",
            PLAIN
                .replace("nominal_volts", " Nominal Volts ")
                .replace("capacity_ah", "CAPACITY-AH")
                .replace("id,", "ID,")));
    habits.add(
        habit(
            "spaces around",
            PLAIN
                .replace(",", " , ")
                .replace("cells , ", "cells, ")
                .replace(" \"", "\"")
                .replace("\" ", "\"")));
    habits.add(
        habit(
            "spaces that do not break",
            PLAIN.replace("14.4", "\u00a014.4\u00a0V\u202f").replace("top", "\u00a0top\u2007")));
    habits.add(
        habit(
            "signs that are not seen",
            PLAIN.replace("14.4", "14.4\u200b").replace("top", "\u0085top\ufeff")));
    habits.add(habit("powers of ten", PLAIN.replace("14.4", "1.44E+01").replace("0.9", "9E-01")));
    habits.add(habit("a plus sign", PLAIN.replace("14.4", "+14.4")));
    habits.add(habit("units in cells", PLAIN.replace("14.4", "14.4 V").replace("5.2", "5200mAh")));
    habits.add(
        habit(
            "words in capitals",
            PLAIN
                .replace("li-ion", "Li-Ion")
                .replace("none", "NONE")
                .replace("yes", "Yes")
                .replace("measured", "Measured")));
    habits.add(
        habit(
            "a guard against formulas", PLAIN.replace("\"Four", "\"'Four").replace("top", "'top")));
    habits.add(
        habit(
            "help lines", PLAIN.replaceFirst("\n", "\n#help,anything,x,y\n# mine,,,,,,,,,,,,,\n")));
    return habits;
  }

  private static Arguments habit(String name, String text) {
    return Arguments.of(name, text.getBytes(UTF_8));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("habits")
  void isReadLikeThePlainTable(String name, byte[] bytes) {
    CatalogueReader.Read read = CatalogueReader.read(Map.of("pack.csv", bytes));

    assertThat(read.problems()).as(name).isEmpty();
    assertThat(parts(read)).isEqualTo(parts(CatalogueReader.read(plain())));
    assertThat(bytes).isNotEqualTo(PLAIN.getBytes(UTF_8));
  }

  @Test
  void isReadFromUtf16WithAByteOrderMark() {
    for (Charset charset : List.of(UTF_16LE, UTF_16BE)) {
      byte[] bytes = ("\ufeff" + PLAIN).getBytes(charset);

      CatalogueReader.Read read = CatalogueReader.read(Map.of("pack.csv", bytes));

      assertThat(read.problems()).isEmpty();
      assertThat(parts(read)).isEqualTo(parts(CatalogueReader.read(plain())));
    }
  }

  @Test
  void windows1252IsReadAndSaid() {
    byte[] bytes =
        "id,origin,title\np1,measured,60 \u00b0C\n".getBytes(Charset.forName("windows-1252"));

    CatalogueReader.Read read = CatalogueReader.read(Map.of("pack.csv", bytes));

    assertThat(read.catalogue().find("p1").orElseThrow().title()).isEqualTo("60 \u00b0C");
    assertThat(read.problems()).hasSize(1);
    assertThat(read.isUsable()).isTrue();
  }

  @Test
  void theOhmSignCanBeWrittenTwoWays() {
    String table =
        "id,origin,impedance_ohms\na,measured,8 \u2126\nb,measured,8 \u03a9\nc,measured,8 ohms\n";

    CatalogueReader.Read read = CatalogueReader.read(Map.of("speaker.csv", table.getBytes(UTF_8)));

    assertThat(read.problems()).isEmpty();
    assertThat(read.catalogue().all()).allMatch(p -> p.numbers().get("impedance_ohms") == 8);
  }

  @Test
  void aMinusMayBeTheTypographersOne() {
    String table = "id,origin,charge_min_celsius\na,measured,\u22125 \u00b0C\n";

    CatalogueReader.Read read = CatalogueReader.read(Map.of("pack.csv", table.getBytes(UTF_8)));

    assertThat(read.problems()).isEmpty();
    assertThat(read.catalogue().find("a").orElseThrow().numbers())
        .containsEntry("charge_min_celsius", -5.0);
  }

  private static Map<String, byte[]> plain() {
    return Map.of("pack.csv", PLAIN.getBytes(UTF_8));
  }

  private static List<Part> parts(CatalogueReader.Read read) {
    return Samples.withoutPlaces(read.catalogue().all());
  }

  @Test
  void thePlainTableIsReadAsItStands() {
    CatalogueReader.Read read = CatalogueReader.read(plain());

    assertThat(read.problems()).isEmpty();
    Part p1 = read.catalogue().find("p1").orElseThrow();
    assertThat(p1.place()).isEqualTo(new Place("pack.csv", 2, 0, "row 2 of p1"));
    assertThat(p1.numbers())
        .containsOnly(
            Map.entry("nominal_volts", 14.4),
            Map.entry("capacity_ah", 5.2),
            Map.entry("max_charge_amps", Double.NaN));
    assertThat(p1.words())
        .containsOnly(
            Map.entry("origin", "measured"),
            Map.entry("chemistry", "li-ion"),
            Map.entry("protection", "yes"),
            Map.entry("title", "Four cells, long"));
    assertThat(p1.notes()).containsOnly(Map.entry("shelf", "top"));
    Part p2 = read.catalogue().find("p2").orElseThrow();
    assertThat(p2.numbers()).containsOnlyKeys("nominal_volts", "capacity_ah");
    assertThat(p2.notes()).isEmpty();
  }
}

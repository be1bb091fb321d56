package outshop.catalogue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outshop.input.Place;
import outshop.input.UnusableInput;
import outshop.units.Origin;

final class CatalogueWriterTest {
  @TempDir private Path folder;

  @Test
  void whatItWritesIsReadWithoutAWord() throws UnusableInput {
    List<Path> files = CatalogueWriter.writeEmpty(folder.resolve("new/catalogue"));

    CatalogueReader.Read read = CatalogueReader.read(folder.resolve("new/catalogue"));

    assertThat(read.problems()).isEmpty();
    assertThat(files).hasSize(Kind.values().length);
    assertThat(read.catalogue().all()).hasSize(Kind.values().length);
    for (Kind kind : Kind.values()) {
      Part example = read.catalogue().find("example-" + kind.word()).orElseThrow();
      assertThat(example.kind()).isEqualTo(kind);
      assertThat(example.numbers().size() + example.words().size())
          .as("cells of the example " + kind.word())
          .isEqualTo(Columns.of(kind).size() - 1);
    }
  }

  @Test
  void nothingButTheTablesIsLeftInTheFolder() throws IOException, UnusableInput {
    CatalogueWriter.writeEmpty(folder);

    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).allMatch(p -> p.getFileName().toString().endsWith(".csv")).hasSize(20);
    }
  }

  @Test
  void anEmptyTableHasAHeaderItsHelpAndAnExample() throws Rows.Broken {
    for (Kind kind : Kind.values()) {
      try (Rows rows = new Rows(CatalogueWriter.emptyTable(kind), ',', 0)) {
        assertRow(rows, kind, "id", Column::name);
        assertRow(rows, kind, "#help", Column::help);
        assertRow(rows, kind, "#how", Column::how);
        assertThat(rows.next()).isTrue();
        assertThat(rows.cell(0)).isEqualTo("#unit-or-words");
        assertRow(rows, kind, "example-" + kind.word(), Column::example);
        assertThat(rows.next()).isFalse();
      }
    }
  }

  private static void assertRow(Rows rows, Kind kind, String id, Function<Column, String> cell)
      throws Rows.Broken {
    assertThat(rows.next()).isTrue();
    int i = 0;
    for (Column column : Columns.of(kind)) {
      String expected = column.name().equals("id") ? id : cell.apply(column);
      assertThat(rows.cell(i++)).as(kind.word() + " " + column.name()).isEqualTo(expected);
    }
    assertThat(rows.size()).isEqualTo(i);
  }

  @Test
  void theUnitOrTheWordsOfEachColumnAreWrittenBesideIt() {
    assertThat(CatalogueWriter.emptyTable(Kind.PLUG).lines().toList().get(3))
        .isEqualTo(
            "#unit-or-words,any text,any text,a plain number,\"one of data-sheet, measured,"
                + " guess\",any text,a number in mm,a number in mm,\"one of plus, minus,"
                + " as-wired\",a number in A,a number in V,a number in mohm");
    assertThat(CatalogueWriter.emptyTable(Kind.RECEIVER).lines().toList().get(3))
        .contains(
            "\"words of your own, with spaces between\"",
            ",yes or no,",
            ",\"a number in V, or none\",");
    assertThat(CatalogueWriter.emptyTable(Kind.DECODER).lines().toList().get(3))
        .contains("\"one or more of service, operations, own-adapter, with spaces between\"");
  }

  @Test
  void aTableThatIsThereIsNeverOverwritten() throws IOException {
    Files.writeString(folder.resolve("pack.csv"), "mine");
    Files.writeString(folder.resolve("wire.csv"), "mine too");

    assertThatThrownBy(() -> CatalogueWriter.writeEmpty(folder))
        .isInstanceOfSatisfying(
            UnusableInput.class,
            e ->
                assertThat(said(e))
                    .containsExactly(
                        "error pack.csv: this file is already there and is not overwritten;"
                            + " expected a folder without it",
                        "error wire.csv: this file is already there and is not overwritten;"
                            + " expected a folder without it"));

    assertThat(folder.resolve("pack.csv")).hasContent("mine");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).hasSize(2);
    }
  }

  @Test
  void aFolderThatCannotBeMadeIsAnError() throws IOException {
    Files.writeString(folder.resolve("taken"), "a file");

    assertThatThrownBy(() -> CatalogueWriter.writeEmpty(folder.resolve("taken")))
        .isInstanceOfSatisfying(
            UnusableInput.class,
            e ->
                assertThat(said(e))
                    .containsExactly(
                        "error taken: cannot be written; expected a folder that may be written"
                            + " to"));
  }

  @Test
  void aTextThatASpreadsheetWouldTakeForAFormulaIsGuarded() {
    Part part =
        new Part(
            Kind.FUSE,
            "f1",
            Map.of(),
            Map.of("title", "=1+1", "maker", "@works", "note", "'quoted'", "origin", "guess"),
            Map.of("+mine", "-5", "shelf", "+x"),
            Origin.GUESS,
            Place.whole(""));

    String table = CatalogueWriter.table(Kind.FUSE, List.of(part));

    assertThat(table).contains(",'=1+1,", ",'@works,", ",''quoted',", ",'+mine,", ",'-5,'+x\n");
    assertThat(Samples.withoutPlaces(read("fuse.csv", table).catalogue().all()))
        .containsExactly(part);
  }

  @Test
  void aNegativeNumberIsNoFormula() {
    Part part =
        new Part(
            Kind.PACK,
            "p1",
            Map.of("charge_min_celsius", -10.0, "max_charge_amps", Double.NaN),
            Map.of("origin", "guess"),
            Map.of(),
            Origin.GUESS,
            Place.whole(""));

    String table = CatalogueWriter.table(Kind.PACK, List.of(part));

    assertThat(table).contains(",none,-10,");
    assertThat(Samples.withoutPlaces(read("pack.csv", table).catalogue().all()))
        .containsExactly(part);
  }

  @Test
  void signsBeyondAsciiGetAByteOrderMarkAndOthersNone() {
    assertThat(CatalogueWriter.table(Kind.FUSE, List.of(titled("blade")))).startsWith("id,");
    assertThat(CatalogueWriter.table(Kind.FUSE, List.of(titled("5 \u03a9"))))
        .startsWith("\ufeffid,");
    for (Kind kind : Kind.values()) {
      assertThat(CatalogueWriter.emptyTable(kind)).matches(t -> t.chars().allMatch(c -> c < 0x80));
    }
  }

  private static Part titled(String title) {
    return new Part(
        Kind.FUSE, "f1", Map.of(), Map.of("title", title), Map.of(), Origin.GUESS, Place.whole(""));
  }

  private static CatalogueReader.Read read(String name, String table) {
    return CatalogueReader.read(Map.of(name, table.getBytes(UTF_8)));
  }

  private List<String> said(UnusableInput e) {
    List<String> lines = new ArrayList<>();
    for (String line : Cases.lines(e.problems())) {
      lines.add(line.replace(folder.toString().replace('\\', '/') + "/", ""));
    }
    return lines;
  }
}

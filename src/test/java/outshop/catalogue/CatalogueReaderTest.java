package outshop.catalogue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.units.Amount;
import outshop.units.Origin;

/** Folders, files, and tables beyond all measure. */
final class CatalogueReaderTest {
  @TempDir private Path folder;

  @Test
  void aFolderIsReadInTheOrderOfItsNames() throws IOException {
    write("receiver.csv", "id,origin\nr1,measured\n");
    write("pack.csv", "id,origin\np1,measured\n");

    CatalogueReader.Read read = CatalogueReader.read(folder);

    assertThat(read.problems()).isEmpty();
    assertThat(read.catalogue().all()).extracting(Part::id).containsExactly("p1", "r1");
    assertThat(read.catalogue().of(Kind.RECEIVER)).extracting(Part::id).containsExactly("r1");
  }

  @Test
  void aSingleFileIsReadToo() throws IOException {
    write("pack.csv", "id,origin,nominal_volts\np1,measured,x\n");

    CatalogueReader.Read read = CatalogueReader.read(folder.resolve("pack.csv"));

    assertThat(said(read))
        .containsExactly(
            "error pack.csv:2:13: row 2, column nominal_volts of p1: not a number: found \"x\";"
                + " expected a number in V, such as 14.4, or a blank cell if it is not known");
  }

  @Test
  void hiddenFilesLocksAndOtherThingsAreLeftAlone() throws IOException {
    write("pack.csv", "id,origin\np1,measured\n");
    write("._pack.csv", "\u0000\u0001");
    write("~pack.csv", "junk");
    write(".~lock.pack.csv#", "junk");
    write("read-me.txt", "junk");
    write("pack.xlsx", "the sheet behind the table");
    Files.createDirectory(folder.resolve("pictures"));

    assertThat(CatalogueReader.read(folder).problems()).isEmpty();
  }

  @Test
  void aSheetThatWasNotSavedAsCsvIsTold() throws IOException {
    write("pack.csv", "id,origin\np1,measured\n");
    write("receiver.xlsx", "");
    write("Decoder.ODS", "");

    assertThat(said(CatalogueReader.read(folder)))
        .containsExactly(
            "unlikely Decoder.ODS: this file is not read; expected the sheet saved as decoder.csv",
            "unlikely receiver.xlsx: this file is not read; expected the sheet saved as"
                + " receiver.csv");
  }

  @Test
  void aFolderWithoutATableIsAnError() throws IOException {
    write("notes.md", "");

    assertThat(said(CatalogueReader.read(folder)))
        .containsExactly(
            "error : there is no table in this folder; expected files such as pack.csv and"
                + " receiver.csv");
  }

  @Test
  void aPathThatLeadsNowhereIsAnError() {
    CatalogueReader.Read read = CatalogueReader.read(folder.resolve("nowhere"));

    assertThat(said(read))
        .containsExactly(
            "error nowhere: there is no such file or folder; expected a folder of tables such as"
                + " pack.csv and receiver.csv");
    assertThat(read.catalogue().all()).isEmpty();
  }

  @Test
  void aFolderCalledLikeATableIsAnError() throws IOException {
    Files.createDirectory(folder.resolve("pack.csv"));

    assertThat(said(CatalogueReader.read(folder)))
        .containsExactly("error pack.csv: not a file; expected a table in CSV");
  }

  @Test
  void aSingleFileThatIsNoCsvIsAnError() throws IOException {
    write("pack.txt", "id\n");

    assertThat(said(CatalogueReader.read(folder.resolve("pack.txt"))).get(0))
        .startsWith("error pack.txt: no kind of part has this name (did you mean \"pack\"?)");
  }

  @Test
  void sixteenMegabytesAreReadAndOneMoreByteIsNot() {
    byte[] most = filled(CatalogueReader.MOST_BYTES);
    byte[] more = filled(CatalogueReader.MOST_BYTES + 1);

    assertThat(CatalogueReader.read(Map.of("pack.csv", most)).problems()).isEmpty();
    assertThat(said(CatalogueReader.read(Map.of("pack.csv", more))))
        .containsExactly("error pack.csv: the file is too large; expected at most 16 MB");
  }

  /** A header and then blank lines. */
  private static byte[] filled(int size) {
    byte[] bytes = new byte[size];
    Arrays.fill(bytes, (byte) '\n');
    bytes[0] = 'i';
    bytes[1] = 'd';
    return bytes;
  }

  @Test
  void twoHundredThousandRowsAreReadAndOneMoreIsNot() {
    StringBuilder table = new StringBuilder("id,origin\n");
    for (int i = 1; i <= TableReader.MOST_ROWS; i++) {
      table.append('p').append(i).append(",guess\n\n");
    }

    CatalogueReader.Read most = CatalogueReader.read(pack(table.toString()));
    assertThat(most.problems()).isEmpty();
    assertThat(most.catalogue().all()).hasSize(200_000);
    assertThat(said(CatalogueReader.read(pack(table + "last,guess\n"))))
        .containsExactly(
            "error pack.csv:400002: row 400002: the table is too long; expected at most 200000"
                + " rows");
  }

  @Test
  void fiveHundredColumnsAreReadAndOneMoreIsNot() {
    StringBuilder header = new StringBuilder("id,origin");
    for (int i = 2; i < Rows.MOST_CELLS; i++) {
      header.append(",mine").append(i);
    }

    String row = "\np1,guess";
    assertThat(CatalogueReader.read(pack(header + row)).problems()).isEmpty();
    assertThat(CatalogueReader.read(pack(header + "\n" + ",".repeat(600) + row)).problems())
        .isEmpty();
    assertThat(said(CatalogueReader.read(pack(header + ",more" + row))))
        .containsExactly(
            "error pack.csv:1: row 1: the table is too wide; expected at most 500 columns");
    assertThat(said(CatalogueReader.read(pack(header + row + ",".repeat(600) + "x"))))
        .containsExactly(
            "error pack.csv:2:609: row 2 of p1: the row has more cells than the header: found"
                + " \"x\"; expected one cell under each heading; a text or number with a separator"
                + " in it needs quotes");
  }

  @Test
  void aCellOfTwoThousandCharactersIsReadAndOneMoreIsNot() {
    String title = "a".repeat(2000);

    assertThat(CatalogueReader.read(pack("id,origin,title\np1,guess," + title)).problems())
        .isEmpty();
    assertThat(said(CatalogueReader.read(pack("id,origin,title\np1,guess,b" + title))))
        .containsExactly(
            "error pack.csv:2:10: row 2, column title of p1: the cell is too long: found \"b"
                + "a".repeat(79)
                + "... (2001 characters)\"; expected at most 2000 characters");
  }

  @Test
  void aThousandProblemsAreToldAndTheRestCounted() {
    StringBuilder table = new StringBuilder("id,origin,capacity_ah\n");
    for (int i = 0; i < 1000; i++) {
      table.append('p').append(i).append(",guess,4000\n");
    }

    assertThat(CatalogueReader.read(pack(table.toString())).problems()).hasSize(1000);
    assertThat(CatalogueReader.read(pack(table.toString())).isUsable()).isTrue();

    CatalogueReader.Read more = CatalogueReader.read(pack(table + "q1,guess,0\nq1,guess,5\n"));
    assertThat(more.problems()).hasSize(1001);
    assertThat(said(more).get(1000)).isEqualTo("error pack.csv: 2 more problems in this file");
    assertThat(more.isUsable()).isFalse();

    CatalogueReader.Read one = CatalogueReader.read(pack(table + "q1,guess,4000\n"));
    assertThat(said(one).get(1000)).isEqualTo("unlikely pack.csv: 1 more problem in this file");
    assertThat(one.isUsable()).isTrue();
  }

  @Test
  void aHeaderAloneIsAnEmptyTable() {
    CatalogueReader.Read read = CatalogueReader.read(pack("id,nominal_volts\n"));

    assertThat(read.problems()).isEmpty();
    assertThat(read.catalogue().all()).isEmpty();
  }

  @Test
  void aPartWithAWrongCellIsReadWithoutIt() {
    CatalogueReader.Read read =
        CatalogueReader.read(pack("id,origin,nominal_volts,capacity_ah\np1,measured,x,5.2\n"));

    Part part = read.catalogue().find("p1").orElseThrow();
    assertThat(part.numbers()).containsOnly(Map.entry("capacity_ah", 5.2));
    assertThat(part.place()).isEqualTo(new Place("pack.csv", 2, 0, "row 2 of p1"));
  }

  @Test
  void theOriginOfARowIsTheOriginOfItsValues() {
    Catalogue catalogue =
        CatalogueReader.read(pack("id,origin\na,data-sheet\nb,measured\nc,guess\nd,\n"))
            .catalogue();

    assertThat(catalogue.all())
        .extracting(Part::origin)
        .containsExactly(Origin.DATA_SHEET, Origin.MEASURED, Origin.GUESS, Origin.GUESS);
  }

  @Test
  void aBlankCellIsMissingAndNoneIsAbsentAndNeitherIsZero() {
    Catalogue catalogue =
        CatalogueReader.read(pack("id,origin,nominal_volts,cutoff_volts\na,measured,,none\n"))
            .catalogue();

    Part part = catalogue.find("a").orElseThrow();
    assertThat(part.amount("nominal_volts")).isInstanceOf(Amount.Missing.class);
    assertThat(part.amount("cutoff_volts")).isInstanceOf(Amount.Absent.class);
    assertThat(part.said("chemistry").isUnsaid()).isTrue();
    assertThat(part.amount("own_milliamps").get().isAssumed()).isTrue();
  }

  @Test
  void severalWordsAreKeptOnceEach() {
    Catalogue catalogue =
        CatalogueReader.read(
                Map.of(
                    "receiver.csv",
                    "id,origin,links\na,measured,Wren  heron-2 wren\n".getBytes(UTF_8)))
            .catalogue();

    Part part = catalogue.find("a").orElseThrow();
    assertThat(part.words()).containsEntry("links", "wren heron-2");
    assertThat(part.several("links")).containsExactly("heron-2", "wren");
  }

  @Test
  void aHundredThousandRowsTakeSeconds() {
    StringBuilder table = new StringBuilder();
    List<List<String>> sample = new Samples(1).table(Kind.PLUG, 50);
    table.append(String.join(",", sample.get(0))).append('\n');
    for (int i = 0; i < 100_000; i++) {
      List<String> row = new ArrayList<>(sample.get(1 + i % 50));
      row.set(0, "p" + i);
      row.replaceAll(cell -> cell.replace("\"", "").replace(",", ""));
      table.append(String.join(",", row)).append('\n');
    }
    Map<String, byte[]> files = Map.of("plug.csv", table.toString().getBytes(UTF_8));

    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    CatalogueReader.Read read = CatalogueReader.read(files);
    long nanoseconds = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;

    assertThat(read.catalogue().all()).hasSize(100_000);
    assertThat(nanoseconds).as("processor time").isLessThan(8_000_000_000L);
  }

  private static Map<String, byte[]> pack(String table) {
    return Map.of("pack.csv", table.getBytes(UTF_8));
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  /** The lines, with the name of the temporary folder taken out. */
  private List<String> said(CatalogueReader.Read read) {
    String shown = folder.toString().replace('\\', '/');
    List<Problem> problems = read.problems();
    List<String> lines = new ArrayList<>();
    for (String line : Cases.lines(problems)) {
      lines.add(line.replace(shown + "/", "").replace(shown, ""));
    }
    return lines;
  }
}

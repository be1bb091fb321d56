package outshop.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class TreeTest {

  private static Tree.Read read(String text) {
    return Tree.read("club.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  private static Tree.Fields fields(String text) {
    Tree.Read read = read(text);
    assertThat(read.problems()).isEmpty();
    return (Tree.Fields) read.root().orElseThrow();
  }

  private static List<String> lines(Tree.Read read) {
    return read.problems().stream().map(Problem::line).toList();
  }

  private static Tree.Text text(Tree.Fields fields, String key) {
    return (Tree.Text) fields.find(key).orElseThrow().value();
  }

  @Test
  void keys_rows_and_texts_stand_at_their_places() {
    assertThat(fields("title: Sallowmere\nlamps:\n  - front\n  - {rear: 'led', amps: 60 mA}\n"))
        .isEqualTo(
            new Tree.Fields(
                List.of(
                    new Tree.Entry("title", 1, 1, new Tree.Text("Sallowmere", false, 1, 8)),
                    new Tree.Entry(
                        "lamps",
                        2,
                        1,
                        new Tree.Rows(
                            List.of(
                                new Tree.Text("front", false, 3, 5),
                                new Tree.Fields(
                                    List.of(
                                        new Tree.Entry(
                                            "rear", 4, 6, new Tree.Text("led", true, 4, 12)),
                                        new Tree.Entry(
                                            "amps", 4, 19, new Tree.Text("60 mA", false, 4, 25))),
                                    4,
                                    5)),
                            3,
                            3))),
                1,
                1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "no",
        "off",
        "010",
        "0x1F",
        "1_000",
        "1.50",
        "+5",
        ".5",
        "~",
        "null",
        "true",
        "2026-01-01",
        "1e3",
        "12:30",
        "60 mA",
        "22 AWG",
        "8 Ω",
        "-x",
        "a#b",
        "😀 x"
      })
  void a_text_is_what_was_written(String written) {
    assertThat(text(fields("value: " + written + "\n"), "value").text()).isEqualTo(written);
  }

  @Test
  void nothing_written_is_told_from_an_empty_text() {
    Tree.Fields fields = fields("a:\nb: \"\"\nc: {d: , e: ''}\nf: |\n  x\n  y\n");
    assertThat(text(fields, "a").isBlank()).isTrue();
    assertThat(text(fields, "b").isBlank()).isFalse();
    Tree.Fields inner = (Tree.Fields) fields.find("c").orElseThrow().value();
    assertThat(text(inner, "d").isBlank()).isTrue();
    assertThat(text(inner, "e").isBlank()).isFalse();
    assertThat(text(fields, "f").text()).isEqualTo("x\ny\n");
  }

  @Test
  void a_file_with_nothing_but_comments_has_no_keys() {
    assertThat(fields("# nothing yet\n\n").entries()).isEmpty();
    assertThat(fields("").entries()).isEmpty();
    assertThat(fields("\ufeff").entries()).isEmpty();
  }

  @Test
  void columns_count_characters_not_bytes() {
    Tree.Fields fields = fields("größe: 3 m\nx: [😀😀, y]\n");
    assertThat(text(fields, "größe").column()).isEqualTo(8);
    Tree.Rows rows = (Tree.Rows) fields.find("x").orElseThrow().value();
    assertThat(rows.items().get(1).column()).isEqualTo(9);
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        Arguments.of(
            "a: 1\nb: 2\na: 3\n",
            "club.yaml:3:1: the key stands twice: found \"a\"; expected one of the two; the other"
                + " is on line 1"),
        Arguments.of(
            "a: {b: 1, b: 2}\n",
            "club.yaml:1:11: the key stands twice: found \"b\"; expected one of the two; the other"
                + " is on line 1"),
        Arguments.of(
            "a: &x 1\n",
            "club.yaml:1:4: an anchor (&) is not read here: found \"a: &x 1\"; expected the value"
                + " alone"),
        Arguments.of(
            "&k a: 1\n",
            "club.yaml:1:1: an anchor (&) is not read here: found \"&k a: 1\"; expected the value"
                + " alone"),
        Arguments.of(
            "- !!str 3\n",
            "club.yaml:1:3: a tag (!) is not read here: found \"- !!str 3\"; expected the value"
                + " alone"),
        Arguments.of(
            "a: 1\n---\nb: 2\n",
            "club.yaml:3:1: a second document begins; expected one document, without a line"
                + " \"---\""),
        Arguments.of(
            "a: 1\n...\nb: 2\n",
            "club.yaml:3:1: the line stands further left than the first key: found \"b: 2\";"
                + " expected as many spaces in front as the keys it belongs with"));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void what_only_yaml_knows_is_refused(String yaml, String line) {
    assertThat(lines(read(yaml))).containsExactly(line);
  }

  @Test
  void everything_refused_is_said_in_one_go_and_the_rest_is_kept() {
    Tree.Read read = read("a: &x 1\nb: *x\n<<: *x\na: 2\nc: [*x, y]\n");
    assertThat(lines(read))
        .extracting(line -> line.substring(0, line.indexOf(':', 15)))
        .containsExactly(
            "club.yaml:1:4: an anchor (&) is not read here",
            "club.yaml:2:4: an alias (*) is not read here",
            "club.yaml:3:1: a merge key is not read here",
            "club.yaml:3:5: an alias (*) is not read here",
            "club.yaml:4:1: the key stands twice",
            "club.yaml:5:5: an alias (*) is not read here");
    Tree.Fields root = (Tree.Fields) read.root().orElseThrow();
    assertThat(root.entries()).extracting(Tree.Entry::key).containsExactly("a", "c");
    assertThat(text(root, "a").text()).isEqualTo("1");
  }

  @Test
  void problems_come_in_the_order_of_the_file_also_where_one_is_seen_late() {
    assertThat(lines(read("a: 1\nb: [1,\n  &x 2\n")))
        .extracting(line -> line.substring(0, line.indexOf(':', 15)))
        .containsExactly(
            "club.yaml:2:4: the bracket [ is not closed, or a comma is missing",
            "club.yaml:3:3: an anchor (&) is not read here");
  }

  @Test
  void thirty_levels_are_read_and_one_more_is_not() {
    assertThat(lines(read("[".repeat(30) + "x" + "]".repeat(30)))).isEmpty();
    String expected = "lists and sections are nested too deep; expected no more than 30 levels";
    Tree.Read read = read("[".repeat(31) + "x" + "]".repeat(31));
    assertThat(lines(read)).containsExactly("club.yaml:1:31: " + expected);
    assertThat(read.root()).isEmpty();
    assertThat(lines(read("{a: ".repeat(31) + "x" + "}".repeat(31))))
        .containsExactly("club.yaml:1:121: " + expected);
  }

  @Test
  void brackets_without_end_are_refused_quickly() {
    Tree.Read read = read("a: " + "[".repeat(900_000));
    assertThat(read.root()).isEmpty();
    assertThat(lines(read)).singleElement().asString().contains("1:33: lists and sections are");
  }

  @Test
  void one_megabyte_is_read_and_a_byte_more_is_not(@TempDir Path folder) throws IOException {
    String most = "a: " + "x".repeat(Tree.LARGEST_BYTES - 3);
    assertThat(lines(read(most))).isEmpty();
    String expected =
        "club.yaml: the file is too large: found \"1.0 MB\"; expected 1 MB at the most";
    assertThat(lines(read(most + "x"))).containsExactly(expected);
    Path file = folder.resolve("large.yaml");
    Files.writeString(file, most + "x");
    assertThat(lines(Tree.read("club.yaml", file))).containsExactly(expected);
  }

  @Test
  void other_encodings_are_refused_at_their_first_line() {
    byte[] latin = "a: 1\nb: größe\n".getBytes(StandardCharsets.ISO_8859_1);
    String expected =
        "the file is not UTF-8 text; expected the file saved again with the encoding UTF-8";
    assertThat(lines(Tree.read("club.yaml", latin))).containsExactly("club.yaml:2: " + expected);
    byte[] wide = "a: 1\n".getBytes(Charset.forName("UTF-16"));
    assertThat(lines(Tree.read("club.yaml", wide))).containsExactly("club.yaml:1: " + expected);
    byte[] cut = {'a', ':', ' ', (byte) 0xc3};
    assertThat(lines(Tree.read("club.yaml", cut))).containsExactly("club.yaml:1: " + expected);
  }

  @Test
  void tabs_in_front_of_lines_are_refused_and_elsewhere_are_not() {
    assertThat(lines(read("a:\n  b: 1\n \tc: 2\n\td: 3\n")))
        .containsExactly(
            "club.yaml:3:2: a tab in front of a line (and in 1 more); expected spaces");
    assertThat(lines(read("a: b\t# and a comment\nc: x\ty\n"))).isEmpty();
    assertThat(lines(read("a:\tb\n")))
        .containsExactly(
            "club.yaml:1:3: a tab stands where a space belongs: found \"a:\\u0009b\"; expected a"
                + " space");
  }

  @Test
  void control_characters_are_each_refused() {
    assertThat(lines(read("a: \u0000\nb: x\u0007\u001b[31m\n")))
        .containsExactly(
            "club.yaml:1:4: a control character stands in the text: found \"\\u0000\"; expected"
                + " letters, digits and signs that can be seen",
            "club.yaml:2:5: a control character stands in the text: found \"\\u0007\"; expected"
                + " letters, digits and signs that can be seen");
  }

  @Test
  void files_that_cannot_be_opened_are_problems(@TempDir Path folder) {
    assertThat(lines(Tree.read("club.yaml", folder.resolve("absent"))))
        .containsExactly("club.yaml: there is no such file; expected a file that can be read");
    assertThat(lines(Tree.read("club.yaml", folder)))
        .containsExactly("club.yaml: this is a folder; expected a file that can be read");
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        Arguments.of("a: 1\nb\n", "club.yaml:2:1: no colon after the key"),
        Arguments.of(
            "a: 1\n\n# note\n  b: 2\n",
            "club.yaml:4:3: the line is indented further than line 1, which already has a value"),
        Arguments.of("a: x: y\n", "club.yaml:1:5: a second colon in one line"),
        Arguments.of("a: 'x\n", "club.yaml:1:4: the quotation mark is not closed"),
        Arguments.of(
            "a: {b: 1\n", "club.yaml:1:4: the bracket { is not closed, or a comma is missing"),
        Arguments.of(
            "a: [1\n", "club.yaml:1:4: the bracket [ is not closed, or a comma is missing"),
        Arguments.of("a: ]\n", "club.yaml:1:4: a bracket or comma stands where a value belongs"),
        Arguments.of("a: , b\n", "club.yaml:1:4: a bracket or comma stands where a value belongs"),
        Arguments.of("a: 1\n}\n", "club.yaml:2:1: a bracket or comma stands where a key belongs"),
        Arguments.of("a: [1] y\n", "club.yaml:1:8: text follows a value that has ended"),
        Arguments.of("a: %x\n", "club.yaml:1:4: a value cannot begin with %"),
        Arguments.of("a: `x`\n", "club.yaml:1:4: a value cannot begin with `"),
        Arguments.of("a: *\n", "club.yaml:1:5: a value cannot begin with &, * or !"),
        Arguments.of("a: &\n", "club.yaml:1:5: a value cannot begin with &, * or !"),
        Arguments.of("a: !<\n", "club.yaml:1:6: a value cannot begin with &, * or !"),
        Arguments.of("a: > b\n", "club.yaml:1:6: text follows the sign > or |"),
        Arguments.of("a: ? b\n", "club.yaml:1:4: a value cannot begin with ?"),
        Arguments.of("% a\n", "club.yaml:1:2: a line cannot begin with %"),
        Arguments.of("a: [\n- b]\n", "club.yaml:2:1: a list item stands inside brackets"),
        Arguments.of("a: {: b}\n", "club.yaml:1:5: no key before the colon"),
        Arguments.of(
            "a: [{, b]\n", "club.yaml:1:6: a bracket or comma stands where a value belongs"),
        Arguments.of("a: \"\\u\n", "club.yaml:1:7: a backslash that means nothing"),
        Arguments.of("a: \"\\u", "club.yaml:1: a backslash that means nothing"),
        Arguments.of("*x : 1\n", "club.yaml:1: the key is a list, a section or an alias"),
        Arguments.of("a: {[1]: 2}\n", "club.yaml:1: the key is a list, a section or an alias"),
        Arguments.of("a: \"\\q\"\n", "club.yaml:1:6: a backslash that means nothing"),
        Arguments.of("- a:1\n  b: 2\n", "club.yaml:1:1: no space after the colon"),
        Arguments.of(
            "a:\n  b: 1\n c: 2\n", "club.yaml:3:2: the line is indented like no line above it"));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void syntax_is_explained_in_plain_words(String yaml, String beginning) {
    assertThat(lines(read(yaml)))
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line).startsWith(beginning + ": found \"").contains("; expected ");
              assertThat(line).doesNotContain("scalar", "token", "block end", "parser");
            });
    assertThat(read(yaml).root()).isEmpty();
  }
}

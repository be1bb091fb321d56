package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.input.Tree;
import outshop.units.Unit;

/** The lists of keys and columns, as far as the reader of a plan relies on them. */
final class KeysTest {

  static Stream<Key> keys() {
    return Keys.all().stream();
  }

  @ParameterizedTest
  @MethodSource("keys")
  void every_key_says_what_it_is_and_how_to_get_it(Key key) {
    assertThat(key.help()).isNotBlank();
    assertThat(key.how()).isNotBlank();
    assertThat(key.example()).isNotBlank();
    assertThat(key.low()).isLessThanOrEqualTo(key.high());
  }

  @ParameterizedTest
  @MethodSource("keys")
  void what_names_refer_to_and_rows_need_is_decided_for_every_key(Key key) {
    if (key.type() == Key.Type.NAME || key.type() == Key.Type.NAMES) {
      assertThat(Refers.of(key)).isNotNull();
    }
    if (key.type() == Key.Type.ROWS) {
      assertThat(Rows.needed(key))
          .isNotEmpty()
          .allMatch(n -> Keys.find(key.path() + "." + n).isPresent());
    }
  }

  @ParameterizedTest
  @MethodSource("keys")
  void the_example_of_a_number_is_read_without_a_word(Key key) {
    boolean number =
        key.type() == Key.Type.QUANTITY
            || key.type() == Key.Type.QUANTITY_OR_NONE
            || key.type() == Key.Type.COUNT;
    Problems problems = new Problems("plan.yaml");
    Tree.Text text = new Tree.Text(key.example(), false, 1, 1);
    boolean read = number && new Numbers(problems).read(key, key.path(), text).isPresent();
    assertThat(read).isEqualTo(number);
    assertThat(problems.sorted()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("keys")
  void the_example_of_a_word_is_one_of_its_words(Key key) {
    if (key.type() == Key.Type.WORD) {
      assertThat(key.words()).contains(key.example());
    }
  }

  @Test
  void no_column_is_named_like_a_key_of_a_fitted_part() {
    Set<String> taken = new HashSet<>(Set.of(PartReader.PART, PartReader.KIND));
    taken.addAll(KeyTree.ROOT.named("parts").flatMap(KeyTree::own).orElseThrow().names());
    for (Kind kind : Kind.values()) {
      assertThat(Columns.of(kind)).extracting(Column::name).doesNotContainAnyElementsOf(taken);
    }
  }

  @Test
  void no_kind_of_part_and_no_fixed_key_is_a_reserved_name() {
    assertThat(Kind.words()).doesNotContainAnyElementsOf(OwnName.RESERVED);
    assertThat(Kind.words()).allMatch(w -> OwnName.fault(w).isEmpty());
  }

  @Test
  void every_key_is_found_along_the_tree() {
    List<String> walked = new ArrayList<>();
    walk(KeyTree.ROOT, walked);
    assertThat(walked)
        .containsExactlyInAnyOrderElementsOf(Keys.all().stream().map(Key::path).toList());
  }

  private static void walk(KeyTree at, List<String> walked) {
    at.key().ifPresent(k -> walked.add(k.path()));
    at.below().forEach(below -> walk(below, walked));
    at.own().ifPresent(own -> walk(own, walked));
  }

  @Test
  void numbers_are_written_in_the_unit_of_the_example() {
    assertThat(Written.like(Keys.require("locomotive.bays.*.length")).text(0.0625))
        .isEqualTo("62.5 mm");
    assertThat(Written.like(Keys.require("wiring.feed")).text(1.5)).isEqualTo("1500 mm");
    assertThat(Written.like(Keys.require("wishes.volume")).text(0.6)).isEqualTo("60 %");
    assertThat(Written.like(Keys.require("wishes.budget")).text(300)).isEqualTo("300");
    assertThat(Written.like(Keys.require("locomotive.bays.*.celsius")).text(-20))
        .isEqualTo("-20 C");
    Column own = Columns.require(Kind.RECEIVER, "own_milliamps");
    assertThat(Written.like(own)).isEqualTo(new Written(Unit.AMPS, "mA", 1e-3, "55 mA"));
    assertThat(Written.like(Columns.require(Kind.WIRE, "awg")).example()).isEqualTo("20 AWG");
    assertThat(Written.like(Columns.require(Kind.FUSE, "hold_amps")).example()).isEqualTo("0.05 A");
  }

  static Stream<Column> numberColumns() {
    return Stream.of(Kind.values())
        .flatMap(k -> Columns.of(k).stream())
        .filter(Column::isNumber)
        .distinct();
  }

  @ParameterizedTest
  @MethodSource("numberColumns")
  void the_example_of_a_column_is_read_with_the_unit_it_is_shown_with(Column column) {
    Problems problems = new Problems("plan.yaml");
    Tree.Text text = new Tree.Text(Written.like(column).example(), false, 1, 1);
    assertThat(new Numbers(problems).read(column, column.name(), text)).isPresent();
    assertThat(problems.sorted()).isEmpty();
  }
}

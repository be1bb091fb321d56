package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.input.Problem;

final class PlanWriterTest {
  private static final Catalogue EMPTY = new Catalogue(List.of());
  private static final Pattern COMMENTED_KEY = Pattern.compile("(?m)^( *)#(?=\\S)");

  static String uncommented(String starter) {
    return COMMENTED_KEY.matcher(starter).replaceAll("$1");
  }

  static Stream<Arguments> starters() {
    PlanWriter.Start full =
        new PlanWriter.Start(
            "Sallowmere's \"tank\" engine: no. 4",
            List.of("main", "second"),
            List.of("front", "rear", "cab"),
            List.of("boiler", "tender"),
            List.of("chimney"));
    PlanWriter.Start awkward =
        new PlanWriter.Start(
            " ", List.of("pack", "fuse"), List.of("motor"), List.of("decoder"), List.of("cable"));
    PlanWriter.Start nothing = new PlanWriter.Start("", List.of(), List.of(), List.of(), List.of());
    return Stream.of(full, awkward, nothing)
        .flatMap(
            start ->
                Stream.of(
                    Arguments.of(start, SmallCatalogue.CATALOGUE), Arguments.of(start, EMPTY)));
  }

  @ParameterizedTest
  @MethodSource("starters")
  void a_fresh_plan_is_read_without_a_word_and_states_nothing_but_its_names(
      PlanWriter.Start start, Catalogue catalogue) {
    PlanReader.Read read = PlanReaderTest.read(PlanWriter.starter(start, catalogue), catalogue);
    assertThat(read.problems()).isEmpty();
    Plan plan = read.plan();
    assertThat(plan.names("locomotive.motors")).isEqualTo(start.motors());
    assertThat(plan.names("locomotive.lamps")).isEqualTo(start.lamps());
    assertThat(plan.names("locomotive.bays")).isEqualTo(start.bays());
    assertThat(plan.names("locomotive.smoke")).isEqualTo(start.smokeHeaters());
    assertThat(plan.text("title").orElse(" "))
        .isEqualTo(start.title().isEmpty() ? " " : start.title());
    assertThat(plan.stated().keySet())
        .allMatch(p -> p.matches("outshop_plan|title|locomotive\\.[a-z]+\\.[a-z]+"));
    assertThat(plan.parts()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("starters")
  void with_its_examples_uncommented_it_is_read_without_a_word_and_states_every_key(
      PlanWriter.Start start, Catalogue catalogue) {
    String text = uncommented(PlanWriter.starter(start, catalogue));
    PlanReader.Read read = PlanReaderTest.read(text, catalogue);
    assertThat(read.problems()).extracting(Problem::line).isEmpty();
    Plan plan = read.plan();
    for (Key key : Keys.all()) {
      String path = key.path().replace(".", "\\.").replace("*", "[^.]+");
      boolean row = key.path().matches("(accepted|measured\\.joined|wiring\\.wires)\\..*");
      String numbered = row ? path.replaceFirst("\\\\\\.([a-z]+)$", "\\\\.1\\\\.$1") : path;
      assertThat(plan.stated().keySet()).as(key.path()).anyMatch(p -> p.matches(numbered));
    }
    assertThat(plan.parts()).extracting(Fitted::kind).hasSize(Kind.values().length - 1);
    assertThat(PlanSchemaTest.problems(text)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("starters")
  void every_key_stands_below_what_it_is_and_how_to_get_it(
      PlanWriter.Start start, Catalogue catalogue) {
    String flat =
        PlanWriter.starter(start, catalogue).replaceAll("\n *# +", " ").replaceAll("\\s+", " ");
    for (Key key : Keys.all()) {
      boolean row = key.path().matches("(accepted|measured\\.joined|wiring\\.wires|parts)\\..*");
      if (!row || key.path().matches("parts\\.\\*\\..*")) {
        assertThat(flat).contains(key.help());
      }
      if (!row && !key.how().matches("decide|choose")) {
        assertThat(flat).contains("how to get it: " + key.how());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("starters")
  void lines_are_short_and_end_in_no_space(PlanWriter.Start start, Catalogue catalogue) {
    assertThat(PlanWriter.starter(start, catalogue).lines())
        .allMatch(line -> line.length() <= 100)
        .noneMatch(line -> line.endsWith(" ") || line.contains("\t"));
  }

  @Test
  void the_short_form_names_motors_lamps_and_bays() {
    String text = PlanWriter.starter(List.of("main"), List.of("front"), List.of("tender"), EMPTY);
    assertThat(text).contains("\n    main:\n", "\n    front:\n", "\n    tender:\n");
    assertThat(text).contains("#smoke:", "{kind: fuse, rated_amps: 5 A}");
  }

  @Test
  void names_that_cannot_be_used_or_stand_twice_are_refused() {
    List<String> none = List.of();
    assertThatThrownBy(() -> PlanWriter.starter(List.of("2nd"), none, none, EMPTY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "\"2nd\": the name cannot be used; expected a letter, then letters, digits, - and _, no"
                + " more than 40 in all, such as \"front-lamp\"");
    assertThatThrownBy(() -> PlanWriter.starter(List.of("main"), List.of("main"), none, EMPTY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("\"main\": the name is taken");
    assertThat(PlanWriter.nameFault("frame"))
        .contains("the name has a meaning of its own; expected another name");
    assertThat(PlanWriter.nameFault("größe-2")).isEmpty();
  }
}

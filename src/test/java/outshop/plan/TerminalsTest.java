package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.Origin;

final class TerminalsTest {

  private static Part part(Kind kind, Map<String, Double> numbers, Map<String, String> words) {
    return new Part(kind, "it", numbers, words, Map.of(), Origin.GUESS, Place.whole("parts.csv"));
  }

  static Stream<Arguments> parts() {
    Map<String, Double> two = Map.of("poles_count", 2.0);
    return Stream.of(
        Arguments.of(part(Kind.PACK, Map.of(), Map.of()), "plus minus"),
        Arguments.of(part(Kind.CHARGER, Map.of(), Map.of()), "plus minus"),
        Arguments.of(part(Kind.SPEAKER, Map.of(), Map.of()), "plus minus"),
        Arguments.of(part(Kind.CAPACITOR, Map.of(), Map.of()), "plus minus"),
        Arguments.of(part(Kind.FUSE, Map.of(), Map.of()), "a b"),
        Arguments.of(part(Kind.RESISTOR, Map.of(), Map.of()), "a b"),
        Arguments.of(part(Kind.BULB, Map.of(), Map.of()), "a b"),
        Arguments.of(part(Kind.SMOKE_HEATER, Map.of(), Map.of()), "a b"),
        Arguments.of(part(Kind.LED, Map.of(), Map.of()), "anode cathode"),
        Arguments.of(part(Kind.PLUG, Map.of(), Map.of()), "pin sleeve"),
        Arguments.of(part(Kind.JACK, Map.of(), Map.of()), "pin sleeve break"),
        Arguments.of(part(Kind.RECEIVER, Map.of(), Map.of()), "in+ in- out-a out-b"),
        Arguments.of(part(Kind.REGULATOR, Map.of(), Map.of()), "in+ in- out+ out-"),
        Arguments.of(
            part(Kind.DECODER, Map.of("function_count", 3.0), Map.of()),
            "in-a in-b motor+ motor- common out-1 out-2 out-3 speaker+ speaker-"),
        Arguments.of(
            part(Kind.CONNECTOR, Map.of("contacts_count", 3.0), Map.of()), "1a 1b 2a 2b 3a 3b"),
        Arguments.of(part(Kind.CABLE, Map.of("contacts_count", 1.0), Map.of()), "1a 1b"),
        Arguments.of(part(Kind.SWITCH, Map.of(), Map.of("function", "on-off")), "a b"),
        Arguments.of(part(Kind.SWITCH, two, Map.of("function", "on-off")), "a b a2 b2"),
        Arguments.of(
            part(Kind.SWITCH, Map.of(), Map.of("function", "changeover")), "common run charge"),
        Arguments.of(
            part(Kind.SWITCH, two, Map.of("function", "changeover")),
            "common run charge common2 run2 charge2"));
  }

  @ParameterizedTest
  @MethodSource("parts")
  void each_kind_has_its_terminals(Part part, String terminals) {
    assertThat(Terminals.of(part)).containsExactly(terminals.split(" "));
    assertThat(Terminals.of(part)).allMatch(t -> Terminals.mayHave(part, t));
    assertThat(Terminals.mayHave(part, "tip")).isFalse();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void what_cannot_be_wired_has_none(Kind kind) {
    boolean none = kind == Kind.WIRE || kind == Kind.SLEEVE || kind == Kind.HANDSET;
    assertThat(Terminals.of(part(kind, Map.of(), Map.of())).isEmpty()).isEqualTo(none);
    assertThat(Terminals.hasAny(kind)).isNotEqualTo(none);
  }

  @Test
  void a_blank_count_allows_what_is_plausible_and_lists_the_least() {
    Part cable = part(Kind.CABLE, Map.of(), Map.of());
    assertThat(Terminals.of(cable)).containsExactly("1a", "1b");
    assertThat(Terminals.mayHave(cable, "50b")).isTrue();
    assertThat(Terminals.mayHave(cable, "51a")).isFalse();
    Part counted = part(Kind.CABLE, Map.of("contacts_count", 4.0), Map.of());
    assertThat(Terminals.mayHave(counted, "5a")).isFalse();
  }

  @Test
  void a_switch_of_unknown_function_may_be_of_either() {
    Part open = part(Kind.SWITCH, Map.of("poles_count", 1.0), Map.of());
    assertThat(Terminals.of(open)).containsExactly("a", "b");
    assertThat(List.of("a", "b", "common", "run", "charge"))
        .allMatch(t -> Terminals.mayHave(open, t));
    assertThat(Terminals.mayHave(open, "run2")).isFalse();
  }

  @Test
  void an_absurd_count_makes_no_absurd_list() {
    Part cable = part(Kind.CABLE, Map.of("contacts_count", 1e9), Map.of());
    assertThat(Terminals.of(cable)).hasSize(200);
    assertThat(Terminals.of(part(Kind.CABLE, Map.of("contacts_count", -3.0), Map.of())))
        .containsExactly("1a", "1b");
  }

  @Test
  void a_plans_things_have_theirs_by_name() {
    Plan plan = PlanReaderTest.read(PlanReaderTest.goodPlan()).plan();
    assertThat(Terminals.of(plan, "main")).contains(List.of("plus", "minus"));
    assertThat(Terminals.of(plan, "second")).contains(List.of("plus", "minus"));
    assertThat(Terminals.of(plan, "front")).contains(List.of("a", "b"));
    assertThat(Terminals.of(plan, "rear")).contains(List.of("anode", "cathode"));
    assertThat(Terminals.of(plan, "chimney")).contains(List.of("a", "b"));
    assertThat(Terminals.of(plan, "switch")).contains(List.of("a", "b", "a2", "b2"));
    assertThat(Terminals.of(plan, "old_speaker")).contains(List.of("plus", "minus"));
    assertThat(Terminals.of(plan, "boiler")).isEmpty();
    assertThat(Terminals.of(plan, "wiring.wire")).isEmpty();
    assertThat(Terminals.of(plan, "nobody")).isEmpty();
  }
}

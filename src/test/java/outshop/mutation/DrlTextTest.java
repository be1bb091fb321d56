package outshop.mutation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.rules.Bound;
import outshop.rules.RuleText;
import outshop.rules.Situation;

/** A rule's text is cut up where it should be, also where comments and quotes hold brackets. */
final class DrlTextTest {
  private static final String RULE =
      """
      package rules.voltage
      import outshop.figures.Feed
      global outshop.rules.Desk desk
      rule "voltage/of when ( and then"
      when
          // then ( a comment
          $feed : Feed( kind == Kind.PACK, warm || hot, name != "a, b (c)" )
          not( Guard( open == true ) )
          exists Lamp()
      then
          desk.judge(drools.getRule(), $feed.at()).with("x", $feed.x(1, 2))
              .atMost($feed.volts(), $feed.part().amount("max, volts"));
      end
      """;

  @Test
  void findsPatternsWithTheirConditions() {
    DrlText drl = new DrlText(RULE);

    assertThat(drl.facts())
        .extracting(f -> drl.text(f.whole()))
        .containsExactly(
            "$feed : Feed( kind == Kind.PACK, warm || hot, name != \"a, b (c)\" )",
            "not( Guard( open == true ) )",
            "exists Lamp()");
    assertThat(drl.facts().get(0).conditions())
        .extracting(drl::text)
        .containsExactly("kind == Kind.PACK", "warm || hot", "name != \"a, b (c)\"");
    assertThat(drl.facts().get(1).prefix()).map(drl::text).contains("not");
    assertThat(drl.facts().get(2).conditions()).isEmpty();
  }

  @Test
  void findsTheArgumentsOfTheCall() {
    DrlText drl = new DrlText(RULE);

    assertThat(drl.calls("atMost")).hasSize(1);
    assertThat(drl.calls("atMost").get(0).arguments())
        .extracting(drl::text)
        .containsExactly("$feed.volts()", "$feed.part().amount(\"max, volts\")");
    assertThat(drl.calls("atLeast")).isEmpty();
  }

  @Test
  void putsOneFaultAtATimeIntoTheText() {
    List<Mutant> mutants = DrlMutants.of(page(List.of(), Map.of()), RULE);

    assertThat(mutants)
        .extracting(Mutant::key)
        .containsExactly(
            "voltage/x | condition dropped | kind == Kind.PACK",
            "voltage/x | condition negated | kind == Kind.PACK -> kind != Kind.PACK",
            "voltage/x | condition dropped | warm || hot",
            "voltage/x | condition dropped | warm || hot -> warm",
            "voltage/x | condition dropped | warm || hot -> hot",
            "voltage/x | condition negated | warm || hot -> !(warm || hot)",
            "voltage/x | condition dropped | name != \"a, b (c)\"",
            "voltage/x | condition negated | name != \"a, b (c)\" -> name == \"a, b (c)\"",
            "voltage/x | condition dropped | open == true",
            "voltage/x | condition negated | open == true -> open == false",
            "voltage/x | pattern dropped | not( Guard( open == true ) )",
            "voltage/x | pattern turned: not, exists | not( Guard( open == true ) )",
            "voltage/x | pattern dropped | exists Lamp()",
            "voltage/x | pattern turned: not, exists | exists Lamp()",
            "voltage/x | demand and limit swapped | atMost($feed.volts(),"
                + " $feed.part().amount(\"max, volts\"))",
            "voltage/x | call turned: at most, at least | atMost($feed.volts(),"
                + " $feed.part().amount(\"max, volts\"))",
            "voltage/x | call and bounds turned | atMost($feed.volts(),"
                + " $feed.part().amount(\"max, volts\"))",
            "voltage/x | rule removed | voltage/x");
    assertThat(mutants.get(0).drl()).contains("Feed( warm || hot, name != \"a, b (c)\" )");
    assertThat(mutants.get(6).drl()).contains("Feed( kind == Kind.PACK, warm || hot )");
    assertThat(mutants.get(8).drl()).contains("not( Guard(  ) )");
    assertThat(mutants.get(11).drl()).contains("exists( Guard( open == true ) )");
    assertThat(mutants.get(14).drl())
        .contains("atMost($feed.part().amount(\"max, volts\"), $feed.volts())");
  }

  @Test
  void replacesSituationsAndWords() {
    Map<String, Situation> situations =
        Map.of(
            "open", new Situation("open", Outcome.WARNING, Consequence.STOPS, "open"),
            "worn", new Situation("worn", Outcome.ADVICE, Consequence.WEARS, "worn"));
    String found = RULE.replaceFirst("(?s)\\.atMost\\(.*\\);", ".found(\"open\");");
    String settle = RULE.replaceFirst("(?s)\\.atMost\\(.*\\);", ".settle(\\$feed.word(), none());");
    String expect =
        RULE.replaceFirst("(?s)\\.atMost\\(.*\\);", ".expect(\\$feed.said(), \"yes\");");

    assertThat(replaced(situations, found)).containsExactly("\"open\" -> \"worn\"");
    assertThat(replaced(situations, settle))
        .containsExactly(
            "$feed.word() -> \"fine\"", "$feed.word() -> \"open\"", "$feed.word() -> \"worn\"");
    assertThat(replaced(situations, expect)).containsExactly("\"yes\" -> \"something else\"");
  }

  @Test
  void putsOtherValuesOfTheFactInPlaceOfTheOneJudged() {
    String rule =
        RULE.replaceFirst("(?s)\\.atMost\\(.*\\);", ".atMost(\\$feed.fullVolts(), none());");

    assertThat(DrlMutants.of(page(List.of(), Map.of()), rule))
        .filteredOn(m -> m.fault() == Fault.VALUE_REPLACED)
        .extracting(Mutant::what)
        .contains("$feed.fullVolts(), none() -> $feed.minimumVolts(), none()")
        .noneMatch(what -> what.contains("-> $feed.fullVolts()") || what.contains("kind()"));
  }

  @Test
  void putsOneFaultAtATimeIntoThePage() {
    Bound over = new Bound(Outcome.VIOLATION, Consequence.HARM, 1, true);
    Situation open = new Situation("open", Outcome.FINE, Consequence.NUISANCE, "open");

    assertThat(PageMutants.of(page(List.of(over), Map.of("open", open)), RULE))
        .extracting(m -> m.fault().words() + " | " + m.what())
        .containsExactly(
            "bound moved outward by 1 % | violation over 100 % harm -> violation over 101 % harm",
            "bound moved inward by 1 % | violation over 100 % harm -> violation over 99 % harm",
            "bound turned: over, under | violation over 100 % harm -> violation under 100 % harm",
            "bound removed | violation over 100 % harm",
            "outcome changed | violation over 100 % harm -> warning over 100 % harm",
            "consequence changed | violation over 100 % harm -> violation over 100 % destroys",
            "situation removed | open",
            "outcome changed | open: fine -> advice",
            "consequence changed | open: nuisance -> wears",
            "protects-people flipped | no -> yes");
  }

  private static List<String> replaced(Map<String, Situation> situations, String drl) {
    return DrlMutants.of(page(List.of(), situations), drl).stream()
        .filter(m -> m.fault() == Fault.SITUATION_REPLACED || m.fault() == Fault.WORD_REPLACED)
        .map(Mutant::what)
        .toList();
  }

  private static RuleText page(List<Bound> bounds, Map<String, Situation> situations) {
    return new RuleText(
        "voltage/x", "", bounds, situations, false, "cp", "", "", "", "", List.of());
  }
}

package outshop.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import outshop.findings.Outcome;
import outshop.rulecases.Reads;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/** The list of what the outside checks bear on. */
final class OutsideProofTest {
  private static final RuleBook BOOK = RuleBook.load();
  private static final String SHARING = "sound/unequal-sharing";
  private static final String SLOW = "voltage/motor-slow";

  private static final Map<String, List<String>> READS =
      Map.of(SHARING, List.of("speaker"), SLOW, List.of("motor", "circuit"));

  private static final List<OutsideCheck> CHECKS =
      new CheckList("few")
          .from("a book, from memory")
          .same("one", "one of them", "1", "V", () -> 1)
          .same("two", "another", "2", "V", () -> 2)
          .same("solved", "a circuit", "3", "A", () -> 3)
          .outcome("run", "a plan", SLOW, Outcome.FINE, Trial::base)
          .all();

  @Test
  void everyCheckBearsOnRulesThatAreThereAndNoLineIsNeedless() {
    assertThat(OutsideProof.load().faults()).isEmpty();
  }

  @Test
  void everyRuleHasAProofThatSaysWhatItIs() {
    OutsideProof proofs = OutsideProof.load();

    assertThat(BOOK.all()).allSatisfy(r -> assertThat(proofs.of(r).gap()).as(r.name()).isEmpty());
    assertThat(proofs.of(rule("charging/cells-not-balanced")).words())
        .isEqualTo("common practice, no source");
    assertThat(proofs.of(rule("fit/pack-too-warm")).words()).isEqualTo("the part's own data");
    assertThat(proofs.of(rule("voltage/decoder-under-minimum")).words())
        .isEqualTo("the part's own data; 2 checks of the rule itself; solved circuits");
    assertThat(proofs.of(rule("sound/old-speaker")).words())
        .isEqualTo("common practice, no source; 1 check of the rule itself");
  }

  /**
   * What a rule reads is recorded while its examples run; the list takes the circuit from there.
   */
  @Test
  void everyRuleThatReadsTheCircuitHasTheSolvedCircuits() {
    OutsideProof proofs = OutsideProof.load();
    Set<String> solved =
        Set.copyOf(
            BOOK.all().stream()
                .filter(r -> Reads.recorded().get(r.name()).contains("circuit"))
                .map(RuleText::name)
                .toList());

    assertThat(solved).hasSizeGreaterThan(30);
    assertThat(BOOK.all())
        .allSatisfy(
            r ->
                assertThat(proofs.of(r).solved())
                    .as(r.name())
                    .isEqualTo(solved.contains(r.name())));
  }

  @Test
  void aProofNamesWhatBears() {
    OutsideProof proofs =
        list(
            "few/o* | " + SHARING + " " + SLOW,
            "few/two | " + SHARING,
            "few/solved | reads circuit");

    assertThat(proofs.faults()).isEmpty();
    Proof sharing = proofs.of(rule(SHARING));
    assertThat(sharing.words()).isEqualTo("follows from the circuit; 2 checks");
    assertThat(sharing.byArea()).isEqualTo("few 2");
    Proof slow = proofs.of(rule(SLOW));
    assertThat(slow.words())
        .isEqualTo("common practice, no source; 2 checks, 1 of the rule itself; solved circuits");
    assertThat(slow.byArea()).isEqualTo("few 2, 1 of the rule itself; solved circuits");
  }

  @Test
  void aRuleWithoutSourceAndCheckIsNoticed() {
    assertThat(new Proof("my uncle").gap()).isPresent();
    assertThat(new Proof("my uncle").words()).isEqualTo("source does not say");
    assertThat(new Proof("my uncle").byArea()).isEqualTo("none");
    assertThat(new Proof("my uncle, from memory").gap()).isEmpty();
  }

  @Test
  void whatDoesNotFitIsNoticed() {
    String rest = "few/two few/solved | " + SHARING;

    assertThat(list(rest).faults()).containsExactly("no line says what few/one bears on");
    assertThat(list(rest, "few/one | sound/gone").faults()).containsExactly("no rule sound/gone");
    assertThat(list(rest, "few/one few/tree* | " + SLOW).faults())
        .containsExactly("no check few/tree*");
    assertThat(list(rest, "few/one | reads circuit frame").faults())
        .containsExactly("no rule reads circuit and frame");
  }

  @Test
  void whatIsNotNeededIsNoticed() {
    assertThat(list("few/* | " + SHARING, "few/one | " + SHARING + " " + SLOW).faults())
        .singleElement()
        .asString()
        .startsWith("not needed: " + SHARING);
    assertThat(
            list("few/* | " + SHARING, "few/solved | reads circuit", "few/solved | " + SLOW)
                .faults())
        .anyMatch(fault -> fault.startsWith("not needed: " + SLOW));
    assertThat(list("few/* | " + SHARING, "few/run | " + SLOW).faults())
        .anyMatch(fault -> fault.startsWith("not needed: few/run"));
    assertThat(list("few/* | " + SHARING, "few/one | no rule: it was once").faults())
        .singleElement()
        .asString()
        .startsWith("not needed: few/one");
    assertThat(list("few/two few/solved | " + SHARING, "few/one | no rule: so").faults()).isEmpty();
  }

  @Test
  void aLineThatIsNoneIsRefused() {
    assertThatThrownBy(() -> list("few/one")).hasMessageContaining("checks | rules");
    assertThatThrownBy(() -> list("few/one | ")).hasMessageContaining("checks | rules");
  }

  private static OutsideProof list(String... lines) {
    return OutsideProof.of(CHECKS, List.of(lines), READS);
  }

  private static RuleText rule(String name) {
    return BOOK.find(name).orElseThrow();
  }
}

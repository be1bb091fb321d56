package outshop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.input.UnusableInput;

/** Every message of the reader, word for word, in {@code broken-catalogues.txt}. */
final class BrokenCataloguesTest {

  static List<Cases.Case> cases() {
    return Cases.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysExactlyThis(Cases.Case broken) {
    CatalogueReader.Read read = CatalogueReader.read(broken.files());

    assertThat(Cases.lines(read.problems())).containsExactlyElementsOf(broken.says());
    assertThat(broken.says()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void cannotBeUsedExactlyIfAnErrorIsSaid(Cases.Case broken) throws UnusableInput {
    CatalogueReader.Read read = CatalogueReader.read(broken.files());
    boolean hasError = broken.says().stream().anyMatch(line -> line.startsWith("error "));

    assertThat(read.isUsable()).isEqualTo(!hasError);
    if (hasError) {
      assertThatThrownBy(read::orThrow)
          .isInstanceOfSatisfying(
              UnusableInput.class, e -> assertThat(e.problems()).isEqualTo(read.problems()));
    } else {
      assertThat(read.orThrow()).isSameAs(read.catalogue());
    }
  }

  @Test
  void thereAreManyCasesAndEachHasItsOwnName() {
    Set<String> names = new HashSet<>();
    for (Cases.Case broken : Cases.all()) {
      assertThat(names.add(broken.name())).as(broken.name()).isTrue();
    }
    assertThat(names).hasSizeGreaterThanOrEqualTo(60);
  }
}

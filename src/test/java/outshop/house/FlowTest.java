package outshop.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The flow is the layout: nothing imports against it. */
final class FlowTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .withImportOption(location -> !location.contains("/test/"))
          .importPackages("outshop");

  /**
   * Each package, in the order of the flow, and which others may look into it; units and input are
   * for all.
   */
  private static final String WHO_LOOKS_INTO =
      """
      catalogue: plan circuit drawing figures plots report sheets mend search render cli rulebook
      plan: circuit drawing figures plots report sheets mend search render cli rulebook
      circuit: drawing figures plots findings rules ranking report sheets mend search render cli
      drawing: sheets render cli
      figures: plots rules sheets mend search cli
      plots: report render cli
      findings: rules ranking report sheets mend search render cli rulebook
      rules: mend search cli rulebook
      ranking: report mend search cli
      report: sheets mend search render cli
      sheets: render cli
      mend: render cli
      search: render cli
      render: cli
      cli:
      rulebook:
      """;

  @Test
  void nothingImportsAgainstTheFlow() {
    assertThat(CLASSES).isNotEmpty();
    LayeredArchitecture flow =
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("units")
            .definedBy("outshop.units..")
            .layer("input")
            .definedBy("outshop.input..");
    List<String> rows = WHO_LOOKS_INTO.lines().toList();
    for (String row : rows) {
      String layer = row.substring(0, row.indexOf(':'));
      flow = flow.layer(layer).definedBy("outshop." + layer + "..");
    }
    for (String row : rows) {
      String layer = row.substring(0, row.indexOf(':'));
      String[] others = row.substring(row.indexOf(':') + 1).strip().split(" ");
      flow =
          others[0].isEmpty()
              ? flow.whereLayer(layer).mayNotBeAccessedByAnyLayer()
              : flow.whereLayer(layer).mayOnlyBeAccessedByLayers(others);
    }
    flow.check(CLASSES);
  }

  @Test
  void onlyTheRuleLayerKnowsTheRuleEngine() {
    noClasses()
        .that()
        .resideOutsideOfPackages("outshop.rules..", "outshop.rulebook..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.drools..", "org.kie..")
        .check(CLASSES);
  }

  @Test
  void onlyTheDrawingKnowsTheLayoutLibrary() {
    noClasses()
        .that()
        .resideOutsideOfPackage("outshop.drawing..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.eclipse..")
        .check(CLASSES);
  }

  @Test
  void onlyReadersAndRenderersKnowFileFormats() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "outshop.input..", "outshop.catalogue..", "outshop.plan..", "outshop.render.json..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("tools.jackson..")
        .check(CLASSES);
  }

  @Test
  void onlyThePagesKnowTheTemplates() {
    noClasses()
        .that()
        .resideOutsideOfPackages("outshop.render.page..", "outshop.render.sheet..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("gg.jte..")
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLinePrints() {
    noClasses()
        .that()
        .resideOutsideOfPackages("outshop.cli..", "outshop.rulebook..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(CLASSES);
  }

  @Test
  void packagesDoNotGoInCircles() {
    slices().matching("outshop.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void aBreachWouldBeNoticed() {
    assertThatThrownBy(
            () ->
                noClasses()
                    .that()
                    .resideInAPackage("outshop.rules..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.kie..")
                    .check(CLASSES))
        .isInstanceOf(AssertionError.class);
  }
}

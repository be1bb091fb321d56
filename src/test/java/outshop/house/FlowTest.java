package outshop.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The flow is the layout: nothing imports against it. */
final class FlowTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("outshop");

  @Test
  void nothingImportsAgainstTheFlow() {
    assertThat(CLASSES).isNotEmpty();
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("units")
        .definedBy("outshop.units..")
        .layer("input")
        .definedBy("outshop.input..")
        .layer("catalogue")
        .definedBy("outshop.catalogue..")
        .layer("plan")
        .definedBy("outshop.plan..")
        .layer("circuit")
        .definedBy("outshop.circuit..")
        .layer("figures")
        .definedBy("outshop.figures..")
        .layer("findings")
        .definedBy("outshop.findings..")
        .layer("rules")
        .definedBy("outshop.rules..")
        .layer("ranking")
        .definedBy("outshop.ranking..")
        .layer("search")
        .definedBy("outshop.search..")
        .layer("report")
        .definedBy("outshop.report..")
        .layer("render")
        .definedBy("outshop.render..")
        .layer("cli")
        .definedBy("outshop.cli..")
        .layer("rulebook")
        .definedBy("outshop.rulebook..")
        .whereLayer("cli")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("rulebook")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("render")
        .mayOnlyBeAccessedByLayers("cli")
        .whereLayer("report")
        .mayOnlyBeAccessedByLayers("render", "cli")
        .whereLayer("search")
        .mayOnlyBeAccessedByLayers("render", "cli")
        .whereLayer("ranking")
        .mayOnlyBeAccessedByLayers("report", "search", "cli")
        .whereLayer("rules")
        .mayOnlyBeAccessedByLayers("search", "cli", "rulebook")
        .whereLayer("findings")
        .mayOnlyBeAccessedByLayers(
            "rules", "ranking", "search", "report", "render", "cli", "rulebook")
        .whereLayer("figures")
        .mayOnlyBeAccessedByLayers("rules", "search", "cli")
        .whereLayer("circuit")
        .mayOnlyBeAccessedByLayers(
            "figures", "findings", "rules", "search", "report", "render", "cli", "ranking")
        .whereLayer("plan")
        .mayOnlyBeAccessedByLayers(
            "circuit", "figures", "search", "report", "render", "cli", "rulebook")
        .whereLayer("catalogue")
        .mayOnlyBeAccessedByLayers(
            "plan", "circuit", "figures", "search", "report", "render", "cli", "rulebook")
        .check(CLASSES);
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

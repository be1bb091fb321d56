package outshop.cli;

import java.util.List;
import java.util.Optional;

/** Every command, by name. A command's class is loaded only when it is asked for. */
final class Commands {
  static final List<String> NAMES =
      List.of(
          "check",
          "mend",
          "choose",
          "explain",
          "rules",
          "new-catalogue",
          "check-catalogue",
          "new-plan",
          "measuring-sheet",
          "wiring",
          "sheet",
          "new-readings",
          "readings",
          "help",
          "version");

  private Commands() {}

  static Optional<Command> find(String name) {
    return switch (name) {
      case "check" -> Optional.of(new CheckCommand());
      case "mend" -> Optional.of(new MendCommand());
      case "choose" -> Optional.of(new ChooseCommand());
      case "explain" -> Optional.of(new ExplainCommand());
      case "rules" -> Optional.of(new RulesCommand());
      case "new-catalogue" -> Optional.of(new NewCatalogueCommand());
      case "check-catalogue" -> Optional.of(new CheckCatalogueCommand());
      case "new-plan" -> Optional.of(new NewPlanCommand());
      case "measuring-sheet" -> Optional.of(new MeasuringSheetCommand());
      case "wiring" -> Optional.of(new WiringCommand());
      case "sheet" -> Optional.of(new SheetCommand());
      case "new-readings" -> Optional.of(new NewReadingsCommand());
      case "readings" -> Optional.of(new ReadingsCommand());
      case "help" -> Optional.of(new HelpCommand());
      case "version" -> Optional.of(new VersionCommand());
      default -> Optional.empty();
    };
  }
}

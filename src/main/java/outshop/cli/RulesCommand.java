package outshop.cli;

import java.util.List;
import outshop.render.terminal.Sheet;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/** {@code rules}: lists every rule with its title, by family. */
final class RulesCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec("rules", List.of(), "list every rule by family", List.of());
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault {
    Sheet sheet = new Sheet(around.look(false));
    String family = "";
    for (RuleText rule : RuleBook.load().all()) {
      if (!rule.family().equals(family)) {
        if (!family.isEmpty()) {
          sheet.blank();
        }
        family = rule.family();
        sheet.heading(family);
      }
      sheet.paragraph(0, rule.name());
      sheet.paragraph(4, rule.title());
    }
    around.print(sheet.text());
    return Exit.OK;
  }
}

package outshop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.input.Nearest;
import outshop.input.Shown;
import outshop.render.terminal.PageText;
import outshop.render.terminal.Sheet;
import outshop.report.Basis;
import outshop.rules.Bound;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;
import outshop.rules.Situation;
import outshop.units.AmountText;

/** {@code explain}: prints a rule's page. */
final class ExplainCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "explain",
        List.of("RULE"),
        "tell what a rule demands, why, and where its bound comes from",
        List.of());
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault {
    RuleText rule = find(RuleBook.load(), given.operand(0));
    Sheet sheet = new Sheet(around.look(false));
    sheet.heading(rule.name());
    sheet.paragraph(0, rule.title());
    sheet.blank();
    bounds(rule, sheet);
    sheet.hanging("  basis      ", Basis.words(rule.basis()) + ": " + rule.source());
    if (rule.protectsPeople()) {
      sheet.hanging(
          "  people     ",
          "It protects people: a club can only make it stricter, and accepting a finding of it does"
              + " not take the finding away.");
    }
    sheet.blank();
    sheet.heading("Why it matters");
    sheet.paragraph(0, rule.why());
    if (!rule.cures().isEmpty()) {
      sheet.blank();
      sheet.heading("What to do");
      for (String cure : rule.cures()) {
        sheet.hanging("  - ", PageText.gaps(cure));
      }
    }
    PageText.print(RuleBook.page(rule.name()), sheet);
    around.print(sheet.text());
    return Exit.OK;
  }

  private static void bounds(RuleText rule, Sheet sheet) {
    for (Bound bound : rule.bounds()) {
      String side = bound.over() ? "over " : "under ";
      line(
          sheet,
          bound.outcome(),
          side + AmountText.percent(bound.factor()) + " of the limit",
          bound.consequence());
    }
    List<String> names = new ArrayList<>(rule.situations().keySet());
    names.sort(null);
    for (String name : names) {
      Situation situation = rule.situations().get(name);
      line(
          sheet,
          situation.outcome(),
          "\"" + PageText.gaps(situation.headline()) + "\"",
          situation.consequence());
    }
  }

  private static void line(Sheet sheet, Outcome outcome, String when, Consequence consequence) {
    String word = outcome.words();
    sheet.hanging(
        "  " + word + " ".repeat(Math.max(1, 11 - word.length())),
        when + " (" + consequence.word() + ": " + consequence.meaning() + ")");
  }

  /** The rule of that name, or the only one of that name in any family. */
  private static RuleText find(RuleBook book, String name) throws UsageFault {
    Optional<RuleText> exact = book.find(name);
    if (exact.isPresent()) {
      return exact.get();
    }
    List<String> names = new ArrayList<>();
    List<RuleText> ending = new ArrayList<>();
    for (RuleText rule : book.all()) {
      names.add(rule.name());
      if (rule.name().endsWith("/" + name)) {
        ending.add(rule);
      }
    }
    if (ending.size() == 1) {
      return ending.get(0);
    }
    throw new UsageFault(
        "there is no rule \""
            + Shown.text(name)
            + '"'
            + Nearest.hint(name, names)
            + "; outshop rules lists them");
  }
}

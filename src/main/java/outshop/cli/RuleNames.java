package outshop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.input.Nearest;
import outshop.input.Shown;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/** Finds the rule that somebody names, with or without its family. */
final class RuleNames {
  /** More names than this are no help to somebody who mistyped one. */
  private static final int MOST = 6;

  private final RuleBook book;

  RuleNames(RuleBook book) {
    this.book = book;
  }

  /**
   * The rule of that name, or the only one of that name in any family. Errors: {@link UsageFault}
   * with the nearest names.
   */
  RuleText find(String typed) throws UsageFault {
    Optional<RuleText> exact = book.find(typed);
    if (exact.isPresent()) {
      return exact.get();
    }
    List<RuleText> ending = new ArrayList<>();
    for (RuleText rule : book.all()) {
      if (shortName(rule).equals(typed)) {
        ending.add(rule);
      }
    }
    if (ending.size() == 1) {
      return ending.get(0);
    }
    throw new UsageFault(
        "there is no rule \""
            + Shown.text(typed)
            + '"'
            + hint(typed)
            + "; outshop rules lists them");
  }

  private String hint(String typed) {
    List<String> names = book.all().stream().map(RuleText::name).toList();
    Optional<String> near = Nearest.word(typed, names);
    if (near.isEmpty()) {
      near = nearShort(typed);
    }
    if (near.isPresent()) {
      return " (did you mean \"" + near.get() + "\"?)";
    }
    List<String> holding =
        typed.isBlank() ? List.of() : names.stream().filter(n -> n.contains(typed)).toList();
    if (holding.isEmpty()) {
      return "";
    }
    String more = holding.size() > MOST ? " and " + (holding.size() - MOST) + " more" : "";
    return " (with it in their names: "
        + String.join(", ", holding.subList(0, Math.min(MOST, holding.size())))
        + more
        + ")";
  }

  /** The whole name of the rule whose name without its family is nearest. */
  private Optional<String> nearShort(String typed) {
    Optional<String> near =
        Nearest.word(typed, book.all().stream().map(RuleNames::shortName).toList());
    for (RuleText rule : book.all()) {
      if (near.isPresent() && shortName(rule).equals(near.get())) {
        return Optional.of(rule.name());
      }
    }
    return Optional.empty();
  }

  private static String shortName(RuleText rule) {
    return rule.name().substring(rule.family().length() + 1);
  }
}

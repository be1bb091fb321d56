package outshop.render.terminal;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outshop.catalogue.Part;
import outshop.findings.Finding;
import outshop.search.Answer;
import outshop.search.Found;
import outshop.search.Hindrance;
import outshop.search.Order;
import outshop.search.Slot;
import outshop.search.Space;
import outshop.units.AmountText;
import outshop.units.Unit;

/** What a search for combinations found, for a terminal. */
public final class ChoiceText {
  private static final int MOST_RULES = 8;

  private final Space space;
  private final Answer answer;
  private final Sheet sheet;

  private ChoiceText(Space space, Answer answer, Look look) {
    this.space = space;
    this.answer = answer;
    this.sheet = new Sheet(look);
  }

  /**
   * The whole text.
   *
   * @param counted whether it was asked how many work
   */
  public static String text(Space space, Answer answer, Order order, boolean counted, Look look) {
    ChoiceText text = new ChoiceText(space, answer, look);
    text.sheet.heading(space.plan().title());
    text.places();
    text.sheet.blank();
    text.best(order);
    answer.hindrance().ifPresent(text::hindrance);
    text.sheet.paragraph(0, text.proof(order, counted));
    text.sheet.paragraph(0, Answer.CAUTION);
    return text.sheet.text();
  }

  private void places() {
    List<String> words = new ArrayList<>();
    for (Slot slot : space.slots()) {
      words.add(
          slot.name() + " " + number(slot.choices().size()) + (slot.added() ? " (added)" : ""));
    }
    sheet.hanging("open places  ", String.join(", ", words));
  }

  private void best(Order order) {
    answer
        .chance()
        .ifPresent(
            found -> one("works, come upon by chance and not known to be the best:  ", found));
    for (int i = 0; i < answer.best().size(); i++) {
      one((i + 1) + "  ", answer.best().get(i));
    }
    if (!answer.best().isEmpty() && !answer.bestIsSure()) {
      sheet.paragraph(
          0,
          "These come first by "
              + order.word()
              + " of all that works; the search was stopped before it found as many as asked for.");
    }
  }

  private void one(String first, Found found) {
    sheet.hanging(first, figures(found));
    for (int s = 0; s < space.slots().size(); s++) {
      Part part = found.parts().get(s);
      String title = part.title().equals(part.id()) ? "" : " (" + part.title() + ")";
      sheet.hanging("     " + space.slots().get(s).name() + "  ", part.id() + title);
    }
    sheet.blank();
  }

  private static String figures(Found found) {
    List<String> figures = new ArrayList<>();
    figures.add(
        "price "
            + (found.price().isPresent()
                ? AmountText.text(found.price().getAsDouble(), Unit.MONEY)
                : "not stated for every part"));
    figures.add(count(found.warnings(), "warning"));
    figures.add(found.untold() + " cannot tell");
    figures.add(
        found.hours().isPresent()
            ? "runs " + AmountText.text(found.hours().getAsDouble(), Unit.HOURS) + most(found)
            : "run time cannot be told");
    figures.add(
        found.litres().isPresent()
            ? "size " + AmountText.number(found.litres().getAsDouble()) + " litre"
            : "size not stated for every part");
    return String.join(", ", figures);
  }

  private static String most(Found found) {
    String most = AmountText.text(found.mostHours().getAsDouble(), Unit.HOURS);
    boolean same = most.equals(AmountText.text(found.hours().getAsDouble(), Unit.HOURS));
    return same ? "" : " (at most " + most + ")";
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** How many there are, how many work, and whether all were considered. */
  private String proof(Order order, boolean counted) {
    String all = number(answer.size()) + " combinations";
    if (answer.isComplete()) {
      return all + ", " + works(answer.works()) + ", all considered.";
    }
    if (!counted) {
      return all
          + ", not all considered: only as many as it takes to know the best by "
          + order.word()
          + ".";
    }
    return all
        + ", "
        + works(answer.works())
        + " of the "
        + number(answer.considered())
        + " considered so far, not all considered.";
  }

  private static String works(BigInteger works) {
    return works.signum() == 0
        ? "none works"
        : number(works) + (works.equals(BigInteger.ONE) ? " works" : " work");
  }

  private void hindrance(Hindrance hindrance) {
    sheet.paragraph(
        0,
        (answer.isComplete() ? "Nothing works. " : "Nothing was found that works. ")
            + "Of "
            + hindrance.drawn()
            + " combinations drawn at random, so many break these rules:");
    int shown = 0;
    for (var one : hindrance.byRule().entrySet()) {
      if (shown++ < MOST_RULES) {
        sheet.paragraph(2, String.format(Locale.ROOT, "%4d  %s", one.getValue(), one.getKey()));
      }
    }
    sheet.blank();
    List<String> ids = hindrance.nearest().stream().map(Part::id).toList();
    sheet.paragraph(0, "Nearest found: " + String.join(", ", ids) + ". What stands in its way:");
    for (Finding finding : hindrance.violations()) {
      sheet.hanging("  - ", finding.headline() + " (" + finding.rule() + ")");
      Hindrance.needed(finding).ifPresent(words -> sheet.hanging("    needs  ", words));
    }
    sheet.blank();
  }

  /** A count in words that can be read: whole up to six digits, then in millions and so on. */
  public static String number(BigInteger count) {
    if (count.bitLength() < 63 && count.longValueExact() < 1_000_000) {
      return number(count.intValueExact());
    }
    String digits = count.toString();
    String[] names = {"", "thousand", "million", "billion", "trillion"};
    int group = (digits.length() - 1) / 3;
    if (group >= names.length) {
      int exponent = digits.length() - 1;
      return digits.charAt(0) + "." + digits.substring(1, 2) + "e" + exponent;
    }
    int whole = digits.length() - 3 * group;
    return digits.substring(0, whole) + "." + digits.charAt(whole) + " " + names[group];
  }

  private static String number(int count) {
    return String.format(Locale.ROOT, "%,d", count);
  }
}

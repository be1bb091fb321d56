package outshop.render.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Shown;
import outshop.mend.Effects;
import outshop.mend.Mend;
import outshop.mend.Mending;
import outshop.mend.Need;
import outshop.report.Aspect;
import outshop.units.AmountText;
import outshop.units.Unit;

/** What can be done about a plan, as text: what is wrong, what would clear it, at what price. */
public final class MendText {
  private static final String INDENT = "     ";
  private static final int LABEL = 12;
  private static final double NO_DECIBEL = 0.05;

  /** Findings that a mend leaves or brings, before the rest is only counted. */
  private static final int MOST_SHOWN = 4;

  private final Mending mending;
  private final Sheet sheet;

  private MendText(Mending mending, Sheet sheet) {
    this.mending = mending;
    this.sheet = sheet;
  }

  /** The whole text, every line ended by {@code \n} and no longer than the look's width. */
  public static String text(Mending mending, Look look) {
    MendText text = new MendText(mending, new Sheet(look));
    text.head();
    text.mends();
    text.without();
    text.tally();
    return text.sheet.text();
  }

  private void head() {
    sheet.heading(Shown.text(mending.title()) + " (" + Shown.text(mending.planFile()) + ")");
    List<Finding> faults = mending.toClear();
    if (faults.isEmpty()) {
      sheet.paragraph(0, "There is nothing to mend: no rule finds a violation.");
      return;
    }
    sheet.paragraph(0, "To be cleared:");
    for (Finding finding : faults) {
      sheet.hanging(
          Arm.small(Aspect.of(finding.outcome())) + "  ",
          Paint.of(finding.outcome()),
          finding.outcome().words() + ": " + finding.headline(),
          Paint.NONE);
    }
  }

  private void mends() {
    List<Mend> mends = mending.mends();
    if (mends.isEmpty()) {
      return;
    }
    sheet.blank();
    sheet.heading("What clears " + (mending.toClear().size() == 1 ? "it" : "them all"));
    for (int i = 0; i < mends.size(); i++) {
      if (i > 0) {
        sheet.blank();
      }
      mend(Integer.toString(i + 1), mends.get(i));
    }
    if (mending.more() > 0) {
      sheet.blank();
      sheet.paragraph(0, "And " + mending.more() + " more that rank behind these (--best).");
    }
  }

  private void mend(String number, Mend mend) {
    List<String> words = mend.changes().stream().map(c -> c.words()).toList();
    String first = number + " ".repeat(Math.max(1, INDENT.length() - number.length()));
    for (String word : words) {
      sheet.hanging(first, Paint.BOLD, word, Paint.BOLD);
      first = INDENT;
    }
    line("clears", cleared(mend.clears()));
    findings("brings", mend.brings());
    findings("leaves", mend.left());
    for (String given : mend.givesUp()) {
      line("gives up", given + "; ask the owner");
    }
    line("costs", cost(mend.cost()));
    effects(mend.before(), mend.after());
  }

  private void line(String label, String words) {
    sheet.hanging(INDENT + label + " ".repeat(LABEL - label.length()), words);
  }

  private static String cleared(List<Finding> findings) {
    List<String> counts = new ArrayList<>();
    for (Outcome outcome : List.of(Outcome.VIOLATION, Outcome.WARNING, Outcome.CANNOT_TELL)) {
      long count = findings.stream().filter(f -> f.outcome() == outcome).count();
      if (count > 0 && outcome == Outcome.CANNOT_TELL) {
        counts.add(count + " that could not be told");
      } else if (count > 0) {
        counts.add(TerminalReport.counted((int) count, outcome.words()));
      }
    }
    return counts.isEmpty() ? "nothing" : String.join(", ", counts);
  }

  private void findings(String label, List<Finding> findings) {
    String first = label;
    int shown = findings.size() <= MOST_SHOWN + 1 ? findings.size() : MOST_SHOWN;
    for (Finding finding : findings.subList(0, shown)) {
      boolean untold = finding.outcome() == Outcome.CANNOT_TELL;
      line(first, (untold ? "" : finding.outcome().words() + ": ") + finding.headline());
      first = "";
    }
    if (shown < findings.size()) {
      line("", "and " + (findings.size() - shown) + " more");
    }
  }

  private static String cost(Optional<Double> cost) {
    if (cost.isEmpty()) {
      return "cannot be told: a part that comes or goes has no price in the catalogue";
    }
    double money = cost.get();
    String amount = AmountText.text(Math.abs(money), Unit.MONEY);
    return money == 0 ? "nothing more" : amount + (money > 0 ? " more" : " less");
  }

  private void effects(Effects before, Effects after) {
    line("run time", change(hours(before), hours(after)));
    loudness(before, after).ifPresent(words -> line("loudness", words));
    line("headroom", change(room(before), room(after)));
  }

  private static String change(String before, String after) {
    return before.equals(after) ? after + ", as before" : after + "; before: " + before;
  }

  private static String hours(Effects effects) {
    return effects.hours().map(h -> AmountText.text(h, Unit.HOURS)).orElse("cannot be told");
  }

  private static String room(Effects effects) {
    return effects
        .headroom()
        .map(
            h ->
                "a full pack stands "
                    + AmountText.text(Math.abs(h.volts()), Unit.VOLTS)
                    + (h.volts() < 0 ? " above" : " below")
                    + " the most that "
                    + h.at()
                    + " takes")
        .orElse("cannot be told");
  }

  private static Optional<String> loudness(Effects before, Effects after) {
    if (before.loudness().isEmpty() && after.loudness().isEmpty()) {
      return Optional.empty();
    }
    if (after.loudness().isEmpty()) {
      return Optional.of("no sound, or how loud cannot be told");
    }
    Optional<Double> louder = before.loudness().flatMap(b -> after.loudness().get().louderThan(b));
    if (louder.isEmpty()) {
      return Optional.of("cannot be compared: a speaker states no loudness");
    }
    double decibels = louder.get();
    if (Math.abs(decibels) < NO_DECIBEL) {
      return Optional.of("as before");
    }
    String size = String.format(Locale.ROOT, "%.1f dB", Math.abs(decibels));
    return Optional.of(size + (decibels > 0 ? " louder" : " quieter"));
  }

  /** Where nothing clears all: what comes nearest, and what parts would have to be like. */
  private void without() {
    if (mending.toClear().isEmpty() || !mending.mends().isEmpty()) {
      return;
    }
    sheet.blank();
    sheet.heading("Nothing was found that clears them all");
    mending
        .nearest()
        .ifPresent(
            nearest -> {
              sheet.paragraph(0, "This clears the most and brings no new violation:");
              mend("-", nearest);
            });
    if (mending.needs().isEmpty()) {
      sheet.paragraph(
          0,
          "What is left compares no value of a part, so no part can be named that would help:"
              + " see what outshop check says to do.");
      return;
    }
    for (Need need : mending.needs()) {
      sheet.blank();
      need(need);
    }
  }

  private void need(Need need) {
    sheet.paragraph(0, "In the way at " + need.part() + ":");
    for (Finding finding : need.inTheWay()) {
      sheet.hanging("  - ", finding.headline());
    }
    sheet.paragraph(0, "Wanted is a " + need.kind() + " with");
    need.asks().stream().filter(Need.Ask::stands).forEach(ask -> ask("  * ", ask, need));
    List<Need.Ask> met = need.asks().stream().filter(a -> !a.stands()).toList();
    if (!met.isEmpty()) {
      sheet.paragraph(0, "and, as the one here has already,");
      met.forEach(ask -> ask("  - ", ask, need));
    }
    String all =
        need.meeting() == 0
            ? "No " + need.kind() + " of the catalogue has all of that"
            : need.meeting()
                + " of the catalogue "
                + (need.meeting() == 1 ? "has" : "have")
                + " all of that, but with each something else is wrong";
    sheet.paragraph(0, all + ".");
  }

  private void ask(String first, Need.Ask ask, Need need) {
    String side = ask.atLeast() ? " of at least " : " of at most ";
    String words = ask.words().endsWith(".") ? cut(ask.words()) : ask.words();
    sheet.hanging(
        first,
        ask.column()
            + side
            + ask.value()
            + " ("
            + words
            + "): "
            + ask.meeting()
            + " of the catalogue's "
            + need.tried());
  }

  private static String cut(String sentence) {
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1, sentence.length() - 1);
  }

  private void tally() {
    if (mending.toClear().isEmpty()) {
      return;
    }
    Mending.Tally tally = mending.tally();
    StringBuilder words = new StringBuilder("Tried: ");
    words.append(TerminalReport.counted(tally.checks(), "set"));
    words.append(" of changes, each checked in full by every rule.");
    if (!mending.mends().isEmpty()) {
      smallest(tally, words);
    }
    if (tally.cut()) {
      words.append(" Not all tried");
      words.append(tally.checks() >= tally.limit() ? " (--checks raises the limit)." : ".");
    }
    sheet.blank();
    sheet.paragraph(0, words.toString());
    sheet.paragraph(
        0,
        "A change is ruled out if it brings a new violation, or if something that could be told can"
            + " be told no longer. A new warning is a price, shown under \"brings\". Costs compare"
            + " the prices of the parts; wire is not counted.");
    sheet.paragraph(
        0,
        "Mend and check again before you build; what the makers' instructions and local codes say"
            + " comes first, and what can hurt is for qualified people.");
  }

  private void smallest(Mending.Tally tally, StringBuilder words) {
    int size = mending.mends().get(0).changes().size();
    boolean proven = size <= Math.max(tally.allUpTo() + 1, tally.atLeast());
    if (size == 1) {
      return;
    }
    if (proven) {
      words.append(" No smaller set of changes that was tried clears it.");
    } else {
      words.append(
          " Found step by step, so a smaller set may exist, but no change of it can be left out.");
    }
  }
}

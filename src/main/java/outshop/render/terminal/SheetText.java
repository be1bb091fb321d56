package outshop.render.terminal;

import java.util.ArrayList;
import java.util.List;
import outshop.sheets.BenchSheet;
import outshop.sheets.BuyingList;
import outshop.sheets.Expected;
import outshop.sheets.Figure;
import outshop.sheets.OwnerSheet;
import outshop.sheets.WiringSheet;
import outshop.units.Want;

/** The sheets as text, with boxes to fill in by hand. */
public final class SheetText {
  private static final String BOX = "[____________]";

  private final Sheet sheet;

  private SheetText(Look look) {
    this.sheet = new Sheet(look);
  }

  /** The bench sheet. */
  public static String bench(BenchSheet bench, Look look) {
    SheetText text = new SheetText(look);
    text.head("Bench sheet", bench.title(), bench.planFile());
    text.standing(bench.standing(), "Do not power it: what follows stands in the report");
    bench.cautions().forEach(c -> text.sheet.hanging("  ! ", c.text()));
    text.sheet.blank();
    bench.assumptions().forEach(a -> text.sheet.paragraph(2, a.text()));
    int number = 1;
    for (BenchSheet.Stage stage : bench.stages()) {
      text.stage(number++, stage);
    }
    return text.sheet.text();
  }

  private void head(String name, String title, String planFile) {
    sheet.heading(name + ": " + title);
    sheet.paragraph(0, planFile);
    sheet.row("Name " + BOX + "   ", "Date " + BOX);
    sheet.blank();
  }

  private void standing(List<BenchSheet.Standing> standing, String heading) {
    if (standing.isEmpty()) {
      return;
    }
    sheet.hanging("STOP  ", heading + ":");
    standing.forEach(
        s -> sheet.hanging("      - ", s.headline() + " (" + s.rule() + " at " + s.where() + ")"));
    sheet.blank();
  }

  private void stage(int number, BenchSheet.Stage stage) {
    sheet.blank();
    sheet.heading(number + "  " + stage.title());
    if (stage.barred()) {
      sheet.paragraph(
          0, "Not before the violations at the head of this sheet are mended; then print it anew.");
      return;
    }
    stage.before().forEach(b -> sheet.paragraph(0, b.text()));
    stage.steps().forEach(this::step);
  }

  private void step(BenchSheet.Step step) {
    sheet.blank();
    sheet.hanging("( ) " + step.name() + "  ", step.act().text());
    sheet.hanging("      leads   ", step.leads().text());
    sheet.hanging("      expect  ", expected(step.expected()));
    sheet.hanging("      read    ", BOX);
    step.ifOff().forEach(o -> sheet.hanging(pad("      " + o.side().word()), o.means().text()));
  }

  private static String pad(String words) {
    return words + " ".repeat(Math.max(1, 14 - words.length()));
  }

  /** What a step expects, in words. */
  static String expected(Expected expected) {
    if (expected instanceof Expected.Joined joined) {
      return "joined" + joined.atMost().map(f -> ", at most " + f.text()).orElse("");
    }
    if (expected instanceof Expected.Apart apart) {
      return "open, at least " + apart.atLeast().text();
    }
    if (expected instanceof Expected.Window window) {
      return window
          .to()
          .map(to -> window.from().text() + " to " + to.text())
          .orElse("at least " + window.from().text());
    }
    List<String> wants = ((Expected.Untold) expected).wants().stream().map(Want::name).toList();
    return "cannot tell, for want of " + String.join(", ", wants);
  }

  /** The buying list. */
  public static String buying(BuyingList list, Look look) {
    SheetText text = new SheetText(look);
    text.head("Buying list", list.title(), list.planFile());
    list.parts().forEach(text::row);
    text.sheet.blank();
    list.materials().forEach(text::row);
    text.sheet.blank();
    text.sheet.hanging("  total       ", list.total().text());
    list.budget().ifPresent(b -> text.sheet.hanging("  budget      ", b.text()));
    list.left()
        .ifPresent(
            l -> text.sheet.hanging(l.value() < 0 ? "  overdrawn   " : "  left        ", abs(l)));
    if (!list.unpriced().isEmpty()) {
      text.sheet.hanging("  no price    ", String.join("; ", list.unpriced()));
    }
    text.sheet.blank();
    text.sheet.heading("Needed as well, not named by the plan");
    if (list.missing().isEmpty()) {
      text.sheet.paragraph(2, "Nothing that can be told from the plan.");
    }
    list.missing().forEach(m -> text.sheet.hanging("  ( ) ", m.text()));
    return text.sheet.text();
  }

  private static String abs(Figure left) {
    return new Figure(left.name(), Math.abs(left.value()), left.unit()).text();
  }

  private void row(BuyingList.Row row) {
    String quantity = row.quantity().map(Figure::text).orElse("?");
    String first = "  ( ) " + quantity + " ".repeat(Math.max(1, 8 - quantity.length()));
    String price =
        row.each().map(e -> "  " + e.text() + " each").orElse("  no price")
            + row.cost().map(c -> ", " + c.text()).orElse("");
    sheet.hanging(first, row.what() + " (" + row.where() + ")" + price);
  }

  /** The wiring sheet. */
  public static String wiring(WiringSheet wiring, Look look) {
    SheetText text = new SheetText(look);
    text.head("Wiring sheet", wiring.title(), wiring.planFile());
    wiring.notes().forEach(n -> text.sheet.hanging("  ! ", n.text()));
    text.sheet.blank();
    text.sheet.paragraph(0, "Wiring: " + wiring.pattern());
    for (WiringSheet.Wire wire : wiring.wires()) {
      text.sheet.hanging(
          "( ) "
              + wire.number().text()
              + " ".repeat(Math.max(1, 4 - wire.number().text().length())),
          wire.from() + " - " + wire.to());
      text.sheet.paragraph(8, String.join(", ", data(wire)) + "; sleeve " + wire.sleeve().text());
    }
    return text.sheet.text();
  }

  private static List<String> data(WiringSheet.Wire wire) {
    List<String> data = new ArrayList<>();
    data.add(wire.gauge().map(Figure::text).orElse("gauge not stated"));
    data.add(wire.length().map(Figure::text).orElse("length not stated"));
    data.add(wire.colour());
    return data;
  }

  /** The owner's sheet. */
  public static String owner(OwnerSheet owner, Look look) {
    SheetText text = new SheetText(look);
    text.head("Owner's sheet", owner.title(), owner.planFile());
    text.standing(owner.standing(), "Not to be handed over: what follows stands in the report");
    text.sheet.heading("What is inside");
    owner.parts().forEach(p -> text.sheet.hanging("  - ", p.what().text() + ": " + p.does()));
    for (OwnerSheet.Chapter chapter : owner.chapters()) {
      text.sheet.blank();
      text.sheet.heading(chapter.heading());
      chapter.rules().forEach(r -> text.sheet.hanging("  - ", r.text()));
    }
    return text.sheet.text();
  }
}

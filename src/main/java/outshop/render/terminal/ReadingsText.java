package outshop.render.terminal;

import outshop.sheets.ReadingsJudged;
import outshop.sheets.ReadingsJudged.Judged;
import outshop.sheets.ReadingsJudged.Stand;
import outshop.units.AmountText;

/** The judged readings as text: what is off first, then the rest in order, then what to do. */
public final class ReadingsText {
  private ReadingsText() {}

  /** The whole answer. */
  public static String text(ReadingsJudged judged, Look look) {
    Sheet sheet = new Sheet(look);
    sheet.heading("Readings: " + judged.title());
    for (Stand stand : Stand.values()) {
      if (stand != Stand.EARLY && stand != Stand.BARRED) {
        sheet.paragraph(2, judged.count(stand) + " " + stand.words());
      }
    }
    int soon = judged.count(Stand.EARLY) + judged.count(Stand.BARRED);
    if (soon > 0) {
      sheet.paragraph(2, soon + " " + Stand.EARLY.words());
    }
    sheet.blank();
    judged.lines().forEach(line -> line(line, sheet));
    sheet.blank();
    sheet.hanging("To do  ", judged.next().text());
    return sheet.text();
  }

  private static void line(Judged line, Sheet sheet) {
    String reading = line.reading().map(r -> r.text()).orElse("");
    String words = line.stand().words() + (reading.isEmpty() ? "" : ": " + reading);
    String side =
        line.side().map(s -> ", " + s.word()).orElse("")
            + line.off().map(o -> " by " + AmountText.percent(o)).orElse("");
    sheet.hanging(
        mark(line.stand()) + line.step().name() + "  ",
        words + side + "; expected " + SheetText.expected(line.step().expected()));
    line.cause().ifPresent(c -> sheet.hanging("      likely  ", c.text()));
  }

  private static String mark(Stand stand) {
    return switch (stand) {
      case INSIDE -> "  ok  ";
      case OUTSIDE -> "  !!  ";
      case MISSING -> "  --  ";
      case UNTOLD -> "  ??  ";
      case BARRED, EARLY -> "  !   ";
    };
  }
}

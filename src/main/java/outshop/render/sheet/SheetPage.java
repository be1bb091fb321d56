package outshop.render.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import outshop.sheets.BenchSheet;
import outshop.sheets.BuyingList;
import outshop.sheets.MeasuringPaper;
import outshop.sheets.OwnerSheet;
import outshop.sheets.WiringSheet;

/** The sheets as pages. Nothing is fetched from anywhere: the style stands in the page. */
public final class SheetPage {
  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, SheetPage.class.getClassLoader(), "outshop.render.page");

  private SheetPage() {}

  public static String of(BenchSheet sheet) {
    return page("bench", sheet);
  }

  public static String of(BuyingList sheet) {
    return page("buying", sheet);
  }

  /**
   * The wiring sheet.
   *
   * @param drawing one {@code svg} element, put into the page as it is; an empty place if empty
   * @param style what the drawing wants beside the sheet's own
   */
  public static String of(WiringSheet sheet, String drawing, String style) {
    return page("wiring", Map.of("sheet", sheet, "style", style() + style, "drawing", drawing));
  }

  public static String of(OwnerSheet sheet) {
    return page("owner", sheet);
  }

  public static String of(MeasuringPaper sheet) {
    return page("measuring", sheet);
  }

  private static String page(String kind, Object sheet) {
    return page(kind, Map.of("sheet", sheet, "style", style()));
  }

  private static String page(String kind, Map<String, Object> values) {
    StringOutput out = new StringOutput();
    ENGINE.render("sheet/" + kind + ".jte", values, out);
    return out.toString();
  }

  private static String style() {
    try (InputStream in = SheetPage.class.getResourceAsStream("sheet.css")) {
      if (in == null) {
        throw new IllegalStateException("sheet.css is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

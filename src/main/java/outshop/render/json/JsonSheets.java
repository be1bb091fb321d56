package outshop.render.json;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import outshop.sheets.BenchSheet;
import outshop.sheets.BuyingList;
import outshop.sheets.Expected;
import outshop.sheets.Figure;
import outshop.sheets.Line;
import outshop.sheets.MeasuringPaper;
import outshop.sheets.OwnerSheet;
import outshop.sheets.Sheets;
import outshop.sheets.WiringSheet;
import outshop.units.Want;
import tools.jackson.core.JsonGenerator;

/** Writes the sheets into a report's JSON: every number with its name, value and unit. */
final class JsonSheets {
  private final JsonGenerator json;

  private JsonSheets(JsonGenerator json) {
    this.json = json;
  }

  /** The property {@code sheets} of the object that is open. */
  static void write(JsonGenerator json, Sheets sheets) {
    JsonSheets writer = new JsonSheets(json);
    json.writeObjectPropertyStart("sheets");
    writer.object("measuring", () -> writer.measuring(sheets.measuring()));
    writer.object("buying", () -> writer.buying(sheets.buying()));
    writer.object("wiring", () -> writer.wiring(sheets.wiring()));
    writer.object("bench", () -> writer.bench(sheets.bench()));
    writer.object("owner", () -> writer.owner(sheets.owner()));
    json.writeEndObject();
  }

  private void measuring(MeasuringPaper paper) {
    texts("cautions", paper.cautions());
    array(
        "groups",
        paper.groups(),
        group -> {
          text("heading", group.heading());
          array(
              "items",
              group.items(),
              item -> {
                text("name", item.name());
                text("what", item.what());
                text("how", item.how());
                text("unit", item.unit());
                texts("choices", item.choices());
              });
        });
  }

  private void buying(BuyingList list) {
    array("parts", list.parts(), this::row);
    array("materials", list.materials(), this::row);
    array("missing", list.missing(), this::line);
    figure("total", list.total());
    texts("unpriced", list.unpriced());
    figure("budget", list.budget());
    figure("left", list.left());
  }

  private void row(BuyingList.Row row) {
    text("id", row.id());
    text("what", row.what());
    text("where", row.where());
    figure("quantity", row.quantity());
    figure("each", row.each());
    figure("cost", row.cost());
  }

  private void wiring(WiringSheet wiring) {
    text("pattern", wiring.pattern());
    array("notes", wiring.notes(), this::line);
    array(
        "wires",
        wiring.wires(),
        wire -> {
          figure("number", wire.number());
          text("from", wire.from());
          text("to", wire.to());
          figure("gauge", wire.gauge());
          figure("length", wire.length());
          text("colour", wire.colour());
          object("sleeve", () -> line(wire.sleeve()));
        });
  }

  private void bench(BenchSheet bench) {
    array("standing", bench.standing(), this::standing);
    array("cautions", bench.cautions(), this::line);
    array("assumptions", bench.assumptions(), this::line);
    array(
        "stages",
        bench.stages(),
        stage -> {
          text("power", stage.power().words());
          text("title", stage.title());
          json.writeBooleanProperty("barred", stage.barred());
          array("before", stage.before(), this::line);
          array("steps", stage.steps(), this::step);
        });
  }

  private void standing(BenchSheet.Standing standing) {
    text("rule", standing.rule());
    text("where", standing.where());
    text("headline", standing.headline());
  }

  private void step(BenchSheet.Step step) {
    text("name", step.name());
    object("act", () -> line(step.act()));
    object("leads", () -> line(step.leads()));
    object("expected", () -> expected(step.expected()));
    array(
        "ifOff",
        step.ifOff(),
        off -> {
          text("side", off.side().word());
          object("means", () -> line(off.means()));
        });
  }

  private void expected(Expected expected) {
    if (expected instanceof Expected.Joined joined) {
      text("kind", "joined");
      figure("to", joined.atMost());
    } else if (expected instanceof Expected.Apart apart) {
      text("kind", "open");
      figure("from", apart.atLeast());
    } else if (expected instanceof Expected.Window window) {
      text("kind", "window");
      figure("from", window.from());
      figure("to", window.to());
    } else if (expected instanceof Expected.Untold untold) {
      text("kind", "cannot tell");
      array("wants", untold.wants(), this::want);
    }
  }

  private void want(Want want) {
    text("where", want.where());
    text("what", want.what());
    text("how", want.how());
  }

  private void owner(OwnerSheet owner) {
    array("standing", owner.standing(), this::standing);
    array(
        "parts",
        owner.parts(),
        part -> {
          text("does", part.does());
          object("what", () -> line(part.what()));
        });
    array(
        "chapters",
        owner.chapters(),
        chapter -> {
          text("name", chapter.name());
          text("heading", chapter.heading());
          array("rules", chapter.rules(), this::line);
        });
  }

  /** A line as its text, and the numbers in it. */
  private void line(Line line) {
    text("text", line.text());
    array("figures", line.figures(), this::figure);
  }

  private void figure(String property, Optional<Figure> figure) {
    figure.ifPresent(f -> figure(property, f));
  }

  private void figure(String property, Figure figure) {
    object(property, () -> figure(figure));
  }

  private void figure(Figure figure) {
    text("name", figure.name());
    json.writeNumberProperty("value", figure.value() + 0.0);
    text("unit", figure.unit().name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private interface Writes<T> {
    void write(T item);
  }

  private <T> void array(String name, List<T> items, Writes<T> writes) {
    json.writeArrayPropertyStart(name);
    for (T item : items) {
      json.writeStartObject();
      writes.write(item);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void object(String name, Runnable content) {
    json.writeObjectPropertyStart(name);
    content.run();
    json.writeEndObject();
  }

  private void texts(String name, List<String> texts) {
    json.writeArrayPropertyStart(name);
    texts.forEach(json::writeString);
    json.writeEndArray();
  }

  private void text(String name, String text) {
    json.writeStringProperty(name, text);
  }
}

package outshop.render.json;

import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import outshop.findings.Finding;
import outshop.mend.Change;
import outshop.mend.Effects;
import outshop.mend.Mend;
import outshop.mend.Mending;
import outshop.mend.Need;
import tools.jackson.core.JsonGenerator;

/**
 * Writes what can be done about a plan as JSON, in the manner of {@link JsonReport}: keys in a
 * fixed order, numbers in full; a number that is not known is left out.
 */
public final class JsonMend {
  /** The version of this form; changed only when a field changes its meaning or goes away. */
  private static final int VERSION = 1;

  private final JsonGenerator json;

  private JsonMend(JsonGenerator json) {
    this.json = json;
  }

  /** All of it, ended by {@code \n}; to be written as UTF-8. */
  public static String text(Mending mending) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = Layout.generator(out)) {
      new JsonMend(json).mending(mending);
    }
    return Layout.visible(out.toString()) + "\n";
  }

  private void mending(Mending mending) {
    json.writeStartObject();
    json.writeNumberProperty("outshopMend", VERSION);
    json.writeStringProperty("title", mending.title());
    json.writeStringProperty("planFile", mending.planFile());
    findings("toClear", mending.toClear());
    array("mends", mending.mends(), this::mend);
    json.writeNumberProperty("more", mending.more());
    array("nearest", mending.nearest().stream().toList(), this::mend);
    array("needs", mending.needs(), this::need);
    tally(mending.tally());
    json.writeEndObject();
  }

  private void tally(Mending.Tally tally) {
    json.writeObjectPropertyStart("tried");
    json.writeNumberProperty("changes", tally.changes());
    json.writeNumberProperty("checks", tally.checks());
    json.writeNumberProperty("limit", tally.limit());
    json.writeNumberProperty("allUpTo", tally.allUpTo());
    json.writeNumberProperty("neededAtLeast", tally.atLeast());
    json.writeBooleanProperty("notAllTried", tally.cut());
    json.writeEndObject();
  }

  private void mend(Mend mend) {
    json.writeStartObject();
    array("changes", mend.changes(), this::change);
    findings("clears", mend.clears());
    findings("brings", mend.brings());
    findings("leaves", mend.left());
    number("cost", mend.cost());
    array("givesUp", mend.givesUp(), json::writeString);
    effects("before", mend.before());
    effects("after", mend.after());
    json.writeEndObject();
  }

  private void change(Change change) {
    json.writeStartObject();
    json.writeStringProperty("kind", change.getClass().getSimpleName().toLowerCase(Locale.ROOT));
    json.writeStringProperty("at", change.slot());
    json.writeStringProperty("words", change.words());
    json.writeEndObject();
  }

  private void effects(String name, Effects effects) {
    json.writeObjectPropertyStart(name);
    number("hours", effects.hours());
    number("soundDecibels", effects.loudness().map(Effects.Loudness::powerDecibels));
    number("headroomVolts", effects.headroom().map(Effects.Headroom::volts));
    effects.headroom().ifPresent(h -> json.writeStringProperty("headroomAt", h.at()));
    json.writeEndObject();
  }

  private void need(Need need) {
    json.writeStartObject();
    json.writeStringProperty("part", need.part());
    json.writeStringProperty("kind", need.kind());
    findings("inTheWay", need.inTheWay());
    array("asks", need.asks(), this::ask);
    json.writeNumberProperty("meeting", need.meeting());
    json.writeNumberProperty("tried", need.tried());
    json.writeEndObject();
  }

  private void ask(Need.Ask ask) {
    json.writeStartObject();
    json.writeStringProperty("column", ask.column());
    json.writeStringProperty("side", ask.atLeast() ? "at least" : "at most");
    json.writeStringProperty("value", ask.value());
    json.writeBooleanProperty("stands", ask.stands());
    json.writeNumberProperty("meeting", ask.meeting());
    json.writeEndObject();
  }

  private void findings(String name, List<Finding> findings) {
    array(name, findings, this::finding);
  }

  private void finding(Finding finding) {
    Items.openFinding(json, finding);
    json.writeEndObject();
  }

  private <T> void array(String name, List<T> items, Items.Writes<T> writes) {
    Items.array(json, name, items, writes);
  }

  private void number(String name, Optional<Double> number) {
    number.ifPresent(n -> json.writeNumberProperty(name, n + 0.0));
  }
}

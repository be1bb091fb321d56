package outshop.render.json;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import outshop.catalogue.Part;
import outshop.findings.Finding;
import outshop.search.Answer;
import outshop.search.Found;
import outshop.search.Hindrance;
import outshop.search.Order;
import outshop.search.Slot;
import outshop.search.Space;
import tools.jackson.core.JsonGenerator;

/**
 * Writes what a search for combinations found as JSON, in the manner of {@link JsonReport}: keys in
 * a fixed order, numbers in full, counts with every digit; a number that is not known is left out.
 */
public final class JsonChoice {
  /** The version of this form; changed only when a field changes its meaning or goes away. */
  private static final int VERSION = 1;

  private final JsonGenerator json;
  private final Space space;

  private JsonChoice(JsonGenerator json, Space space) {
    this.json = json;
    this.space = space;
  }

  /**
   * All of it, ended by {@code \n}; to be written as UTF-8.
   *
   * @param counted whether it was asked how many work
   */
  public static String text(Space space, Answer answer, Order order, boolean counted) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = Layout.generator(out)) {
      new JsonChoice(json, space).choice(answer, order, counted);
    }
    return Layout.visible(out.toString()) + "\n";
  }

  private void choice(Answer answer, Order order, boolean counted) {
    json.writeStartObject();
    json.writeNumberProperty("outshopChoose", VERSION);
    json.writeStringProperty("title", space.plan().title());
    json.writeStringProperty("planFile", space.plan().file());
    json.writeStringProperty("order", order.word());
    Items.array(json, "places", space.slots(), this::place);
    Items.array(json, "best", answer.best(), this::found);
    json.writeBooleanProperty("bestAreSure", answer.bestIsSure());
    Items.array(json, "byChance", answer.chance().stream().toList(), this::found);
    Items.array(json, "inTheWay", answer.hindrance().stream().toList(), this::hindrance);
    json.writeNumberProperty("combinations", answer.size());
    json.writeBooleanProperty("counted", counted);
    json.writeNumberProperty("considered", answer.considered());
    json.writeNumberProperty("work", answer.works());
    json.writeBooleanProperty("allConsidered", answer.isComplete());
    Items.array(json, "cautions", List.of(Answer.CAUTION), json::writeString);
    json.writeEndObject();
  }

  private void place(Slot slot) {
    json.writeStartObject();
    json.writeStringProperty("name", slot.name());
    json.writeStringProperty("kind", slot.open().kind().word());
    json.writeNumberProperty("parts", slot.choices().size());
    json.writeBooleanProperty("added", slot.added());
    json.writeEndObject();
  }

  private void found(Found found) {
    json.writeStartObject();
    parts("parts", found.parts());
    number("price", found.price());
    json.writeNumberProperty("warnings", found.warnings());
    json.writeNumberProperty("cannotTell", found.untold());
    number("hours", found.hours());
    number("mostHours", found.mostHours());
    number("litres", found.litres());
    json.writeEndObject();
  }

  /** Ids by the name of their place. */
  private void parts(String name, List<Part> parts) {
    json.writeObjectPropertyStart(name);
    for (int s = 0; s < parts.size(); s++) {
      json.writeStringProperty(space.slots().get(s).name(), parts.get(s).id());
    }
    json.writeEndObject();
  }

  private void hindrance(Hindrance hindrance) {
    json.writeStartObject();
    json.writeNumberProperty("drawn", hindrance.drawn());
    Items.array(json, "rules", List.copyOf(hindrance.byRule().entrySet()), this::broken);
    parts("nearest", hindrance.nearest());
    Items.array(json, "violations", hindrance.violations(), this::violation);
    json.writeEndObject();
  }

  private void broken(Map.Entry<String, Integer> rule) {
    json.writeStartObject();
    json.writeStringProperty("rule", rule.getKey());
    json.writeNumberProperty("broken", rule.getValue());
    json.writeEndObject();
  }

  private void violation(Finding finding) {
    Items.openFinding(json, finding);
    Hindrance.needed(finding).ifPresent(needs -> json.writeStringProperty("needs", needs));
    json.writeEndObject();
  }

  private void number(String name, OptionalDouble number) {
    number.ifPresent(n -> json.writeNumberProperty(name, n + 0.0));
  }
}

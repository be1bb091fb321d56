package outshop.render.json;

import java.util.List;
import outshop.findings.Finding;
import tools.jackson.core.JsonGenerator;

/** What answers about changes and choices have in common: lists, and findings in short. */
final class Items {
  private Items() {}

  /** Writes one thing of a list. */
  interface Writes<T> {
    void write(T item);
  }

  static <T> void array(JsonGenerator json, String name, List<T> items, Writes<T> writes) {
    json.writeArrayPropertyStart(name);
    for (T item : items) {
      writes.write(item);
    }
    json.writeEndArray();
  }

  /** The fields of a finding that tell it apart, and its sentence; the object stays open. */
  static void openFinding(JsonGenerator json, Finding finding) {
    json.writeStartObject();
    json.writeStringProperty("rule", finding.rule());
    json.writeStringProperty("outcome", finding.outcome().words());
    json.writeStringProperty("consequence", finding.consequence().word());
    json.writeStringProperty("where", finding.at().name());
    json.writeStringProperty("headline", finding.headline());
  }
}

package outshop.render.json;

import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Problem;
import outshop.plots.Mark;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.report.Report;
import outshop.sheets.Sheets;
import outshop.units.Amount;
import outshop.units.Want;
import tools.jackson.core.JsonGenerator;

/**
 * Writes a report as JSON. The keys stand in a fixed order and every number in the fewest digits
 * that give it back exactly, so the same report is the same to the byte. A number without end is
 * written as the text {@code "Infinity"}.
 */
public final class JsonReport {
  private final JsonGenerator json;

  private JsonReport(JsonGenerator json) {
    this.json = json;
  }

  /** The whole report, ended by {@code \n}; to be written as UTF-8. */
  public static String text(Report report) {
    return text(report, Optional.empty());
  }

  /** As {@link #text(Report)}, with the sheets of the same run. */
  public static String text(Report report, Sheets sheets) {
    return text(report, Optional.of(sheets));
  }

  private static String text(Report report, Optional<Sheets> sheets) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = Layout.generator(out)) {
      new JsonReport(json).report(report, sheets);
    }
    return Layout.visible(out.toString()) + "\n";
  }

  private void report(Report report, Optional<Sheets> sheets) {
    json.writeStartObject();
    json.writeNumberProperty("outshopReport", Report.VERSION);
    text("title", report.title());
    text("planFile", report.planFile());
    text("verdict", report.verdict().word());
    counts(report);
    array("findings", report.findings(), this::finding);
    array("cannotTell", report.cannotTell(), this::finding);
    array("fine", report.fine(), this::finding);
    array("accepted", report.accepted(), this::accepted);
    texts("unusedAcceptances", report.unusedAcceptances());
    array("wanted", report.wanted(), this::wanted);
    array("parts", report.parts(), this::part);
    array("cases", report.cases(), this::caseFigures);
    texts("cautions", report.cautions());
    array("notes", report.notes(), this::note);
    array("plots", report.plots(), this::plot);
    sheets.ifPresent(s -> JsonSheets.write(json, s));
    json.writeEndObject();
  }

  private void counts(Report report) {
    json.writeObjectPropertyStart("counts");
    json.writeNumberProperty("violation", report.count(Outcome.VIOLATION));
    json.writeNumberProperty("warning", report.count(Outcome.WARNING));
    json.writeNumberProperty("cannotTell", report.count(Outcome.CANNOT_TELL));
    json.writeNumberProperty("advice", report.count(Outcome.ADVICE));
    json.writeNumberProperty("fine", report.count(Outcome.FINE));
    json.writeNumberProperty("accepted", report.accepted().size());
    json.writeNumberProperty("rules", report.rules());
    json.writeEndObject();
  }

  private void finding(Finding finding) {
    json.writeStartObject();
    text("rule", finding.rule());
    text("outcome", finding.outcome().words());
    text("consequence", finding.consequence().word());
    text("station", finding.at().station().words());
    text("where", finding.at().name());
    text("described", finding.at().described());
    text("headline", finding.headline());
    finding.demand().ifPresent(demand -> value("demand", demand));
    finding.limit().ifPresent(limit -> value("limit", limit));
    finding.mark().ifPresent(this::mark);
    number("past", finding.past());
    array("working", finding.working(), this::step);
    text("why", finding.why());
    texts("cures", finding.cures());
    text("basis", finding.basis());
    text("source", finding.source());
    texts("assumed", finding.assumed());
    array("wants", finding.wants(), this::want);
    text("sureness", word(finding.sureness()));
    json.writeBooleanProperty("softened", finding.softened());
    json.writeEndObject();
  }

  private void value(String name, Amount.Known value) {
    json.writeObjectPropertyStart(name);
    text("label", value.label());
    number("value", value.value());
    number("low", value.low());
    number("high", value.high());
    text("unit", word(value.unit()));
    text("origin", word(value.origin()));
    text("how", value.how());
    json.writeEndObject();
  }

  private void mark(Finding.Mark mark) {
    json.writeObjectPropertyStart("bound");
    text("side", mark.upper() ? "at most" : "at least");
    number("value", mark.value());
    json.writeEndObject();
  }

  private void step(Finding.Step step) {
    json.writeStartObject();
    text("what", step.what());
    text("value", step.value());
    text("how", step.how());
    json.writeEndObject();
  }

  private void want(Want want) {
    json.writeStartObject();
    wantFields(want);
    json.writeEndObject();
  }

  private void wantFields(Want want) {
    text("where", want.where());
    text("what", want.what());
    text("how", want.how());
  }

  private void accepted(Report.Accepted accepted) {
    json.writeStartObject();
    text("reason", accepted.reason());
    json.writeName("finding");
    finding(accepted.finding());
    json.writeEndObject();
  }

  private void wanted(Report.Wanted wanted) {
    json.writeStartObject();
    wantFields(wanted.want());
    texts("rules", wanted.rules());
    text("worst", wanted.worst().word());
    json.writeEndObject();
  }

  private void part(Report.PartLine part) {
    json.writeStartObject();
    text("station", part.station());
    text("name", part.name());
    text("kind", part.kind());
    text("id", part.id());
    text("title", part.title());
    part.price().ifPresent(price -> number("price", price));
    text("origin", part.origin());
    json.writeEndObject();
  }

  private void caseFigures(Report.CaseFigures figures) {
    json.writeStartObject();
    text("name", figures.name());
    array("elements", figures.elements(), this::element);
    array("wants", figures.wants(), this::want);
    json.writeEndObject();
  }

  private void element(Report.ElementFigures figures) {
    json.writeStartObject();
    text("element", figures.element());
    number("volts", figures.volts());
    number("amps", figures.amps());
    number("watts", figures.watts());
    json.writeEndObject();
  }

  private void note(Problem note) {
    json.writeStartObject();
    text("severity", word(note.severity()));
    text("file", note.place().file());
    json.writeNumberProperty("line", note.place().line());
    json.writeNumberProperty("column", note.place().column());
    text("path", note.place().path());
    text("found", note.found());
    text("what", note.what());
    text("expected", note.expected());
    json.writeEndObject();
  }

  private void plot(Plot plot) {
    json.writeStartObject();
    text("subject", plot.subject().word());
    text("of", plot.of());
    text("title", plot.title());
    array("rows", plot.rows(), this::row);
    texts("remarks", plot.remarks());
    json.writeEndObject();
  }

  private void row(Row row) {
    json.writeStartObject();
    text("name", row.name());
    text("described", row.described());
    array("marks", row.marks(), this::plotMark);
    json.writeEndObject();
  }

  private void plotMark(Mark mark) {
    json.writeStartObject();
    text("meaning", word(mark.meaning()));
    mark.charge().ifPresent(charge -> text("charge", word(charge)));
    mark.along().ifPresent(along -> amount("along", along));
    amount("amount", mark.amount());
    json.writeEndObject();
  }

  /** A value in short, what is wanted, or an empty object for what does not exist. */
  private void amount(String name, Amount amount) {
    json.writeObjectPropertyStart(name);
    if (amount instanceof Amount.Known known) {
      number("value", known.value());
      number("low", known.low());
      number("high", known.high());
      text("unit", word(known.unit()));
      text("origin", word(known.origin()));
    } else if (amount instanceof Amount.Missing missing) {
      array("wants", missing.wants(), this::want);
    }
    json.writeEndObject();
  }

  private interface Writes<T> {
    void write(T item);
  }

  private <T> void array(String name, List<T> items, Writes<T> writes) {
    json.writeArrayPropertyStart(name);
    for (T item : items) {
      writes.write(item);
    }
    json.writeEndArray();
  }

  private void texts(String name, List<String> texts) {
    array(name, texts, json::writeString);
  }

  private void text(String name, String text) {
    json.writeStringProperty(name, text);
  }

  /** Adding zero turns a negative zero, which says nothing, into a plain one. */
  private void number(String name, double number) {
    json.writeNumberProperty(name, number + 0.0);
  }

  /** An enum's constant as the schema writes it: {@code AMPERE_HOURS} is {@code ampere-hours}. */
  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

package outshop.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/**
 * The JSON Schema (draft 2020-12) of a plan, for editors that complete and check as one types. It
 * knows the form of every key; what only the catalogue or the rest of the plan can tell (ids, names
 * that exist, shares that add up), the reader checks.
 */
public final class PlanSchema {
  private static final String NUMBER = "[+-]?([0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]{1,2})?|\\.[0-9]+)";
  private static final String TERMINAL =
      "^(frame|left-rail|right-rail|common|" + OwnName.FORM + "\\.[\\p{L}\\p{N}+_-]+)$";

  private PlanSchema() {}

  /** The schema's text, the same for the same keys and columns. */
  public static String text() {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", "urn:outshop:plan:1");
    schema.put("title", "Outshop plan");
    schema.put(
        "description",
        "What was measured on a locomotive, what is wished for, which parts are fitted and how they"
            + " are wired.");
    schema.putAll(section(KeyTree.ROOT));
    schema.put("type", "object");
    schema.put("required", List.of("outshop_plan"));
    schema.put("$defs", definitions());
    return JsonText.of(schema);
  }

  private static Map<String, Object> section(KeyTree at) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", List.of("object", "null"));
    if (at.own().isPresent()) {
      schema.put("propertyNames", Map.of("$ref", "#/$defs/name"));
      schema.put("additionalProperties", place(at.own().get()));
      return schema;
    }
    schema.put("properties", properties(at));
    schema.put("additionalProperties", false);
    return schema;
  }

  private static Map<String, Object> properties(KeyTree at) {
    Map<String, Object> properties = new LinkedHashMap<>();
    List<String> names = at.names();
    for (int i = 0; i < names.size(); i++) {
      properties.put(names.get(i), place(at.below().get(i)));
    }
    return properties;
  }

  private static Map<String, Object> place(KeyTree at) {
    if (at.isSection()) {
      return section(at);
    }
    Key key = at.key().orElseThrow();
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("title", key.help());
    schema.put("description", description(key));
    if (key.type() == Key.Type.ROWS) {
      schema.put("type", "array");
      schema.put("items", row(at, key));
    } else if (key.type() == Key.Type.PART) {
      schema.put("$ref", at.path().equals("parts.*") ? "#/$defs/part" : "#/$defs/wire");
    } else {
      schema.putAll(value(key));
    }
    return schema;
  }

  private static Map<String, Object> row(KeyTree at, Key key) {
    Map<String, Object> row = section(at);
    row.put("type", "object");
    row.put("required", Rows.needed(key));
    return row;
  }

  private static String description(Key key) {
    StringBuilder text = new StringBuilder("How to get it: " + key.how() + ".");
    if (!key.example().equals("[]")) {
      text.append(" Example: ").append(key.example()).append('.');
    }
    if (key.assumed().isPresent()) {
      Written written = Written.like(key);
      Key.Assumed d = key.assumed().get();
      text.append(" Left out: %s is assumed".formatted(written.text(d.value())));
      text.append(" (%s to %s).".formatted(written.text(d.low()), written.text(d.high())));
    }
    return text.toString();
  }

  private static Map<String, Object> value(Key key) {
    return switch (key.type()) {
      case TEXT -> Map.of("type", List.of("string", "number"));
      case WORD -> Map.of("enum", key.words());
      case QUANTITY -> quantity(key.unit(), false);
      case QUANTITY_OR_NONE -> quantity(key.unit(), true);
      case COUNT -> key.low() == key.high() ? Map.of("const", (int) key.low()) : count();
      case NAME -> name(key);
      case NAMES -> names(key);
      case PART, ROWS -> throw new IllegalArgumentException(key.path() + " is no value");
    };
  }

  private static Map<String, Object> count() {
    return ordered("type", "integer", "minimum", 0);
  }

  private static Map<String, Object> quantity(Unit unit, boolean orNone) {
    if (unit == Unit.COUNT) {
      return orNone ? Map.of("anyOf", List.of(count(), Map.of("const", "none"))) : count();
    }
    if (unit == Unit.MONEY) {
      return ordered("type", "number", "minimum", 0);
    }
    Set<String> spellings = new LinkedHashSet<>(QuantityReader.spellings(unit));
    spellings.add(unit.symbol());
    String form = NUMBER + "\\s*(" + String.join("|", spellings) + ")";
    return ordered("type", "string", "pattern", "^(" + form + (orNone ? "|none" : "") + ")$");
  }

  private static Map<String, Object> name(Key key) {
    if (Refers.of(key) == Refers.NOTHING) {
      return ordered("type", "string", "minLength", 1);
    }
    return Refers.of(key).isTerminal()
        ? ordered("type", "string", "pattern", TERMINAL)
        : Map.of("$ref", "#/$defs/name");
  }

  private static Map<String, Object> names(Key key) {
    Map<String, Object> item = key.words().isEmpty() ? name(key) : Map.of("enum", key.words());
    Map<String, Object> list =
        ordered("type", "array", "items", item, "minItems", 1, "uniqueItems", true);
    Map<String, Object> none = Map.of("const", "none");
    Map<String, Object> noneAlone =
        ordered("type", "array", "items", none, "maxItems", 1, "minItems", 1);
    return Map.of("anyOf", List.of(none, item, noneAlone, list));
  }

  private static Map<String, Object> definitions() {
    Map<String, Object> definitions = new LinkedHashMap<>();
    definitions.put("name", ownName());
    definitions.put("id", Map.of("type", List.of("string", "number")));
    definitions.put("fitting", Map.of("properties", properties(fittingKeys())));
    definitions.put("part", part());
    definitions.put("wire", wire());
    definitions.put("part-of-catalogue", closed(catalogueId(), fittingRefs(), anyColumns()));
    for (Kind kind : Kind.values()) {
      definitions.put(
          "part-" + kind.word(), closed(word(kind), any(), fittingRefs(), columns(kind)));
    }
    return definitions;
  }

  private static Map<String, Object> ownName() {
    Map<String, Object> reserved = Map.of("enum", OwnName.RESERVED);
    return ordered("type", "string", "pattern", "^" + OwnName.FORM + "$", "not", reserved);
  }

  private static Map<String, Object> part() {
    List<Object> choices = new ArrayList<>();
    choices.add(whereIdStands(Map.of("$ref", "#/$defs/part-of-catalogue")));
    for (Kind kind : Kind.values()) {
      Map<String, Object> ofKind =
          ordered("required", List.of(PartReader.KIND), "properties", word(kind));
      choices.add(ordered("if", ofKind, "then", Map.of("$ref", "#/$defs/part-" + kind.word())));
    }
    return idOrMap(Kind.words(), choices);
  }

  private static Map<String, Object> wire() {
    Map<String, Object> columns = columns(Kind.WIRE);
    Map<String, Object> writtenOut = closed(word(Kind.WIRE), any(), columns);
    Map<String, Object> overriding = new LinkedHashMap<>(columns);
    overriding.remove("id");
    Map<String, Object> ofKind = Map.of("required", List.of(PartReader.KIND));
    return idOrMap(
        List.of(Kind.WIRE.word()),
        List.of(
            whereIdStands(closed(catalogueId(), overriding)),
            ordered("if", ofKind, "then", writtenOut)));
  }

  private static Map<String, Object> whereIdStands(Map<String, Object> schema) {
    Map<String, Object> idAlone =
        ordered(
            "required",
            List.of(PartReader.PART),
            "not",
            Map.of("required", List.of(PartReader.KIND)));
    return ordered("if", idAlone, "then", schema);
  }

  /** A catalogue id, or a map that holds one, or a kind with its columns. */
  private static Map<String, Object> idOrMap(List<String> kinds, List<Object> choices) {
    Map<String, Object> properties = new LinkedHashMap<>(catalogueId());
    properties.put(
        PartReader.KIND,
        ordered("title", "the kind of a part that is written out here", "enum", kinds));
    Map<String, Object> atLeastOne =
        Map.of(
            "anyOf",
            List.of(
                Map.of("required", List.of(PartReader.PART)),
                Map.of("required", List.of(PartReader.KIND))));
    Map<String, Object> map = ordered("properties", properties);
    map.putAll(atLeastOne);
    map.put("allOf", choices);
    Map<String, Object> schema = ordered("type", List.of("string", "number", "object"));
    schema.put("if", Map.of("type", "object"));
    schema.put("then", map);
    return schema;
  }

  private static Map<String, Object> catalogueId() {
    String title = "the id of a part of the catalogue";
    return Map.of(PartReader.PART, ordered("title", title, "$ref", "#/$defs/id"));
  }

  /** Beside a kind, no part of the catalogue is named but any of that kind. */
  private static Map<String, Object> any() {
    return Map.of(PartReader.PART, Map.of("const", OpenPart.ANY));
  }

  private static Map<String, Object> word(Kind kind) {
    return Map.of(PartReader.KIND, Map.of("const", kind.word()));
  }

  private static KeyTree fittingKeys() {
    return KeyTree.ROOT.named("parts").flatMap(KeyTree::own).orElseThrow();
  }

  private static Map<String, Object> fittingRefs() {
    Map<String, Object> refs = new LinkedHashMap<>();
    for (String name : fittingKeys().names()) {
      refs.put(name, Map.of("$ref", "#/$defs/fitting/properties/" + name));
    }
    return refs;
  }

  /** A map that may hold these keys and no others. */
  @SafeVarargs
  private static Map<String, Object> closed(Map<String, Object>... properties) {
    Map<String, Object> all = new LinkedHashMap<>();
    for (Map<String, Object> some : properties) {
      all.putAll(some);
    }
    return ordered("properties", all, "additionalProperties", false);
  }

  private static Map<String, Object> columns(Kind kind) {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Column column : Columns.of(kind)) {
      properties.put(column.name(), column(column));
    }
    return properties;
  }

  /** Columns that may override those of a catalogue part, whose kind the schema cannot know. */
  private static Map<String, Object> anyColumns() {
    Map<String, Set<Object>> forms = new LinkedHashMap<>();
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        if (!column.name().equals("id")) {
          forms.computeIfAbsent(column.name(), n -> new LinkedHashSet<>()).add(cell(column));
        }
      }
    }
    Map<String, Object> properties = new LinkedHashMap<>();
    forms.forEach(
        (name, cells) -> {
          Object one = cells.iterator().next();
          properties.put(name, cells.size() == 1 ? one : Map.of("anyOf", List.copyOf(cells)));
        });
    return properties;
  }

  private static Map<String, Object> column(Column column) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("title", column.help());
    String example = column.isNumber() ? Written.like(column).example() : column.example();
    schema.put("description", "How to get it: " + column.how() + " Example: " + example + ".");
    schema.putAll(cell(column));
    return schema;
  }

  private static Map<String, Object> cell(Column column) {
    return switch (column.type()) {
      case TEXT -> Map.of("type", List.of("string", "number"));
      case WORD -> Map.of("enum", column.words());
      case WORDS -> severalWords(column);
      case NUMBER -> quantity(column.unit(), false);
      case NUMBER_OR_NONE -> quantity(column.unit(), true);
    };
  }

  private static Map<String, Object> severalWords(Column column) {
    boolean free = column.words().contains("*");
    String word = free ? "[a-z0-9][a-z0-9._-]*" : String.join("|", column.words());
    Map<String, Object> item = ordered("type", "string", "pattern", "^(" + word + ")$");
    Map<String, Object> several =
        ordered("type", "string", "pattern", "^(" + word + ")( +(" + word + "))*$");
    Map<String, Object> list = ordered("type", "array", "items", item, "minItems", 1);
    return Map.of("anyOf", List.of(several, list));
  }

  private static Map<String, Object> ordered(Object... keysAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      map.put((String) keysAndValues[i], keysAndValues[i + 1]);
    }
    return map;
  }
}

package outshop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.Origin;

/** A few invented parts, enough to fit a locomotive. */
final class SmallCatalogue {
  static final Catalogue CATALOGUE = catalogue();

  private SmallCatalogue() {}

  private static Catalogue catalogue() {
    List<Part> parts = new ArrayList<>();
    parts.add(part(Kind.CHARGER, "charger-4s", Map.of("charge_volts", 16.8), Map.of()));
    parts.add(part(Kind.JACK, "jack-3lug", Map.of(), Map.of("breaks", "sleeve")));
    parts.add(
        part(
            Kind.PACK,
            "pack-4s2p-li",
            Map.of("cells_series_count", 4.0, "capacity_ah", 5.2, "continuous_amps", 8.0),
            Map.of("chemistry", "li-ion", "title", "4S 2P lithium-ion pack, 5.2 Ah")));
    parts.add(part(Kind.FUSE, "fuse-5a", Map.of("rated_amps", 5.0), Map.of("style", "blade")));
    parts.add(
        part(Kind.SWITCH, "switch-dpst", Map.of("poles_count", 2.0), Map.of("function", "on-off")));
    parts.add(
        part(
            Kind.SWITCH,
            "switch-spdt",
            Map.of("poles_count", 1.0),
            Map.of("function", "changeover")));
    parts.add(part(Kind.CONNECTOR, "connector-2way", Map.of("contacts_count", 2.0), Map.of()));
    parts.add(part(Kind.CABLE, "cable-6way", Map.of("contacts_count", 6.0), Map.of()));
    parts.add(part(Kind.CABLE, "cable-old", Map.of(), Map.of()));
    parts.add(part(Kind.HANDSET, "handset-1", Map.of(), Map.of("links", "heron-2")));
    parts.add(
        part(
            Kind.RECEIVER,
            "receiver-6a",
            Map.of("input_max_volts", 18.0, "continuous_amps", 6.0),
            Map.of("output", "dcc", "title", "radio receiver, 6 A")));
    parts.add(part(Kind.RECEIVER, "receiver-2a", Map.of("continuous_amps", 2.0), Map.of()));
    parts.add(part(Kind.DECODER, "decoder-sound", Map.of("function_count", 4.0), Map.of()));
    parts.add(part(Kind.RESISTOR, "resistor-680", Map.of("resistance_ohms", 680.0), Map.of()));
    parts.add(part(Kind.LED, "led-warm", Map.of("forward_volts", 3.1), Map.of()));
    parts.add(part(Kind.SMOKE_HEATER, "heater-14v", Map.of("rated_volts", 14.0), Map.of()));
    parts.add(part(Kind.SPEAKER, "speaker-8ohm", Map.of("impedance_ohms", 8.0), Map.of()));
    parts.add(part(Kind.WIRE, "wire-20-stranded", Map.of("awg", 20.0), Map.of()));
    parts.add(part(Kind.WIRE, "wire-26-stranded", Map.of("awg", 26.0), Map.of()));
    return new Catalogue(parts);
  }

  private static Part part(
      Kind kind, String id, Map<String, Double> numbers, Map<String, String> words) {
    Place place = new Place(kind.word() + ".csv", 2, 0, "row 2");
    return new Part(kind, id, numbers, words, Map.of(), Origin.DATA_SHEET, place);
  }
}

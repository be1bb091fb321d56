package outshop.figures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** The link through the air: what is sent, what is heard, on which frequency, past which metal. */
final class RadioFigures {
  private final Plan plan;
  private final List<Object> facts = new ArrayList<>();

  private RadioFigures(Plan plan) {
    this.plan = plan;
  }

  static List<Object> of(Bench bench) {
    RadioFigures figures = new RadioFigures(bench.plan());
    List<Fitted> receivers = bench.plan().parts(Kind.RECEIVER);
    List<Fitted> handsets = bench.plan().parts(Kind.HANDSET);
    receivers.forEach(r -> figures.heard(r, handsets));
    handsets.forEach(figures::band);
    receivers.forEach(figures::band);
    handsets.forEach(figures::outdoors);
    receivers.forEach(figures::outdoors);
    receivers.forEach(figures::aerial);
    figures.side(receivers);
    return figures.facts;
  }

  private static boolean isLight(Fitted part) {
    return part.said("carrier").is("infra-red");
  }

  /** What stands between a receiver and the handset that comes nearest to being heard. */
  private void heard(Fitted receiver, List<Fitted> handsets) {
    if (handsets.isEmpty()) {
      return;
    }
    Fitted nearest = handsets.get(0);
    for (Fitted handset : handsets) {
      if (rank(between(receiver, handset)) < rank(between(receiver, nearest))) {
        nearest = handset;
      }
    }
    Standing standing = between(receiver, nearest);
    facts.add(
        new LinkMatch(
            Places.of(receiver),
            nearest.name(),
            words(standing, receiver),
            words(standing, nearest),
            standing));
  }

  private static int rank(Standing standing) {
    return switch (standing.word()) {
      case "fine" -> 0;
      case "unknown" -> 1;
      default -> 2;
    };
  }

  private static Standing between(Fitted receiver, Fitted handset) {
    Said here = receiver.said("carrier");
    Said there = handset.said("carrier");
    if (!here.isUnsaid() && there.isNot(here.or(""))) {
      return Standing.of("carrier");
    }
    Said links = receiver.said("links");
    Said sent = handset.said("links");
    boolean known = !links.isUnsaid() && !sent.isUnsaid();
    if (known && Collections.disjoint(receiver.several("links"), handset.several("links"))) {
      return Standing.of("link");
    }
    Amount on = receiver.amount("band_mhz");
    Amount sends = handset.amount("band_mhz");
    if (on instanceof Amount.Known a
        && sends instanceof Amount.Known b
        && !RadioBands.together(a.value(), b.value())) {
      return Standing.of("band");
    }
    List<Want> wants = new ArrayList<>(Standing.wants(links, sent));
    wants.addAll(Standing.wants(on, sends));
    if (on.isAbsent() != sends.isAbsent() && wants.isEmpty()) {
      wants.addAll(Standing.wants(here, there));
    }
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  /** What a part sends or hears, as far as it tells why the two do not meet. */
  private static String words(Standing standing, Fitted part) {
    return switch (standing.word()) {
      case "carrier" -> part.said("carrier").or("");
      case "band" -> part.amount("band_mhz") instanceof Amount.Known k ? AmountText.text(k) : "";
      default -> String.join(", ", part.several("links"));
    };
  }

  private void band(Fitted part) {
    Amount watts = part.amount("transmit_watts");
    boolean listensOnly = part.is(Kind.RECEIVER) && watts.isAbsent();
    Amount hertz = part.amount("band_mhz");
    if (isLight(part) || listensOnly || hertz.isAbsent()) {
      return;
    }
    Said region = plan.said("wishes.region");
    Optional<RadioBands.Band> band =
        hertz instanceof Amount.Known k
            ? RadioBands.at(region.or(""), k.value())
            : Optional.empty();
    facts.add(
        new BandUse(
            Places.of(part),
            RadioBands.words(region.or("")),
            hertz,
            RadioBands.open(region.or("")),
            bandStanding(part, region, hertz, band)));
    band.filter(b -> b.use() == RadioBands.Use.ANY)
        .ifPresent(
            b ->
                facts.add(
                    new BandPower(
                        Places.of(part),
                        b.words(),
                        watts,
                        Amount.known(
                            b.most(),
                            Unit.WATTS,
                            Origin.STANDARD,
                            "most power in " + RadioBands.words(region.or("")),
                            "table of bands, " + b.words()))));
  }

  private static Standing bandStanding(
      Fitted part, Said region, Amount hertz, Optional<RadioBands.Band> band) {
    List<Want> wants = new ArrayList<>(Standing.wants(region));
    wants.addAll(Standing.wants(hertz));
    if (!wants.isEmpty()) {
      return Standing.open(wants);
    }
    if (band.filter(b -> b.use() == RadioBands.Use.ANY).isPresent()) {
      return Standing.FINE;
    }
    if (part.is(Kind.RECEIVER) && part.amount("transmit_watts").isMissing()) {
      return Standing.open(Standing.wants(part.amount("transmit_watts")));
    }
    return Standing.of(band.isPresent() ? "alarms" : "outside");
  }

  private void outdoors(Fitted part) {
    Said use = part.said("outdoor_use");
    Standing standing =
        use.isUnsaid()
            ? Standing.open(use)
            : use.is("yes") ? Standing.FINE : Standing.of(isLight(part) ? "light" : "indoors");
    facts.add(new LinkOutdoors(Places.of(part), standing));
  }

  private void aerial(Fitted receiver) {
    if (isLight(receiver)) {
      return;
    }
    Said bay = plan.said("parts." + receiver.name() + ".bay");
    facts.add(new Aerial(Places.of(receiver), bay.or(""), aerialStanding(receiver, bay)));
  }

  private Standing aerialStanding(Fitted receiver, Said bay) {
    if (bay.isUnsaid()) {
      return Standing.open(bay);
    }
    Said metal = plan.said("locomotive.bays." + bay.or("") + ".metal_all_round");
    if (metal.is("no")) {
      return Standing.FINE;
    }
    Said aerial = receiver.said("aerial");
    List<Want> wants = new ArrayList<>(Standing.wants(metal, receiver.said("carrier")));
    wants.addAll(Standing.wants(aerial));
    return wants.isEmpty() ? Standing.of(aerial.or("")) : Standing.open(wants);
  }

  private void side(List<Fitted> receivers) {
    List<Fitted> radios = receivers.stream().filter(r -> !isLight(r)).toList();
    for (int i = 1; i < radios.size(); i++) {
      List<Want> wants =
          Standing.wants(radios.get(0).said("carrier"), radios.get(i).said("carrier"));
      facts.add(
          new RadioPair(
              Places.of(radios.get(i)),
              radios.get(0).name(),
              wants.isEmpty() ? Standing.of("beside") : Standing.open(wants)));
    }
  }
}

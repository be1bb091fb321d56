package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Said;
import outshop.units.Want;

/** Whether a decoder's settings can be changed, by the way the owner has in mind. */
final class ProgrammingFigures {
  private final Bench bench;
  private final Fitted decoder;

  private ProgrammingFigures(Bench bench, Fitted decoder) {
    this.bench = bench;
    this.decoder = decoder;
  }

  static ProgrammingWay of(Bench bench, Fitted decoder) {
    return new ProgrammingWay(
        Places.of(decoder), new ProgrammingFigures(bench, decoder).standing());
  }

  private Standing standing() {
    Said wish = bench.plan().said("wishes.programming");
    return wish.is("track") ? onTrack() : throughReceiver(wish);
  }

  /** On a programming track a decoder is set in service mode, NMRA S-9.2.3. */
  private Standing onTrack() {
    Said modes = decoder.said("programming");
    if (modes.isUnsaid()) {
      return Standing.open(modes);
    }
    boolean service = decoder.several("programming").contains("service");
    return service ? Standing.FINE : Standing.of("no-service-mode");
  }

  private Standing throughReceiver(Said wish) {
    List<Want> wants = new ArrayList<>();
    String hindrance = hindrance(wants);
    if (hindrance.isEmpty() && wants.isEmpty()) {
      return Standing.FINE;
    }
    if (wish.isUnsaid()) {
      wants.addAll(Standing.wants(wish));
      return Standing.open(wants);
    }
    if (hindrance.isEmpty()) {
      return Standing.open(wants);
    }
    if (wish.is("receiver")) {
      return Standing.of(hindrance);
    }
    boolean adapter = decoder.several("programming").contains("own-adapter");
    return Standing.of(adapter ? "adapter-only" : "no-way");
  }

  /**
   * What stops programming through the receiver for certain; empty if nothing does.
   *
   * @param wants gets what would have to be known, where nothing stops it for certain
   */
  private String hindrance(List<Want> wants) {
    List<Fitted> receivers = bench.plan().parts(Kind.RECEIVER);
    List<Fitted> handsets = bench.plan().parts(Kind.HANDSET);
    if (none(receivers, "passes_programming", wants)) {
      return "receiver-deaf";
    }
    if (none(handsets, "sends_programming", wants)) {
      return "handset-mute";
    }
    Said modes = decoder.said("programming");
    Set<String> known = decoder.several("programming");
    wants.addAll(Standing.wants(modes));
    boolean understands = known.contains("service") || known.contains("operations");
    return modes.isUnsaid() || understands ? "" : "decoder-deaf";
  }

  /** Whether all of several parts are known not to do something, or there is none of them. */
  private static boolean none(List<Fitted> parts, String column, List<Want> wants) {
    if (parts.stream().anyMatch(p -> p.said(column).is("yes"))) {
      return false;
    }
    List<Want> open = new ArrayList<>();
    parts.forEach(p -> open.addAll(Standing.wants(p.said(column))));
    wants.addAll(open);
    return open.isEmpty();
  }
}

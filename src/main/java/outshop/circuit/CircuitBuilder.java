package outshop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.plan.WireRow;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * Turns a plan into its circuit: parts become devices and contacts, the wiring pattern becomes the
 * wires a person could list.
 */
public final class CircuitBuilder {
  /**
   * Resistance of metal touching metal, in ohms: small enough never to decide, above zero so that a
   * network stays solvable.
   */
  private static final double BODY_OHMS = 1e-3;

  private static final Link.Closed ALWAYS = new Link.Closed.Always();

  private final Plan plan;
  private final List<Link> links = new ArrayList<>();
  private final List<Device> devices = new ArrayList<>();
  private final Map<String, List<String>> positions = new LinkedHashMap<>();
  private final List<Want> unknowns = new ArrayList<>();
  private boolean hasPlug;

  private CircuitBuilder(Plan plan) {
    this.plan = plan;
  }

  /** The circuit of a plan. Parts that are missing leave gaps; they are no error here. */
  public static Circuit build(Plan plan) {
    CircuitBuilder builder = new CircuitBuilder(plan);
    builder.parts();
    builder.locomotive();
    new Patterns(plan, builder).wire();
    for (WireRow row : plan.wires()) {
      builder.wire(row.from(), row.to(), Optional.of(fitted(row)), row.length());
    }
    builder.bodies();
    return new Circuit(
        builder.links,
        builder.devices,
        builder.positions,
        builder.hasPlug,
        plan.list("vehicles").map(v -> v.size() > 1).orElse(false),
        builder.unknowns);
  }

  private static Fitted fitted(WireRow row) {
    return new Fitted("wire " + row.from() + " - " + row.to(), row.wire(), row.place());
  }

  private void parts() {
    for (Fitted part : plan.parts()) {
      switch (part.kind()) {
        case PACK -> device(part, Device.Sort.PACK);
        case CHARGER -> device(part, Device.Sort.CHARGER);
        case RECEIVER -> device(part, Device.Sort.RECEIVER);
        case DECODER -> device(part, Device.Sort.DECODER);
        case REGULATOR -> {
          device(part, Device.Sort.REGULATOR);
          body(part.name() + ".in-", part.name() + ".out-");
        }
        case CAPACITOR -> device(part, Device.Sort.CAPACITOR);
        case BULB -> device(part, Device.Sort.BULB);
        case LED -> device(part, Device.Sort.LED);
        case SMOKE_HEATER -> device(part, Device.Sort.SMOKE_HEATER);
        case RESISTOR -> device(part, Device.Sort.RESISTOR);
        case SPEAKER -> device(part, Device.Sort.SPEAKER);
        case FUSE ->
            link(
                part.name(),
                part.name() + ".a",
                part.name() + ".b",
                Link.Sort.FUSE,
                part.amount("cold_milliohms"),
                Optional.of(part),
                ALWAYS);
        case SWITCH -> switchContacts(part);
        case JACK -> jack(part);
        case CONNECTOR -> contacts(part, connectorClosed(part));
        case CABLE -> contacts(part, new Link.Closed.Coupled());
        case PLUG, WIRE, SLEEVE, HANDSET -> {
          // No current of the locomotive's own: the plug comes in with the jack, wires come with
          // the pattern.
        }
      }
    }
    chargingPlug();
    packLeadUnsaid();
  }

  /** The connector between pack and all else is apart while a pack that is taken out charges. */
  private Link.Closed connectorClosed(Fitted part) {
    boolean packs = plan.text("wiring.pack_through").filter(part.name()::equals).isPresent();
    return packs && ChargingWay.packTakenOut(plan) ? new Link.Closed.WithPlug(false) : ALWAYS;
  }

  /** Without a connector in its lead, a pack that is taken out can only part at its own. */
  private void packLeadUnsaid() {
    if (ChargingWay.packTakenOut(plan) && plan.text("wiring.pack_through").isEmpty()) {
      for (Fitted pack : plan.parts(Kind.PACK)) {
        if (pack.said("connector_half") instanceof Said.Unsaid unsaid) {
          unknowns.add(unsaid.want());
        }
      }
    }
  }

  /**
   * When a wire conducts: always, but for the leads of the charger, which come with its plug, and
   * the lead behind the own connector of a pack that is taken out to charge.
   */
  private Link.Closed wireClosed(String from, String to) {
    for (Fitted charger : plan.parts(Kind.CHARGER)) {
      if (ChargingWay.touches(from, to, charger)) {
        return new Link.Closed.WithPlug(true);
      }
    }
    if (ChargingWay.packTakenOut(plan) && plan.text("wiring.pack_through").isEmpty()) {
      for (Fitted pack : plan.parts(Kind.PACK)) {
        if (ChargingWay.touches(from, to, pack) && ChargingWay.hasOwnConnector(pack)) {
          return new Link.Closed.WithPlug(false);
        }
      }
    }
    return ALWAYS;
  }

  private void device(Fitted part, Device.Sort sort) {
    devices.add(new Device(part.name(), sort, Optional.of(part)));
  }

  private void switchContacts(Fitted part) {
    Said function = part.said("function");
    if (function instanceof Said.Unsaid unsaid) {
      unknowns.add(unsaid.want());
    }
    int poles = count(part.amount("poles_count"), 1);
    boolean changeover = function.is("changeover");
    String name = part.name();
    List<String> named =
        new ArrayList<>(changeover ? List.of("run", "charge") : List.of("on", "off"));
    if (part.said("centre_off").is("yes")) {
      named.add("off");
    }
    positions.put(name, named.stream().distinct().toList());
    Amount ohms = part.amount("contact_milliohms");
    for (int pole = 1; pole <= poles; pole++) {
      String n = pole == 1 ? "" : Integer.toString(pole);
      String suffix = pole == 1 ? "" : " pole " + pole;
      if (changeover) {
        link(
            name + " run" + suffix,
            name + ".common" + n,
            name + ".run" + n,
            Link.Sort.SWITCH,
            ohms,
            Optional.of(part),
            new Link.Closed.AtSwitch(name, "run"));
        link(
            name + " charge" + suffix,
            name + ".common" + n,
            name + ".charge" + n,
            Link.Sort.SWITCH,
            ohms,
            Optional.of(part),
            new Link.Closed.AtSwitch(name, "charge"));
      } else {
        link(
            name + suffix,
            name + ".a" + n,
            name + ".b" + n,
            Link.Sort.SWITCH,
            ohms,
            Optional.of(part),
            new Link.Closed.AtSwitch(name, "on"));
      }
    }
  }

  private void jack(Fitted part) {
    Said breaks = part.said("breaks");
    if (breaks instanceof Said.Unsaid unsaid) {
      unknowns.add(unsaid.want());
    }
    String side = breaks.or("none");
    if (!side.equals("none")) {
      link(
          part.name() + " break contact",
          part.name() + "." + side,
          part.name() + ".break",
          Link.Sort.BREAK_CONTACT,
          part.amount("contact_milliohms"),
          Optional.of(part),
          new Link.Closed.WithPlug(false));
    }
  }

  /**
   * Joins the charger to the jack by its plug, or to the pack that is taken out, while the plug is
   * in. A charger whose leads the plan wires by hand is joined as they say; there its plug only
   * meets the jack.
   */
  private void chargingPlug() {
    Optional<Fitted> charger = first(Kind.CHARGER);
    Optional<Fitted> jack = first(Kind.JACK);
    hasPlug = charger.isPresent() || jack.isPresent();
    if (charger.isEmpty()) {
      return;
    }
    Link.Closed plugIn = new Link.Closed.WithPlug(true);
    if (ChargingWay.packTakenOut(plan)) {
      first(Kind.PACK)
          .ifPresent(
              p -> {
                touching(charger.get().name() + ".plus", p.name() + ".plus", plugIn);
                touching(charger.get().name() + ".minus", p.name() + ".minus", plugIn);
              });
    } else if (ChargingWay.wiredByHand(plan, charger.get())) {
      first(Kind.PLUG)
          .ifPresent(
              plug -> jack.ifPresent(j -> mated(j, plug.name() + ".pin", plug.name() + ".sleeve")));
    } else {
      jack.ifPresent(j -> pluggedIn(charger.get(), j));
    }
  }

  private void pluggedIn(Fitted charger, Fitted jack) {
    Said centre = ChargingWay.plugCentre(charger, first(Kind.PLUG));
    if (centre instanceof Said.Unsaid unsaid) {
      unknowns.add(unsaid.want());
    }
    boolean plusInside = !centre.is("minus");
    String plus = charger.name() + ".plus";
    String minus = charger.name() + ".minus";
    mated(jack, plusInside ? plus : minus, plusInside ? minus : plus);
  }

  /** The contacts of a jack with a plug in it. */
  private void mated(Fitted jack, String inside, String outside) {
    String j = jack.name();
    Amount ohms = jack.amount("contact_milliohms");
    Optional<Fitted> of = Optional.of(jack);
    Link.Closed plugIn = new Link.Closed.WithPlug(true);
    link(j + " pin contact", inside, j + ".pin", Link.Sort.CONTACT, ohms, of, plugIn);
    link(j + " sleeve contact", outside, j + ".sleeve", Link.Sort.CONTACT, ohms, of, plugIn);
  }

  private void touching(String from, String to, Link.Closed closed) {
    link(
        from + " - " + to,
        from,
        to,
        Link.Sort.CONTACT,
        Plan.fixed(
            BODY_OHMS, Unit.OHMS, "charging clips", "only so that the network can be solved"),
        Optional.empty(),
        closed);
  }

  private void contacts(Fitted part, Link.Closed closed) {
    int count = count(part.amount("contacts_count"), 2);
    for (int i = 1; i <= count; i++) {
      link(
          part.name() + " contact " + i,
          part.name() + "." + i + "a",
          part.name() + "." + i + "b",
          Link.Sort.CONTACT,
          contactOhms(part),
          Optional.of(part),
          closed);
    }
  }

  private static Amount contactOhms(Fitted part) {
    Amount contact = part.amount("contact_milliohms");
    if (!part.is(Kind.CABLE)) {
      return contact;
    }
    Amount conductor =
        WireValues.ohms(part.name(), part.amount("wire_awg"), part.amount("length_mm"));
    return Amount.sum(
        part.name() + ": contacts and conductor", Unit.OHMS, List.of(contact, conductor));
  }

  private void locomotive() {
    for (String motor : plan.names("locomotive.motors")) {
      devices.add(new Device(motor, Device.Sort.MOTOR, Optional.empty()));
    }
    for (String lamp : plan.names("locomotive.lamps")) {
      boolean led = plan.said("locomotive.lamps." + lamp + ".kind").is("led");
      devices.add(new Device(lamp, led ? Device.Sort.LED : Device.Sort.BULB, Optional.empty()));
    }
    for (String smoke : plan.names("locomotive.smoke")) {
      devices.add(new Device(smoke, Device.Sort.SMOKE_HEATER, Optional.empty()));
    }
  }

  /** Continuity that is no wire: the frame, metal bodies, readings that should not be. */
  private void bodies() {
    plan.list("locomotive.frame.joined_to").ifPresent(list -> list.forEach(t -> body("frame", t)));
    for (String motor : plan.names("locomotive.motors")) {
      plan.list("locomotive.motors." + motor + ".joined_to")
          .ifPresent(list -> list.forEach(t -> body(motor + ".minus", t)));
    }
    plan.list("locomotive.pickups.joined_to")
        .ifPresent(list -> list.forEach(t -> body("left-rail", t)));
    plan.list("speakers.joined_to")
        .ifPresent(
            list ->
                first(Kind.SPEAKER)
                    .ifPresent(s -> list.forEach(t -> body(s.name() + ".minus", t))));
    for (Fitted part : plan.parts(Kind.JACK)) {
      if (part.said("body").is("metal")
          && plan.said("parts." + part.name() + ".body_on_frame").is("yes")) {
        body("frame", part.name() + ".sleeve");
      }
    }
    for (Plan.Joined pair : plan.joined()) {
      body(pair.one(), pair.other());
    }
  }

  private void body(String from, String to) {
    if (!from.equals(to)) {
      link(
          "body " + from + " - " + to,
          from,
          to,
          Link.Sort.BODY,
          Plan.fixed(
              BODY_OHMS, Unit.OHMS, "metal on metal", "only so that the network can be solved"),
          Optional.empty(),
          ALWAYS);
    }
  }

  private void link(
      String name,
      String from,
      String to,
      Link.Sort sort,
      Amount ohms,
      Optional<Fitted> part,
      Link.Closed closed) {
    links.add(new Link(name, from, to, sort, ohms, part, new Amount.Absent("length"), closed));
  }

  /** Adds a wire. Its name is its two ends; a second one between the same ends gets a number. */
  void wire(String from, String to, Optional<Fitted> wire, Amount length) {
    String name = from + " - " + to;
    int copies = 1;
    for (Link link : links) {
      if (link.name().equals(copies == 1 ? name : name + " " + copies)) {
        copies++;
      }
    }
    Amount ohms =
        wire.map(w -> WireValues.ohms(name, w, length))
            .orElseGet(() -> WireValues.ohms(name, WireValues.usualGauge("wiring.wire"), length));
    links.add(
        new Link(
            copies == 1 ? name : name + " " + copies,
            from,
            to,
            Link.Sort.WIRE,
            ohms,
            wire,
            length,
            wireClosed(from, to)));
  }

  Optional<Fitted> first(Kind kind) {
    List<Fitted> found = plan.parts(kind);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  List<Device> devices() {
    return devices;
  }

  static int count(Amount amount, int otherwise) {
    return amount instanceof Amount.Known known ? (int) Math.round(known.value()) : otherwise;
  }
}

package outshop.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * Writes out the wires that a wiring pattern stands for. The power path differs by pattern; from
 * the receiver on all are alike. The wires from receiver to lamps are written for every plan, also
 * one wired by hand, unless the plan wires that device itself.
 */
final class Patterns {
  private final Plan plan;
  private final CircuitBuilder circuit;
  private final Optional<Fitted> wire;
  private final Optional<Fitted> motorWire;
  private final Optional<Fitted> lightWire;
  private final Amount feed;
  private final Map<String, Integer> contactsUsed = new HashMap<>();

  Patterns(Plan plan, CircuitBuilder circuit) {
    this.plan = plan;
    this.circuit = circuit;
    this.wire = plan.part("wiring.wire");
    this.motorWire = plan.part("wiring.motor_wire").or(() -> wire);
    this.lightWire = plan.part("wiring.light_wire").or(() -> wire);
    this.feed = plan.amount("wiring.feed");
  }

  void wire() {
    String pattern = plan.said("wiring.pattern").or("");
    if (!pattern.equals("by-wire") && !pattern.isEmpty()) {
      powerPath(pattern);
    }
    receiverToDecoders();
    motors();
    outputs();
    speakers();
  }

  private void powerPath(String pattern) {
    Optional<String> plus = afterFuse();
    Optional<String> minus = packMinus();
    if (plus.isEmpty() || minus.isEmpty()) {
      return;
    }
    Optional<String> jack = pattern.equals("pack-taken-out") ? Optional.empty() : name(Kind.JACK);
    Optional<String> onOff = name(Kind.SWITCH);
    String loadPlus = plus.get();
    String loadMinus = minus.get();
    switch (pattern) {
      case "changeover-switch" -> {
        if (onOff.isPresent()) {
          loadPlus = changeover(onOff.get(), plus.get(), minus.get(), jack);
          loadMinus =
              poles(onOff.get()) >= 2
                  ? onOff.get() + ".run2"
                  : jack.map(j -> j + ".sleeve").orElse(minus.get());
          feedReceiver(loadPlus, loadMinus);
          return;
        }
      }
      case "break-contact-jack", "plain-jack" -> {
        if (jack.isPresent()) {
          String j = jack.get();
          lead(plus.get(), j + ".pin");
          lead(minus.get(), j + ".sleeve");
          loadMinus = j + ".sleeve";
          boolean viaBreak = pattern.equals("break-contact-jack");
          String side = circuit.first(Kind.JACK).orElseThrow().said("breaks").or("none");
          if (viaBreak && side.equals("sleeve")) {
            loadMinus = j + ".break";
          } else if (viaBreak && side.equals("pin")) {
            loadPlus = j + ".break";
          }
        }
      }
      default -> {
        // The pack is taken out to charge: no jack, nothing to add.
      }
    }
    if (onOff.isPresent()) {
      boolean changeoverKind =
          circuit.first(Kind.SWITCH).orElseThrow().said("function").is("changeover");
      feedWire(loadPlus, onOff.get() + (changeoverKind ? ".common" : ".a"), share(0.5));
      loadPlus = onOff.get() + (changeoverKind ? ".run" : ".b");
    }
    feedReceiver(loadPlus, loadMinus);
  }

  private String changeover(String name, String plus, String minus, Optional<String> jack) {
    feedWire(plus, name + ".common", share(0.5));
    if (poles(name) >= 2) {
      feedWire(minus, name + ".common2", share(0.5));
      jack.ifPresent(j -> lead(name + ".charge2", j + ".sleeve"));
    } else {
      jack.ifPresent(j -> lead(minus, j + ".sleeve"));
    }
    jack.ifPresent(j -> lead(name + ".charge", j + ".pin"));
    return name + ".run";
  }

  private int poles(String switchName) {
    return CircuitBuilder.count(plan.part(switchName).orElseThrow().amount("poles_count"), 1);
  }

  /** The far side of the fuse, or of whatever stands first after the pack. */
  private Optional<String> afterFuse() {
    List<Fitted> packs = plan.parts(Kind.PACK);
    List<Fitted> fuses = plan.parts(Kind.FUSE);
    if (packs.isEmpty()) {
      return Optional.empty();
    }
    Amount toFuse = plan.amount("wiring.pack_to_fuse");
    Amount toFuseOrUsual =
        toFuse.orElse(
            Amount.assumed(
                0.1, 0.02, 0.5, Unit.METRES, "wiring: pack to fuse", "not stated; usual length"));
    boolean fuseEach = packs.size() > 1 && fuses.size() >= packs.size();
    List<String> ends = new ArrayList<>();
    for (int i = 0; i < packs.size(); i++) {
      // The stated length is that of the whole lead; a connector in it stands half way.
      boolean plugged = plan.text("wiring.pack_through").isPresent();
      Amount lead = plugged ? share(toFuseOrUsual, 0.5) : toFuseOrUsual;
      String start = through("wiring.pack_through", packs.get(i).name() + ".plus", lead);
      if (fuseEach) {
        circuit.wire(start, fuses.get(i).name() + ".a", wire, lead);
        ends.add(fuses.get(i).name() + ".b");
      } else {
        ends.add(start);
      }
    }
    String end = ends.get(0);
    if (ends.size() > 1) {
      end = "splice.plus";
      for (String e : ends) {
        circuit.wire(e, end, wire, short_());
      }
    }
    if (!fuseEach && !fuses.isEmpty()) {
      boolean plugged = plan.text("wiring.pack_through").isPresent();
      circuit.wire(
          end,
          fuses.get(0).name() + ".a",
          wire,
          plugged ? share(toFuseOrUsual, 0.5) : toFuseOrUsual);
      end = fuses.get(0).name() + ".b";
    }
    return Optional.of(end);
  }

  private Optional<String> packMinus() {
    List<Fitted> packs = plan.parts(Kind.PACK);
    if (packs.isEmpty()) {
      return Optional.empty();
    }
    List<String> ends = new ArrayList<>();
    for (Fitted pack : packs) {
      ends.add(through("wiring.pack_through", pack.name() + ".minus", short_()));
    }
    if (ends.size() == 1) {
      return Optional.of(ends.get(0));
    }
    for (String end : ends) {
      circuit.wire(end, "splice.minus", wire, short_());
    }
    return Optional.of("splice.minus");
  }

  private void feedReceiver(String plus, String minus) {
    String plusEnd = through("wiring.feed_through", plus, share(0.5));
    String minusEnd = through("wiring.feed_through", minus, share(0.5));
    Optional<String> receiver = name(Kind.RECEIVER);
    List<Fitted> decoders = plan.parts(Kind.DECODER);
    if (receiver.isPresent()) {
      feedWire(plusEnd, receiver.get() + ".in+", share(0.5));
      feedWire(minusEnd, receiver.get() + ".in-", feed);
    } else {
      for (Fitted decoder : decoders) {
        feedWire(plusEnd, decoder.name() + ".in-a", share(0.5));
        feedWire(minusEnd, decoder.name() + ".in-b", feed);
      }
    }
  }

  private void receiverToDecoders() {
    Optional<String> receiver = name(Kind.RECEIVER);
    if (receiver.isEmpty()) {
      return;
    }
    List<Fitted> decoders = plan.parts(Kind.DECODER);
    for (Fitted decoder : decoders) {
      unlessWired(
          decoder.name(), receiver.get() + ".out-a", decoder.name() + ".in-a", short_(), wire);
      unlessWired(
          decoder.name(), receiver.get() + ".out-b", decoder.name() + ".in-b", short_(), wire);
    }
    if (decoders.isEmpty()) {
      for (String motor : plan.names("locomotive.motors")) {
        unlessWired(
            motor,
            receiver.get() + ".out-a",
            motor + ".plus",
            plan.amount("wiring.motor_lead"),
            motorWire);
        unlessWired(
            motor,
            receiver.get() + ".out-b",
            motor + ".minus",
            plan.amount("wiring.motor_lead"),
            motorWire);
      }
    }
  }

  private void motors() {
    Optional<String> decoder = name(Kind.DECODER);
    if (decoder.isEmpty()) {
      return;
    }
    Amount lead = plan.amount("wiring.motor_lead");
    List<String> motors = plan.names("locomotive.motors");
    boolean wiredByHand =
        plan.wires().stream()
            .anyMatch(
                w ->
                    w.from().startsWith(decoder.get() + ".motor")
                        || w.to().startsWith(decoder.get() + ".motor"));
    if (motors.isEmpty() || wiredByHand) {
      return;
    }
    String plus =
        through("wiring.motor_through", decoder.get() + ".motor+", share(lead, 0.5), motorWire);
    String minus =
        through("wiring.motor_through", decoder.get() + ".motor-", share(lead, 0.5), motorWire);
    for (String motor : motors) {
      circuit.wire(plus, motor + ".plus", motorWire, lead);
      circuit.wire(minus, motor + ".minus", motorWire, lead);
    }
  }

  private void outputs() {
    Optional<String> first = name(Kind.DECODER);
    Amount lead = plan.amount("wiring.lamp_lead");
    Map<String, String> commons = new HashMap<>();
    for (String number : plan.names("outputs")) {
      String at = "outputs." + number;
      Optional<String> decoder = plan.text(at + ".decoder").or(() -> first);
      if (decoder.isEmpty()) {
        continue;
      }
      String returns = plan.said(at + ".returns").or("common");
      String common =
          switch (returns) {
            case "frame" -> "frame";
            case "rail" -> "left-rail";
            default ->
                commons.computeIfAbsent(
                    decoder.get(),
                    d -> through("wiring.lamps_through", d + ".common", lead, lightWire));
          };
      String out = through("wiring.lamps_through", decoder.get() + "." + number, lead, lightWire);
      boolean commonIsMinus =
          plan.part(decoder.get()).map(d -> d.said("common").is("minus")).orElse(false);
      Optional<String> resistor = plan.text(at + ".resistor");
      if (resistor.isPresent()) {
        circuit.wire(out, resistor.get() + ".b", lightWire, short_());
        out = resistor.get() + ".a";
      }
      for (String load : plan.list(at + ".feeds").orElse(List.of())) {
        boolean led =
            circuit.devices().stream()
                .anyMatch(d -> d.name().equals(load) && d.sort() == Device.Sort.LED);
        boolean turned = led && anodeAtOutput(at, load);
        // A lamp's end "a" lies on the plus side, which is the common lead unless that is minus.
        String atCommon = led ? turned ? ".cathode" : ".anode" : commonIsMinus ? ".b" : ".a";
        String atOut = led ? turned ? ".anode" : ".cathode" : commonIsMinus ? ".a" : ".b";
        circuit.wire(common, load + atCommon, lightWire, lead);
        circuit.wire(out, load + atOut, lightWire, lead);
      }
    }
  }

  private boolean anodeAtOutput(String output, String load) {
    return plan.said(output + ".anode").is("output")
        || (plan.names("locomotive.lamps").contains(load)
            && plan.said("locomotive.lamps." + load + ".anode").is("output"));
  }

  private void speakers() {
    Optional<String> decoder = name(Kind.DECODER);
    List<Fitted> speakers = plan.parts(Kind.SPEAKER);
    if (decoder.isEmpty() || speakers.isEmpty()) {
      return;
    }
    Amount lead = plan.amount("wiring.lamp_lead");
    boolean series = plan.said("speakers.join").is("series");
    String plus = decoder.get() + ".speaker+";
    for (int i = 0; i < speakers.size(); i++) {
      String name = speakers.get(i).name();
      circuit.wire(plus, name + ".plus", lightWire, lead);
      boolean last = i == speakers.size() - 1;
      if (series && !last) {
        plus = name + ".minus";
      } else {
        circuit.wire(name + ".minus", decoder.get() + ".speaker-", lightWire, lead);
      }
    }
  }

  /**
   * Passes the next free contact of the connector named at a key, if there is one; else stays where
   * it is.
   */
  private String through(String key, String from, Amount length) {
    return through(key, from, length, wire);
  }

  private String through(String key, String from, Amount length, Optional<Fitted> of) {
    Optional<String> connector = plan.text(key);
    if (connector.isEmpty() || plan.part(connector.get()).isEmpty()) {
      return from;
    }
    int contact = contactsUsed.merge(connector.get(), 1, Integer::sum);
    circuit.wire(from, connector.get() + "." + contact + "a", of, length);
    return connector.get() + "." + contact + "b";
  }

  private void unlessWired(
      String device, String from, String to, Amount length, Optional<Fitted> of) {
    boolean byHand = plan.wires().stream().anyMatch(w -> w.from().equals(to) || w.to().equals(to));
    if (!byHand && plan.part(device).map(Fitted::kind).orElse(Kind.DECODER) != Kind.WIRE) {
      circuit.wire(from, to, of, length);
    }
  }

  private void feedWire(String from, String to, Amount length) {
    circuit.wire(from, to, wire, length);
  }

  private void lead(String from, String to) {
    circuit.wire(from, to, wire, plan.amount("wiring.charging_lead"));
  }

  private Amount share(double part) {
    return share(feed, part);
  }

  private static Amount share(Amount length, double part) {
    return length.times(part, "part of the lead", part + " of its length");
  }

  private static Amount short_() {
    return Plan.fixed(
        0.05, Unit.METRES, "short lead", "a joint or a lead of 50 mm; its length decides nothing");
  }

  private Optional<String> name(Kind kind) {
    return circuit.first(kind).map(Fitted::name);
  }
}

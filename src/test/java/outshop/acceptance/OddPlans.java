package outshop.acceptance;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.plan.Plan;

/**
 * Plans that no demo shows: unusual, unfinished, wired so that nobody should, or out to do harm.
 */
final class OddPlans {
  static final String LONGEST_NAME = "Ä" + "漢".repeat(38) + "z";

  /** Markup, quotes, marks that turn the direction of writing, a character XML has no place for. */
  static final String HOSTILE =
      "<script>alert(1)</script>\\\"' & ]]> \\u202E\\uFFFE --> " + "W".repeat(10_000);

  private static final String MOTOR =
      """
      outshop_plan: 1
      title: %s
      locomotive:
        motors:
          motor: {kind: brushed, joined_to: %s}
      """;

  private static final String USUAL =
      """
      parts:
        pack: pack-4s2p-li
        charger: charger-4s-li-2a
        plug: plug-21-lead-plus
        jack: jack-21-three-lug
        fuse: fuse-blade-4
        switch: switch-toggle-10a
        receiver: receiver-dcc-18v-5a
        decoder: decoder-sound-3a-steam
        speaker: speaker-8-50-box
      """;

  private OddPlans() {}

  static Map<String, Plan> all() {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("nothing at all", "outshop_plan: 1\ntitle: nothing\n");
    texts.put("a pack alone", "outshop_plan: 1\ntitle: x\nparts: {pack: pack-4s2p-li}\n");
    texts.put("two packs, a fuse each", packs("fuse-two: fuse-blade-4", ""));
    texts.put("two packs, one fuse", packs("rear: speaker-8-50-box", ""));
    texts.put(
        "two packs through one connector",
        packs("plugs: connector-four-pair", "  pack_through: plugs\n"));
    texts.put("speakers in series", packs("rear: speaker-8-50-box", "speakers: {join: series}\n"));
    texts.put("wired wrongly", wrong());
    texts.put("charger wired by hand", chargerByHand());
    texts.put("no jack, no connector", takenOut());
    texts.put("extras", extras());
    texts.put("many lamps", lamps());
    texts.put("hostile", hostile());
    texts.put(
        "a switch that nobody described",
        base("plain-jack")
            .replace(
                "switch: switch-toggle-10a", "switch: {kind: switch, title: from the drawer}"));
    texts.put(
        "a jack that breaks the pin",
        base("break-contact-jack").replace("jack-21-three-lug", "jack-21-pin-break"));
    texts.put("no receiver", base("plain-jack").replace("  receiver: receiver-dcc-18v-5a\n", ""));
    texts.put("no decoder", base("plain-jack").replace("  decoder: decoder-sound-3a-steam\n", ""));
    Map<String, Plan> plans = new LinkedHashMap<>();
    texts.forEach(
        (name, text) ->
            plans.put(
                name,
                Sample.plan(name, text.getBytes(StandardCharsets.UTF_8), Sample.catalogue())));
    return plans;
  }

  private static String base(String pattern) {
    return MOTOR.formatted("odd", "[none]") + USUAL + "wiring:\n  pattern: " + pattern + "\n";
  }

  private static String packs(String part, String more) {
    String wiring =
        more.startsWith("speakers") ? more + "wiring:" : "wiring:\n" + more.stripTrailing();
    return MOTOR.formatted("odd", "[none]")
        + USUAL
        + "  pack-two: pack-4s2p-li\n  "
        + part
        + "\n"
        + wiring
        + "\n  pattern: break-contact-jack\n";
  }

  private static String wires(String... ends) {
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < ends.length; i += 2) {
      rows.add(
          "    - {from: %s, to: %s, wire: wire-20-red, length: 50 mm}\n"
              .formatted(ends[i], ends[i + 1]));
    }
    return "  wires:\n" + String.join("", rows);
  }

  /**
   * A short, a bridged fuse, a wire twice, the motor on the pack, the frame and the rails in it.
   */
  private static String wrong() {
    return MOTOR.formatted("odd", "[frame, left-rail]")
        + USUAL
        + "measured: {joined: [{one: speaker.plus, other: frame}, {one: motor.plus, other: motor.minus}]}\n"
        + "wiring:\n  pattern: by-wire\n"
        + wires(
            "pack.plus", "pack.minus",
            "pack.plus", "splice.hub",
            "splice.hub", "fuse.a",
            "fuse.a", "fuse.b",
            "fuse.b", "splice.hub",
            "fuse.b", "jack.sleeve",
            "pack.minus", "jack.break",
            "pack.minus", "jack.break",
            "jack.pin", "receiver.out-a",
            "switch.b", "pack.plus",
            "switch.a", "motor.plus",
            "receiver.in+", "switch.b",
            "receiver.in-", "frame",
            "decoder.motor+", "pack.plus",
            "decoder.motor-", "motor.minus",
            "decoder.out-7", "splice.lamps",
            "splice.lamps", "right-rail");
  }

  private static String chargerByHand() {
    return base("by-wire")
        + wires(
            "charger.plus", "plug.pin",
            "charger.minus", "plug.sleeve",
            "pack.plus", "fuse.a",
            "fuse.b", "jack.pin",
            "pack.minus", "jack.sleeve",
            "jack.pin", "switch.a",
            "switch.b", "receiver.in+",
            "jack.break", "receiver.in-");
  }

  private static String takenOut() {
    return base("pack-taken-out").replace("  jack: jack-21-three-lug\n", "");
  }

  private static String extras() {
    return MOTOR.formatted("odd", "[none]")
        + "  smoke: {stack: {}}\n"
        + USUAL
        + "  regulator: regulator-switch-5v-2a\n  capacitor: capacitor-4700-35v\n"
        + "  lamp: led-red-3mm\n"
        + "wiring:\n  pattern: break-contact-jack\n"
        + wires(
            "decoder.common", "regulator.in+",
            "decoder.out-2", "regulator.in-",
            "regulator.out+", "lamp.anode",
            "regulator.out-", "lamp.cathode",
            "decoder.common", "capacitor.plus",
            "capacitor.minus", "receiver.in-",
            "stack.a", "decoder.out-3",
            "stack.b", "decoder.common",
            "decoder.speaker+", "old_speaker.plus",
            "old_speaker.minus", "decoder.speaker-");
  }

  private static String lamps() {
    StringBuilder text = new StringBuilder(MOTOR.formatted("odd", "[none]"));
    text.append("  lamps:\n");
    for (int i = 1; i <= 16; i++) {
      text.append("    lamp-")
          .append(i)
          .append(": {kind: ")
          .append(i % 2 == 0 ? "led" : "filament");
      text.append("}\n");
    }
    text.append(USUAL).append("outputs:\n");
    for (int i = 1; i <= 8; i++) {
      text.append(
          "  out-%d: {feeds: [lamp-%d, lamp-%d], returns: %s}\n"
              .formatted(i, 2 * i - 1, 2 * i, i == 3 ? "frame" : i == 4 ? "rail" : "common"));
    }
    return text.append("wiring:\n  pattern: break-contact-jack\n").toString();
  }

  private static String hostile() {
    return MOTOR.formatted("\"" + HOSTILE + "\"", "[none]").replace("motor:", LONGEST_NAME + ":")
        + USUAL.replace(
            "fuse: fuse-blade-4", "fuse: {kind: fuse, title: \"" + HOSTILE + "\", rated_amps: 4 A}")
        + "wiring:\n  pattern: break-contact-jack\n";
  }
}

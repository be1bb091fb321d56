package outshop.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * The speakers of a plan as their amplifier sees them.
 *
 * @param members one entry a speaker: a new part, or the locomotive's own
 * @param ohms combined impedance; absent where there is no speaker
 */
public record SpeakerValues(List<Member> members, Amount ohms) {

  /** One speaker: its name, its impedance in ohms and its rated power in watts. */
  public record Member(String name, Optional<Fitted> part, Amount ohms, Amount watts) {}

  public static SpeakerValues of(Plan plan) {
    List<Member> members = new ArrayList<>();
    for (Fitted speaker : plan.parts(Kind.SPEAKER)) {
      members.add(
          new Member(
              speaker.name(),
              Optional.of(speaker),
              speaker.amount("impedance_ohms"),
              speaker.amount("watts")));
    }
    if (plan.said("locomotive.old_speaker.kept").is("yes")) {
      members.add(
          new Member(
              "old_speaker",
              Optional.empty(),
              plan.amount("locomotive.old_speaker.nominal"),
              plan.amount("locomotive.old_speaker.power")));
    }
    return new SpeakerValues(List.copyOf(members), combined(plan, members));
  }

  private static Amount combined(Plan plan, List<Member> members) {
    if (members.isEmpty()) {
      return new Amount.Absent("no speaker");
    }
    List<Amount> each = members.stream().map(Member::ohms).toList();
    if (members.size() == 1) {
      return each.get(0).named("speaker impedance");
    }
    Said join = plan.said("speakers.join");
    if (join instanceof Said.Unsaid unsaid) {
      return new Amount.Missing(List.of(unsaid.want()));
    }
    if (join.is("series")) {
      return Amount.sum("speakers in series", Unit.OHMS, each);
    }
    return Amount.computed(
        "speakers in parallel",
        Unit.OHMS,
        "1 / sum of 1 / impedance",
        v -> {
          double siemens = 0;
          for (double ohms : v) {
            siemens += 1 / ohms;
          }
          return 1 / siemens;
        },
        each);
  }

  /**
   * Most power the amplifier puts into these speakers, in watts: it is limited by voltage, so its
   * power rises as the impedance falls.
   */
  public Amount amplifierWatts(Fitted decoder) {
    return Amount.computed(
        "amplifier power into the speakers",
        Unit.WATTS,
        "rated power x rated load / impedance",
        v -> v[0] * v[1] / v[2],
        decoder.amount("amplifier_watts"),
        decoder.amount("rated_ohms"),
        ohms);
  }

  /** Power the sound takes from the supply at its loudest moments, in watts. */
  public Amount peakSupplyWatts(Plan plan, Fitted decoder) {
    Amount amplifier =
        amplifierWatts(decoder)
            .orElse(
                Amount.assumed(
                    2,
                    0.3,
                    6,
                    Unit.WATTS,
                    decoder.name() + ": amplifier power",
                    "cannot be told from the data; usual for such a decoder"));
    return Amount.computed(
        "sound, loudest moments, from the supply",
        Unit.WATTS,
        "amplifier power x volume / efficiency",
        v -> v[0] * v[1] / v[2],
        amplifier,
        plan.amount("wishes.volume"),
        decoder.amount("amplifier_efficiency_percent"));
  }

  /** Power the sound takes from the supply on average, in watts. */
  public Amount averageSupplyWatts(Plan plan, Fitted decoder) {
    Amount share =
        Amount.assumed(
            0.25,
            0.1,
            0.5,
            Unit.SHARE,
            "sound: average share",
            "average of such sounds against their loudest moments, from memory");
    return Amount.computed(
        "sound, average, from the supply",
        Unit.WATTS,
        "loudest x average share",
        v -> v[0] * v[1],
        peakSupplyWatts(plan, decoder),
        share);
  }
}

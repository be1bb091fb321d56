package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Joins;
import outshop.circuit.Places;
import outshop.circuit.SpeakerValues;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * Amplifier and speakers. An amplifier is limited by voltage, so its power into a load is its rated
 * power x rated load / load. In parallel the power divides as 1 / impedance, in series as
 * impedance.
 */
final class SoundFigures {
  /**
   * An ohmmeter reads the d.c. resistance of the coil, about 0.75 to 0.9 of the nominal impedance
   * (common practice, no source). IEC 60268-5 allows the impedance itself to fall to 80 % of its
   * rating.
   */
  private static final double[] USUAL_READING = {0.7, 1.0};

  private static final double[] POSSIBLE_READING = {0.5, 1.3};

  private final Bench bench;
  private final SpeakerValues speakers;
  private final List<Object> facts = new ArrayList<>();

  private SoundFigures(Bench bench) {
    this.bench = bench;
    this.speakers = SpeakerValues.of(bench.plan());
  }

  static List<Object> of(Bench bench) {
    SoundFigures figures = new SoundFigures(bench);
    bench.first(Kind.DECODER).ifPresent(figures::decoder);
    figures.oldSpeaker();
    figures.enclosures();
    return figures.facts;
  }

  private void decoder(Fitted decoder) {
    presence(decoder);
    if (decoder.isOpen("sound") || decoder.said("sound").is("no") || speakers.members().isEmpty()) {
      return;
    }
    At at = new At(Station.SOUND, speakers.members().get(0).name(), described());
    facts.add(new SpeakerLoad(at, decoder, speakers.ohms(), quieter(decoder)));
    List<Amount> shares = shares();
    for (int i = 0; i < shares.size(); i++) {
      SpeakerValues.Member member = speakers.members().get(i);
      Amount watts =
          Amount.computed(
              member.name() + ": share of the power",
              Unit.WATTS,
              "amplifier power x share",
              v -> v[0] * v[1],
              speakers.amplifierWatts(decoder),
              shares.get(i));
      facts.add(new SpeakerShare(at(member), watts, member.watts()));
    }
    if (speakers.members().size() > 1) {
      pair(at, shares);
    }
    leads(at, decoder);
  }

  private String described() {
    return speakers.members().size() == 1
        ? speakers.members().get(0).name()
        : "the " + speakers.members().size() + " speakers";
  }

  private static At at(SpeakerValues.Member member) {
    return member
        .part()
        .map(Places::of)
        .orElseGet(() -> new At(Station.SOUND, member.name(), "the old speaker"));
  }

  private void presence(Fitted decoder) {
    Said sound = decoder.said("sound");
    boolean some = !speakers.members().isEmpty();
    String situation =
        sound.isUnsaid() && !some ? "unknown" : sound.is("yes") && !some ? "none" : "fine";
    List<Want> wants = sound instanceof Said.Unsaid u ? List.of(u.want()) : List.of();
    if (sound.is("yes") || situation.equals("unknown")) {
      fact(Places.of(decoder), SpeakerFact.Matter.PRESENCE, situation, "", wants);
    }
  }

  private Amount quieter(Fitted decoder) {
    return Amount.computed(
        "quieter than with the rated load",
        Unit.DECIBELS,
        "10 x log10(impedance / rated load)",
        v -> 10 * Math.log10(v[0] / v[1]),
        speakers.ohms(),
        decoder.amount("rated_ohms"));
  }

  /** Each speaker's share of the power, in the order of the members. */
  private List<Amount> shares() {
    List<SpeakerValues.Member> members = speakers.members();
    List<Amount> ohms = members.stream().map(SpeakerValues.Member::ohms).toList();
    boolean series = bench.plan().said("speakers.join").is("series");
    List<Amount> shares = new ArrayList<>();
    for (int i = 0; i < members.size(); i++) {
      int own = i;
      String how =
          series ? "impedance / sum of impedances" : "(1 / impedance) / sum of (1 / impedance)";
      shares.add(
          Amount.computed(
              members.get(i).name() + ": share",
              Unit.SHARE,
              how,
              v -> {
                double total = 0;
                for (double r : v) {
                  total += series ? r : 1 / r;
                }
                return (series ? v[own] : 1 / v[own]) / total;
              },
              ohms));
    }
    return shares;
  }

  private void pair(At at, List<Amount> shares) {
    int count = shares.size();
    Amount most =
        Amount.computed(
            "largest share",
            Unit.SHARE,
            "the greatest of the shares",
            v -> {
              double greatest = 0;
              for (double share : v) {
                greatest = Math.max(greatest, share);
              }
              return greatest;
            },
            shares);
    Amount even =
        Amount.known(
            1.0 / count,
            Unit.SHARE,
            outshop.units.Origin.STANDARD,
            "even share",
            "1 / number of speakers");
    facts.add(new SpeakerPair(at, most, even, bench.plan().said("speakers.polarity")));
  }

  /** What the speaker's leads are joined to beyond speaker and amplifier, in the running state. */
  private void leads(At at, Fitted decoder) {
    Joins joins = new Joins(bench.circuit(), bench.circuit().running());
    Set<String> strangers = new TreeSet<>();
    for (String side : List.of(".speaker+", ".speaker-")) {
      for (String terminal : joins.component(decoder.name() + side)) {
        boolean own =
            terminal.startsWith(decoder.name() + ".speaker")
                || speakers.members().stream().anyMatch(m -> terminal.startsWith(m.name() + "."));
        if (!own) {
          strangers.add(terminal);
        }
      }
    }
    boolean oldUnread =
        speakers.members().stream().anyMatch(m -> m.part().isEmpty())
            && bench.plan().list("speakers.joined_to").isEmpty();
    if (strangers.isEmpty() && oldUnread) {
      Said.Unsaid unsaid = (Said.Unsaid) bench.plan().said("speakers.joined_to");
      fact(at, SpeakerFact.Matter.LEADS, "unknown", "", List.of(unsaid.want()));
    } else {
      fact(
          at,
          SpeakerFact.Matter.LEADS,
          strangers.isEmpty() ? "fine" : "joined",
          String.join(", ", strangers),
          List.of());
    }
  }

  private void oldSpeaker() {
    if (!bench.plan().said("locomotive.old_speaker.kept").is("yes")) {
      return;
    }
    At at = new At(Station.SOUND, "old_speaker", "the old speaker");
    Amount reading = bench.plan().amount("locomotive.old_speaker.reading");
    Amount nominal = bench.plan().amount("locomotive.old_speaker.nominal");
    if (reading.isAbsent()) {
      facts.add(
          new SpeakerFact(
              at, SpeakerFact.Matter.OLD_SPEAKER, "open", "", reading, nominal, List.of()));
      return;
    }
    Amount ratio =
        Amount.computed(
            "reading / nominal", Unit.SHARE, "quotient", v -> v[0] / v[1], reading, nominal);
    if (ratio instanceof Amount.Missing missing) {
      fact(at, SpeakerFact.Matter.OLD_SPEAKER, "unknown", "", missing.wants());
      return;
    }
    double share = ratio.get().value();
    String situation =
        outside(share, POSSIBLE_READING)
            ? "far-off"
            : outside(share, USUAL_READING) ? "doubtful" : "fine";
    facts.add(
        new SpeakerFact(
            at, SpeakerFact.Matter.OLD_SPEAKER, situation, "", reading, nominal, List.of()));
  }

  private static boolean outside(double share, double[] range) {
    return Exact.below(share, range[0]) || Exact.above(share, range[1]);
  }

  private void enclosures() {
    Said fitted = bench.plan().said("speakers.enclosure");
    for (SpeakerValues.Member member : speakers.members()) {
      Said own = member.part().map(p -> p.said("enclosure")).orElse(fitted);
      Said counts = own.is("none") || own.isUnsaid() ? (fitted.isUnsaid() ? own : fitted) : own;
      String situation = counts.isUnsaid() ? "unknown" : counts.is("none") ? "none" : "fine";
      List<Want> wants = counts instanceof Said.Unsaid u ? List.of(u.want()) : List.of();
      fact(at(member), SpeakerFact.Matter.ENCLOSURE, situation, counts.or(""), wants);
    }
  }

  private void fact(
      At at, SpeakerFact.Matter matter, String situation, String detail, List<Want> wants) {
    Amount none = new Amount.Absent("reading");
    facts.add(new SpeakerFact(at, matter, situation, detail, none, none, wants));
  }
}

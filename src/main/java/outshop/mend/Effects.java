package outshop.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.figures.RunTime;
import outshop.figures.SpeakerShare;
import outshop.findings.Finding;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * The figures of a plan that an owner asks after.
 *
 * @param hours run time on one charge; empty where it cannot be told
 * @param loudness how loud it can play; empty without a speaker, or where it cannot be told
 * @param headroom the least room between a full pack and what an electronic part stands; empty
 *     where no part's limit is known
 */
public record Effects(
    Optional<Double> hours, Optional<Loudness> loudness, Optional<Headroom> headroom) {

  /** The family of rules in which volts stand against what a part takes at most. */
  private static final String OVER_MAXIMUM = "-over-maximum";

  /**
   * How loud it can play.
   *
   * @param powerDecibels power of the amplifier into all speakers at the volume asked for, in dB
   *     over one watt
   * @param sensitivityDecibels of the speakers, where all state the same
   * @param speakers what they are
   */
  public record Loudness(
      double powerDecibels, Optional<Double> sensitivityDecibels, List<String> speakers) {
    public Loudness {
      speakers = List.copyOf(speakers);
    }

    /** How much louder than another, in dB; empty where other speakers state no sensitivity. */
    public Optional<Double> louderThan(Loudness other) {
      double power = powerDecibels - other.powerDecibels;
      if (speakers.equals(other.speakers)) {
        return Optional.of(power);
      }
      return sensitivityDecibels.flatMap(s -> other.sensitivityDecibels.map(o -> power + s - o));
    }
  }

  /**
   * Room up to a limit.
   *
   * @param volts below zero where the limit is passed
   * @param at the part whose limit it is
   */
  public record Headroom(double volts, String at) {}

  static Effects of(Inspection.Seen seen) {
    return new Effects(hours(seen.facts()), loudness(seen), headroom(seen.findings()));
  }

  private static Optional<Double> hours(List<Object> facts) {
    return facts.stream()
        .filter(f -> f instanceof RunTime)
        .map(f -> ((RunTime) f).hours())
        .findFirst()
        .flatMap(h -> h instanceof Amount.Known k ? Optional.of(k.value()) : Optional.empty());
  }

  private static Optional<Loudness> loudness(Inspection.Seen seen) {
    double watts = 0;
    boolean known = false;
    for (Object fact : seen.facts()) {
      if (fact instanceof SpeakerShare share) {
        if (!share.watts().isKnown()) {
          return Optional.empty();
        }
        watts += share.watts().get().value();
        known = true;
      }
    }
    Amount volume = seen.plan().amount("wishes.volume");
    return known && volume.isKnown() && watts > 0
        ? Optional.of(
            new Loudness(
                10 * Math.log10(watts * volume.get().value()),
                sensitivity(seen.plan()),
                speakers(seen.plan())))
        : Optional.empty();
  }

  private static List<String> speakers(Plan plan) {
    List<String> ids =
        new ArrayList<>(plan.parts(Kind.SPEAKER).stream().map(f -> f.part().id()).toList());
    if (plan.said("locomotive.old_speaker.kept").is("yes")) {
      ids.add("the old speaker");
    }
    return ids;
  }

  private static Optional<Double> sensitivity(Plan plan) {
    List<Fitted> speakers = plan.parts(Kind.SPEAKER);
    List<Double> stated =
        speakers.stream()
            .map(s -> s.amount("sensitivity_db_spl"))
            .filter(Amount::isKnown)
            .map(a -> a.get().value())
            .toList();
    boolean alike = stated.stream().distinct().count() == 1 && stated.size() == speakers.size();
    return alike && speakers(plan).size() == speakers.size()
        ? Optional.of(stated.get(0))
        : Optional.empty();
  }

  private static Optional<Headroom> headroom(List<Finding> findings) {
    Optional<Headroom> least = Optional.empty();
    for (Finding finding : findings) {
      boolean volts = finding.limit().filter(l -> l.unit() == Unit.VOLTS).isPresent();
      if (volts && finding.rule().endsWith(OVER_MAXIMUM)) {
        double room = finding.limit().get().value() - finding.demand().orElseThrow().value();
        String at = finding.at().name();
        boolean less =
            least.isEmpty()
                || room < least.get().volts()
                || (room == least.get().volts() && at.compareTo(least.get().at()) < 0);
        least = less ? Optional.of(new Headroom(room, at)) : least;
      }
    }
    return least;
  }
}

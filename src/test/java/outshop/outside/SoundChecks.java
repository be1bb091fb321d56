package outshop.outside;

import java.util.List;
import outshop.figures.SpeakerLoad;
import outshop.figures.SpeakerShare;
import outshop.figures.WireLoad;
import outshop.findings.Outcome;

/** Speakers joined, decibels, and an amplifier's power into another load than its own. */
final class SoundChecks {
  private static final String VOLTS_SQUARED =
      "P = V x V / R, " + Sources.COLLEGE + "section 20.4, module m42714";

  private final CheckList list = new CheckList("sound");

  private SoundChecks() {}

  static List<OutsideCheck> all() {
    SoundChecks checks = new SoundChecks();
    checks.networks();
    checks.decibels();
    checks.power();
    checks.lead();
    checks.oldSpeaker();
    return checks.list.all();
  }

  private void networks() {
    list.from(
            "two speakers in series add up, two equal ones in parallel halve (second-hand: basic"
                + " circuit theory, as a speaker's manual gives it)")
        .same("8-series-8", "8 and 8 ohm in series", "16", "ohm", () -> ohms("series", 8, 8))
        .same("8-parallel-8", "8 and 8 ohm in parallel", "4", "ohm", () -> ohms("parallel", 8, 8))
        .same("4-parallel-4", "4 and 4 ohm in parallel", "2", "ohm", () -> ohms("parallel", 4, 4));
    list.from(Sources.COLLEGE + "section 21.1, module m42356, examples")
        .printed("series", "1, 6, 13 ohm in series", "20.0", "ohm", () -> ohms("series", 1, 6, 13))
        .printed(
            "parallel",
            "1, 6, 13 ohm in parallel",
            "0.8041",
            "ohm",
            () -> ohms("parallel", 1, 6, 13));
  }

  private void decibels() {
    list.from("T. R. Kuphaldt, Lessons in Electric Circuits, vol. III, ch. 1, decibels")
        .whole("tenth", "a tenth of the power", "10", "dB", () -> quieter(8, 80))
        .whole("hundredth", "a hundredth of the power", "20", "dB", () -> quieter(4, 400))
        .printed("third", "a third of the power", "4.77", "dB", () -> quieter(8, 24))
        .printed("fifth", "a fifth of the power", "6.99", "dB", () -> quieter(8, 40))
        .printed("fifteenth", "a fifteenth of the power", "11.76", "dB", () -> quieter(8, 120));
    list.from("decibels as above; 3.01 dB worked out")
        .printed("half", "16 ohm on an amplifier for 8", "3.01", "dB", () -> quieter(8, 16))
        .printed("double", "4 ohm on an amplifier for 8", "-3.01", "dB", () -> quieter(8, 4));
  }

  private void power() {
    list.from(Sources.COLLEGE + "section 21.1, module m42356, examples on 12.0 V")
        .printed(
            "parallel-watts",
            "7.20 W into 20 ohm, with 1, 6, 13 ohm in parallel instead",
            "179",
            "W",
            () -> watts("7.20 W", 20, "parallel", 1, 6, 13))
        .printed(
            "series-watts",
            "144 W into 1 ohm, with 1, 6, 13 ohm in series instead",
            "7.20",
            "W",
            () -> watts("144 W", 1, "series", 1, 6, 13));
  }

  private void lead() {
    list.from(VOLTS_SQUARED + "; 14.14 V worked out")
        .printed(
            "lead-volts",
            "50 W into 4 ohm: current in the speaker's lead x 4 ohm",
            "14.14",
            "V",
            () -> 4 * leadAmps());
  }

  private void oldSpeaker() {
    list.from("IEC 60268-5, rated impedance: may fall to 80 % of it (second-hand)")
        .outcome(
            "old-speaker",
            "an old speaker of 8 ohm that reads 6.4 ohm",
            "sound/old-speaker",
            Outcome.FINE,
            () ->
                Trial.base()
                    .with("locomotive.old_speaker.kept", "yes")
                    .with("locomotive.old_speaker.reading", "6.4 ohm")
                    .with("locomotive.old_speaker.nominal", "8 ohm")
                    .with("locomotive.old_speaker.power", "4 W"));
  }

  private static double ohms(String join, double... speakers) {
    return load(8, join, speakers).fact(SpeakerLoad.class).ohms().get().value();
  }

  private static double quieter(double rated, double speaker) {
    return load(rated, "series", speaker).fact(SpeakerLoad.class).quieterDecibels().get().value();
  }

  /** What all speakers get together. */
  private static double watts(String amplifier, double rated, String join, double... speakers) {
    Trial trial = load(rated, join, speakers).with("parts.decoder.amplifier_watts", amplifier);
    double total = 0;
    for (int i = 0; i < speakers.length; i++) {
      String name = name(i);
      total +=
          trial.fact(SpeakerShare.class, s -> s.at().name().equals(name)).watts().get().value();
    }
    return total;
  }

  private static double leadAmps() {
    return load(4, "series", 4)
        .with("parts.decoder.amplifier_watts", "50 W")
        .fact(WireLoad.class, wire -> wire.at().name().contains("speaker"))
        .amps()
        .get()
        .value();
  }

  private static Trial load(double rated, String join, double... speakers) {
    Trial trial = Trial.base().with("parts.decoder.rated_ohms", rated + " ohm");
    for (int i = 0; i < speakers.length; i++) {
      String part = "parts." + name(i) + ".";
      trial.with(part + "kind", "speaker").with(part + "impedance_ohms", speakers[i] + " ohm");
    }
    return trial.with("speakers.join", join);
  }

  private static String name(int speaker) {
    return speaker == 0 ? "speaker" : "speaker-" + (speaker + 1);
  }
}

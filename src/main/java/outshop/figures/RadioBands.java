package outshop.figures;

import java.util.List;
import java.util.Optional;
import outshop.units.Exact;

/**
 * The bands in which a handset may send without a licence of its own, by region.
 *
 * <p>Sources. Europe: CEPT ERC Recommendation 70-03, with the power as effective radiated power.
 * 433 MHz second-hand, with ECC/DEC/(04)02; 868 and 869 MHz as a national table gives them after
 * Commission Implementing Decision (EU) 2017/1483; the gaps kept for alarms from a page on annex 10
 * of the recommendation; 27, 40, 2400 and 5725 MHz from memory. North America: the rules of the
 * United States. 902, 2400 and 5725 MHz: 47 CFR 15.249, edition of 2000, read; 1 W of output power:
 * 47 CFR 15.247, from memory; its title, which ends at 5850 MHz, read in the edition of 2005. 27
 * MHz: 47 CFR 15.227 for the band, 95.731 and 95.767 for the power on five of its six channels, and
 * 75 MHz for models on the ground: 95.731 and 95.767 for the power, read; the ends of the 75 MHz
 * band from memory. Other countries of either continent have rules of their own.
 */
final class RadioBands {
  static final String EUROPE = "europe";
  static final String NORTH_AMERICA = "north-america";

  /**
   * One band, ends included.
   *
   * @param most the power in watts above which no such radio may send there
   */
  record Band(String region, double lowMegahertz, double highMegahertz, double most, Use use) {

    boolean holds(double hertz) {
      return !Exact.below(hertz, lowMegahertz * 1e6) && !Exact.above(hertz, highMegahertz * 1e6);
    }

    /** In words, such as {@code 868 to 868.6 MHz}. */
    String words() {
      return plain(lowMegahertz) + " to " + plain(highMegahertz) + " MHz";
    }

    private static String plain(double megahertz) {
      return java.math.BigDecimal.valueOf(megahertz).stripTrailingZeros().toPlainString();
    }
  }

  /** What a band is open to. */
  enum Use {
    ANY,
    /** Kept free for alarms, of the home and of people in need. */
    ALARMS
  }

  private static final List<Band> ALL =
      List.of(
          new Band(EUROPE, 26.957, 27.283, 0.1, Use.ANY),
          new Band(EUROPE, 40.66, 40.7, 0.1, Use.ANY),
          new Band(EUROPE, 433.05, 434.79, 0.01, Use.ANY),
          new Band(EUROPE, 868.0, 868.6, 0.025, Use.ANY),
          new Band(EUROPE, 868.7, 869.2, 0.025, Use.ANY),
          new Band(EUROPE, 869.4, 869.65, 0.5, Use.ANY),
          new Band(EUROPE, 868.6, 868.7, 0, Use.ALARMS),
          new Band(EUROPE, 869.2, 869.4, 0, Use.ALARMS),
          new Band(EUROPE, 869.65, 869.7, 0, Use.ALARMS),
          new Band(EUROPE, 2400, 2483.5, 0.1, Use.ANY),
          new Band(EUROPE, 5725, 5875, 0.025, Use.ANY),
          new Band(NORTH_AMERICA, 26.96, 27.28, 4, Use.ANY),
          new Band(NORTH_AMERICA, 75.4, 76, 0.75, Use.ANY),
          new Band(NORTH_AMERICA, 902, 928, 1, Use.ANY),
          new Band(NORTH_AMERICA, 2400, 2483.5, 1, Use.ANY),
          new Band(NORTH_AMERICA, 5725, 5875, 1, Use.ANY));

  private RadioBands() {}

  /** The band of a region that holds a frequency; one open to any use where two of them meet. */
  static Optional<Band> at(String region, double hertz) {
    List<Band> found =
        ALL.stream().filter(b -> b.region().equals(region) && b.holds(hertz)).toList();
    return found.stream()
        .filter(b -> b.use() == Use.ANY)
        .findFirst()
        .or(() -> found.stream().findFirst());
  }

  /** A region as people write it. */
  static String words(String region) {
    return switch (region) {
      case EUROPE -> "Europe";
      case NORTH_AMERICA -> "North America";
      default -> "a region that is not stated";
    };
  }

  /** The bands of a region that are open, in words. */
  static String open(String region) {
    return String.join(
        ", ",
        ALL.stream()
            .filter(b -> b.region().equals(region) && b.use() == Use.ANY)
            .map(Band::words)
            .toList());
  }

  /** Whether two frequencies are the same, or lie in one band of either region. */
  static boolean together(double oneHertz, double otherHertz) {
    return Exact.same(oneHertz, otherHertz)
        || ALL.stream().anyMatch(b -> b.holds(oneHertz) && b.holds(otherHertz));
  }
}

package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of radio bands against what was published of them. */
final class RadioBandsTest {

  /**
   * Sources. 433 MHz: CEPT ERC/REC 70-03 (second-hand), ECC/DEC/(04)02. 868 and 869 MHz: a national
   * table after (EU) 2017/1483. 902, 2400 and 5725 MHz: 47 CFR 15.249, edition of 2000. 27 MHz in
   * the United States: 47 CFR 15.227; power of five of its channels and of the 75 MHz channels: 47
   * CFR 95.767. The other European bands, and 1 W in the United States, are from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "europe, 433.05, 434.79, 0.01",
    "europe, 868.0, 868.6, 0.025",
    "europe, 868.7, 869.2, 0.025",
    "europe, 869.4, 869.65, 0.5",
    "europe, 2400, 2483.5, 0.1",
    "europe, 5725, 5875, 0.025",
    "north-america, 26.96, 27.28, 4",
    "north-america, 75.41, 75.99, 0.75",
    "north-america, 902, 928, 1",
    "north-america, 2400, 2483.5, 1",
    "north-america, 5725, 5875, 1"
  })
  void bothEndsOfABandAreOpen(String region, double low, double high, double watts) {
    for (double megahertz : new double[] {low, (low + high) / 2, high}) {
      RadioBands.Band band = RadioBands.at(region, megahertz * 1e6).orElseThrow();
      assertThat(band.use()).isEqualTo(RadioBands.Use.ANY);
      assertThat(band.most()).isEqualTo(watts);
    }
  }

  /** Kept for alarms: ERC/REC 70-03, annex 10, read on a page of its publisher. */
  @ParameterizedTest
  @CsvSource({"868.65", "869.3", "869.25", "869.68"})
  void betweenTheBandsAlarmsHaveTheirPlace(double megahertz) {
    assertThat(RadioBands.at(RadioBands.EUROPE, megahertz * 1e6).orElseThrow().use())
        .isEqualTo(RadioBands.Use.ALARMS);
  }

  /**
   * 47 CFR 15.205 (restricted bands) and 15.231 (433 MHz only now and then, from memory); 915 MHz
   * is a band of ITU region 2 alone (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "north-america, 433.92",
    "north-america, 868.3",
    "north-america, 2490",
    "north-america, 2350",
    "europe, 915",
    "europe, 75.43"
  })
  void whatIsOpenOnOneSideOfAnOceanIsNotOnTheOther(String region, double megahertz) {
    assertThat(RadioBands.at(region, megahertz * 1e6)).isEmpty();
  }

  @Test
  void theOpenBandsOfARegionAreNamed() {
    assertThat(RadioBands.open(RadioBands.NORTH_AMERICA)).contains("902 to 928 MHz");
    assertThat(RadioBands.open(RadioBands.EUROPE))
        .contains("868 to 868.6 MHz")
        .doesNotContain("868.6 to 868.7 MHz");
  }
}

package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.assertj.core.data.Offset;

/** Compares a figure with one printed in a book: they agree to half of the last digit printed. */
final class Printed {
  private Printed() {}

  /**
   * @param printed as the book has it, "20.0" for three digits, "2.0E2" for 200 of which two count
   */
  static void assertPrinted(String what, double figure, String printed) {
    assertThat(figure).as(what).isCloseTo(Double.parseDouble(printed), halfDigit(printed));
  }

  private static Offset<Double> halfDigit(String printed) {
    BigDecimal lastDigit = new BigDecimal(printed).ulp();
    return within(0.5 * lastDigit.doubleValue() * (1 + 1e-9));
  }
}

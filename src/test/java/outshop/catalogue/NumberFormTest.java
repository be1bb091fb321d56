package outshop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NumberFormTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5           | PLAIN             | 5       |      | ''",
        "5.25        | PLAIN             | 5.25    |      | ''",
        ".5          | PLAIN             | .5      |      | ''",
        "-20         | PLAIN             | -20     |      | ''",
        "+3          | PLAIN             | 3       |      | ''",
        "1e3         | PLAIN             | 1e3     |      | ''",
        "1.00E+03    | PLAIN             | 1.00E+03|      | ''",
        "2.4 A       | PLAIN             | 2.4     | A    | ''",
        "2400mA      | PLAIN             | 2400    | mA   | ''",
        "5e          | PLAIN             | 5       | e    | ''",
        "1500 mAh    | PLAIN             | 1500    | mAh  | ''",
        "2,4         | DECIMAL_COMMA     | 2.4     |      | ''",
        "2,4 A       | DECIMAL_COMMA     | 2.4     | A    | ''",
        ",5          | DECIMAL_COMMA     | .5      |      | ''",
        "0,500       | DECIMAL_COMMA     | 0.500   |      | ''",
        "1234,567    | DECIMAL_COMMA     | 1234.567|      | ''",
        "1,500e0     | DECIMAL_COMMA     | 1.500e0 |      | ''",
        "1.500       | PERHAPS_THOUSANDS | 1.500   |      | ''",
        "0.500       | PLAIN             | 0.500   |      | ''",
        "1234.567    | PLAIN             | 1234.567|      | ''",
        "1,500       | AMBIGUOUS         | 1.500   |      | 1.5 or 1500",
        "-1,500 mA   | AMBIGUOUS         | -1.500  | mA   | -1.5 or -1500",
        "7,375       | AMBIGUOUS         | 7.375   |      | 7.3750 or 7375",
        "1.500,0     | GROUPED           | 1500.0  |      | 1500",
        "1,500.25    | GROUPED           | 1500.25 |      | 1500.25",
        "1,000,000   | GROUPED           | 1000000 |      | 1000000",
        "1.000.000,5 | GROUPED           | 1000000.5 |    | 1000000.5",
        "1 500       | GROUPED           | 1500    |      | 1500",
        "1 500,5     | GROUPED           | 1500.5  |      | 1500.5",
        "1’500       | GROUPED           | 1500    |      | 1500",
        "123,456,789 | GROUPED           | 123456789 |    | 123456789",
        "1 x23       | PLAIN             | 1       | x23  | ''",
        "1 2x3       | PLAIN             | 1       | 2x3  | ''",
        "1 23x       | PLAIN             | 1       | 23x  | ''",
        "1 2345      | PLAIN             | 1       | 2345 | ''",
        "12 500 mA   | GROUPED           | 12500   | mA   | 12500",
      })
  void looksAt(String text, String sort, String digits, String unit, String rightForm) {
    assertThat(NumberForm.of(text))
        .isEqualTo(
            new NumberForm(
                NumberForm.Sort.valueOf(sort), digits, unit == null ? "" : unit, rightForm));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "high",
        "?",
        "-",
        "+",
        ".",
        ",",
        "5.",
        "5,",
        "1,2,3",
        "1.2.3",
        "1,50,000",
        "1.500.00,5",
        "1,500,00",
        "~5",
        "<5",
        "e5",
        "A 5",
        "1234 567,5",
        "''",
      })
  void isNoNumber(String text) {
    assertThat(NumberForm.of(text).sort()).isEqualTo(NumberForm.Sort.NO_NUMBER);
  }

  @Test
  void aTextOfMoreThanSixtyCharactersIsNoNumber() {
    assertThat(NumberForm.of("1".repeat(60)).isReadable()).isTrue();
    assertThat(NumberForm.of("1".repeat(61)).isReadable()).isFalse();
  }
}

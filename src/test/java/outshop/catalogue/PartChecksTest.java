package outshop.catalogue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.input.Problem;
import outshop.units.Unit;

/** Values exactly at a bound pass; values just beyond do not. */
final class PartChecksTest {

  @Test
  void everyNumberAtTheEndsOfItsRangeIsPlausible() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        if (column.isNumber()) {
          assertThat(problems(kind, column, CellNumber.shown(column.low()))).isZero();
          assertThat(problems(kind, column, CellNumber.shown(column.high()))).isZero();
        }
      }
    }
  }

  @Test
  void everyNumberJustBeyondItsRangeIsTold() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        boolean whole = column.unit() == Unit.COUNT || column.unit() == Unit.GAUGE;
        if (column.isNumber()) {
          double above = whole ? column.high() + 1 : column.high() * 1.000001;
          assertThat(problems(kind, column, CellNumber.shown(above))).as(column.name()).isOne();
        }
        if (column.isNumber() && !whole) {
          double below = column.low() - Math.abs(column.low()) * 1e-6;
          assertThat(problems(kind, column, CellNumber.shown(below))).as(column.name()).isOne();
        }
      }
    }
  }

  private static int problems(Kind kind, Column column, String written) {
    String table = "id,origin," + column.name() + "\nx,guess," + written + "\n";
    return CatalogueReader.read(Map.of(kind.word() + ".csv", table.getBytes(UTF_8)))
        .problems()
        .size();
  }

  @Test
  void absoluteZeroItselfIsOnlyUnlikely() {
    assertThat(severity("-273.15")).isEqualTo(Problem.Severity.UNLIKELY);
    assertThat(severity("-273.16")).isEqualTo(Problem.Severity.ERROR);
  }

  private static Problem.Severity severity(String celsius) {
    String table = "id,origin,charge_min_celsius\nx,guess," + celsius + "\n";
    return CatalogueReader.read(Map.of("pack.csv", table.getBytes(UTF_8)))
        .problems()
        .get(0)
        .severity();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Four cells of 3.6 to 3.7 V, three per cent either way: 13.968 to 15.244 V.
        "pack | chemistry,cells_series_count,nominal_volts | li-ion,4,13.968 | 0",
        "pack | chemistry,cells_series_count,nominal_volts | li-ion,4,13.967 | 1",
        "pack | chemistry,cells_series_count,nominal_volts | li-ion,4,15.244 | 0",
        "pack | chemistry,cells_series_count,nominal_volts | li-ion,4,15.245 | 1",
        // Six cells of 2 V: 11.64 to 12.36 V.
        "pack | chemistry,cells_series_count,nominal_volts | lead-acid,6,12.36 | 0",
        "pack | chemistry,cells_series_count,nominal_volts | lead-acid,6,12.37 | 1",
        // No published figure for a cell: nothing to compare with.
        "pack | chemistry,cells_series_count,nominal_volts | primary-lithium,4,30 | 0",
        "pack | nominal_volts,capacity_ah,energy_wh | 10,5,52.5 | 0",
        "pack | nominal_volts,capacity_ah,energy_wh | 10,5,52.6 | 1",
        "pack | nominal_volts,capacity_ah,energy_wh | 10,5,47.5 | 0",
        "pack | nominal_volts,capacity_ah,energy_wh | 10,5,47.4 | 1",
        // A slip of unit is told once, not again as a contradiction.
        "pack | nominal_volts,capacity_ah,energy_wh | 10,5000,50 | 1",
        "smoke-heater | rated_volts,resistance_ohms,rated_watts | 10,50,2.5 | 0",
        "smoke-heater | rated_volts,resistance_ohms,rated_watts | 10,50,2.51 | 1",
        "smoke-heater | rated_volts,resistance_ohms,rated_amps | 10,50,0.15 | 0",
        "smoke-heater | rated_volts,resistance_ohms,rated_amps | 10,50,0.149 | 1",
        "smoke-heater | rated_volts,rated_amps,rated_watts | 10,0.2,2.5 | 0",
        "smoke-heater | rated_volts,rated_amps,rated_watts | 10,0.2,2.51 | 1",
        "bulb | rated_volts,rated_milliamps,rated_watts | 10,100,1.1 | 0",
        "bulb | rated_volts,rated_milliamps,rated_watts | 10,100,1.11 | 1",
        "speaker | impedance_ohms,dc_ohms | 8,8 | 0",
        "speaker | impedance_ohms,dc_ohms | 8,8.001 | 1",
        // ASTM B258: 36 AWG is 0.127 mm in diameter, 0.012668 mm2; 12 per cent more is 0.014188.
        "wire | awg,area_mm2 | 36,0.01418 | 0",
        "wire | awg,area_mm2 | 36,0.01420 | 1",
        "wire | awg,area_mm2 | 36,0.01115 | 0",
        "wire | awg,area_mm2 | 36,0.01114 | 1",
        "receiver | input_min_volts,input_max_volts | 7,7 | 0",
        "receiver | input_min_volts,input_max_volts | 7.001,7 | 1",
        "pack | continuous_amps,peak_amps | 8,8000 mA | 0",
        "pack | cutoff_volts,full_volts | none,16.8 | 0",
        "decoder | speaker_min_ohms,rated_ohms | 8,4 | 1",
        "pack | nominal_volts,charge_volts | 14.4,14.4 | 0",
        "pack | nominal_volts,charge_volts | 14.4,14.3 | 1",
      })
  void isToldSoOften(String kind, String columns, String values, int problems) {
    String table = "id,origin," + columns + "\nx,guess," + values + "\n";

    assertThat(CatalogueReader.read(Map.of(kind + ".csv", table.getBytes(UTF_8))).problems())
        .hasSize(problems);
  }
}

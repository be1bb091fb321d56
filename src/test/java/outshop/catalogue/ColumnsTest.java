package outshop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/** The table of columns agrees with itself. */
final class ColumnsTest {

  @Test
  void everyKindHasTheSharedColumnsFirst() {
    for (Kind kind : Kind.values()) {
      assertThat(Columns.of(kind))
          .extracting(Column::name)
          .startsWith("id", "maker", "title", "price_each", "origin", "note")
          .doesNotHaveDuplicates()
          .hasSizeGreaterThan(10);
    }
  }

  @Test
  void everyColumnSaysWhatItIsAndHowToGetItAndFitsInACell() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        String name = kind.word() + " " + column.name();
        assertThat(column.name()).as(name).matches("[a-z][a-z0-9_]*");
        assertThat(column.help()).as(name).endsWith(".").hasSizeLessThan(CellText.LONGEST);
        assertThat(column.how()).as(name).endsWith(".").hasSizeLessThan(CellText.LONGEST);
        assertThat(column.example()).as(name).isNotEmpty();
      }
    }
  }

  @Test
  void everyNumberHasARangeThatHoldsItsAssumedValue() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        if (column.isNumber()) {
          assertThat(column.low()).as(column.name()).isLessThan(column.high());
          column.assumed().ifPresent(a -> assertThat(a).isBetween(column.low(), column.high()));
        } else {
          assertThat(column.assumed()).as(column.name()).isEmpty();
        }
      }
    }
  }

  @Test
  void everyWordColumnHasWordsThatCanBeReadBack() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        for (String word : column.words()) {
          assertThat(word).as(column.name()).matches("\\*|[a-z0-9][a-z0-9.-]*");
        }
        boolean needsWords =
            column.type() == Column.Type.WORD || column.type() == Column.Type.WORDS;
        assertThat(column.words().isEmpty()).as(column.name()).isEqualTo(!needsWords);
      }
    }
  }

  @Test
  void theSymbolOfAColumnIsAUnitThatCanBeWritten() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        if (column.symbol().isEmpty()) {
          continue;
        }
        QuantityReader.Result one = QuantityReader.read("1 " + column.symbol(), column.unit());
        assertThat(one)
            .as(column.name())
            .isEqualTo(new QuantityReader.Read(column.scale(), column.unit()));
      }
    }
  }

  @Test
  void onlyCountsMoneyTextsAndWordsHaveNoSymbol() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        boolean plain =
            !column.isNumber() || column.unit() == Unit.COUNT || column.unit() == Unit.MONEY;
        assertThat(column.symbol().isEmpty()).as(column.name()).isEqualTo(plain);
      }
    }
  }

  @Test
  void everyScaleIsAPowerOfTenSoThatValuesCanBeWrittenBackExactly() {
    for (Kind kind : Kind.values()) {
      for (Column column : Columns.of(kind)) {
        BigDecimal scale = BigDecimal.valueOf(column.scale()).stripTrailingZeros();
        assertThat(scale.unscaledValue().intValueExact()).as(column.name()).isEqualTo(1);
      }
    }
  }

  @Test
  void everyChainOfRisingColumnsIsMadeOfNumbersOfOneUnit() {
    int chains = 0;
    for (Kind kind : Kind.values()) {
      for (var chain : Rising.of(kind)) {
        chains++;
        assertThat(chain).hasSizeGreaterThan(1);
        Unit unit = Columns.require(kind, chain.get(0)).unit();
        for (String name : chain) {
          assertThat(Columns.require(kind, name).isNumber()).as(name).isTrue();
          assertThat(Columns.require(kind, name).unit()).as(name).isEqualTo(unit);
        }
      }
    }
    // Seventeen listed; charging range of a pack, input and wire of receiver and decoder, input of
    // a regulator, wire of a connector by their names.
    assertThat(chains).isEqualTo(17 + 7);
  }

  @Test
  void aColumnThatIsNotThereIsAFaultOfTheProgram() {
    assertThat(Columns.find(Kind.PACK, "awg")).isEmpty();
    assertThatThrownBy(() -> Columns.require(Kind.PACK, "awg"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no column awg of a pack");
  }
}

package outshop.outside;

/** Sources that several checks share. */
final class Sources {
  static final String COLLEGE = "OpenStax, College Physics 2e, ";
  static final String UNIVERSITY = "OpenStax, University Physics, vol. 2, ";
  static final String LESSONS = "T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, 5th ed., ";
  static final String CIRCULAR = "US FAA Advisory Circular AC 43.13-1B (8 Sep 1998), ";
  static final String WIRE_TABLE =
      "Handbook of Electronic Tables and Formulas, as given by Floyd, Electric Circuit Fundamentals,"
          + " 2nd ed. (second-hand: in a table that cites both)";
  static final String GAUGE_LAW = "ASTM B258-02 (second-hand)";
  static final String BLADE = "ISO 8820-3, blade fuses (second-hand: its row for 35 and 40 A)";
  static final String CARTRIDGE = "IEC 60127-2, ";
  static final String LITHIUM_CHARGE =
      "charging practice for lithium-ion cells with cobalt: 4.20 V a cell, +/- 50 mV (second-hand)";

  private Sources() {}
}

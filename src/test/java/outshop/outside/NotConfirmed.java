package outshop.outside;

/** What stands in the program and could not be checked against a source that was read. */
final class NotConfirmed {
  static final String TEXT =
      """

      ## Not confirmed

      Standards that were not at hand; what the program takes from them was quoted by others or is from memory:

      - ISO 8820-3 and IEC 60127-2, opening times of fuses; UL 248-14, from a summary. The quoted row of ISO 8820-3 is that for 35 and 40 A;
        at 350 and 600 % it differs from what is remembered of the smaller ratings, and the more cautious of the two stands.
      - IEC 62133-2, temperatures for charging; IEC 60335-2-29 and IEC 61558-2-7, chargers and toy transformers (named only).
      - IEC 60268-5, least impedance of a speaker; IEC 60512-5-2, reduced current of connectors; ECSS-Q-ST-30-11C.
      - Directive 2009/48/EC, 24 V for toys. EN 62115 leaves scale models for grown-up collectors out, so it is a yardstick, not a limit that
        applies. IEC 61558-1 draws the line of safety extra-low voltage at 120 V ripple-free direct voltage; the program takes the lower 60 V.
      - NMRA S-9.1 was read in a transcription. For large scales its Table 3 has 22 V as the most of a power station, a note on its revision
        24 V; no rule uses either.
      - AC 43.13-1B, Table 11-6, voltage drops.

      Values from memory, with nothing to set beside them:

      - lithium iron phosphate (3.2, 3.65, 2.5 V a cell), nickel and lead cells on charge, the 3.0 V at which a lithium-ion cell counts as
        empty, nickel-metal hydride at 0.9 V, primary cells (alkaline 1.5, 1.6, 0.9 V; lithium 3.0, 3.3, 2.0 V);
      - the share of the blocked current that slipping wheels draw, the average of a sound against its loudest moments, a LED's own
        resistance;
      - every plausible range and every value assumed for a blank cell in the column list: common practice, no source.

      Where the program and a source part, or a source reaches further than the program:

      - Stranded wire is reckoned as solid. The most that AC 43.13-1B, Table 11-9, allows a tin-plated strand is higher: by 11 % at 24 AWG and
        by 20 % at 16 and 14 AWG. So a voltage drop may be larger than shown.
      - All resistances are those at 20 °C. Copper gains 0.393 % a kelvin; no figure uses that yet.
      - AC 43.13-1B, Table 11-3, wants smaller fuses before a wire than the handbook's ampacity for chassis wiring allows here (a 10 A fuse
        before 18 AWG, 16 A here). It is made for bundles in aircraft at 70 °C.
      - The handbook's ampacity is for a single wire; bundles carry less (AC 43.13-1B, Table 11-9, 0.7 to 0.3 of it).
      - A LED is a fixed voltage with a resistance behind it. A real one's voltage rises with its current: no published curve is held against it.
      - The powers of a filament lamp hold near its rated volts; far from it they only tell a direction.
      - The charge curve was measured on one polymer cell.
      """;

  private NotConfirmed() {}
}

package outshop.render.page;

import java.util.List;
import java.util.Optional;
import outshop.circuit.Station;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.render.FindingBuilder;
import outshop.render.Reports;
import outshop.report.PowerPath;
import outshop.report.Report;

/** A report whose names try to be more than names. */
final class Hostile {
  static final String MARKUP =
      "<script>alert('1')</script><img src=x onerror=alert(2)>\"'&amp;</p>";
  static final String TURNED = "pack \u202eevil\u202c \u2066x\u2069 \u200b\u0007 \u05d0\u05d1 1 V";
  static final String ENDLESS = "x".repeat(10_000);

  private Hostile() {}

  static Report report() {
    List<Finding> findings =
        List.of(
            finding("data/markup", Station.PACK, MARKUP),
            finding("data/turned", Station.RADIO, TURNED),
            finding("data/endless", Station.MOTOR, ENDLESS));
    Report full = Reports.full();
    return new Report(
        MARKUP + TURNED + ENDLESS,
        TURNED + ENDLESS,
        findings,
        List.of(
            FindingBuilder.of("data/a", Outcome.CANNOT_TELL, Consequence.HARM)
                .at(Station.PACK, ENDLESS, ENDLESS)
                .says(MARKUP + ENDLESS)
                .build()),
        List.of(
            FindingBuilder.of("data/b", Outcome.FINE, Consequence.HARM)
                .at(Station.PACK, MARKUP, TURNED)
                .says(ENDLESS)
                .build()),
        List.of(new Report.Accepted(findings.get(0), TURNED + ENDLESS)),
        List.of(MARKUP, ENDLESS),
        full.wanted(),
        List.of(part(MARKUP), part(TURNED), part(ENDLESS)),
        new PowerPath(
            List.of(stop(Station.PACK, MARKUP), stop(Station.RADIO, TURNED)),
            List.of(stop(Station.MOTOR, ENDLESS)),
            List.of(stop(Station.CHARGER, ENDLESS)),
            0,
            false,
            List.of(stop(Station.WIRING, ENDLESS))),
        List.of(),
        full.cautions(),
        full.notes(),
        1,
        List.of());
  }

  private static Finding finding(String rule, Station station, String text) {
    return FindingBuilder.of(rule, Outcome.WARNING, Consequence.WEARS)
        .at(station, text, text)
        .says(text)
        .why(text)
        .cure(text)
        .assumes(text)
        .step(text, "1 V", text)
        .build();
  }

  private static Report.PartLine part(String text) {
    return new Report.PartLine("pack", text, "pack", text, text, Optional.of(1.5), "data sheet");
  }

  private static PowerPath.Stop stop(Station station, String title) {
    return new PowerPath.Stop(station, List.of(new PowerPath.Fitting(title, title)), true);
  }
}

package outshop.render.drawing;

import outshop.findings.Finding;
import outshop.report.Aspect;

/** A finding that is marked in the drawing, with the number under which it stands below it. */
record Fault(int number, Finding finding) {
  Aspect aspect() {
    return Aspect.of(finding.outcome());
  }

  String word() {
    return finding.outcome().words();
  }
}

package outshop.render.page;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import outshop.acceptance.Sample;
import outshop.report.Report;

/** The demo plans' reports, each made once. */
final class DemoPages {
  private static final Map<Path, Report> REPORTS = new ConcurrentHashMap<>();

  private DemoPages() {}

  static Report report(Path plan) {
    return REPORTS.computeIfAbsent(plan, Sample::report);
  }
}

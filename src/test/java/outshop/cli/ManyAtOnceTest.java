package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import outshop.catalogue.CatalogueReader;
import outshop.plan.PlanReader;
import outshop.render.json.JsonReport;
import outshop.rules.RuleEngine;

/** One engine serves any number of threads, and its sessions are used again and again. */
final class ManyAtOnceTest {
  private static final Path SAMPLE = Path.of("catalog-sample");

  private final RuleEngine engine = RuleEngine.load();
  private final CatalogueReader.Read catalogue = CatalogueReader.read(SAMPLE.resolve("catalogue"));

  @Test
  void reportsMadeBesideOthersAreTheSameToTheByte()
      throws IOException, InterruptedException, ExecutionException {
    List<PlanReader.Read> plans = new ArrayList<>();
    List<String> alone = new ArrayList<>();
    for (Path file : files()) {
      PlanReader.Read read = PlanReader.read(file, catalogue.catalogue());
      plans.add(read);
      alone.add(report(read));
    }
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Future<String>> beside = new ArrayList<>();
      for (int i = 0; i < 4 * plans.size(); i++) {
        // The same plan object in several threads at once as well.
        PlanReader.Read read = plans.get(i / 4);
        beside.add(threads.submit(() -> report(read)));
      }
      for (int i = 0; i < beside.size(); i++) {
        assertThat(beside.get(i).get()).isEqualTo(alone.get(i / 4));
      }
    } finally {
      threads.shutdown();
    }
  }

  private String report(PlanReader.Read read) {
    return JsonReport.text(new Check(engine).report(read.plan(), read.problems()));
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(SAMPLE.resolve("plans"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }
}

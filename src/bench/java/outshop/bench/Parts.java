package outshop.bench;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import outshop.catalogue.CatalogueReader;
import outshop.circuit.Circuit;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.LoadCase;
import outshop.circuit.solve.Network;
import outshop.circuit.solve.NoSolution;
import outshop.circuit.solve.Solution;
import outshop.circuit.solve.Solver;
import outshop.cli.Check;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.plan.Plan;
import outshop.render.json.JsonReport;
import outshop.report.Report;
import outshop.rules.RuleEngine;

/** The steps of a check of one demo plan, each by itself, in microseconds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 1)
public class Parts {
  private final CatalogueReader.Read catalogue = CatalogueReader.read(Demo.CATALOGUE);
  private final Demo demo = Demo.of(Demo.ONE, catalogue);
  private final RuleEngine engine = RuleEngine.load();
  private final Bench bench = Bench.of(demo.plan(), demo.problems());
  private final List<Object> facts = Facts.of(bench);
  private final Network network =
      bench
          .cases()
          .network(new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.BLOCKED))
          .orElseThrow();
  private final Report report = new Check(engine).report(demo.plan(), demo.problems());

  @Benchmark
  public Solution oneSolution() throws NoSolution {
    return Solver.solve(network);
  }

  @Benchmark
  public Circuit circuit() {
    return CircuitBuilder.build(demo.fresh().plan());
  }

  @Benchmark
  public List<Object> figures() {
    Demo fresh = demo.fresh();
    return Facts.of(Bench.of(fresh.plan(), fresh.problems()));
  }

  @Benchmark
  public List<Finding> engineAlone() {
    return engine.run(facts);
  }

  @Benchmark
  public Report wholeCheck() {
    Demo fresh = demo.fresh();
    return new Check(engine).report(fresh.plan(), fresh.problems());
  }

  @Benchmark
  public String json() {
    return JsonReport.text(report);
  }

  @Benchmark
  public CatalogueReader.Read readCatalogue() {
    return CatalogueReader.read(Demo.CATALOGUE);
  }

  @Benchmark
  public Plan readPlan() throws IOException {
    return Demo.of(Demo.ONE, catalogue).plan();
  }
}

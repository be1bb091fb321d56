package outshop.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import outshop.catalogue.CatalogueReader;
import outshop.cli.Check;
import outshop.render.terminal.Look;
import outshop.render.terminal.TerminalReport;
import outshop.rulebook.RuleCompiler;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;

/** What a check would take if the same rules were compiled when the program starts. */
public final class RunTimeRules {
  private RunTimeRules() {}

  public static void main(String[] arguments) throws IOException {
    Demo demo = Demo.of(Path.of(arguments[0]), CatalogueReader.read(Path.of(arguments[1])));
    RuleEngine engine = engine(RuleBook.load(), sources());
    Look look = new Look(Look.USUAL, false, java.nio.charset.StandardCharsets.UTF_8);
    System.out.print(
        TerminalReport.text(
            new Check(engine).report(demo.plan(), demo.problems()),
            look,
            new TerminalReport.Depth(false, false)));
    System.exit(0);
  }

  /** The texts of all rules, by family and name. */
  static Map<String, String> sources() throws IOException {
    Map<String, String> sources = new TreeMap<>();
    Path rules = Path.of("rules");
    try (Stream<Path> files = Files.walk(rules)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
        String name = rules.relativize(file).toString().replace(".drl", "");
        sources.put(name, Files.readString(file));
      }
    }
    return sources;
  }

  static RuleEngine engine(RuleBook book, Map<String, String> sources) {
    RuleCompiler.Compiled compiled = RuleCompiler.compile(sources);
    if (!compiled.faults().isEmpty()) {
      throw new IllegalStateException(compiled.faults().toString());
    }
    ClassLoader loader =
        new ClassLoader(RunTimeRules.class.getClassLoader()) {
          @Override
          protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            byte[] own = compiled.classes().get(name.replace('.', '/') + ".class");
            synchronized (getClassLoadingLock(name)) {
              Class<?> known = findLoadedClass(name);
              if (known == null && own != null) {
                return defineClass(name, own, 0, own.length);
              }
              return known == null ? super.loadClass(name, resolve) : known;
            }
          }
        };
    return RuleEngine.of(book, compiled.models(), loader);
  }
}

package outshop.rulebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;

/**
 * Turns {@code rules/FAMILY/NAME.drl|.md|.cases.yaml} into what the program loads: the heads of all
 * pages in one file, the pages with their examples, and the classes the rules compile to. A rule
 * without its page or its examples, or whose file, package and name disagree, does not build.
 */
public final class RuleBookBuild {
  private RuleBookBuild() {}

  /** Arguments: the rules' folder, the folder of the compiled classes. */
  public static void main(String[] args) throws IOException {
    Path rules = Path.of(args[0]);
    Path out = Path.of(args[1]);
    List<String> faults = new ArrayList<>();
    List<Path> drls = drls(rules);
    for (Path drl : drls) {
      faults.addAll(Siblings.faults(rules, drl));
    }
    faults.addAll(Siblings.orphans(rules, drls));
    if (faults.isEmpty()) {
      writeHeads(rules, drls, out);
      faults.addAll(compile(rules, drls, out));
    }
    if (!faults.isEmpty()) {
      faults.forEach(fault -> System.err.println("rule book: " + fault));
      System.exit(1);
    }
  }

  static List<Path> drls(Path rules) throws IOException {
    try (Stream<Path> files = Files.walk(rules)) {
      return files.filter(p -> p.toString().endsWith(".drl")).sorted().toList();
    }
  }

  static String name(Path rules, Path drl) {
    String relative = rules.relativize(drl).toString().replace('\\', '/');
    return relative.substring(0, relative.length() - ".drl".length());
  }

  private static void writeHeads(Path rules, List<Path> drls, Path out) throws IOException {
    Path folder = out.resolve(RuleBook.class.getPackageName().replace('.', '/'));
    StringBuilder heads = new StringBuilder();
    for (Path drl : drls) {
      String name = name(rules, drl);
      List<String> page = Files.readAllLines(rules.resolve(name + ".md"));
      int end = page.subList(1, page.size()).indexOf("---") + 1;
      heads.append("= ").append(name).append('\n');
      page.subList(0, end + 1).forEach(line -> heads.append(line).append('\n'));
      List<String> shown = new ArrayList<>(page.subList(end + 1, page.size()));
      shown.addAll(ExampleTable.section(name, rules.resolve(name + ".cases.yaml")));
      write(folder.resolve("pages/" + name + ".md"), String.join("\n", shown) + "\n");
    }
    write(folder.resolve(RuleBook.HEADS), heads.toString());
  }

  private static List<String> compile(Path rules, List<Path> drls, Path out) throws IOException {
    Map<String, String> sources = new TreeMap<>();
    for (Path drl : drls) {
      sources.put(name(rules, drl), Files.readString(drl));
    }
    RuleCompiler.Compiled compiled = RuleCompiler.compile(sources);
    if (!compiled.faults().isEmpty()) {
      return compiled.faults().stream().map(RuleCompiler.Fault::toString).toList();
    }
    for (Map.Entry<String, byte[]> file : compiled.classes().entrySet()) {
      Path target = out.resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.write(target, file.getValue());
    }
    write(
        out.resolve(RuleEngine.class.getPackageName().replace('.', '/')).resolve(RuleEngine.MODELS),
        String.join("\n", compiled.models()) + "\n");
    return List.of();
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}

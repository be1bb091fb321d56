package outshop.rulebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import outshop.rules.RuleBook;
import outshop.rules.RuleBookException;
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
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    files.generateAndWritePomXML(services.newReleaseId("outshop", "rules", "1"));
    for (Path drl : drls) {
      files.write("src/main/resources/rules/" + name(rules, drl) + ".drl", Files.readAllBytes(drl));
    }
    KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
    List<String> faults = new ArrayList<>();
    for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
      faults.add(message.getPath() + ":" + message.getLine() + ": " + message.getText());
    }
    if (!faults.isEmpty()) {
      return faults;
    }
    InternalKieModule module = (InternalKieModule) builder.getKieModule();
    StringBuilder models = new StringBuilder();
    for (String file : module.getFileNames().stream().sorted().toList()) {
      if (file.endsWith(".class") && file.startsWith("rules/")) {
        Path target = out.resolve(file);
        Files.createDirectories(target.getParent());
        Files.write(target, module.getBytes(file));
        if (file.matches("rules/[^/]+/Rules[0-9A-F]+\\.class")) {
          models.append(file.replace('/', '.'), 0, file.length() - ".class".length()).append('\n');
        }
      }
    }
    if (models.isEmpty()) {
      throw new RuleBookException("rules", "nothing was compiled");
    }
    write(
        out.resolve(RuleEngine.class.getPackageName().replace('.', '/')).resolve(RuleEngine.MODELS),
        models.toString());
    return faults;
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}

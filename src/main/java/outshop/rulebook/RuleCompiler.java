package outshop.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import outshop.rules.RuleBookException;

/** Compiles rules to classes, in memory. One caller at a time. */
public final class RuleCompiler {
  /** Each compilation is a release of its own: two of one name would be mixed. */
  private static final AtomicInteger RELEASES = new AtomicInteger();

  private RuleCompiler() {}

  /**
   * What came out of it.
   *
   * @param classes the class files, by path; none if there are faults
   * @param models the names of the classes that hold the rules, one a package
   * @param faults what the compiler refuses
   */
  public record Compiled(
      SortedMap<String, byte[]> classes, List<String> models, List<Fault> faults) {}

  /**
   * One thing the compiler refuses.
   *
   * @param path the rule's file, or a file made from it
   */
  public record Fault(String path, int line, String text) {
    @Override
    public String toString() {
      return path + ":" + line + ": " + text;
    }
  }

  /**
   * Compiles rules.
   *
   * @param drls the rules' texts, by folder and name: {@code voltage/receiver-over-maximum}
   */
  public static Compiled compile(Map<String, String> drls) {
    KieServices services = KieServices.get();
    ReleaseId release =
        services.newReleaseId("outshop", "rules", Integer.toString(RELEASES.incrementAndGet()));
    KieFileSystem files = services.newKieFileSystem();
    files.generateAndWritePomXML(release);
    drls.forEach((name, drl) -> files.write("src/main/resources/rules/" + name + ".drl", drl));
    try {
      KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
      List<Fault> faults = new ArrayList<>();
      for (Message message : builder.getResults().getMessages(Message.Level.ERROR)) {
        faults.add(new Fault(message.getPath(), message.getLine(), message.getText()));
      }
      return faults.isEmpty()
          ? collected((InternalKieModule) builder.getKieModule())
          : new Compiled(new TreeMap<>(), List.of(), List.copyOf(faults));
    } finally {
      services.getRepository().removeKieModule(release);
    }
  }

  private static Compiled collected(InternalKieModule module) {
    SortedMap<String, byte[]> classes = new TreeMap<>();
    List<String> models = new ArrayList<>();
    for (String file : module.getFileNames().stream().sorted().toList()) {
      if (file.endsWith(".class") && file.startsWith("rules/")) {
        classes.put(file, module.getBytes(file));
        if (file.matches("rules/[^/]+/Rules[0-9A-F]+\\.class")) {
          models.add(file.substring(0, file.length() - ".class".length()).replace('/', '.'));
        }
      }
    }
    if (models.isEmpty()) {
      throw new RuleBookException("rules", "nothing was compiled");
    }
    return new Compiled(classes, List.copyOf(models), List.of());
  }
}

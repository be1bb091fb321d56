package outshop.mutation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outshop.rulebook.RuleCompiler;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;

/**
 * Rules compiled each alone. Many are compiled at a time, each in a package of its own, because a
 * compilation costs more to begin than to go on.
 */
final class CompiledRules {
  private static final int BATCH = 80;
  private static final Pattern PACKAGE = Pattern.compile("(?m)^package\\s+[\\w.]+");
  private static final Pattern OWN_PACKAGE = Pattern.compile("\\brules[./](m\\d+)\\b");

  /** By text; empty where it does not compile. */
  private final Map<String, Optional<Compiled>> rules = new HashMap<>();

  /**
   * A rule that compiles.
   *
   * @param model the name of its class
   */
  private record Compiled(String model, ClassLoader loader) {}

  /** Compiles texts; the same text only once. */
  CompiledRules(Collection<String> drls) {
    List<String> all = drls.stream().distinct().toList();
    for (int from = 0; from < all.size(); from += BATCH) {
      Map<String, String> batch = new LinkedHashMap<>();
      for (String drl : all.subList(from, Math.min(all.size(), from + BATCH))) {
        batch.put("m" + (from + batch.size()), drl);
      }
      compile(batch);
    }
  }

  /** The engine of this rule alone; empty if its text does not compile. */
  Optional<RuleEngine> engine(String drl, RuleBook pages) {
    return rules.get(drl).map(rule -> RuleEngine.of(pages, List.of(rule.model()), rule.loader()));
  }

  /** Compiles a batch, without those that do not compile. */
  private void compile(Map<String, String> batch) {
    Map<String, String> sources = new TreeMap<>();
    batch.forEach((name, drl) -> sources.put(name + "/rule", inPackage(drl, "rules." + name)));
    RuleCompiler.Compiled compiled = RuleCompiler.compile(sources);
    if (!compiled.faults().isEmpty()) {
      withoutFaulty(batch, compiled.faults());
      return;
    }
    Loader loader = new Loader(compiled.classes());
    for (String model : compiled.models()) {
      String drl = batch.get(model.split("\\.")[1]);
      rules.put(drl, Optional.of(new Compiled(model, loader)));
    }
  }

  private void withoutFaulty(Map<String, String> batch, List<RuleCompiler.Fault> faults) {
    List<String> faulty = new ArrayList<>();
    for (RuleCompiler.Fault fault : faults) {
      Matcher matcher = OWN_PACKAGE.matcher(fault.toString());
      if (matcher.find() && batch.containsKey(matcher.group(1))) {
        faulty.add(matcher.group(1));
      }
    }
    if (faulty.isEmpty() && batch.size() > 1) {
      batch.forEach((name, drl) -> compile(Map.of(name, drl)));
      return;
    }
    Map<String, String> rest = new LinkedHashMap<>(batch);
    for (String name : faulty.isEmpty() ? batch.keySet() : faulty) {
      rules.put(batch.get(name), Optional.empty());
      rest.remove(name);
    }
    if (!rest.isEmpty()) {
      compile(rest);
    }
  }

  private static String inPackage(String drl, String name) {
    Matcher matcher = PACKAGE.matcher(drl);
    if (!matcher.find()) {
      throw new IllegalArgumentException("no package in: " + drl);
    }
    return matcher.replaceFirst("package " + name);
  }

  /** Loads classes from memory. */
  private static final class Loader extends ClassLoader {
    private final Map<String, byte[]> classes;

    Loader(Map<String, byte[]> classes) {
      super(CompiledRules.class.getClassLoader());
      this.classes = classes;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      byte[] bytes = classes.get(name.replace('.', '/') + ".class");
      if (bytes == null) {
        throw new ClassNotFoundException(name);
      }
      return defineClass(name, bytes, 0, bytes.length);
    }
  }
}

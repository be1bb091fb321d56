package outshop.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import outshop.rules.PageReader;
import outshop.rules.RuleBookException;

/** Whether a rule's three files are there and agree. */
final class Siblings {
  private static final Pattern RULE = Pattern.compile("(?m)^rule \"([^\"]+)\"");
  private static final Pattern PACKAGE = Pattern.compile("(?m)^package ([a-z.]+)");

  private Siblings() {}

  static List<String> faults(Path rules, Path drl) throws IOException {
    String name = RuleBookBuild.name(rules, drl);
    List<String> faults = new ArrayList<>();
    String text = Files.readString(drl);
    List<String> named = RULE.matcher(text).results().map(r -> r.group(1)).toList();
    if (!named.equals(List.of(name))) {
      faults.add(name + ".drl: holds the rules " + named + ", not the one rule \"" + name + "\"");
    }
    Matcher in = PACKAGE.matcher(text);
    String family = "rules." + name.substring(0, Math.max(0, name.indexOf('/')));
    if (!in.find() || !in.group(1).equals(family)) {
      faults.add(name + ".drl: is not in package " + family);
    }
    Path page = rules.resolve(name + ".md");
    if (!Files.exists(page)) {
      faults.add(name + ".md: the rule has no page");
    } else {
      try {
        PageReader.read(name, Files.readAllLines(page));
      } catch (RuleBookException e) {
        faults.add(e.getMessage());
      }
    }
    Path cases = rules.resolve(name + ".cases.yaml");
    if (!Files.exists(cases)) {
      faults.add(name + ".cases.yaml: the rule has no examples");
    } else {
      try {
        ExampleTable.section(name, cases);
      } catch (RuleBookException e) {
        faults.add(e.getMessage());
      }
    }
    return faults;
  }

  /** Pages and examples that belong to no rule. */
  static List<String> orphans(Path rules, List<Path> drls) throws IOException {
    List<String> names = drls.stream().map(drl -> RuleBookBuild.name(rules, drl)).toList();
    List<String> faults = new ArrayList<>();
    try (Stream<Path> files = Files.walk(rules)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String relative = rules.relativize(file).toString().replace('\\', '/');
        String name = relative.replaceFirst("\\.(drl|md|cases\\.yaml)$", "");
        if (relative.contains("/") && !names.contains(name) && !relative.endsWith("README.md")) {
          faults.add(relative + ": belongs to no rule");
        }
      }
    }
    return faults;
  }
}

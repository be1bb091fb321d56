package outshop.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the pages of all rules say, as data, by rule. Made at build time from {@code rules/}. */
public final class RuleBook {
  /** Every head of every page, one after the other, each behind a line {@code = family/name}. */
  public static final String HEADS = "rulebook.txt";

  private final Map<String, RuleText> rules;

  public RuleBook(Collection<RuleText> rules) {
    TreeMap<String, RuleText> byName = new TreeMap<>();
    for (RuleText rule : rules) {
      // The engine asks by names that are constants: found by identity, without comparing letters.
      if (byName.put(rule.name().intern(), rule) != null) {
        throw new RuleBookException(rule.name(), "there are two rules of this name");
      }
    }
    this.rules = new LinkedHashMap<>(byName);
  }

  /** The rule book that was built with the program. */
  public static RuleBook load() {
    List<RuleText> rules = new ArrayList<>();
    String name = "";
    List<String> lines = new ArrayList<>();
    for (String line : resource(HEADS)) {
      if (line.startsWith("= ")) {
        if (!name.isEmpty()) {
          rules.add(PageReader.read(name, lines));
        }
        name = line.substring(2);
        lines = new ArrayList<>();
      } else {
        lines.add(line);
      }
    }
    if (!name.isEmpty()) {
      rules.add(PageReader.read(name, lines));
    }
    return new RuleBook(rules);
  }

  /** Every rule, in order of name. */
  public Collection<RuleText> all() {
    return Collections.unmodifiableCollection(rules.values());
  }

  public Optional<RuleText> find(String name) {
    return Optional.ofNullable(rules.get(name));
  }

  /** The rule of that name. Errors: {@link RuleBookException} if it has no page. */
  RuleText text(String name) {
    RuleText rule = rules.get(name);
    if (rule == null) {
      throw new RuleBookException(name, "has no page");
    }
    return rule;
  }

  /** The whole page of a rule, as Markdown without its head. */
  public static List<String> page(String name) {
    return resource("pages/" + name + ".md");
  }

  static List<String> resource(String path) {
    try (InputStream in = RuleBook.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new RuleBookException(path, "is not in the program; build it whole");
      }
      try (BufferedReader reader =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        return reader.lines().toList();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package outshop.bench;

import java.io.IOException;
import java.util.List;
import outshop.rules.RuleEngine;

/**
 * What a cold check cannot do without: it parses the files as {@link ParseOnly} does and starts the
 * rule engine with all rules, but no fact.
 */
public final class EngineStart {
  private EngineStart() {}

  public static void main(String[] arguments) throws IOException {
    ParseOnly.main(arguments);
    System.out.println(RuleEngine.load().run(List.of()).size() + " findings");
  }
}

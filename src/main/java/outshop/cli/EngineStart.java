package outshop.cli;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import outshop.rules.RuleEngine;

/** Starts the rule engine while the files are being read: it is what takes longest. */
final class EngineStart {
  private final CompletableFuture<RuleEngine> engine = new CompletableFuture<>();

  private EngineStart() {}

  static EngineStart begin() {
    EngineStart start = new EngineStart();
    Thread thread = new Thread(start::load, "rule engine");
    thread.setDaemon(true);
    thread.start();
    return start;
  }

  private void load() {
    try {
      engine.complete(RuleEngine.load());
    } catch (RuntimeException | Error e) {
      engine.completeExceptionally(e);
    }
  }

  /** The engine, once it is there. Errors: whatever its loading threw. */
  RuleEngine await() {
    try {
      return engine.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error cause) {
        throw cause;
      }
      throw e;
    }
  }
}

package outshop.cli;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import outshop.catalogue.Part;
import outshop.input.Shown;
import outshop.input.UnusableInput;
import outshop.plan.OpenPart;
import outshop.plan.PlanFilling;
import outshop.plan.PlanReader;
import outshop.render.json.JsonChoice;
import outshop.render.terminal.ChoiceText;
import outshop.rules.RuleEngine;
import outshop.search.Answer;
import outshop.search.Found;
import outshop.search.Order;
import outshop.search.Search;
import outshop.search.Slot;
import outshop.search.Space;
import outshop.search.Stop;
import outshop.search.Watched;

/** {@code choose}: every combination of parts that works in a plan's open places, best first. */
final class ChooseCommand implements Command {
  private static final String WIPE = "\r\u001b[K";
  private static final int USUAL_BEST = 5;
  private static final int MOST_BEST = 1000;
  private static final double USUAL_SECONDS = 60;
  private static final double MOST_SECONDS = 86_400;
  private static final int MOST_THREADS = 64;
  private static final String AS = "--as";
  private static final String JSON = "json";

  @Override
  public Spec spec() {
    return new Spec(
        "choose",
        List.of("PLAN"),
        "find every combination of parts that works where a plan says \"any\", best first",
        List.of(
            PlanFiles.CATALOGUE,
            Option.oneOf("--order", Order.words(), "what is best; warnings if left out"),
            Option.valued("--best", "K", "how many to show; 5 if left out"),
            Option.valued(
                "--seconds", "N", "stop after so long with what was found; 60 if left out"),
            Option.valued("--threads", "N", "how many; one for each processor if left out"),
            Option.flag("--best-only", "do not count how many work in all"),
            Option.flag(
                "--only-open", "add no place for a kind that the plan needs and has no part of"),
            Option.valued("--write", "FILE", "write the plan with a combination filled in"),
            Option.valued("--number", "N", "which of those shown to write; the first if left out"),
            Option.oneOf(AS, List.of("text", JSON), "the form of the answer; text if left out"),
            Option.COLOUR));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    int best = whole(given, "--best", USUAL_BEST, MOST_BEST);
    int threads =
        whole(
            given,
            "--threads",
            Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()),
            MOST_THREADS);
    int number = whole(given, "--number", 1, best);
    Order order = Order.of(given.value("--order").orElse("warnings")).orElseThrow();
    double seconds = seconds(given);
    Path plan = Paths.of(given.operand(0));
    Optional<Path> write = Paths.optional(given.value("--write"));
    if (write.isEmpty() && given.has("--number")) {
      throw new UsageFault("--number says which to write, and needs --write FILE");
    }
    PlanFiles files = PlanFiles.read(plan, Paths.optional(given.value("--catalogue")));
    if (write.isPresent()) {
      OutFile.refuseInput("--write", write.get(), List.of(plan), files.catalogue());
    }
    Space space =
        Space.of(
            files.plan(), files.open(), !given.has("--only-open"), files.parts(), files.problems());
    refuseNothing(space);
    Stop stop = Stop.after(seconds);
    Search.Asked asked = new Search.Asked(order, best, !given.has("--best-only"), threads, stop);
    CountDownLatch shown = new CountDownLatch(1);
    Thread onInterrupt = onInterrupt(stop, shown);
    try {
      Answer answer = new Search(RuleEngine.load(), space).run(asked, progress(around));
      if (around.terminal().getAsBoolean()) {
        around.complain(WIPE);
      }
      show(space, answer, asked, given, around);
      if (write.isPresent()) {
        write(answer, number, space, files, plan, write.get());
        tellWritten(number, write.get(), given, around);
      }
      return answer.best().isEmpty() && answer.chance().isEmpty() && answer.works().signum() == 0
          ? Exit.FOUND
          : Exit.OK;
    } finally {
      shown.countDown();
      forget(onInterrupt);
    }
  }

  private static void show(
      Space space, Answer answer, Search.Asked asked, Given given, Surroundings around)
      throws UsageFault {
    if (isJson(given)) {
      around.printUtf8(JsonChoice.text(space, answer, asked.order(), asked.count()));
    } else {
      String colour = given.value(Option.COLOUR.name()).orElse("auto");
      around.print(
          ChoiceText.text(
              space, answer, asked.order(), asked.count(), around.look(around.colour(colour))));
    }
  }

  private static boolean isJson(Given given) {
    return given.value(AS).orElse("text").equals(JSON);
  }

  /** Under the answer, but where a program reads that: then beside it. */
  private static void tellWritten(int number, Path to, Given given, Surroundings around)
      throws UsageFault {
    if (isJson(given)) {
      String name = Shown.text(to.toString());
      around.complain("outshop: combination " + number + " is written to " + name + "\n");
    } else {
      around.say("Combination " + number + " is written to " + to + ".");
    }
  }

  private static void refuseNothing(Space space) throws UsageFault {
    if (space.slots().isEmpty()) {
      throw new UsageFault(
          "the plan leaves no place open; write any instead of an id, as in \"receiver: any\"");
    }
    for (Slot slot : space.slots()) {
      if (slot.choices().isEmpty()) {
        throw new UsageFault(
            "the catalogue has no "
                + slot.open().kind().word()
                + " to choose for "
                + Shown.text(slot.name()));
      }
    }
  }

  private static int whole(Given given, String option, int usual, int most) throws UsageFault {
    Optional<String> text = given.value(option);
    if (text.isEmpty()) {
      return usual;
    }
    boolean fits = text.get().matches("[0-9]{1,6}");
    int value = fits ? Integer.parseInt(text.get()) : 0;
    if (value < 1 || value > most) {
      throw new UsageFault(
          option
              + " takes a whole number from 1 to "
              + most
              + ", not \""
              + Shown.text(text.get())
              + '"');
    }
    return value;
  }

  private static double seconds(Given given) throws UsageFault {
    Optional<String> text = given.value("--seconds");
    if (text.isEmpty()) {
      return USUAL_SECONDS;
    }
    boolean fits = text.get().matches("[0-9]{1,6}(\\.[0-9]{1,3})?");
    double value = fits ? Double.parseDouble(text.get()) : -1;
    if (!fits || value > MOST_SECONDS) {
      throw new UsageFault(
          "--seconds takes a number up to 86400, not \"" + Shown.text(text.get()) + '"');
    }
    return value;
  }

  /** A key that interrupts lets the search end, and what was found be shown. */
  private static Thread onInterrupt(Stop stop, CountDownLatch shown) {
    Thread hook =
        new Thread(
            () -> {
              stop.ask();
              try {
                shown.await(10, TimeUnit.SECONDS);
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            },
            "interrupt");
    Runtime.getRuntime().addShutdownHook(hook);
    return hook;
  }

  private static void forget(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The program is already ending, which is what the hook waits for.
      return;
    }
  }

  /** A line on the error output that is written over, for a person who waits. */
  private static Watched progress(Surroundings around) {
    if (!around.terminal().getAsBoolean()) {
      return Watched.NOBODY;
    }
    long began = System.nanoTime();
    AtomicReference<String> last = new AtomicReference<>("");
    return (size, considered, works, best) -> {
      String line =
          String.format(
              Locale.ROOT,
              "%s of %s considered, %s work, %d of the best found",
              share(considered, size),
              ChoiceText.number(size),
              ChoiceText.number(works),
              best);
      boolean waits = System.nanoTime() - began > TimeUnit.SECONDS.toNanos(1);
      if (waits && !line.equals(last.getAndSet(line))) {
        around.complain(WIPE + line);
      }
    };
  }

  private static String share(BigInteger part, BigInteger whole) {
    double share = 100 * part.doubleValue() / whole.doubleValue();
    return String.format(Locale.ROOT, "%.1f %%", Math.floor(share * 10) / 10);
  }

  private static void write(
      Answer answer, int number, Space space, PlanFiles files, Path plan, Path to)
      throws UsageFault {
    if (answer.best().size() < number) {
      throw new UsageFault(
          "there is no combination " + number + " to write to " + Shown.text(to.toString()));
    }
    Found found = answer.best().get(number - 1);
    Map<OpenPart, String> ids = new LinkedHashMap<>();
    Map<String, String> added = new TreeMap<>();
    for (int s = 0; s < space.slots().size(); s++) {
      Slot slot = space.slots().get(s);
      if (slot.added()) {
        added.put(slot.name(), found.parts().get(s).id());
      } else {
        ids.put(slot.open(), found.parts().get(s).id());
      }
    }
    Optional<String> text = filled(plan, ids, added);
    if (text.isEmpty() || !isThatPlan(text.get(), space, found, files)) {
      throw new UsageFault(
          "the combination cannot be put into this plan's text; write the ids in by hand");
    }
    OutFile.write(to, text.get());
  }

  private static Optional<String> filled(
      Path plan, Map<OpenPart, String> ids, Map<String, String> added) throws UsageFault {
    try {
      return PlanFilling.filled(Files.readString(plan), ids, added);
    } catch (IOException e) {
      throw new UsageFault(Shown.text(plan.toString()) + " cannot be read again as UTF-8");
    }
  }

  /** Whether the text, read as a plan, has exactly the parts that were found. */
  private static boolean isThatPlan(String text, Space space, Found found, PlanFiles files) {
    byte[] bytes = text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
    PlanReader.Read read = PlanReader.read(files.plan().file(), bytes, files.parts());
    if (!read.isUsable() || !read.open().isEmpty()) {
      return false;
    }
    for (int s = 0; s < space.slots().size(); s++) {
      Part wanted = found.parts().get(s);
      boolean same =
          read.plan()
              .part(space.slots().get(s).name())
              .filter(f -> f.part().kind() == wanted.kind())
              .filter(f -> f.part().id().equals(wanted.id()))
              .filter(f -> f.part().numbers().equals(wanted.numbers()))
              .filter(f -> f.part().words().equals(wanted.words()))
              .isPresent();
      if (!same) {
        return false;
      }
    }
    int parts = files.plan().parts().size() + files.plan().materials().size();
    return read.plan().parts().size() + read.plan().materials().size()
        == parts + space.slots().size();
  }
}

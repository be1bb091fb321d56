package outshop.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.input.Problem;
import outshop.input.Shown;
import outshop.input.UnusableInput;
import outshop.mend.Mend;
import outshop.mend.Mender;
import outshop.mend.Mending;
import outshop.plan.EditedText;
import outshop.plan.PlanReader;
import outshop.render.json.JsonMend;
import outshop.render.terminal.MendText;
import outshop.rules.RuleEngine;

/** {@code mend}: finds the smallest changes that clear a plan's faults, and writes them down. */
final class MendCommand implements Command {
  private static final int USUAL_BEST = 5;
  private static final int MOST_BEST = 1000;
  private static final int MOST_CHECKS = 10_000_000;

  /** The rest of the machine is for what else its user does. */
  private static final int MOST_THREADS = 2;

  private static final String BEST = "--best";
  private static final String CHECKS = "--checks";
  private static final String WARNINGS = "--warnings-too";
  private static final String WRITE = "--write";
  private static final String NUMBER = "--number";
  private static final String AS = "--as";

  @Override
  public Spec spec() {
    return new Spec(
        "mend",
        List.of("PLAN"),
        "find the smallest changes that clear a plan's violations, each checked in full",
        List.of(
            PlanFiles.CATALOGUE,
            Option.flag(WARNINGS, "clear the warnings as well"),
            Option.valued(BEST, "K", "show the best K; " + USUAL_BEST + " if left out"),
            Option.valued(
                WRITE,
                "FILE",
                "write the mended plan there, with your comments and your order; to change the"
                    + " plan itself, name it"),
            Option.valued(NUMBER, "N", "which of those shown to write; 1 if left out"),
            Option.valued(
                CHECKS,
                "N",
                "how many sets of changes may be checked; "
                    + Mender.Aim.USUAL_LIMIT
                    + " if left out"),
            Option.oneOf(AS, List.of("text", "json"), "the form of the answer; text if left out"),
            Option.COLOUR));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Path path = Paths.of(given.operand(0));
    Optional<Path> write = Paths.optional(given.value(WRITE));
    int number = number(given, NUMBER, 1, MOST_BEST);
    int best = Math.max(number, number(given, BEST, USUAL_BEST, MOST_BEST));
    int checks = number(given, CHECKS, Mender.Aim.USUAL_LIMIT, MOST_CHECKS);
    if (write.isEmpty() && given.has(NUMBER)) {
      throw new UsageFault(NUMBER + " needs " + WRITE + " FILE as well");
    }
    PlanFiles files = PlanFiles.read(path, Paths.optional(given.value("--catalogue")));
    if (write.isPresent()) {
      refuse(write.get(), path, files.catalogue());
    }
    Mender mender = new Mender(RuleEngine.load(), files.parts(), files.problems());
    int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    Mending mending =
        mender.mend(files.plan(), new Mender.Aim(given.has(WARNINGS), best, checks, threads));
    show(mending, given, around);
    if (write.isPresent()) {
      write(mending, number, mender, files, path, write.get(), around);
    }
    return mending.toClear().isEmpty() || !mending.mends().isEmpty() ? Exit.OK : Exit.FOUND;
  }

  private static void show(Mending mending, Given given, Surroundings around) throws UsageFault {
    if (given.value(AS).orElse("text").equals("json")) {
      around.printUtf8(JsonMend.text(mending));
    } else {
      String colour = given.value(Option.COLOUR.name()).orElse("auto");
      around.print(MendText.text(mending, around.look(around.colour(colour))));
    }
  }

  private static int number(Given given, String option, int otherwise, int most) throws UsageFault {
    Optional<String> value = given.value(option);
    if (value.isEmpty()) {
      return otherwise;
    }
    boolean digits = value.get().matches("[1-9][0-9]{0,8}");
    if (!digits || Integer.parseInt(value.get()) > most) {
      throw new UsageFault(
          option
              + " takes a whole number from 1 to "
              + most
              + ", not \""
              + Shown.text(value.get())
              + '"');
    }
    return Integer.parseInt(value.get());
  }

  /** What is there already stays, unless it is the plan and was named on purpose. */
  private static void refuse(Path to, Path plan, Optional<Path> catalogue) throws UsageFault {
    String name = WRITE + " " + Shown.text(to.toString());
    try {
      if (!Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
        return;
      }
      Path real = to.toRealPath();
      boolean inCatalogue = catalogue.isPresent() && real.startsWith(catalogue.get().toRealPath());
      if (inCatalogue || !real.equals(plan.toRealPath())) {
        throw new UsageFault(
            name + " is there already; name another file, or the plan itself to change it");
      }
    } catch (IOException e) {
      throw new UsageFault(name + " cannot be looked at");
    }
  }

  private static void write(
      Mending mending,
      int number,
      Mender mender,
      PlanFiles files,
      Path plan,
      Path to,
      Surroundings around)
      throws UsageFault {
    if (mending.toClear().isEmpty()) {
      around.complain("outshop: nothing to mend, so nothing was written\n");
      return;
    }
    if (number > mending.mends().size()) {
      String found = mending.mends().isEmpty() ? "none" : "only " + mending.mends().size();
      throw new UsageFault(
          "nothing was written: mend " + number + " was asked for, and " + found + " was found");
    }
    Mend mend = mending.mends().get(number - 1);
    OutFile.write(to, mended(mend, mender, files, plan));
    if (!isRead(mend, mender, files, to)) {
      throw new UsageFault("the plan was written, but what stands there now is not the mend");
    }
    around.complain("outshop: mend " + number + " written: " + Shown.text(to.toString()) + "\n");
  }

  /** The text of the mended plan, read back before it is written. */
  private static String mended(Mend mend, Mender mender, PlanFiles files, Path plan)
      throws UsageFault {
    try {
      String text = Files.readString(plan);
      Optional<String> edited = EditedText.of(text, mend.edits());
      if (edited.isPresent()) {
        byte[] bytes = edited.get().getBytes(StandardCharsets.UTF_8);
        PlanReader.Read read = PlanReader.read(files.plan().file(), bytes, files.parts());
        if (isPromised(mend, mender, files, read)) {
          return edited.get();
        }
      }
    } catch (IOException e) {
      throw new UsageFault("the plan cannot be read again: " + e.getClass().getSimpleName());
    }
    throw new UsageFault(
        "nothing was written: the plan is laid out in a way that cannot be followed; make the"
            + " changes by hand and check again");
  }

  private static boolean isRead(Mend mend, Mender mender, PlanFiles files, Path to) {
    PlanReader.Read read = PlanReader.read(to, files.parts());
    return isPromised(mend, mender, files, read);
  }

  private static boolean isPromised(
      Mend mend, Mender mender, PlanFiles files, PlanReader.Read read) {
    List<Problem> about = new ArrayList<>();
    for (Problem problem : files.problems()) {
      if (!problem.place().file().equals(files.plan().file())) {
        about.add(problem);
      }
    }
    about.addAll(read.problems());
    return read.isUsable() && mender.isKept(mend, files.plan(), read.plan(), about);
  }
}

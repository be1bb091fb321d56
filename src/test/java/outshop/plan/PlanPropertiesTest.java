package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.input.Problem;
import outshop.input.Tree;

/** What holds for every plan, tried on plans changed at random; each seed names its run. */
final class PlanPropertiesTest {
  private static final String PIECES =
      "\n|\n  |\n- |: |:|,|[|]|{|}|\"|'|#|&a |*a|!t |<<: *a\n|---\n|\t|\\|%|@|`|? |> |\\|\n|none|1e99|5 A"
          + "|-|+|.|..|\u0000|\u202e|\ufeff|\ud83d\ude00|part: |kind: |splice.|outshop_plan: 1\n";

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  private static List<String> plans() throws IOException {
    List<String> plans = new ArrayList<>(List.of(PlanReaderTest.goodPlan()));
    BrokenPlansTest.cases().forEach(c -> plans.add(c.plan()));
    plans.add(
        PlanWriterTest.uncommented(
            PlanWriter.starter(
                List.of("main"), List.of(), List.of("tender"), SmallCatalogue.CATALOGUE)));
    return plans;
  }

  /** Reads bytes and checks what must hold of every reading, whatever stands in them. */
  private static void isSound(byte[] bytes) {
    PlanReader.Read read = PlanReader.read("p.yaml", bytes, SmallCatalogue.CATALOGUE);
    String text = new String(bytes, StandardCharsets.UTF_8);
    int lines = text.split("\r\n|\r|\n", -1).length;
    int before = 0;
    for (Problem problem : read.problems()) {
      assertThat(problem.place().line()).isBetween(before, lines);
      before = problem.place().line();
      assertThat(problem.what()).isNotBlank().doesNotEndWith(".").doesNotContain("\n");
      assertThat(problem.expected()).isNotBlank();
      assertThat(problem.line().chars().filter(Character::isISOControl).count()).isZero();
      assertThat(problem.line()).startsWith("p.yaml").doesNotContain("\u202e", "Exception");
    }
    Plan plan = read.plan();
    boolean errors = !read.isUsable();
    if (!errors) {
      assertThat(plan.amount("outshop_plan").get().value()).isEqualTo(1);
    }
    for (String path : plan.stated().keySet()) {
      assertThat(plan.place(path).line()).isBetween(1, lines);
    }
    MeasuringSheet.of(plan);
    plan.parts().forEach(Fitted::described);
    assertThat(plan.wires()).doesNotContainNull();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void changed_plans_are_read_or_refused_in_good_order(long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> plans = plans();
    for (int i = 0; i < 25; i++) {
      String plan = plans.get(random.nextInt(plans.size()));
      int changes = 1 + random.nextInt(4);
      for (int c = 0; c < changes; c++) {
        plan = changed(plan, random);
      }
      isSound(plan.getBytes(StandardCharsets.UTF_8));
    }
  }

  private static String changed(String plan, SplittableRandom random) {
    int at = random.nextInt(plan.length() + 1);
    int end = Math.min(plan.length(), at + random.nextInt(12));
    String[] pieces = PIECES.split("\\|");
    String piece = pieces[random.nextInt(pieces.length)];
    return switch (random.nextInt(5)) {
      case 0 -> plan.substring(0, at) + plan.substring(end);
      case 1 -> plan.substring(0, at) + piece + plan.substring(at);
      case 2 -> plan.substring(0, at) + piece + plan.substring(end);
      case 3 -> plan.substring(0, at) + plan.substring(at, end) + plan.substring(at);
      default -> linesSwapped(plan, random);
    };
  }

  private static String linesSwapped(String plan, SplittableRandom random) {
    String[] lines = plan.split("\n", -1);
    int a = random.nextInt(lines.length);
    int b = random.nextInt(lines.length);
    String kept = lines[a];
    lines[a] = lines[b];
    lines[b] = kept;
    return String.join("\n", lines);
  }

  @Test
  void a_plan_cut_off_anywhere_is_read_or_refused_in_good_order() {
    byte[] bytes = PlanReaderTest.goodPlan().getBytes(StandardCharsets.UTF_8);
    for (int length = 0; length <= bytes.length; length += 7) {
      isSound(Arrays.copyOf(bytes, length));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void bytes_at_random_are_refused_in_good_order(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    byte[] bytes = PlanReaderTest.goodPlan().getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 5; i++) {
      byte[] changed = bytes.clone();
      for (int c = 0; c <= i; c++) {
        changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
      }
      isSound(changed);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_order_of_keys_changes_nothing(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String text = PlanReaderTest.goodPlan();
    String mixed = mixed(text, random);
    assertThat(mixed).isNotEqualTo(mixed(text, new SplittableRandom(seed + 1000)));
    PlanReader.Read read = PlanReaderTest.read(mixed);
    assertThat(read.problems()).isEmpty();
    assertThat(content(read.plan())).isEqualTo(content(PlanReaderTest.read(text).plan()));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_order_of_keys_changes_no_problem(long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    for (BrokenPlansTest.Case broken : BrokenPlansTest.cases()) {
      Tree.Read tree = Tree.read("p", broken.plan().getBytes(StandardCharsets.UTF_8));
      boolean mixable = tree.root().isPresent() && tree.problems().isEmpty();
      if (mixable && !broken.name().equals("names taken twice")) {
        assertThat(said(mixed(broken.plan(), random)))
            .as(broken.name())
            .isEqualTo(said(broken.plan()))
            .isNotEmpty();
      }
    }
  }

  /** The problems without their places in the file. */
  private static List<String> said(String plan) {
    return PlanReaderTest.read(plan).problems().stream()
        .map(p -> p.severity() + p.place().path() + p.found() + p.what() + p.expected())
        .sorted()
        .toList();
  }

  /** All that a plan holds but the order and place of it. */
  private static Map<String, String> content(Plan plan) {
    Map<String, String> content = new TreeMap<>();
    plan.stated().forEach((path, at) -> content.put(path, at.texts() + " " + at.value()));
    List<Fitted> parts = new ArrayList<>(plan.parts());
    parts.addAll(plan.materials());
    for (Fitted f : parts) {
      content.put(
          "part " + f.name(),
          f.kind()
              + f.part().id()
              + new TreeMap<>(f.part().numbers())
              + new TreeMap<>(f.part().words())
              + f.part().origin());
    }
    plan.wires().forEach(w -> content.put("wire " + w.from() + w.to(), w.wire().id() + w.length()));
    plan.accepted().forEach(a -> content.put("accepted " + a.rule(), a.where() + a.reason()));
    return content;
  }

  /** The plan written anew with the keys of every section in another order. */
  private static String mixed(String plan, SplittableRandom random) {
    Tree.Read tree = Tree.read("p", plan.getBytes(StandardCharsets.UTF_8));
    StringBuilder out = new StringBuilder();
    write(tree.root().orElseThrow(), out, random);
    return out.append('\n').toString();
  }

  private static void write(Tree.Node node, StringBuilder out, SplittableRandom random) {
    if (node instanceof Tree.Text text) {
      out.append(text.isBlank() ? "" : quoted(text.text()));
    } else if (node instanceof Tree.Rows rows) {
      out.append('[');
      rows.items().forEach(item -> writeItem(item, out, random));
      out.append(']');
    } else if (node instanceof Tree.Fields fields) {
      List<Tree.Entry> entries = shuffled(fields.entries(), random);
      out.append('{');
      for (Tree.Entry entry : entries) {
        out.append(quoted(entry.key())).append(": ");
        write(entry.value(), out, random);
        out.append(",\n ");
      }
      out.append('}');
    }
  }

  private static void writeItem(Tree.Node item, StringBuilder out, SplittableRandom random) {
    write(item, out, random);
    out.append(", ");
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = c >= ' ' && c < 0x7f && c != '"' && c != '\\';
      out.append(plain ? String.valueOf(c) : "\\u%04x".formatted((int) c));
    }
    return out.append('"').toString();
  }

  private static <T> List<T> shuffled(Collection<T> items, SplittableRandom random) {
    List<T> mixed = new ArrayList<>(items);
    for (int i = mixed.size() - 1; i > 0; i--) {
      java.util.Collections.swap(mixed, i, random.nextInt(i + 1));
    }
    return mixed;
  }
}

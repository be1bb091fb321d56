package outshop.mending;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.mend.Change;
import outshop.mend.Mender;
import outshop.plan.EditedPlan;
import outshop.plan.EditedText;
import outshop.plan.Plan;
import outshop.plan.PlanReader;
import outshop.rulecases.WholePlansTest;

/**
 * Every change there is on every demo plan, and every seventh on every whole plan of the tests:
 * made to the plan as read, and made to its text and read again, it gives the same plan.
 */
final class ChangesTest {

  @TestFactory
  Stream<DynamicTest> madeToTheTextAndReadAgainEveryChangeIsTheSame() throws IOException {
    return texts().entrySet().stream()
        .map(p -> DynamicTest.dynamicTest(p.getKey(), () -> compare(p.getKey(), p.getValue())));
  }

  private static Map<String, byte[]> texts() throws IOException {
    Map<String, byte[]> texts = new LinkedHashMap<>();
    for (Path plan : Sample.plans()) {
      texts.put(plan.toString(), Files.readAllBytes(plan));
    }
    texts.putAll(WholePlansTest.plans());
    return texts;
  }

  private static void compare(String name, byte[] text) {
    Plan plan = Sample.plan(name, text, Sample.catalogue());
    List<Change> changes = Mender.changes(plan, Sample.catalogue());
    assertThat(changes).hasSizeGreaterThan(100);
    int step = name.endsWith(".yaml") ? 1 : 7;
    for (int i = Math.floorMod(name.hashCode(), step); i < changes.size(); i += step) {
      Change change = changes.get(i);
      Optional<byte[]> written = EditedText.of(text, change.edits());
      assertThat(written).as(change.words()).isPresent();
      PlanReader.Read read = PlanReader.read(name, written.get(), Sample.catalogue());
      assertThat(read.isUsable()).as("%s: %s", change.words(), read.problems()).isTrue();
      List<String> fromText = SamePlan.said(read.plan());
      List<String> fromPlan = SamePlan.said(EditedPlan.of(plan, change.edits()));
      assertThat(without(fromText, fromPlan)).as("only in the text: %s", change).isEmpty();
      assertThat(without(fromPlan, fromText)).as("only in the plan: %s", change).isEmpty();
      assertThat(fromText).isEqualTo(fromPlan);
    }
  }

  private static List<String> without(List<String> all, List<String> those) {
    List<String> left = new ArrayList<>(all);
    left.removeAll(those);
    return left;
  }

  /** Nothing of the rest of a file is touched: every line that is left out or new is counted. */
  @Test
  void aSwapTouchesOneLineAndKeepsItsComment() {
    String text =
        """
        # my engine
        outshop_plan: 1   # the format
        parts:
          # bought at the fair
          fuse: fuse-blade-4   # spare in the drawer
          pack: {part: pack-4s2p-li, capacity_ah: 4.9 Ah, bay: tank} # measured
        locomotive:
          bays:
            tank: {length: 165 mm}
        """;
    Plan plan = Sample.plan("x", text.getBytes(), Sample.catalogue());

    assertThat(after(text, plan, "Take Mini blade fuse 3 A (fuse-blade-3)"))
        .isEqualTo(text.replace("fuse: fuse-blade-4 ", "fuse: fuse-blade-3 "));
    assertThat(after(text, plan, "Take 4S 3P"))
        .isEqualTo(
            text.replace(
                "{part: pack-4s2p-li, capacity_ah: 4.9 Ah, bay", "{part: pack-4s3p-li, bay"));
  }

  private static String after(String text, Plan plan, String words) {
    Change change =
        Mender.changes(plan, Sample.catalogue()).stream()
            .filter(c -> c.words().startsWith(words))
            .findFirst()
            .orElseThrow();
    return EditedText.of(text, change.edits()).orElseThrow();
  }

  @Test
  void aPlanHasTheSameChangesInTheSameOrderEveryTime() {
    Plan plan = Sample.plan(Sample.FOLDER.resolve("plans/newcomer.yaml"));
    List<String> once = words(plan);

    assertThat(words(plan)).isEqualTo(once);
    assertThat(once).doesNotHaveDuplicates();
  }

  private static List<String> words(Plan plan) {
    return Mender.changes(plan, Sample.catalogue()).stream().map(Change::words).toList();
  }

  /** The words the changes use are the words the rules' pages use. */
  @Test
  void whatAChangeTouchesIsWhatRulesRead() throws IOException {
    TreeSet<String> read = new TreeSet<>();
    Sample.ENGINE.book().all().forEach(r -> read.addAll(r.reads()));
    TreeSet<String> touched = new TreeSet<>();
    List<String> kinds = new ArrayList<>();
    for (Map.Entry<String, byte[]> text : texts().entrySet()) {
      Plan plan = Sample.plan(text.getKey(), text.getValue(), Sample.catalogue());
      for (Change change : Mender.changes(plan, Sample.catalogue())) {
        touched.addAll(change.touches());
        kinds.add(change.getClass().getSimpleName());
      }
    }

    assertThat(read).containsAll(touched);
    assertThat(kinds).contains("Swap", "Add", "Remove", "Rewire", "Set");
  }
}

package outshop.plan;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Part;
import outshop.input.Tree;

/**
 * Makes edits to the text of a plan: only what an edit speaks of is touched, so comments, order and
 * layout of the rest stay as they were written. A text laid out in a way that cannot be followed is
 * refused; nothing is guessed.
 */
public final class EditedText {
  private static final String MARK = "\ufeff";

  private YamlText text;

  private EditedText(YamlText text) {
    this.text = text;
  }

  /**
   * The text with the edits made, one after the other; empty if one of them cannot be made.
   *
   * @param text a plan that reads without an error
   */
  public static Optional<String> of(String text, List<Edit> edits) {
    boolean marked = text.startsWith(MARK);
    try {
      EditedText edited = new EditedText(YamlText.of(marked ? text.substring(1) : text));
      for (Edit edit : edits) {
        edited.make(edit);
      }
      return Optional.of((marked ? MARK : "") + edited.text.text());
    } catch (YamlText.NotFollowed e) {
      return Optional.empty();
    }
  }

  /** The same for bytes in UTF-8. */
  public static Optional<byte[]> of(byte[] bytes, List<Edit> edits) {
    return of(new String(bytes, StandardCharsets.UTF_8), edits)
        .map(t -> t.getBytes(StandardCharsets.UTF_8));
  }

  private void make(Edit edit) throws YamlText.NotFollowed {
    if (edit instanceof Edit.Say say) {
      set(say.path(), said(say));
    } else if (edit instanceof Edit.Measure measure) {
      set(measure.path(), Written.like(Rows.requireKey(measure.path())).text(measure.value()));
    } else if (edit instanceof Edit.Drop drop) {
      text = text.without(steps(drop.path()));
    } else if (edit instanceof Edit.Fit fit) {
      fit(fit.path(), fit.part());
    } else if (edit instanceof Edit.Adjust adjust) {
      for (Map.Entry<String, Double> number : new TreeMap<>(adjust.numbers()).entrySet()) {
        Column column = Columns.require(adjust.kind(), number.getKey());
        set(adjust.path() + "." + number.getKey(), Written.like(column).text(number.getValue()));
      }
    } else if (edit instanceof Edit.Wire wire) {
      wire(wire);
    }
  }

  private static String said(Edit.Say say) {
    boolean list = Rows.requireKey(say.path()).type() == Key.Type.NAMES;
    List<String> scalars = say.texts().stream().map(YamlText::scalar).toList();
    return list ? "[" + String.join(", ", scalars) + "]" : scalars.get(0);
  }

  private static List<String> steps(String path) {
    return List.of(path.split("\\."));
  }

  /** What is said of a part's place needs a section; a bare id becomes one. */
  private void set(String path, String value) throws YamlText.NotFollowed {
    List<String> steps = steps(path);
    List<String> above = steps.subList(0, steps.size() - 1);
    if (text.at(above).filter(n -> n instanceof Tree.Text t && !t.isBlank()).isPresent()) {
      String id = ((Tree.Text) text.at(above).get()).text();
      text = text.with(above, "{part: " + YamlText.scalar(id) + "}");
    }
    text = text.with(steps, value);
  }

  private void fit(String path, Part part) throws YamlText.NotFollowed {
    List<String> steps = steps(path);
    Optional<Tree.Node> there = text.at(steps);
    if (there.isPresent() && there.get() instanceof Tree.Fields fields) {
      fit(steps, fields, part);
    } else {
      text = text.with(steps, YamlText.scalar(part.id()));
    }
  }

  /** Takes away the columns of the part before it, and names the new one. */
  private void fit(List<String> steps, Tree.Fields fields, Part part) throws YamlText.NotFollowed {
    Set<String> ofThePlace =
        steps.get(0).equals("parts")
            ? Set.copyOf(KeyTree.ROOT.named("parts").flatMap(KeyTree::own).orElseThrow().names())
            : Set.of();
    List<String> gone = new ArrayList<>();
    for (Tree.Entry entry : fields.entries()) {
      boolean names = entry.key().equals(PartReader.PART) || entry.key().equals(PartReader.KIND);
      if (!names && !ofThePlace.contains(entry.key())) {
        gone.add(entry.key());
      }
    }
    text = text.without(steps, gone);
    String id = YamlText.scalar(part.id());
    if (fields.find(PartReader.PART).isPresent()) {
      text = text.with(below(steps, PartReader.PART), id);
    } else {
      text = text.renamed(below(steps, PartReader.KIND), PartReader.PART, id);
    }
  }

  private static List<String> below(List<String> steps, String key) {
    List<String> longer = new ArrayList<>(steps);
    longer.add(key);
    return longer;
  }

  private void wire(Edit.Wire wire) throws YamlText.NotFollowed {
    List<String> fields = new ArrayList<>();
    fields.add("from: " + YamlText.scalar(wire.from()));
    fields.add("to: " + YamlText.scalar(wire.to()));
    wire.wire().ifPresent(part -> fields.add("wire: " + YamlText.scalar(part.id())));
    Written length = Written.like(Keys.require(PlanDraft.WIRES + ".length"));
    wire.metres().ifPresent(metres -> fields.add("length: " + length.text(metres)));
    text = text.appended(steps(PlanDraft.WIRES), "{" + String.join(", ", fields) + "}");
  }
}

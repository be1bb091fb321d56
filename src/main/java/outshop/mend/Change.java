package outshop.mend;

import java.util.List;
import outshop.plan.Edit;

/**
 * One thing that a person would change. It is made to a plan by its edits, which can be made to the
 * text of the plan as well.
 */
public sealed interface Change {

  /** What is done, in words, as a sentence without its full stop. */
  String words();

  /** The edits that make it, in order. */
  List<Edit> edits();

  /** What it changes: two changes of one slot do not go together. */
  String slot();

  /**
   * The kinds of part and other things it touches, in the words in which a rule's page says what
   * the rule reads.
   */
  List<String> touches();

  /**
   * What the owner gives up with it, in words: a wish, or a thing that the locomotive had; empty if
   * nothing.
   */
  default String givesUp() {
    return "";
  }

  /**
   * Another part of the same kind in the place of one that is fitted.
   *
   * @param givesUp what the owner wishes and the new part lacks
   */
  record Swap(String words, List<Edit> edits, String slot, List<String> touches, String givesUp)
      implements Change {
    public Swap {
      edits = List.copyOf(edits);
      touches = List.copyOf(touches);
    }
  }

  /** A part that the plan lacks. */
  record Add(String words, List<Edit> edits, String slot, List<String> touches) implements Change {
    public Add {
      edits = List.copyOf(edits);
      touches = List.copyOf(touches);
    }
  }

  /**
   * A part less.
   *
   * @param givesUp what the locomotive can no longer do
   */
  record Remove(String words, List<Edit> edits, String slot, List<String> touches, String givesUp)
      implements Change {
    public Remove {
      edits = List.copyOf(edits);
      touches = List.copyOf(touches);
    }
  }

  /** The same parts joined or placed otherwise. */
  record Rewire(String words, List<Edit> edits, String slot, List<String> touches)
      implements Change {
    public Rewire {
      edits = List.copyOf(edits);
      touches = List.copyOf(touches);
    }
  }

  /**
   * A setting of a part, or a wish of the owner's.
   *
   * @param givesUp the wish, where it is one
   */
  record Set(String words, List<Edit> edits, String slot, List<String> touches, String givesUp)
      implements Change {
    public Set {
      edits = List.copyOf(edits);
      touches = List.copyOf(touches);
    }
  }
}

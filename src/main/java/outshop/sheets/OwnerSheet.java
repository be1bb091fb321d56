package outshop.sheets;

import java.util.List;

/**
 * The owner's sheet, for somebody who did not build the locomotive: what is inside, how to run,
 * charge and store it, what to mind.
 *
 * @param standing the violations that stand; while there is one it is not to be handed over
 * @param parts what is inside, in plain words
 * @param chapters in their order
 */
public record OwnerSheet(
    String title,
    String planFile,
    List<BenchSheet.Standing> standing,
    List<Part> parts,
    List<Chapter> chapters) {

  public OwnerSheet {
    standing = List.copyOf(standing);
    parts = List.copyOf(parts);
    chapters = List.copyOf(chapters);
  }

  /** One part: what it does, what it is, where it sits. */
  public record Part(String does, Line what) {}

  /** Rules under one heading. */
  public record Chapter(String name, String heading, List<Line> rules) {
    public Chapter {
      rules = List.copyOf(rules);
    }
  }
}

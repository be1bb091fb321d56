package outshop.sheets;

import java.util.ArrayList;
import java.util.List;
import outshop.plan.MeasuringSheet;
import outshop.plan.Plan;

/** The measuring sheet of a plan: what it does not state yet, and how to get it. */
public record MeasuringPaper(
    String title, String planFile, List<String> cautions, List<Group> groups) {
  public MeasuringPaper {
    cautions = List.copyOf(cautions);
    groups = List.copyOf(groups);
  }

  /** What is asked of one thing. */
  public record Group(String heading, List<Item> items) {
    public Group {
      items = List.copyOf(items);
    }
  }

  /**
   * One value that is asked for.
   *
   * @param boxes how many boxes there are to write in; none where there are only words to tick
   * @param unit that stands in the box; empty where there is none
   * @param choices words to tick
   */
  public record Item(
      String name, String what, String how, int boxes, String unit, List<String> choices) {
    public Item {
      choices = List.copyOf(choices);
    }
  }

  static MeasuringPaper of(Plan plan) {
    MeasuringSheet.Content content = MeasuringSheet.content(plan);
    return new MeasuringPaper(
        content.title(),
        plan.file(),
        content.cautions(),
        content.groups().stream()
            .map(g -> new Group(g.heading(), g.items().stream().map(MeasuringPaper::item).toList()))
            .toList());
  }

  private static Item item(MeasuringSheet.Item item) {
    List<String> choices = new ArrayList<>(item.choices());
    int boxes = 1;
    switch (item.box()) {
      case CHOICES -> boxes = 0;
      case NUMBER_OR_NONE, LINE_OR_NONE -> choices.add("none");
      case PAIRS -> {
        boxes = 2;
        choices.add("none");
      }
      case NUMBER, COUNT, LINE -> {
        // One box and nothing to tick.
      }
    }
    return new Item(item.name(), item.what(), item.how(), boxes, item.unit(), choices);
  }
}

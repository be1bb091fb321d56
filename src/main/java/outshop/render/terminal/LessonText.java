package outshop.render.terminal;

import java.util.List;
import java.util.Optional;
import outshop.findings.Silence;
import outshop.input.Shown;
import outshop.report.Lesson;

/** What one rule makes of one plan, as text: every answer with its working, then its silences. */
public final class LessonText {
  /** From so many answers on it is worth saying how to see one alone. */
  private static final int MANY = 3;

  private final Lesson lesson;
  private final Sheet sheet;

  private LessonText(Lesson lesson, Sheet sheet) {
    this.lesson = lesson;
    this.sheet = sheet;
  }

  /** Adds it to a sheet, under a heading of its own. */
  public static void print(Lesson lesson, Sheet sheet) {
    LessonText text = new LessonText(lesson, sheet);
    String title = Shown.text(lesson.planTitle());
    sheet.heading("In " + title + " (" + Shown.text(lesson.planFile()) + ")");
    text.answers();
    text.silences();
    sheet.blank();
    sheet.paragraph(0, lesson.caution());
  }

  private void answers() {
    List<Lesson.Answer> answers = lesson.answers();
    FindingBlock block = new FindingBlock(sheet, true);
    for (int i = 0; i < answers.size(); i++) {
      if (i > 0) {
        sheet.blank();
      }
      block.print(answers.get(i));
    }
    if (answers.size() >= MANY) {
      sheet.blank();
      sheet.paragraph(0, answers.size() + " answers; --at NAME shows those at one place alone.");
    }
  }

  private void silences() {
    if (lesson.answers().isEmpty()) {
      sheet.paragraph(0, "The rule says nothing about this plan:");
      whyNothing().ifPresent(words -> sheet.hanging("  - ", words));
    } else if (!lesson.silences().isEmpty()) {
      sheet.blank();
      sheet.paragraph(0, "It says nothing elsewhere:");
    }
    for (Silence silence : lesson.silences()) {
      sheet.hanging(
          "  - ",
          silence.at().described()
              + ": "
              + silence.value()
              + " is stated as none, so there is nothing to compare");
    }
  }

  /** Why there is neither an answer nor a place where one was looked for, as far as is known. */
  private Optional<String> whyNothing() {
    if (!lesson.silences().isEmpty()) {
      return Optional.empty();
    }
    if (!lesson.lacking().isEmpty()) {
      return Optional.of(
          "of what it reads, the plan has no "
              + String.join(", no ", lesson.lacking())
              + (lesson.lacking().size() == lesson.reads().size() ? "" : " (" + reads() + ")"));
    }
    return Optional.of(
        "the plan does not have the case that it looks for; see below when it does not apply, and"
            + " the examples in which it says nothing");
  }

  private String reads() {
    return "it reads " + String.join(", ", lesson.reads());
  }
}

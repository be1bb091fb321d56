package outshop.render.terminal;

import java.util.List;

/**
 * A page of Markdown as plain text: headings with a rule under them, paragraphs and lists wrapped,
 * tables in columns, code as it stands, and no marks of emphasis.
 */
public final class PageText {
  private final Sheet sheet;
  private final StringBuilder paragraph = new StringBuilder();
  private PageTable table = new PageTable();
  private String first = "";
  private boolean inCode;
  private boolean gapWanted;

  /** Nothing was printed since the last heading, or since the beginning. */
  private boolean fresh = true;

  private PageText(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Adds the page to a sheet. */
  public static void print(List<String> lines, Sheet sheet) {
    PageText page = new PageText(sheet);
    for (String line : lines) {
      page.line(line);
    }
    page.end();
  }

  /** A rule's sentence outside a report: what a report would fill in stands in angle brackets. */
  public static String gaps(String sentence) {
    return sentence.replace('{', '<').replace('}', '>');
  }

  private void line(String line) {
    if (line.startsWith("```")) {
      end();
      inCode = !inCode;
    } else if (inCode) {
      end();
      gap();
      sheet.verbatim(2, line);
    } else if (line.startsWith("|")) {
      endParagraph();
      table.add(plain(line));
    } else if (line.startsWith("#")) {
      end();
      sheet.blank();
      sheet.heading(plain(line.replaceFirst("^#+", "").strip()));
      gapWanted = false;
      fresh = true;
    } else if (line.isBlank()) {
      boolean underHeading = paragraph.length() == 0 && table.isEmpty() && fresh;
      end();
      gapWanted = !underHeading;
    } else {
      words(line);
    }
  }

  private void words(String line) {
    int mark = listMark(line);
    if (mark > 0 || !table.isEmpty()) {
      end();
    }
    if (mark > 0) {
      first = "  " + line.substring(0, mark).replace('*', '-');
    } else if (paragraph.length() > 0) {
      paragraph.append(' ');
    }
    paragraph.append(line.substring(mark).strip());
  }

  /** How many characters of a line are the mark of a list's item; 0 if it is none. */
  private static int listMark(String line) {
    if (line.startsWith("- ") || line.startsWith("* ")) {
      return 2;
    }
    int digits = 0;
    while (digits < line.length() && line.charAt(digits) >= '0' && line.charAt(digits) <= '9') {
      digits++;
    }
    return digits > 0 && line.startsWith(". ", digits) ? digits + 2 : 0;
  }

  private void end() {
    endParagraph();
    if (!table.isEmpty()) {
      gap();
      table.print(sheet);
      table = new PageTable();
    }
  }

  private void endParagraph() {
    if (paragraph.length() > 0) {
      gap();
      sheet.hanging(first, plain(paragraph.toString()));
      paragraph.setLength(0);
    }
    first = "";
  }

  /** An empty line where the page has one, but none right under a heading. */
  private void gap() {
    if (gapWanted) {
      sheet.blank();
    }
    gapWanted = false;
    fresh = false;
  }

  /** Without the marks of emphasis and of code; a star between spaces is no mark. */
  private static String plain(String words) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      boolean between =
          i > 0
              && i + 1 < words.length()
              && words.charAt(i - 1) == ' '
              && words.charAt(i + 1) == ' ';
      if (c != '`' && (c != '*' || between)) {
        plain.append(c);
      }
    }
    return plain.toString();
  }
}

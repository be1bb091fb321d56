package outshop.render.terminal;

import java.util.ArrayList;
import java.util.List;

/**
 * A text that grows line by line, each wrapped to the width. Whatever is put in is cleaned, so no
 * line it gives holds a control character beside its own line ends and, where asked for, colours.
 */
public final class Sheet {
  private static final int NARROW_INDENT = 4;

  private final Look look;
  private final Clean clean;
  private final StringBuilder text = new StringBuilder();

  public Sheet(Look look) {
    this.look = look;
    this.clean = new Clean(look.charset());
  }

  int width() {
    return look.width();
  }

  /** As it will be printed, for measuring. */
  String cleaned(String words) {
    return clean.text(words);
  }

  /** An empty line. */
  public void blank() {
    text.append('\n');
  }

  /** A heading with a rule under it. */
  public void heading(String words) {
    List<String> lines = Wrap.lines(clean.text(words), look.width());
    int longest = 0;
    for (String line : lines) {
      longest = Math.max(longest, Glyphs.columns(line));
      put("", Paint.NONE, line, Paint.BOLD);
    }
    put("", Paint.NONE, "-".repeat(longest), Paint.FAINT);
  }

  /** A paragraph, every line of it indented. */
  public void paragraph(int indent, String words) {
    hanging(" ".repeat(indent), words);
  }

  /** A paragraph that begins behind {@code first} and whose other lines stand under its words. */
  public void hanging(String first, String words) {
    hanging(first, Paint.NONE, words, Paint.NONE);
  }

  void hanging(String first, Paint firstPaint, String words, Paint paint) {
    String begin = clean.text(first);
    int indent = Glyphs.columns(begin);
    if (indent > look.width() / 2) {
      hanging("", Paint.NONE, first, firstPaint);
      hanging(" ".repeat(NARROW_INDENT), Paint.NONE, words, paint);
      return;
    }
    List<String> lines = Wrap.lines(clean.text(words), look.width() - indent);
    put(begin, firstPaint, lines.get(0), paint);
    for (String line : lines.subList(1, lines.size())) {
      put(" ".repeat(indent), Paint.NONE, line, paint);
    }
  }

  /** Two texts in one line, or the second under the first where they do not fit. */
  void row(String left, String right) {
    String begin = clean.text(left);
    String end = clean.text(right);
    if (Glyphs.columns(begin) + Glyphs.columns(end) <= look.width()) {
      put("", Paint.NONE, begin + end, Paint.NONE);
    } else {
      paragraph(begin.length() - begin.stripLeading().length(), left);
      if (!end.isBlank()) {
        paragraph(look.width() / 2, end.strip());
      }
    }
  }

  /** Texts beside a drawing, each beginning a line of its own; the drawing goes first. */
  void beside(List<String> drawing, Paint paint, List<String> texts) {
    int indent = drawing.get(0).length();
    List<String> lines = new ArrayList<>();
    for (String words : texts) {
      lines.addAll(Wrap.lines(clean.text(words), look.width() - indent));
    }
    for (int i = 0; i < Math.max(lines.size(), drawing.size()); i++) {
      String drawn = i < drawing.size() ? drawing.get(i) : " ".repeat(indent);
      put(drawn, paint, i < lines.size() ? lines.get(i) : "", i == 0 ? Paint.BOLD : Paint.NONE);
    }
  }

  /** As it stands, cleaned and cut to the width in as many lines as it takes: for code. */
  public void verbatim(int indent, String line) {
    String rest = clean.text(line);
    int room = look.width() - indent;
    do {
      int end = 0;
      int columns = 0;
      while (end < rest.length()) {
        int c = rest.codePointAt(end);
        if (columns + Glyphs.columns(c) > room) {
          break;
        }
        columns += Glyphs.columns(c);
        end += Character.charCount(c);
      }
      put(" ".repeat(indent), Paint.NONE, rest.substring(0, end), Paint.NONE);
      rest = rest.substring(end);
    } while (!rest.isEmpty());
  }

  private void put(String first, Paint firstPaint, String line, Paint paint) {
    if (look.colour()) {
      String begin = line.isEmpty() ? first.stripTrailing() : first;
      text.append(firstPaint.on(begin)).append(paint.on(line));
    } else {
      text.append((first + line).stripTrailing());
    }
    text.append('\n');
  }

  /** All lines so far. */
  public String text() {
    return text.toString();
  }
}

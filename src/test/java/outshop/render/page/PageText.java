package outshop.render.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a page apart for the tests, with nothing but what HTML says of tags and escapes. */
final class PageText {
  private static final Pattern NUMBERED = Pattern.compile("&#(\\d+);");

  private PageText() {}

  /** What a person reads: without tags, escapes undone, white space in runs of one. */
  static String of(String html) {
    String text = html.replaceAll("(?s)<style>.*?</style>", " ").replaceAll("(?s)<[^>]*>", " ");
    return squeezed(unescaped(text));
  }

  static String unescaped(String text) {
    String named =
        text.replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&nbsp;", " ");
    Matcher numbered = NUMBERED.matcher(named);
    String signs =
        numbered.replaceAll(
            m -> Matcher.quoteReplacement(Character.toString(Integer.parseInt(m.group(1)))));
    return signs.replace("&amp;", "&");
  }

  static String squeezed(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
  }

  /** The pieces between two marks, each once, in order. */
  static List<String> all(String html, String regex) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(regex, Pattern.DOTALL).matcher(html);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  /** The list item whose disclosure has this id, as HTML. */
  static String finding(String html, String id) {
    for (String block : all(html, "(<details class=\"finding.*?</details>)\\s*</li>")) {
      if (block.substring(0, block.indexOf('>')).contains("id=\"" + id + "\"")) {
        return block;
      }
    }
    throw new AssertionError("no finding " + id);
  }

  /** A section by the id of its heading, as HTML. */
  static String section(String html, String heading) {
    int from = html.indexOf("<section aria-labelledby=\"" + heading + "\">");
    if (from < 0) {
      return "";
    }
    return html.substring(from, html.indexOf("</section>", from));
  }
}

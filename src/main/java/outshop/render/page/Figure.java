package outshop.render.page;

import java.util.List;

/**
 * A drawing in a page, with the same in words.
 *
 * @param title a heading
 * @param svg one {@code svg} element, made by this program and put into the page as it is: texts in
 *     it are escaped, it has no {@code style} attribute, no script and no address outside the page,
 *     and every id in it is its own in the page
 * @param summary one or two sentences: what is to be seen
 * @param headers of the table that says the same; empty where there is none
 * @param rows each with as many cells as there are headers
 */
public record Figure(
    String title, String svg, String summary, List<String> headers, List<List<String>> rows) {

  /** Errors: {@link IllegalArgumentException} for a row that does not fit the headers. */
  public Figure {
    headers = List.copyOf(headers);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != headers.size()) {
        throw new IllegalArgumentException(
            "%s: %d cells under %d headers".formatted(title, row.size(), headers.size()));
      }
    }
  }
}

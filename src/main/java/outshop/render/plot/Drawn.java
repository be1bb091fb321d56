package outshop.render.plot;

import java.util.List;
import outshop.units.Want;

/**
 * A plot as it is shown. All texts but the SVG are plain: whoever puts them on a page escapes them.
 *
 * @param id the SVG's own id, unique in a report; the prefix of every id in it
 * @param svg one element, well-formed by itself, its texts escaped
 * @param summary what the plot shows, in sentences
 * @param headers of the table's columns
 * @param rows the table: everything that is drawn, and what could not be
 * @param wants what is missing, and how to get it
 */
public record Drawn(
    String id,
    String title,
    String svg,
    String summary,
    List<String> headers,
    List<List<String>> rows,
    List<Want> wants) {
  public Drawn {
    headers = List.copyOf(headers);
    rows = rows.stream().map(List::copyOf).toList();
    wants = List.copyOf(wants);
  }
}

package outshop.rules;

import java.util.List;
import java.util.Map;

/**
 * What a rule's page says about it, as data.
 *
 * @param name family and name
 * @param bounds worst first; empty for a rule that only reports situations
 * @param situations by name
 * @param protectsPeople a club may only make its bounds stricter, and an assumed value does not
 *     soften it
 * @param basis where the bound comes from: std, hb, part, cp
 * @param fine the sentence for an outcome that is fine
 * @param cures what to do, cheapest first
 */
public record RuleText(
    String name,
    String title,
    List<Bound> bounds,
    Map<String, Situation> situations,
    boolean protectsPeople,
    String basis,
    String source,
    String headline,
    String fine,
    String why,
    List<String> cures) {

  public String family() {
    return name.substring(0, name.indexOf('/'));
  }
}

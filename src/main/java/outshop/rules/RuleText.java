package outshop.rules;

import java.util.List;
import java.util.Map;
import outshop.units.Amount;

/**
 * What a rule's page says about it, as data.
 *
 * @param name family and name
 * @param bounds worst first; empty for a rule that only reports situations
 * @param situations by name
 * @param protectsPeople a club may only make its bounds stricter, and an assumed value does not
 *     soften it
 * @param basis where the bound comes from: std, hb, part, cp
 * @param headline the sentence for every bound that has none of its own
 * @param fine the sentence for an outcome that is fine
 * @param cures what to do, cheapest first
 * @param reads the kinds of part and the other things of a plan that its answers depend on, as its
 *     examples show
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
    List<String> cures,
    List<String> reads) {

  /** A rule of which nobody has recorded what it reads. */
  public RuleText(
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
    this(
        name,
        title,
        bounds,
        situations,
        protectsPeople,
        basis,
        source,
        headline,
        fine,
        why,
        cures,
        List.of());
  }

  public String family() {
    return name.substring(0, name.indexOf('/'));
  }

  /** The sentence for a bound that was passed. */
  public String headline(Bound passed) {
    return passed.headline().isEmpty() ? headline : passed.headline();
  }

  /**
   * The bounds as they stand against one limit, worst first, such as {@code violation over 18 V,
   * the limit}.
   */
  public List<String> boundsAt(Amount.Known limit) {
    return bounds.stream().map(b -> b.outcome().words() + " " + b.words(limit)).toList();
  }
}

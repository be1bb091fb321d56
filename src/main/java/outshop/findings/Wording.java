package outshop.findings;

import java.util.List;

/**
 * The sentences of a finding. Most findings of a check that somebody searches or counts are never
 * read, so they are made when first asked for; asking twice gives the same.
 */
public abstract class Wording {
  /** One sentence with the decisive numbers, without a full stop. */
  public abstract String headline();

  /** Every value that entered, in the order in which they were used. */
  public abstract List<Finding.Step> working();

  /** What to do, cheapest first. */
  public abstract List<String> cures();

  /** The values nobody stated on which the figure stands. */
  public abstract List<String> assumed();

  /** Sentences that are there already. */
  public static Wording of(
      String headline, List<Finding.Step> working, List<String> cures, List<String> assumed) {
    return new Ready(headline, List.copyOf(working), List.copyOf(cures), List.copyOf(assumed));
  }

  /** Two wordings are equal if they say the same. */
  @Override
  public final boolean equals(Object other) {
    return other instanceof Wording that
        && headline().equals(that.headline())
        && working().equals(that.working())
        && cures().equals(that.cures())
        && assumed().equals(that.assumed());
  }

  @Override
  public final int hashCode() {
    return headline().hashCode();
  }

  @Override
  public final String toString() {
    return headline();
  }

  private static final class Ready extends Wording {
    private final String headline;
    private final List<Finding.Step> working;
    private final List<String> cures;
    private final List<String> assumed;

    Ready(String headline, List<Finding.Step> working, List<String> cures, List<String> assumed) {
      this.headline = headline;
      this.working = working;
      this.cures = cures;
      this.assumed = assumed;
    }

    @Override
    public String headline() {
      return headline;
    }

    @Override
    public List<Finding.Step> working() {
      return working;
    }

    @Override
    public List<String> cures() {
      return cures;
    }

    @Override
    public List<String> assumed() {
      return assumed;
    }
  }
}

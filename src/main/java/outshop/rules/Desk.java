package outshop.rules;

import java.util.List;
import org.kie.api.definition.rule.Rule;
import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Want;

/**
 * Where a rule hands in what it found. Every rule makes one call: {@code
 * desk.judge(drools.getRule(), at)} followed by what stands against what.
 */
public interface Desk {

  /** Opens the judgement of one rule at one place. */
  Judgement judge(Rule rule, At at);

  /** A judgement that is being made. */
  interface Judgement {
    /**
     * Adds a value for the rule's sentences, where it fills {@code {name}}; it enters the working
     * as well.
     */
    Judgement with(String name, Amount amount);

    /** Adds a word for the rule's sentences, where it fills {@code {name}}. */
    Judgement with(String name, String word);

    /** Adds a stated word for the rule's sentences; an unstated one reads "not stated". */
    Judgement with(String name, Said said);

    /**
     * The demand may be at most the limit, by the bounds of the rule's page. Nothing is said if
     * either is stated to be absent.
     */
    void atMost(Amount demand, Amount limit);

    /**
     * The demand must be at least the limit, by the bounds of the rule's page. Nothing is said if
     * either is stated to be absent.
     */
    void atLeast(Amount demand, Amount limit);

    /**
     * The word must be this one; if it is another, the page's situation {@code otherwise} is
     * reported.
     */
    void expect(Said said, String word);

    /** Reports a situation that the page describes. */
    void found(String situation);

    /**
     * Reports what the figures found: a situation of the page, {@code fine}, or {@code unknown}
     * with what is missing.
     */
    void settle(String situation, List<Want> wants);

    /** Reports that nothing is wrong. */
    void fine();

    /** Reports that it cannot be told, for want of these values. */
    void cannotTell(List<Want> wants);
  }
}

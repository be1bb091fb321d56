package outshop.mutation;

import outshop.rules.RuleText;

/**
 * One rule with one deliberate fault.
 *
 * @param what the fault in detail, such as {@code violation over 100 % -> 101 %}
 * @param page the rule's page, with the fault if it is in there
 * @param drl the rule's text, with the fault if it is in there; empty if the rule is removed
 */
record Mutant(String rule, Fault fault, String what, RuleText page, String drl) {

  /** What tells it from every other mutant. */
  String key() {
    return rule + " | " + fault.words() + " | " + what;
  }
}

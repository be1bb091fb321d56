/**
 * Runs the trade's rules over the figures. The only package that knows the rule engine. A rule says
 * which figures stand against which limit; {@link outshop.rules.Grader} turns every such comparison
 * into an outcome by the bounds of the rule's page, so that no rule repeats that.
 */
package outshop.rules;

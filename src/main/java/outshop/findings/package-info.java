/**
 * What a rule found: its outcome, where, with which numbers, why it matters and what to do. Knows
 * nothing of how it was found.
 */
package outshop.findings;

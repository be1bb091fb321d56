/**
 * Which parts of a catalogue work together in the places that a plan leaves open: every combination
 * that the full check finds no violation in, best first.
 *
 * <p>The rules are not repeated here. What rules a combination out is asked of the rules
 * themselves, for parts that stand for several parts at once.
 */
package outshop.search;

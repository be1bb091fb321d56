/**
 * Builds the rule book: only at build time. Checks that each rule has its page and its examples,
 * and compiles the rules to classes.
 */
package outshop.rulebook;

package outshop.findings;

import outshop.circuit.At;

/**
 * A place where a rule looked and said nothing, because a value is stated not to exist: there is
 * nothing to compare.
 *
 * @param rule family and name
 * @param value the value that is stated as {@code none}, such as {@code receiver: cutoff volts}
 */
public record Silence(String rule, At at, String value) {}

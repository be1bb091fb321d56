package outshop.rules;

import outshop.findings.Consequence;
import outshop.findings.Outcome;

/**
 * A situation a rule can report directly: its name in the rule, what it means, and its sentence.
 */
public record Situation(String name, Outcome outcome, Consequence consequence, String headline) {}

package outshop.figures;

import outshop.circuit.At;

/**
 * Something doubtful about a value that the plan rests on.
 *
 * @param situation {@code unlikely} or {@code guessed}
 * @param what in words
 */
public record DataRemark(At at, String situation, String what) {}

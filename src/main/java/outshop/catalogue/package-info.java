/**
 * The parts catalogue: one table per kind of part, filled in by the user. {@code columns.txt} (a
 * resource) defines every column of every kind once: the reader, the empty tables, the plan's
 * inline parts, the JSON Schema and the docs all follow it.
 */
package outshop.catalogue;

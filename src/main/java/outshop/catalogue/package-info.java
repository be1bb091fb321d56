/**
 * The parts catalogue: one table per kind of part, filled in by the user. {@code columns.txt} (a
 * resource) defines every column of every kind once: the reader, the empty tables, the plan's
 * inline parts, the JSON Schema and the docs all follow it. {@link
 * outshop.catalogue.CatalogueReader} reads the tables as spreadsheets write them and tells
 * everything wrong at once; {@link outshop.catalogue.PartChecks} judges the values of one part;
 * {@link outshop.catalogue.CatalogueWriter} writes empty tables. Imports only {@code units} and
 * {@code input}.
 */
package outshop.catalogue;

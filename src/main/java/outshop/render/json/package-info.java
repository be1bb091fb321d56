/**
 * The report as JSON, for other programs: everything the report holds, numbers in full. Its form is
 * described by {@code docs/report.schema.json}.
 */
package outshop.render.json;

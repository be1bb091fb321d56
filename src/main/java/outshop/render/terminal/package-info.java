/**
 * The report as text for a terminal or a file, readable at 80 columns. Shows what the report holds,
 * decides and computes nothing. Whatever it prints is cleaned first: no control character of a
 * user's text gets through.
 */
package outshop.render.terminal;

/**
 * Draws the report's plots as SVG, each with a summary and a table that say the same in words.
 *
 * <p>Decides nothing: every number comes from the plot's data.
 */
package outshop.render.plot;

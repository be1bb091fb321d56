/**
 * Pages for a browser: the report as one self-contained HTML file, and the frame that every other
 * page stands in. No page runs a script or asks for anything outside itself. The templates are in
 * {@code src/main/jte}.
 */
package outshop.render.page;

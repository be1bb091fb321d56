/**
 * The wiring drawing as SVG: one file that needs nothing else, in light and dark, in print and in
 * black and white. It adds to the drawing only words, marks of what is live and marks of findings.
 */
package outshop.render.drawing;

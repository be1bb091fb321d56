/**
 * The sheets as self-contained pages to print. Every number stands in an element that carries its
 * name, its full value and its unit, as the JSON of the same run has them.
 */
package outshop.render.sheet;

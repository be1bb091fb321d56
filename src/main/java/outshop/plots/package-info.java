/**
 * The data of each plot, taken from the figures; nothing is drawn and nothing judged here.
 *
 * <p>Downstream of the figures; the report carries it, renderers draw it.
 */
package outshop.plots;

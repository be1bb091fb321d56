/**
 * Boxes into bays: whether parts of known sizes can lie in a space of known size, and how. Plain
 * geometry in whole micrometres, which knows nothing of plans or parts.
 */
package outshop.figures.fit;

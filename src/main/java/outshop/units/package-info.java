/**
 * Quantities with units, and what is known about them. First in the flow: everything imports this
 * package, and it imports nothing of the project.
 */
package outshop.units;

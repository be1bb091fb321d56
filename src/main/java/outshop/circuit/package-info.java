/**
 * The one circuit that a plan makes: terminals, the links between them (wires, contacts, fuses),
 * the devices that hang on them. From it come the states (what is joined to what), and the load
 * cases (a network, solved). Nothing is drawn or checked from a second description of the same
 * wiring.
 */
package outshop.circuit;

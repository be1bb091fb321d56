/**
 * A plain electrical network and its direct-current solution. Knows nothing of parts or plans:
 * nets, elements between them, volts and amps.
 */
package outshop.circuit.solve;

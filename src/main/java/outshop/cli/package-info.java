/**
 * The command line: reads arguments, wires the other packages together by hand, decides the exit
 * code.
 */
package outshop.cli;

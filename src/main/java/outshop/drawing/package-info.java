/**
 * The wiring as it is drawn, from the one circuit of a plan: the wire list, boxes with their
 * terminals, the routes of conductors between them, what is live in a state. It knows nothing of
 * rules and of how it will be rendered.
 */
package outshop.drawing;

/**
 * What every reader of a user's file shares: where a thing stands in a file, what was wrong with
 * it, words close to a mistyped one, and YAML files as a tree with places. Imports only {@code
 * units} of the project; the YAML parser's classes stay inside.
 */
package outshop.input;

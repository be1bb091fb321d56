/**
 * What every reader of a user's file shares: where a thing stands in a file, what was wrong with
 * it, and words close to a mistyped one. Imports only {@code units}.
 */
package outshop.input;

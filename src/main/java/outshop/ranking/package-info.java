/** Puts findings in order. Pure: the same findings in any order come out the same. */
package outshop.ranking;

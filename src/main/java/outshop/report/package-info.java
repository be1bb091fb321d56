/**
 * The one report that every renderer reads. Whatever a renderer shows stands here; a renderer
 * decides and computes nothing.
 */
package outshop.report;

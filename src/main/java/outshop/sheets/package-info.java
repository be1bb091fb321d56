/**
 * The papers that leave the workshop with a locomotive: what to buy, how to wire it, how to prove
 * it step by step, what to tell its owner; and the readings that come back. They are computed from
 * the same circuit and figures as the report, and hold no layout: the renderers set them.
 */
package outshop.sheets;

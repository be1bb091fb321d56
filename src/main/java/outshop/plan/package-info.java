/**
 * The plan: what was measured on the locomotive, what is wished for, which parts are fitted and how
 * they are wired. {@code keys.txt} (a resource) defines every key once: the reader, the JSON
 * Schema, the plan to start from and the measuring sheet follow it.
 */
package outshop.plan;

/**
 * What to change in a plan that has findings. Every change that could help is made to the plan and
 * the whole plan is checked again by the same rules, so that nothing here says on its own what a
 * rule would say.
 */
package outshop.mend;

/**
 * The figures that the rules judge, computed from the circuit: which parts meet, what stands
 * against what. A figure never knows that it will be judged. Each record is one meeting of parts
 * and becomes one fact of the rule engine.
 */
package outshop.figures;

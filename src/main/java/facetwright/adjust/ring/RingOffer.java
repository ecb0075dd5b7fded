package facetwright.adjust.ring;

import facetwright.papers.ring.RingPlan;
import facetwright.script.design.Design;

/**
 * A ring by another design of the same script.
 *
 * @param dial that is turned
 * @param value what it is turned to, in the design's unit
 * @param design what it comes to
 * @param plan the best ring of it
 */
public record RingOffer(String dial, double value, Design design, RingPlan plan) {}

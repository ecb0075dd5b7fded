/**
 * Findings: what is wrong or doubtful with a design, where, why, and how to mend it. One small
 * class a rule. A rule never throws; it returns findings in the maker's words. {@link
 * facetwright.check.Checks#all} is the front door. Limits of the trade that have no published
 * source say so where they are defined.
 */
package facetwright.check;

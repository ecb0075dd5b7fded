/**
 * Findings: what is wrong or doubtful with a design, where, why, and how to mend it. One small
 * class a rule. A rule never throws; it returns findings in the maker's words.
 */
package facetwright.check;

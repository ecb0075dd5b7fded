/** What a finding is, and what a rule is asked about. */
package facetwright.check.finding;

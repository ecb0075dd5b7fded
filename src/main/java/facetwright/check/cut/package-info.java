/** Rules about the sheet: what lies too near, too thin, too far out or in two places at once. */
package facetwright.check.cut;

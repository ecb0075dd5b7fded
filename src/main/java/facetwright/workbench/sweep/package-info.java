/** One dial over its range, as small pictures to pick from. */
package facetwright.workbench.sweep;

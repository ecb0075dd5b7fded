/** The drawer under the table: the design's dials, to be turned or typed. */
package facetwright.workbench.drawer;

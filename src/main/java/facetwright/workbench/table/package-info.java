/** The table: the net on its sheet, rulers along the sheet's edges, pointing, measuring. */
package facetwright.workbench.table;

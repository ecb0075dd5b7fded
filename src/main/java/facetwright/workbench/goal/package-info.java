/**
 * Questions to the design on the table: what it should come to, which ruler it should be set by,
 * which sheet it should fill. An <em>offer</em> shows what is proposed; nothing changes before it
 * is taken.
 */
package facetwright.workbench.goal;

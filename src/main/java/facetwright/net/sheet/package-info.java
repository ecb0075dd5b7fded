/** Card and where nets lie on it: stock, sheet sizes, and pieces laid out within the margin. */
package facetwright.net.sheet;

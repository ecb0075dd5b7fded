/** The largest version of a design of which so many lie on one sheet, and how they lie there. */
package facetwright.adjust.fit;

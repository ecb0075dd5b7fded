/**
 * Lengths, areas and rulers, and how they are written in the unit that people read. A length is
 * millimetres inside; what stands on a ruler is a whole number of its marks.
 */
package facetwright.measure;

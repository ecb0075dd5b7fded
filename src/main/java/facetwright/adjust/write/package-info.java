/** Writing into a script what its design was turned to: dials' own values, the sheet, the aim. */
package facetwright.adjust.write;

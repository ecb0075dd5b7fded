/** Files written whole or not at all, and what keeps papers from being overwritten. */
package facetwright.export.file;

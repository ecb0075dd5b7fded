/** What the checks found, as numbered notes. */
package facetwright.workbench.findings;

/** Answers of commands as JSON. */
package facetwright.cli.json;

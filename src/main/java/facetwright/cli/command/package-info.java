/** The commands, one class each. */
package facetwright.cli.command;

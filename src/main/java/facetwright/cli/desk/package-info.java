/** What commands share: the design they are called with, papers asked for, and how they answer. */
package facetwright.cli.desk;

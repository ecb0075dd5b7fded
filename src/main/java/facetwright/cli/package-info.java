/**
 * The command line. Commands only show what {@link facetwright.script.Facetwright} makes of a
 * script; exit codes are 0 for a sound design, 1 for a design in which an error was found, 2 for a
 * script or a call that is wrong.
 */
package facetwright.cli;

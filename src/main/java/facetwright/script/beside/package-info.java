/**
 * The files beside a script that it uses: the only place where one is read for a script. A script
 * itself reaches no file; what it says it uses is read before it runs, and travels with its text.
 */
package facetwright.script.beside;

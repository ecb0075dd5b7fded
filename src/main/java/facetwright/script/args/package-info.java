/** Arguments that functions of several kinds of thing share, so that one idea is asked one way. */
package facetwright.script.args;

/** The words of the script language, by the thing they are said of, and their reference. */
package facetwright.script.vocabulary;

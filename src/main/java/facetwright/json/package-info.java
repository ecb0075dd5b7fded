/**
 * JSON as it is written here, by one library in one manner: a field a line, what comes first told
 * first. What is written where, those know who write it.
 */
package facetwright.json;

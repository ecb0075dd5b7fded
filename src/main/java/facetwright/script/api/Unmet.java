package facetwright.script.api;

import facetwright.words.Site;

/**
 * A check of the maker's own that fails.
 *
 * @param toDo what the maker says is to be done then
 * @param site where the check stands
 */
public record Unmet(String toDo, Site site) {}

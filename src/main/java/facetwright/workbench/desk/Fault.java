package facetwright.workbench.desk;

import facetwright.net.Site;

/**
 * What is wrong with the script as it stands.
 *
 * @param message in a maker's words
 * @param site where; {@link Site#NONE} when that is not known
 * @param remedy what to do about it, or empty
 */
public record Fault(String message, Site site, String remedy) {}

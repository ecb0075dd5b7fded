package facetwright.script.sandbox;

import facetwright.words.Site;

/** Finds out where in the script the host call now running was made. */
@FunctionalInterface
public interface SiteFinder {
  /** Line and column of the call, or {@link Site#NONE} when no script is running. */
  Site here();
}

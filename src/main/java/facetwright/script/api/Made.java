package facetwright.script.api;

import facetwright.words.Site;

/**
 * What one call of the script made, each time it ran, that does nothing by itself: a form, an
 * outline, or a choice of cells.
 */
public final class Made {
  private final Thing<?> thing;
  private final String function;
  private final Site site;
  private boolean used;

  Made(Thing<?> thing, String function, Site site) {
    this.thing = thing;
    this.function = function;
    this.site = site;
  }

  /** The script goes on with one that was made here. */
  void use() {
    used = true;
  }

  /** Whether the script called a function on any of them, or gave any to a function. */
  public boolean isUsed() {
    return used;
  }

  public boolean isForm() {
    return thing == Things.FORM;
  }

  public boolean isOutline() {
    return thing == Things.OUTLINE;
  }

  /** The function that made it, without a dot. */
  public String function() {
    return function;
  }

  /** Where the call stands. */
  public Site site() {
    return site;
  }
}

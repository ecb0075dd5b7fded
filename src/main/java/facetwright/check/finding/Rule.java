package facetwright.check.finding;

import java.util.List;

/** One thing to look for. A rule never throws for a sound net, and finds in a fixed order. */
public interface Rule {
  /** What this rule finds, empty where all is well. */
  List<Finding> find(Subject subject);
}

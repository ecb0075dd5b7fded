package facetwright.net;

/** What a panel is for. */
public enum PanelRole {
  /** A visible face of the form. */
  FACET,
  /** Glued under another panel. */
  TAB,
  /** Folds inward between two panels. */
  GUSSET
}

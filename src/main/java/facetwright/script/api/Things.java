package facetwright.script.api;

import facetwright.form.Form;
import facetwright.net.blank.Blank;
import facetwright.net.outline.Outline;
import facetwright.net.panel.CardPanel;
import facetwright.net.wrap.CellSelection;
import facetwright.net.wrap.WrapDraft;

/** The kinds of thing that scripts hold. */
public final class Things {
  /** A form in space, not yet a net. */
  public static final Thing<Form> FORM =
      Thing.inert(
          "form",
          Form.class,
          "A body of flat facets in space, standing on its base. Its functions return a new form"
              + " and leave the old one as it was; `unfold` makes the net.");

  /** An outline, of which something may be made. */
  public static final Thing<Outline> OUTLINE =
      Thing.inert(
          "outline",
          Outline.class,
          "A closed line in the plane. A `prism`, `frustum` or `pyramid` stands on it, a `panel` or"
              + " a `window` is cut along it. Its functions return a new one and leave the old one"
              + " as it was.");

  /** A wrap in the making. */
  public static final Thing<WrapDraft> WRAP =
      Thing.named(
          "wrap",
          WrapDraft.class,
          "Columns and rows that close round. It becomes part of the design by itself.");

  /** Chosen cells of a wrap. */
  public static final Thing<CellSelection> CELLS =
      Thing.inert(
          "selection of cells",
          CellSelection.class,
          "The cells where chosen columns and rows of a wrap cross.");

  /** A panel of a piece built panel by panel. */
  public static final Thing<CardPanel> PANEL =
      Thing.named(
          "panel",
          CardPanel.class,
          "A flat region of card that more can be attached to. It is part of the design by"
              + " itself.");

  /** A sheet that a net is drawn on. */
  public static final Thing<Blank> BLANK =
      Thing.named(
          "blank",
          Blank.class,
          "A rectangle of card with lines drawn on it. It is part of the design by itself.");

  /** What a maker calls a part. */
  public static final Thing<PartDraft> PART =
      Thing.named(
          "part",
          PartDraft.class,
          "A part of the design: a form laid flat, a wrap, a blank, or what hangs together with a"
              + " panel. Where parts go to each other, the finished size, the volume and the folded"
              + " view are those of all together, and whether they fit is told.");

  private Things() {}
}

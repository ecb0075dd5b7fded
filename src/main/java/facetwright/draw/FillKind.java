package facetwright.draw;

/** What a filled area means. Tints are opaque: laid on white paper beforehand. */
@SuppressWarnings("ImmutableEnumChecker") // Ink is a record of one number.
public enum FillKind {
  /** Card, where a drawing shows the sheet it is cut from. */
  CARD("card", Ink.CARD),
  GLUE("glued", Ink.OCHRE.tint(0.12)),
  LAYER("layered", Ink.RUST.tint(0.14)),
  WINDOW("window", new Ink(0xDCEBF5)),
  /** A window with paper or film behind it. */
  PANE("pane", new Ink(0xE6EDE4)),
  /** Card that falls away. */
  WASTE("waste", Ink.GREY.tint(0.28));

  private final String id;
  private final Ink ink;

  FillKind(String id, Ink ink) {
    this.id = id;
    this.ink = ink;
  }

  /** A short name without blanks, for layers and groups of a file. */
  public String id() {
    return id;
  }

  public Ink ink() {
    return ink;
  }
}

package facetwright.script.beside;

/** What comes with the program, by the names of its files in the library. */
public final class Shipped {
  /** The design shown when nothing else is named. */
  public static final String DEMO = "harbour-lantern.js";

  private Shipped() {}
}

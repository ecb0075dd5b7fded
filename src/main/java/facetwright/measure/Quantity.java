package facetwright.measure;

/** What a number counts, and so what may become of it when a design changes. */
public enum Quantity {
  /** It scales with the design, is converted to other units and set by a ruler. */
  LENGTH,
  /** In degrees; it stays as it is when the design is scaled or converted. */
  ANGLE,
  /** How many of something there are; it stays, too. */
  WHOLE,
  /** Nobody has said what. */
  NUMBER
}

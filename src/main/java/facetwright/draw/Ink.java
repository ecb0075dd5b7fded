package facetwright.draw;

/**
 * A colour on paper. Mountain and valley differ in lightness and hue in a way that people with
 * colour-blindness tell apart, and never by colour alone.
 *
 * @param rgb red, green and blue, 8 bits each
 */
public record Ink(int rgb) {
  public static final Ink BLACK = new Ink(0x2B2A28);
  public static final Ink TEAL = new Ink(0x0B6463);
  public static final Ink PLUM = new Ink(0x7A3E7A);
  public static final Ink OCHRE = new Ink(0x7A5C12);
  public static final Ink RUST = new Ink(0xC9622B);
  public static final Ink GREY = new Ink(0x6B6862);

  /** Of the outside of card of which nobody says the colour. */
  public static final Ink CARD = new Ink(0xFCFAF5);

  /**
   * @throws IllegalArgumentException when the number is over 24 bits
   */
  public Ink {
    if (rgb < 0 || rgb > 0xFFFFFF) {
      throw new IllegalArgumentException("a colour has 24 bits");
    }
  }

  public int red() {
    return rgb >> 16;
  }

  public int green() {
    return rgb >> 8 & 0xFF;
  }

  public int blue() {
    return rgb & 0xFF;
  }

  /** As web pages write it, such as "#0B6463". */
  public String hex() {
    return String.format("#%06X", rgb);
  }

  /** This ink laid thinly on white paper: 1 is full strength, 0 is white. */
  Ink tint(double strength) {
    return new Ink(
        thin(red(), strength) << 16 | thin(green(), strength) << 8 | thin(blue(), strength));
  }

  private static int thin(int part, double strength) {
    return (int) Math.round(255 - (255 - part) * strength);
  }
}

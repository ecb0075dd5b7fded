package facetwright.cli;

import picocli.CommandLine.TypeConversionException;

/** A whole number as an option is given it. */
final class Whole {
  private Whole() {}

  /**
   * @throws TypeConversionException when it is none, with what to write
   */
  static Integer read(String text) {
    try {
      return Integer.valueOf(text.strip());
    } catch (NumberFormatException _) {
      throw new TypeConversionException(
          "\"" + text + "\" is not a whole number. Write it in digits alone, such as 4.");
    }
  }
}

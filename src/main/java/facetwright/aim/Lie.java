package facetwright.aim;

/**
 * How a net lies on a sheet.
 *
 * @param fits whether it lies whole on a single one
 * @param width of the net as it lies, in mm
 * @param height of the net as it lies, in mm
 */
public record Lie(boolean fits, double width, double height) {}

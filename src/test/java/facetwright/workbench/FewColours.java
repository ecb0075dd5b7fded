package facetwright.workbench;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;

/** A picture in 256 colours, so that its file is small. */
final class FewColours {
  private static final int MOST = 256;

  private FewColours() {}

  static BufferedImage of(WritableImage image) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    PixelReader pixels = image.getPixelReader();
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        counts.merge(pixels.getArgb(x, y) & 0xFFFFFF, 1, Integer::sum);
      }
    }
    int[] table = table(counts);
    IndexColorModel model = new IndexColorModel(8, table.length, table, 0, false, -1, 0);
    BufferedImage few = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int colour = pixels.getArgb(x, y) & 0xFFFFFF;
        few.getRaster().setSample(x, y, 0, nearest.computeIfAbsent(colour, c -> nearest(c, table)));
      }
    }
    return few;
  }

  /** The colours that leave least of the picture wrong, one after another. */
  private static int[] table(Map<Integer, Integer> counts) {
    int[] colours = counts.keySet().stream().mapToInt(c -> c).sorted().toArray();
    long[] wrong = new long[colours.length];
    Arrays.fill(wrong, Integer.MAX_VALUE);
    int[] table = new int[Math.min(MOST, colours.length)];
    for (int n = 0; n < table.length; n++) {
      int worst = 0;
      for (int i = 1; i < colours.length; i++) {
        worst =
            wrong[i] * counts.get(colours[i]) > wrong[worst] * counts.get(colours[worst])
                ? i
                : worst;
      }
      table[n] = colours[worst];
      for (int i = 0; i < colours.length; i++) {
        wrong[i] = Math.min(wrong[i], distance(colours[i], table[n]));
      }
    }
    return table;
  }

  private static int nearest(int colour, int[] table) {
    int best = 0;
    for (int i = 1; i < table.length; i++) {
      best = distance(colour, table[i]) < distance(colour, table[best]) ? i : best;
    }
    return best;
  }

  private static int distance(int one, int other) {
    int sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int off = (one >> shift & 0xFF) - (other >> shift & 0xFF);
      sum += off * off;
    }
    return sum;
  }
}

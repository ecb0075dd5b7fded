package facetwright.export.pixel;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.function.IntFunction;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Pixels as a file of the format PNG: red, green, blue and opacity, 8 bits each, with the size at
 * which they are true (W3C, Portable Network Graphics Specification, Third Edition).
 */
public final class PngFile {
  /** Red, green, blue and opacity. */
  static final int CHANNELS = 4;

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte EIGHT_BITS = 8;
  private static final byte TRUE_COLOUR_WITH_OPACITY = 6;

  /** What a row is told by: its differences from the row above, of which most are 0. */
  private static final byte UP = 2;

  private static final byte METRE = 1;

  private PngFile() {}

  /**
   * The bytes of the file.
   *
   * @param title what it says it is
   * @param perMetre pixels that make a metre
   * @param rows the pixels of each row from the top, {@link #CHANNELS} bytes each; asked for in
   *     their order
   */
  public static byte[] of(
      String title, int width, int height, int perMetre, IntFunction<byte[]> rows) {
    ByteBuffer head = ByteBuffer.allocate(13).putInt(width).putInt(height);
    head.put(EIGHT_BITS).put(TRUE_COLOUR_WITH_OPACITY);
    ByteBuffer size = ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre).put(METRE);
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(file)) {
      out.write(SIGNATURE);
      chunk(out, "IHDR", head.array());
      chunk(out, "pHYs", size.array());
      // Keyword, plain, in no language that is told (11.3.3.4).
      chunk(out, "iTXt", ("Title\0\0\0\0\0" + title).getBytes(StandardCharsets.UTF_8));
      chunk(out, "IDAT", packed(width, height, rows));
      chunk(out, "IEND", new byte[0]);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file.toByteArray();
  }

  private static byte[] packed(int width, int height, IntFunction<byte[]> rows) throws IOException {
    Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION);
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater, 1 << 16)) {
      byte[] above = new byte[width * CHANNELS];
      byte[] told = new byte[1 + width * CHANNELS];
      told[0] = UP;
      for (int y = 0; y < height; y++) {
        byte[] row = rows.apply(y);
        for (int i = 0; i < above.length; i++) {
          told[i + 1] = (byte) (row[i] - above[i]);
        }
        out.write(told);
        above = row;
      }
    } finally {
      deflater.end();
    }
    return packed.toByteArray();
  }

  private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(data);
    out.writeInt(data.length);
    out.write(name);
    out.write(data);
    out.writeInt((int) check.getValue());
  }
}

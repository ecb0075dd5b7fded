package facetwright.worker;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;

/**
 * Messages on a stream: four bytes of length, most significant first, then one message as a
 * serialised value. Reading lets in nothing but {@link PlainData}.
 */
final class Frames {
  /** The longest message, in bytes. */
  static final int LONGEST = 32 << 20;

  private Frames() {}

  /** A message longer than {@link #LONGEST}. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1L;

    TooLong() {
      super("the message is over " + LONGEST + " bytes long");
    }
  }

  /** The message as a frame. */
  static byte[] frame(Message message) throws IOException {
    Limited bytes = new Limited();
    bytes.write(new byte[Integer.BYTES]);
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(message);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    byte[] frame = bytes.toByteArray();
    int length = frame.length - Integer.BYTES;
    for (int i = 0; i < Integer.BYTES; i++) {
      frame[i] = (byte) (length >>> (Byte.SIZE * (Integer.BYTES - 1 - i)));
    }
    return frame;
  }

  static void write(OutputStream stream, Message message) throws IOException {
    stream.write(frame(message));
    stream.flush();
  }

  /**
   * The next message.
   *
   * @throws EOFException when the other side has gone
   * @throws IOException when what comes is not a message
   */
  static Message read(InputStream stream) throws IOException {
    int length = new DataInputStream(stream).readInt();
    if (length <= 0 || length > LONGEST) {
      throw new IOException("a frame of " + length + " bytes is not a message");
    }
    byte[] bytes = stream.readNBytes(length);
    if (bytes.length < length) {
      throw new EOFException();
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      in.setObjectInputFilter(PlainData.filter());
      return (Message) in.readObject();
    } catch (ClassNotFoundException | RuntimeException e) {
      throw new IOException("what came is not a message", e);
    }
  }

  /** Stops taking bytes before they fill the memory. */
  private static final class Limited extends ByteArrayOutputStream {
    @Override
    public synchronized void write(int b) {
      room(1);
      super.write(b);
    }

    @Override
    public synchronized void write(byte[] bytes, int offset, int length) {
      room(length);
      super.write(bytes, offset, length);
    }

    private void room(int more) {
      if (count + (long) more > LONGEST + Integer.BYTES) {
        throw new UncheckedIOException(new TooLong());
      }
    }
  }
}

package facetwright.cli;

import facetwright.words.PlainText;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;

/** The way out to a terminal: whatever is said, no control code goes through. */
final class Gate extends FilterWriter {
  private Gate(Writer out) {
    super(out);
  }

  static PrintWriter before(PrintWriter out) {
    return new PrintWriter(new Gate(out), true);
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    out.write(PlainText.lines(text.substring(from, from + length)));
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    write(new String(text, from, length), 0, length);
  }

  @Override
  public void write(int c) throws IOException {
    write(String.valueOf((char) c), 0, 1);
  }
}

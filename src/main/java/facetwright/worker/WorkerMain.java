package facetwright.worker;

import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.Sandbox;
import java.io.BufferedInputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The worker process. Speaks in frames on standard input and output; started by a workshop. */
final class WorkerMain {
  private WorkerMain() {}

  public static void main(String[] args) {
    run((request, tried) -> request.answer(Budget.USUAL, tried));
  }

  /** Serves with this evaluator until the workshop goes; does not come back. */
  static void run(Evaluator evaluator) {
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    InputStream in = new BufferedInputStream(new FileInputStream(FileDescriptor.in));
    // A stray print must not get among the frames.
    System.setOut(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
    System.setIn(InputStream.nullInputStream());
    Sandbox.warmUp();
    new Server(evaluator, out, () -> Runtime.getRuntime().halt(0), Sandbox::makeReady).serve(in);
  }
}

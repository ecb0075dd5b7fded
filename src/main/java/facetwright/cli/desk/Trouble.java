package facetwright.cli.desk;

import facetwright.cli.json.CheckJson;
import facetwright.export.file.ExportException;
import facetwright.pace.TooMuch;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.InFile;
import java.io.IOException;
import java.io.PrintWriter;
import picocli.CommandLine;

/** How a failure is told: what, where, what to do; never a stack trace. */
public final class Trouble {
  private Trouble() {}

  /** A call that can't be carried out: a file that is not there, an option that makes no sense. */
  public static final class WrongCall extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public WrongCall(String message) {
      super(message);
    }
  }

  /**
   * Refuses a number that is out of its range.
   *
   * @param option what it was given for, such as "--count"
   * @param may what may be, with %s for the range, such as "a ring is of %s pieces"
   * @throws WrongCall where it is
   */
  public static void unless(String option, String may, int least, int most, int given) {
    if (given < least || given > most) {
      throw new WrongCall(
          option + ": " + may.formatted(least + " to " + most) + ", not " + given + ".");
    }
  }

  /** A script that is wrong; the message is the file's name as the user gave it. */
  public static final class InScript extends Exception {
    private static final long serialVersionUID = 1L;

    private final ScriptException fault;

    InScript(String file, ScriptException fault) {
      super(file, fault);
      this.fault = fault;
    }

    ScriptException fault() {
      return fault;
    }
  }

  public static int show(Exception failure, CommandLine line) {
    PrintWriter err = line.getErr();
    switch (failure) {
      case InScript e -> {
        e.fault().said().forEach(err::println);
        err.println(text(e));
        if (line.getParseResult() != null && line.getParseResult().hasMatchedOption("--json")) {
          line.getOut().println(CheckJson.of(e.fault()));
          line.getOut().flush();
        }
        if (e.fault().isStillRunning()) {
          // Nothing inside this process can stop it, and nothing has been written yet.
          err.flush();
          Runtime.getRuntime().halt(Exit.WRONG_CALL);
        }
      }
      case WrongCall e -> err.println("facetwright: " + e.getMessage());
      case IOException e -> err.println("facetwright: " + e.getMessage());
      case TooMuch e -> err.println("facetwright: " + e.getMessage() + " Nothing was written.");
      case ExportException e -> err.println("facetwright: " + e.getMessage());
      default -> {
        return inside(failure, err);
      }
    }
    err.flush();
    return Exit.WRONG_CALL;
  }

  /** A fault of the program itself. */
  public static int inside(Throwable fault, PrintWriter err) {
    err.println(
        "facetwright: something went wrong inside the program, not in your design ("
            + fault.getClass().getSimpleName()
            + (fault.getMessage() == null ? "" : ": " + fault.getMessage())
            + "). Nothing was written.");
    err.flush();
    return Exit.WRONG_CALL;
  }

  /** The script's fault as one or two lines: place, what is wrong, what to do. */
  private static String text(InScript e) {
    ScriptException fault = e.fault();
    InFile in = fault.site().in();
    String file = in.isKnown() && !in.isGathered() ? in.name() : e.getMessage();
    StringBuilder text =
        new StringBuilder(
            in.isKnown()
                ? place(file, in.line(), in.column())
                : place(file, fault.line(), fault.column()));
    text.append(": ").append(fault.getMessage());
    if (!fault.remedy().isBlank()) {
      text.append(System.lineSeparator()).append("  ").append(fault.remedy());
    }
    if (in.isKnown()) {
      text.append(System.lineSeparator()).append("  Called from ");
      text.append(place(e.getMessage(), fault.line(), fault.column())).append('.');
    }
    return text.toString();
  }

  private static String place(String file, int line, int column) {
    return file + (line > 0 ? ":" + line + (column > 0 ? ":" + column : "") : "");
  }
}

package facetwright.cli.desk;

import facetwright.export.file.PaperFolder;
import facetwright.script.Facetwright;
import facetwright.script.WhatIf;
import facetwright.script.beside.Beside;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.sandbox.ScriptLength;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The script a command works on and the dials it is turned to: options shared by commands. */
public final class DesignFile {
  @Parameters(index = "0", paramLabel = "FILE", description = "the design's script")
  private Path file;

  @Option(
      names = "--set",
      paramLabel = "name=value",
      arity = "1..*",
      description = "turns a dial: a number in the design's unit, or a length such as \"48 mm\"")
  private List<String> settings = List.of();

  DesignFile() {}

  public DesignFile(Path file) {
    this.file = file;
  }

  public Path path() {
    return file;
  }

  /** A folder that takes papers of this design. */
  PaperFolder papers(Path folder, Design made) {
    return new PaperFolder(folder, made.title(), file.getFileName().toString());
  }

  /** The file's name without its ending. */
  public String stem() {
    String name = file.getFileName() == null ? "design" : file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  public Design evaluate() throws IOException, Trouble.InScript {
    String source = source();
    String name = file.getFileName().toString();
    return ask(() -> Facetwright.evaluate(name, source, dials(), Budget.USUAL));
  }

  /** The design with one dial set, whatever the call sets it to. */
  public Design evaluate(String source, String dial, String value) throws ScriptException {
    Map<String, String> dials = dials();
    dials.put(dial, value);
    return Facetwright.evaluate(file.getFileName().toString(), source, dials, Budget.USUAL);
  }

  /** The design, with more to ask of it. */
  public WhatIf whatIf() throws IOException, Trouble.InScript {
    String source = source();
    String name = file.getFileName().toString();
    return ask(() -> WhatIf.of(name, source, dials(), Budget.USUAL));
  }

  /** A question to a script. */
  @FunctionalInterface
  public interface Question<T> {
    public T ask() throws ScriptException;
  }

  public <T> T ask(Question<T> question) throws Trouble.InScript {
    try {
      return question.ask();
    } catch (ScriptException e) {
      throw new Trouble.InScript(file.toString(), e);
    }
  }

  /** The script, and below it the files that it uses. */
  public String source() throws IOException {
    if (file.toString().isBlank()) {
      throw new Trouble.WrongCall("no file is named. See the library with: facetwright shelf");
    }
    try {
      if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
        throw new Trouble.WrongCall(
            file + " is a pipe or a device. Save the script in a file and name that.");
      }
      if (Files.isDirectory(file)) {
        throw new Trouble.WrongCall(file + " is a folder. Name a script in it.");
      }
      if (Files.size(file) > ScriptLength.MOST) {
        throw new Trouble.WrongCall(file + ScriptLength.WRONG + ". " + ScriptLength.REMEDY + ".");
      }
      return Beside.of(file, Library.folder())
          .whole(Files.readString(file, StandardCharsets.UTF_8));
    } catch (NoSuchFileException _) {
      throw new Trouble.WrongCall(
          "there is no file " + file + ". See the library with: facetwright shelf");
    } catch (CharacterCodingException _) {
      throw new Trouble.WrongCall(file + " is not text in UTF-8. Save it as UTF-8 and try again.");
    }
  }

  private Map<String, String> dials() {
    Map<String, String> dials = new LinkedHashMap<>();
    for (String setting : settings) {
      int equals = setting.indexOf('=');
      if (equals < 1) {
        throw new Trouble.WrongCall(
            "--set "
                + setting
                + " has no value. Write it as --set name=value, such as --set sides=10.");
      }
      dials.put(setting.substring(0, equals).strip(), setting.substring(equals + 1).strip());
    }
    return dials;
  }
}

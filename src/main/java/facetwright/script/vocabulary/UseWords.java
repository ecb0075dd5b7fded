package facetwright.script.vocabulary;

import static facetwright.script.api.Arg.needed;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Kinds;
import facetwright.script.api.Session;
import facetwright.script.sandbox.CallException;
import facetwright.script.text.FileNames;
import java.util.List;

/** The word by which a script takes what another file offers. */
final class UseWords {
  private UseWords() {}

  static List<Fn<Session>> all() {
    return List.of(use());
  }

  private static Fn<Session> use() {
    Arg<String> file =
        needed(
            "file", Kinds.text(), "its name, in quotes, such as \"tubs.js\"; of no other folder");
    return Fn.<Session>named("use")
        .does(
            "Takes what another file offers: the functions and constants that stand at its top. The"
                + " file lies beside the script or in the library, is read once, and plain numbers"
                + " in it count the script's unit. Dials, the sheet and the design's name belong"
                + " into the script. Below a line such as the one in the example a file may also"
                + " follow the script.")
        .takes(file)
        .returns("what the file offers, by name")
        .example(
            """
            design("Two tubs");
            const { tub } = use("tubs.js");
            tub("small", "30 mm");
            tub("large", "40 mm");
            // ======== gathered in: tubs.js ========
            function tub(part, side) {
              return prism({ sides: 6, side, height: side }).open("top").unfold({ part });
            }
            """)
        .runs(
            (_, call) -> {
              String name = call.get(file);
              FileNames.fault(name)
                  .ifPresent(
                      why -> {
                        throw new CallException(
                            "use: file: \"" + name + "\": " + why,
                            "Give file as " + FileNames.WANTED + ".");
                      });
              return name;
            });
  }
}

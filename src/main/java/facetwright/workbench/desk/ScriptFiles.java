package facetwright.workbench.desk;

import java.util.List;

/** The files that the script on the desk may use. */
public interface ScriptFiles {
  /** None at all. */
  ScriptFiles NONE =
      new ScriptFiles() {
        @Override
        public String whole(String script) {
          return script;
        }

        @Override
        public List<String> names() {
          return List.of();
        }
      };

  /** A script with the files that it uses below it. */
  String whole(String script);

  /** What they are called. */
  List<String> names();
}

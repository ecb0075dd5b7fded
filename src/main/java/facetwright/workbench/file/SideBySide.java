package facetwright.workbench.file;

/** Whoever shows two scripts side by side. */
@FunctionalInterface
public interface SideBySide {
  /**
   * Shows what was written here and what another program wrote into the file.
   *
   * @param name what the file is called
   * @param takeTheirs lays theirs on the desk
   * @param saveMine lets the user save theirs and mine apart
   */
  void show(String name, String mine, String theirs, Runnable takeTheirs, Runnable saveMine);
}

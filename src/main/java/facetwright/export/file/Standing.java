package facetwright.export.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a file is besides its contents, to be handed on to the file that replaces it. Where the
 * system knows no such rights there are none to hand on. Access lists and extended attributes are
 * not handed on.
 *
 * @param rights null where they stay as those of any new file
 * @param isToStay whether the file can't be replaced by another without losing a name or its owner,
 *     so that it has to be written in its own place
 */
record Standing(Set<PosixFilePermission> rights, boolean isToStay) {
  private static final int MOST_LINKS = 40;

  /** Where a name leads to in the end; the file need not be there. */
  static Path real(Path name) throws IOException {
    Path at = name;
    for (int i = 0; i < MOST_LINKS && Files.isSymbolicLink(at); i++) {
      at = at.resolveSibling(Files.readSymbolicLink(at));
    }
    return at;
  }

  /**
   * Makes a new, empty file ready to take the place of another; nobody may read it who may not read
   * the other.
   */
  static Standing before(Path part, Path place) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(place, PosixFileAttributeView.class);
    if (view == null || !Files.exists(place)) {
      return new Standing(null, false);
    }
    PosixFileAttributes old = view.readAttributes();
    boolean stay = names(place) > 1 || !own(part, old);
    Set<PosixFilePermission> meanwhile = EnumSet.of(PosixFilePermission.OWNER_WRITE);
    meanwhile.addAll(old.permissions());
    Files.setPosixFilePermissions(part, meanwhile);
    return new Standing(Set.copyOf(old.permissions()), stay);
  }

  /** Gives the file its rights once it is written. */
  void finish(Path part) throws IOException {
    if (rights != null) {
      Files.setPosixFilePermissions(part, rights);
    }
  }

  private static int names(Path place) throws IOException {
    return place.getFileSystem().supportedFileAttributeViews().contains("unix")
            && Files.getAttribute(place, "unix:nlink") instanceof Integer many
        ? many
        : 1;
  }

  /** Gives a file the owner and group of another; false where that is not allowed. */
  private static boolean own(Path part, PosixFileAttributes old) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(part, PosixFileAttributeView.class);
    PosixFileAttributes now = view.readAttributes();
    try {
      if (!now.owner().equals(old.owner())) {
        view.setOwner(old.owner());
      }
      if (!now.group().equals(old.group())) {
        view.setGroup(old.group());
      }
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}

package outshop.input;

/**
 * Where a thing stands in a user's file.
 *
 * @param file the file as the user named it
 * @param line counted from 1; 0 where the whole file is meant
 * @param column the character in the line, counted from 1; 0 where the whole line is meant
 * @param path what stands there, in the file's own terms: {@code row 12, column charge_volts} or
 *     {@code parts.receiver}
 */
public record Place(String file, int line, int column, String path) {

  /** The whole of a file. */
  public static Place whole(String file) {
    return new Place(file, 0, 0, "");
  }

  /** {@code file:line:column}, as far as they are known. */
  public String position() {
    if (line == 0) {
      return file;
    }
    return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}

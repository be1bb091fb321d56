package outshop.cli;

/** The exit codes, the same for every command. */
final class Exit {
  /** Nothing that counts was found. */
  static final int OK = 0;

  /** At least one violation; with {@code --strict} also a warning or something untold. */
  static final int FOUND = 1;

  /** The arguments or the files cannot be used. */
  static final int UNUSABLE = 2;

  /** A fault of the program itself. */
  static final int OWN_FAULT = 3;

  /** What the help says of them. */
  static final String[] WORDS = {
    "0  no violation (with --strict also: no warning, and everything could be told)",
    "1  at least one violation (with --strict also: a warning, or something that cannot be told)",
    "2  the arguments or the files cannot be used; the problems are listed",
    "3  a fault of the program itself"
  };

  private Exit() {}
}

package outshop.cli;

import outshop.input.UnusableInput;

/** One command of the program. */
interface Command {
  Spec spec();

  /**
   * Does it.
   *
   * @return the exit code
   */
  int run(Given given, Surroundings around) throws UsageFault, UnusableInput;
}

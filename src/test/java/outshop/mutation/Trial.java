package outshop.mutation;

/** A mutant and what became of it. */
record Trial(Mutant mutant, Fate fate) {
  boolean counts() {
    return fate != Fate.NOT_COMPILED;
  }

  boolean survived() {
    return fate == Fate.SURVIVED;
  }

  String family() {
    return mutant.rule().substring(0, mutant.rule().indexOf('/'));
  }
}

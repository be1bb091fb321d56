package outshop.sheets;

import outshop.units.Unit;

/** What a meter showed at a step. */
public sealed interface Reading {
  /** As a person reads it. */
  String text();

  /** The tester sounded. */
  record Joined() implements Reading {
    @Override
    public String text() {
      return "joined";
    }
  }

  /** The meter showed nothing: no continuity, or more ohms than it can show. */
  record Open() implements Reading {
    @Override
    public String text() {
      return "open";
    }
  }

  /** A value in its unit. */
  record Value(double value, Unit unit) implements Reading {
    @Override
    public String text() {
      return new Figure("reading", value, unit).text();
    }
  }
}

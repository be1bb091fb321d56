package outshop.plan;

import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.Amount;
import outshop.units.Said;

/**
 * A part as it is fitted: a catalogue part (or one written in the plan) under a name of the plan's
 * own. It does not change; what was once worked out from it is kept.
 */
public final class Fitted {
  private final String name;
  private final Part part;
  private final Place place;
  private final Map<String, Amount> amounts = new ConcurrentHashMap<>();
  private final Map<Class<?>, Object> derived = new ConcurrentHashMap<>(4);

  /**
   * A part under a name.
   *
   * @param name such as {@code receiver} or {@code speaker-left}; unique in a plan
   * @param place where the plan names it
   */
  public Fitted(String name, Part part, Place place) {
    this.name = name;
    this.part = part;
    this.place = place;
  }

  public String name() {
    return name;
  }

  public Part part() {
    return part;
  }

  public Place place() {
    return place;
  }

  public Kind kind() {
    return part.kind();
  }

  public boolean is(Kind kind) {
    return part.kind() == kind;
  }

  /**
   * Whether it is no thing of its own but a material named by its key, such as {@code wiring.wire}.
   */
  public boolean isMaterial() {
    return name.indexOf('.') >= 0;
  }

  /** The number in a column of the part, labelled with the name it has in the plan. */
  public Amount amount(String column) {
    Amount known = amounts.get(column);
    if (known == null) {
      known = part.amount(column, name);
      amounts.put(column, known);
    }
    return known;
  }

  /** The word in a column of the part. */
  public Said said(String column) {
    return part.said(column, name);
  }

  /** As {@link Part#isOpen}. */
  public boolean isOpen(String column) {
    return part.isOpen(column);
  }

  /** The words of a cell that may hold several. */
  public Set<String> several(String column) {
    return part.several(column);
  }

  /** Name and title, such as {@code receiver (radio receiver, 4 A)}. */
  public String described() {
    return name.equals(part.title()) ? name : name + " (" + part.title() + ")";
  }

  /**
   * What follows from this part alone, worked out once.
   *
   * @param make must give the same for the same part
   */
  public <T> T derived(Class<T> type, Function<Fitted, T> make) {
    Object kept = derived.get(type);
    if (kept == null) {
      kept = make.apply(this);
      derived.put(type, kept);
    }
    return type.cast(kept);
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Fitted that
            && name.equals(that.name)
            && part.equals(that.part)
            && place.equals(that.place));
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return "Fitted[" + name + ", " + part + ", " + place + "]";
  }
}

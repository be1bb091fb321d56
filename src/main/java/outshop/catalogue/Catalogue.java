package outshop.catalogue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Every part of a catalogue, by id. Ids are unique over all kinds. */
public final class Catalogue {
  private final Map<String, Part> byId;

  public Catalogue(Collection<Part> parts) {
    byId = new TreeMap<>();
    for (Part part : parts) {
      byId.put(part.id(), part);
    }
  }

  public Optional<Part> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** All parts in the order of their ids. */
  public Collection<Part> all() {
    return byId.values();
  }

  public List<Part> of(Kind kind) {
    List<Part> found = new ArrayList<>();
    for (Part part : byId.values()) {
      if (part.kind() == kind) {
        found.add(part);
      }
    }
    return found;
  }
}

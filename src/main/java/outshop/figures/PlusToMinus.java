package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.circuit.At;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.units.Origin;
import outshop.units.Said;

/**
 * Whether plus and minus of a pack or charger meet through conductors alone, in any state. Two
 * packs side by side, one of them turned round, meet through each other and count as well.
 *
 * @param parted {@code yes} if they never meet, {@code no} if they do, unsaid where a contact of
 *     the circuit is not known
 * @param through the way in few words
 * @param conductors the conductors of the way
 * @param when the first state in which they meet, in words
 */
public record PlusToMinus(At at, Said parted, String through, String conductors, String when) {
  private static final int MOST_NAMED = 2;

  static List<PlusToMinus> all(Bench bench, List<InState> states) {
    List<Device> packs = bench.circuit().devices(Device.Sort.PACK);
    List<PlusToMinus> all = new ArrayList<>();
    for (Device device : bench.circuit().devices()) {
      if (device.sort() == Device.Sort.PACK || device.sort() == Device.Sort.CHARGER) {
        PlusToMinus fact = of(bench, states, packs, device);
        if (device.sort() == Device.Sort.PACK || packs.isEmpty() || !fact.parted().isUnsaid()) {
          all.add(fact);
        }
      }
    }
    return all;
  }

  private static PlusToMinus of(
      Bench bench, List<InState> states, List<Device> packs, Device device) {
    for (InState in : states) {
      Optional<List<Link>> way = way(in.joins(), packs, device);
      boolean packsOwn = device.sort() == Device.Sort.CHARGER && anyShort(in.joins(), packs);
      if (way.isPresent() && !packsOwn) {
        List<String> words = way.get().stream().map(Reach::words).toList();
        return new PlusToMinus(
            Places.of(device),
            said("no", device),
            words.size() <= MOST_NAMED ? String.join(" and ", words) : words.size() + " conductors",
            String.join(", ", words),
            in.state().words());
      }
    }
    Said parted =
        bench.circuit().unknowns().stream()
            .filter(w -> w.what().equals("function") || w.what().equals("breaks"))
            .findFirst()
            .<Said>map(Said.Unsaid::new)
            .orElse(said("yes", device));
    return new PlusToMinus(Places.of(device), parted, "", "", "");
  }

  /** A short of a pack is the pack's; that it shorts the charger as well says nothing more. */
  private static boolean anyShort(Joins joins, List<Device> packs) {
    return packs.stream().anyMatch(pack -> way(joins, packs, pack).isPresent());
  }

  private static Said said(String word, Device device) {
    return new Said.Word(word, Origin.PLAN, device.name() + ": plus parted from minus");
  }

  private static Optional<List<Link>> way(Joins joins, List<Device> packs, Device device) {
    Optional<List<Link>> straight = joins.way(device.terminal("plus"), device.terminal("minus"));
    if (straight.isPresent() || device.sort() != Device.Sort.PACK) {
      return straight;
    }
    for (Device other : packs) {
      Optional<List<Link>> out = joins.way(device.terminal("plus"), other.terminal("minus"));
      Optional<List<Link>> back = joins.way(other.terminal("plus"), device.terminal("minus"));
      if (!other.equals(device) && out.isPresent() && back.isPresent()) {
        List<Link> loop = new ArrayList<>(out.get());
        loop.addAll(back.get());
        return Optional.of(loop);
      }
    }
    return Optional.empty();
  }
}

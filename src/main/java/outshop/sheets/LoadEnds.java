package outshop.sheets;

import java.util.List;
import java.util.Optional;
import outshop.circuit.Circuit;
import outshop.circuit.Device;

/**
 * Where the feed ends: the input of the receiver, or of the decoder where there is no receiver.
 *
 * @param device its name
 * @param plus the terminal that takes the pack's plus
 * @param minus the terminal that takes the pack's minus
 */
record LoadEnds(String device, String plus, String minus) {

  static Optional<LoadEnds> of(Circuit circuit) {
    Optional<Device> receiver = first(circuit.devices(Device.Sort.RECEIVER));
    if (receiver.isPresent()) {
      return receiver.map(r -> new LoadEnds(r.name(), r.terminal("in+"), r.terminal("in-")));
    }
    return first(circuit.devices(Device.Sort.DECODER))
        .map(d -> new LoadEnds(d.name(), d.terminal("in-a"), d.terminal("in-b")));
  }

  private static Optional<Device> first(List<Device> devices) {
    return devices.isEmpty() ? Optional.empty() : Optional.of(devices.get(0));
  }
}

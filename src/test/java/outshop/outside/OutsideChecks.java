package outshop.outside;

import java.util.List;
import java.util.stream.Stream;

/** Every check of the program against the world outside, area by area. */
final class OutsideChecks {
  private OutsideChecks() {}

  static List<OutsideCheck> all() {
    return Stream.of(
            WireChecks.all(),
            PackChecks.all(),
            FuseChecks.all(),
            ContactChecks.all(),
            ChargingChecks.all(),
            VoltageChecks.all(),
            LampChecks.all(),
            SoundChecks.all(),
            MotorChecks.all(),
            BatteryCircuits.all(),
            ResistorCircuits.all(),
            LoadCircuits.all(),
            HandCalculations.all())
        .flatMap(List::stream)
        .toList();
  }
}

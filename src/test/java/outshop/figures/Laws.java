package outshop.figures;

import java.util.Map;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Origin;

/** Laws and tables that only this package sees, for the checks against the world outside. */
public final class Laws {
  private Laws() {}

  /** Seconds for which a fuse's standard promises that it holds. */
  public static double fuseHoldsSeconds(String standard, double multiple) {
    return FuseGates.of(standard).orElseThrow().shortestSeconds(multiple);
  }

  /** Seconds after which a fuse's standard wants it open. */
  public static double fuseOpenSeconds(String standard, double multiple) {
    return FuseGates.of(standard).orElseThrow().longestSeconds(multiple);
  }

  /** A filament's current at a share of its rated volts, as a share of its rated current. */
  public static double filamentCurrent(double voltsShare) {
    return FilamentLaws.share(voltsShare, FilamentLaws.CURRENT);
  }

  /** The share of its rated volts at which a filament draws a share of its rated current. */
  public static double filamentVolts(double currentShare) {
    return FilamentLaws.voltsShare(currentShare);
  }

  /** By how much a switch's rating exceeds the current of a load: lamp, inductive, motor, ... */
  public static double switchFactor(double fullVolts, String load) {
    DcLoadFactors factors = DcLoadFactors.of(fullVolts);
    return switch (load) {
      case "lamp" -> factors.lamp();
      case "inductive" -> factors.inductive();
      case "motor" -> factors.motor();
      case "resistive" -> factors.resistive();
      default -> throw new IllegalArgumentException("no load \"" + load + "\"");
    };
  }

  /** Volts of a lithium-ion cell that holds a share of its charge. */
  public static double cellVolts(double chargeShare) {
    return ChargeCurve.volts(chargeShare);
  }

  /**
   * What one contact of a connector is taken to carry with so many loaded, where only the rating of
   * one alone is stated; as a share of that.
   */
  public static Amount.Known loadedContacts(int loaded) {
    Place place = Place.whole("trial");
    Part part =
        new Part(
            Kind.CONNECTOR,
            "connector",
            Map.of("contact_amps", 1.0),
            Map.of(),
            Map.of(),
            Origin.DATA_SHEET,
            place);
    return ContactFigures.rating(new Fitted("connector", part, place), loaded).get();
  }
}

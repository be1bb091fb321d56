package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Want;

/** Who commands whom: handset, receiver and decoder, and the link between them. */
final class ControlFigures {
  static final Pieces<ControlFigures> PIECES =
      new Pieces<>(
          ControlFigures::new,
          List.of(
              ControlFigures::outputs,
              figures -> RadioFigures.of(figures.bench),
              ControlFigures::programming,
              ControlFigures::chuffs,
              ControlFigures::functions));

  private final Bench bench;
  private final Plan plan;

  private ControlFigures(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private List<?> programming() {
    return plan.parts(Kind.DECODER).stream().map(d -> ProgrammingFigures.of(bench, d)).toList();
  }

  private List<ChuffTiming> chuffs() {
    return plan.parts(Kind.DECODER).stream()
        .flatMap(d -> chuff(d).map(s -> new ChuffTiming(Places.of(d), s)).stream())
        .toList();
  }

  private List<?> functions() {
    return plan.parts(Kind.HANDSET).stream().map(this::functions).toList();
  }

  private List<OutputMatch> outputs() {
    List<OutputMatch> matches = new ArrayList<>();
    List<Fitted> receivers = plan.parts(Kind.RECEIVER);
    if (receivers.isEmpty()) {
      return matches;
    }
    Joins joins = new Joins(bench.circuit(), bench.circuit().running());
    for (Device decoder : bench.circuit().devices(Device.Sort.DECODER)) {
      Ends inputs = new Ends(decoder.terminal("in-a"), decoder.terminal("in-b"));
      Optional<Fitted> feeding = feeding(receivers, joins, inputs);
      matches.add(
          new OutputMatch(
              Places.of(decoder),
              feeding.orElse(receivers.get(0)).name(),
              feeding
                  .map(r -> intoDecoder(r, decoder.part().orElseThrow()))
                  .orElse(Standing.of("not-fed"))));
    }
    for (Device motor : bench.circuit().devices(Device.Sort.MOTOR)) {
      Ends leads = new Ends(motor.terminal("plus"), motor.terminal("minus"));
      feeding(receivers, joins, leads)
          .ifPresent(r -> matches.add(new OutputMatch(Places.of(motor), r.name(), intoMotor(r))));
    }
    return matches;
  }

  /** The receiver whose two output leads reach both of these; either way round. */
  private static Optional<Fitted> feeding(List<Fitted> receivers, Joins joins, Ends load) {
    return receivers.stream()
        .filter(r -> new Ends(r.name() + ".out-a", r.name() + ".out-b").meet(joins, load))
        .findFirst();
  }

  /** A chopped motor drive is no DCC signal, and no direct current that a decoder could run on. */
  private static Standing intoDecoder(Fitted receiver, Fitted decoder) {
    Said output = receiver.said("output");
    if (output.is("motor-drive")) {
      return Standing.of("drive-into-decoder");
    }
    List<Want> wants = Standing.wants(output, decoder.said("accepts"));
    if (!wants.isEmpty()) {
      return Standing.open(wants);
    }
    return decoder.several("accepts").contains("dcc") ? Standing.FINE : Standing.of("not-dcc");
  }

  private static Standing intoMotor(Fitted receiver) {
    Said output = receiver.said("output");
    if (output.isUnsaid()) {
      return Standing.open(output);
    }
    return output.is("motor-drive") ? Standing.FINE : Standing.of("dcc-into-motor");
  }

  /** How a decoder's steam sound is timed; nothing where it makes none. */
  private Optional<Standing> chuff(Fitted decoder) {
    Said wish = plan.said("wishes.sound");
    Said sound = decoder.said("sound");
    boolean maySteam =
        decoder.several("sounds").isEmpty() || decoder.several("sounds").contains("steam");
    if (sound.is("no") || wish.isNot("steam") || (wish.isUnsaid() && !maySteam)) {
      return Optional.empty();
    }
    Said motor = decoder.said("chuff_from_motor");
    Said input = decoder.said("chuff_input");
    if (motor.is("yes")) {
      return Optional.of(Standing.FINE);
    }
    List<Want> wants = Standing.wants(wish, sound, motor);
    if (input.isUnsaid()) {
      wants.addAll(Standing.wants(input));
    }
    if (!wants.isEmpty()) {
      return Optional.of(Standing.open(wants));
    }
    return Optional.of(Standing.of(input.is("yes") ? "sensor-needed" : "untimed"));
  }

  private HandsetFunctions functions(Fitted handset) {
    Amount wanted = plan.amount("wishes.functions");
    return new HandsetFunctions(
        Places.of(handset),
        wanted.isMissing() ? new Amount.Absent("functions") : wanted,
        handset.amount("functions_count"));
  }
}

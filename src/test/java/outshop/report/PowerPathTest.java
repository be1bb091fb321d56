package outshop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import outshop.acceptance.Sample;
import outshop.catalogue.Catalogue;
import outshop.circuit.Station;
import outshop.findings.Finding;

/** The power path is that of the circuit, not of a list. */
final class PowerPathTest {
  @Test
  void theLineFollowsTheCurrentFromThePack() {
    PowerPath path = demo("sallowmere-tank");
    assertThat(stations(path.line()))
        .containsExactly(
            Station.PACK,
            Station.FUSE,
            Station.JACK,
            Station.SWITCH,
            Station.RADIO,
            Station.DECODER);
    assertThat(stations(path.ends())).containsExactly(Station.MOTOR, Station.LIGHTS, Station.SOUND);
    assertThat(path.line()).allMatch(PowerPath.Stop::joined);
    assertThat(path.ends()).allMatch(PowerPath.Stop::joined);
  }

  @Test
  void theChargerJoinsAtTheJackThatTheLoadPasses() {
    PowerPath path = demo("sallowmere-tank");
    assertThat(stations(path.feed())).containsExactly(Station.CHARGER);
    assertThat(path.line().get(path.joins()).station()).isEqualTo(Station.JACK);
    assertThat(path.charges()).isTrue();
  }

  @Test
  void withAChangeoverSwitchTheJackLiesBeforeTheLine() {
    PowerPath path = demo("thistlewick-tender");
    assertThat(stations(path.feed())).containsExactly(Station.CHARGER, Station.JACK);
    assertThat(stations(path.line())).doesNotContain(Station.JACK);
    assertThat(path.line().get(path.joins()).station()).isEqualTo(Station.SWITCH);
    assertThat(path.charges()).isTrue();
  }

  @Test
  void aPackTakenOutMeetsItsChargerAtOnce() {
    PowerPath path = demo("hollowpit-shunter");
    assertThat(path.line().get(path.joins()).station()).isEqualTo(Station.PACK);
    assertThat(path.charges()).isTrue();
  }

  @Test
  void aFuseBehindTheJackStandsBehindIt() {
    List<Station> line = stations(demo("fuse-after-the-jack").line());
    assertThat(line.indexOf(Station.FUSE)).isGreaterThan(line.indexOf(Station.JACK));
  }

  @Test
  void aJackTheWrongWayDoesNotCharge() {
    assertThat(demo("jack-the-wrong-way").charges()).isFalse();
  }

  @Test
  void whatIsNotWiredStandsApart() {
    PowerPath path =
        path(
            """
            outshop_plan: 1
            parts:
              pack: {kind: pack}
              switch: {kind: switch, function: on-off}
              receiver: {kind: receiver}
            wiring:
              pattern: by-wire
              wires:
                - {from: pack.plus, to: receiver.in+, wire: {kind: wire, awg: 20 AWG}, length: 100 mm}
                - {from: pack.minus, to: receiver.in-, wire: {kind: wire, awg: 20 AWG}, length: 100 mm}
            """);
    assertThat(path.line())
        .filteredOn(stop -> !stop.fittings().isEmpty() && !stop.joined())
        .extracting(PowerPath.Stop::station)
        .containsExactly(Station.SWITCH);
    int apart = stations(path.line()).indexOf(Station.SWITCH);
    assertThat(path.goesOnAfter(apart)).isTrue();
  }

  @Test
  void nothingGoesOnBehindTheLastThatIsReached() {
    PowerPath path = path("outshop_plan: 1\nparts:\n  pack: {kind: pack}\n  r: {kind: receiver}\n");
    assertThat(stations(path.line())).contains(Station.PACK, Station.RADIO);
    assertThat(path.goesOnAfter(stations(path.line()).indexOf(Station.PACK))).isFalse();
  }

  @Test
  void everyFindingHasItsStationOnce() {
    for (Path plan : Sample.plans()) {
      Report report = Sample.report(plan);
      List<Station> stations = report.path().stations();
      assertThat(stations).doesNotHaveDuplicates();
      for (List<Finding> some : List.of(report.findings(), report.cannotTell(), report.fine())) {
        assertThat(stations).containsAll(some.stream().map(f -> f.at().station()).toList());
      }
    }
  }

  private static PowerPath demo(String name) {
    return Sample.report(Sample.FOLDER.resolve("plans").resolve(name + ".yaml")).path();
  }

  private static PowerPath path(String yaml) {
    byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
    return Sample.report(Sample.plan("plan.yaml", bytes, new Catalogue(List.of()))).path();
  }

  private static List<Station> stations(List<PowerPath.Stop> stops) {
    return stops.stream().map(PowerPath.Stop::station).toList();
  }
}

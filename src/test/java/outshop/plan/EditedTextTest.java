package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.Origin;

/** Edits to the text of a plan leave alone what they do not speak of. */
final class EditedTextTest {
  private static final Part FUSE =
      new Part(
          Kind.FUSE,
          "fuse-blade-3",
          Map.of(),
          Map.of(),
          Map.of(),
          Origin.DATA_SHEET,
          Place.whole("fuse.csv"));

  private static String edited(String text, Edit... edits) {
    return EditedText.of(text, List.of(edits)).orElseThrow();
  }

  @Test
  void aValueIsReplacedWhereItStands() {
    assertThat(
            edited(
                "wishes:\n  volume: 60 %  # loud enough\n  region: europe\n",
                new Edit.Measure("wishes.volume", 0.4)))
        .isEqualTo("wishes:\n  volume: 40 %  # loud enough\n  region: europe\n");
  }

  @Test
  void aKeyThatIsNotThereIsAddedToItsSection() {
    assertThat(
            edited(
                "wishes:\n  volume: 60 %\n\n# end\n", new Edit.Measure("wishes.speed_limit", 0.8)))
        .isEqualTo("wishes:\n  volume: 60 %\n  speed_limit: 80 %\n\n# end\n");
    assertThat(
            edited("wishes: {volume: 60 %} # all\n", new Edit.Measure("wishes.speed_limit", 0.8)))
        .isEqualTo("wishes: {volume: 60 %, speed_limit: 80 %} # all\n");
  }

  @Test
  void aSectionThatIsNotThereIsMade() {
    assertThat(edited("title: x\n", new Edit.Measure("wishes.speed_limit", 0.8)))
        .isEqualTo("title: x\nwishes: {speed_limit: 80 %}\n");
    assertThat(edited("title: x", new Edit.Measure("wishes.speed_limit", 0.8)))
        .isEqualTo("title: x\nwishes: {speed_limit: 80 %}");
    assertThat(edited("wishes:\ntitle: x\n", new Edit.Measure("wishes.speed_limit", 0.8)))
        .isEqualTo("wishes: {speed_limit: 80 %}\ntitle: x\n");
  }

  @Test
  void aPartWrittenOutGivesWayToOneOfTheCatalogue() {
    String text =
        """
        parts:
          fuse:
            kind: fuse # my own
            rated_amps: 4 A
            # where it is
            grommet: yes
          switch: s
        """;
    assertThat(edited(text, new Edit.Fit("parts.fuse", FUSE)))
        .isEqualTo(
            """
            parts:
              fuse:
                part: fuse-blade-3 # my own
                # where it is
                grommet: yes
              switch: s
            """);
  }

  @Test
  void aBareIdBecomesASectionWhereMoreIsSaidOfIt() {
    assertThat(
            edited(
                "parts:\n  pack: my-pack # old\n",
                new Edit.Say("parts.pack.bay", List.of("cab")),
                new Edit.Adjust("parts.pack", Kind.PACK, Map.of("capacity_ah", 2.5))))
        .isEqualTo("parts:\n  pack: {part: my-pack, bay: cab, capacity_ah: 2.5 Ah} # old\n");
  }

  @Test
  void rowsGoAndCome() {
    String text =
        """
        wiring:
          wires:
            - {from: pack.plus, to: fuse.a} # first
            # then
            - from: fuse.b
              to: jack.pin
          feed: 1 m
        """;
    assertThat(edited(text, new Edit.Drop("wiring.wires.1")))
        .isEqualTo(text.replace("    - {from: pack.plus, to: fuse.a} # first\n", ""));
    assertThat(edited(text, new Edit.Wire("a.b", "c.d", Optional.empty(), Optional.of(0.05))))
        .isEqualTo(
            text.replace(
                "      to: jack.pin\n",
                "      to: jack.pin\n    - {from: a.b, to: c.d, length: 50 mm}\n"));
    assertThat(edited(text, new Edit.Drop("wiring.wires.2"), new Edit.Drop("wiring.wires.1")))
        .isEqualTo("wiring:\n  wires:\n      []\n    # then\n  feed: 1 m\n");
  }

  @Test
  void lineEndsAndTheByteOrderMarkStay() {
    assertThat(
            edited(
                "\ufeffwishes:\r\n  volume: 60 %\r\n", new Edit.Measure("wishes.speed_limit", 0.8)))
        .isEqualTo("\ufeffwishes:\r\n  volume: 60 %\r\n  speed_limit: 80 %\r\n");
  }

  @Test
  void quotedAndForeignTextsAreFollowed() {
    assertThat(
            edited(
                "title: 'it''s # no: comment'\nparts: {\"fuse\" : \"fu}se\", x: 'a, b'}\n",
                new Edit.Fit("parts.fuse", FUSE)))
        .isEqualTo("title: 'it''s # no: comment'\nparts: {\"fuse\" : fuse-blade-3, x: 'a, b'}\n");
    assertThat(edited("parts: {Sicherung-ä: 😀, fuse: alt} # 😀\n", new Edit.Drop("parts.fuse")))
        .isEqualTo("parts: {Sicherung-ä: 😀} # 😀\n");
  }

  @Test
  void whatCannotBeFollowedIsRefused() {
    assertThat(EditedText.of("title: one\n  two\n", List.of(new Edit.Say("title", List.of("x")))))
        .isEmpty();
    assertThat(EditedText.of("title: |\n  one\n", List.of(new Edit.Say("title", List.of("x")))))
        .isEmpty();
    assertThat(EditedText.of("a: [", List.of(new Edit.Drop("a")))).isEmpty();
    assertThat(EditedText.of("parts: &x {a: b}\n", List.of(new Edit.Drop("parts.a")))).isEmpty();
  }

  @Test
  void whatIsNotThereCannotGoAndNothingChanges() {
    assertThat(edited("title: x\n", new Edit.Drop("wishes.volume"))).isEqualTo("title: x\n");
  }

  @Test
  void aTextThatWouldBeReadOtherwiseIsQuoted() {
    assertThat(YamlText.scalar("5 A")).isEqualTo("5 A");
    assertThat(YamlText.scalar("receiver.in+")).isEqualTo("receiver.in+");
    assertThat(YamlText.scalar("it's: #1")).isEqualTo("'it''s: #1'");
    assertThat(YamlText.scalar("- x")).isEqualTo("'- x'");
    assertThat(YamlText.scalar("")).isEqualTo("''");
  }
}

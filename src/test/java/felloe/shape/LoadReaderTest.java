package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.plate.LoadWish;
import felloe.plate.Plate;
import felloe.yaml.Sets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a shape file says of loads. */
class LoadReaderTest {

  private static Plate read(String load) {
    String text =
        """
        felloe: 1
        outline: {round: {diameter: 300}}
        stock: {material: aluminium-6082-t6, thickness: 5}
        """
            + load;
    return ShapeFile.parse("godwit.yaml", text, Sets.of(), Hubs.TWO);
  }

  private static void refused(String load, String... lines) {
    BadInput bad = assertThrows(BadInput.class, () -> read(load));
    assertEquals(List.of(lines), bad.lines());
  }

  @Test
  void withoutABlockNothingIsWished() {
    assertEquals(LoadWish.NONE, read("").load());
  }

  @Test
  void aCaseIsReadWithItsUnitsAndPlace() {
    LoadWish load =
        read("load: {cases: [{name: pull, at: [14 cm, 0], force: [0, -0.2 kN, 400]}]}\n").load();
    LoadWish.Force force = load.cases().get(0).forces().get(0);
    assertEquals(140, force.at().orElseThrow().x(), 1e-12);
    assertEquals(-200, force.y(), 1e-12);
    assertEquals(400, force.z(), 1e-12);
    assertEquals("load.cases[0].at", force.path());
    assertEquals(4, force.place().line());
    assertTrue(load.cases().get(0).patch().isEmpty());
  }

  @Test
  void aClockPositionIsADirection() {
    LoadWish load = read("load: {cases: [{name: a, clock: 10.5, force: [0, 0, 1]}]}\n").load();
    assertEquals(135, load.cases().get(0).forces().get(0).clock().orElseThrow(), 1e-12);
  }

  @Test
  void badFiguresAreToldTogether() {
    refused(
        "load: {support: glue, clamp_diameter: 0, factor: 0.5, margin: -1, deflection: 101}\n",
        "godwit.yaml:4:17 load.support: 'glue' must be one of clamped, bolts",
        "godwit.yaml:4:39 load.clamp_diameter: '0' must be more than 0 mm",
        "godwit.yaml:4:50 load.factor: '0.5' must be at least 1",
        "godwit.yaml:4:63 load.margin: '-1' must be at least 0",
        "godwit.yaml:4:79 load.deflection: '101' must be at most 100 mm");
  }

  @Test
  void badCasesAreToldTogether() {
    refused(
        """
        load:
          cases:
            - {name: Pull!, at: [1, 2], force: [0, 0, 1]}
            - {name: a, force: [0, 0, 1]}
            - {name: b, at: [1, 2], clock: 3, force: [0, 0, 1]}
            - {name: c, at: [1, 2], force: [0, 0]}
            - {name: d, at: [1, 2], force: [0, 0, 0]}
            - {name: e, at: [1, 2], force: [0, 0, 100.1 kN]}
            - {name: f, at: [1, 2], force: [0, 0, .inf]}
            - {name: g, at: [1, 2], forces: [{at: [1, 2], force: [1, 0, 0]}]}
            - {name: h, forces: []}
            - {name: i, at: [1, 2]}
            - {name: j, at: [1, 2], force: [1, 0, 0], patch: 201}
        """,
        "godwit.yaml:6:14 load.cases[0].name: 'Pull!' must be of small letters, digits, dots and"
            + " hyphens, at most 40; rename it",
        "godwit.yaml:7:7 load.cases[1]: must have one of at, clock; add one of them",
        "godwit.yaml:8:29 load.cases[2].clock: cannot stand beside at; keep one of at, clock",
        "godwit.yaml:9:36 load.cases[3].force: must have 3 items, but has 2",
        "godwit.yaml:10:36 load.cases[4].force: must not be zero; write [x, y, z] in N, z toward"
            + " the driver",
        "godwit.yaml:11:43 load.cases[5].force[2]: '100.1 kN' must be at most 100000 N",
        "godwit.yaml:12:43 load.cases[6].force[2]: '.inf' must be a finite number; write a force"
            + " such as 412 N, 1.2 kN or a hung mass such as 5 kg",
        "godwit.yaml:13:21 load.cases[7].at: cannot stand beside forces; put it into one of them",
        "godwit.yaml:14:25 load.cases[8].forces: must have 1 to 20 items, but has 0",
        "godwit.yaml:15:7 load.cases[9].force: is missing; add 'force:' with a list of 3 items",
        "godwit.yaml:16:54 load.cases[10].patch: '201' must be at most 200 mm");
  }

  @Test
  void twoCasesOfOneNameAreRefused() {
    refused(
        "load: {cases: [{name: a, clock: 3, force: [1, 0, 0]}, {name: a, clock: 9, force: [1, 0,"
            + " 0]}]}\n",
        "godwit.yaml:4:15 load.cases: has two cases named 'a'; rename one of them");
  }

  @Test
  void tooManyCasesAreRefused() {
    String one = "{name: a, clock: 3, force: [1, 0, 0]}";
    refused(
        "load: {cases: [" + String.join(", ", java.util.Collections.nCopies(101, one)) + "]}\n",
        "godwit.yaml:4:15 load.cases: must have at most 100 items, but has 101");
  }
}

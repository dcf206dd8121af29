package felloe.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.grips.GripPlan;
import felloe.hub.HubCatalogue;
import felloe.plate.Plate;
import felloe.plate.WindowUse;
import felloe.review.RimHold.Hold;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a hand closes about a rim, on plates of which that is plain. */
class RimHoldTest {

  private static List<RimHold> along(Plate plate) {
    return RimHold.along(plate, GripPlan.of(plate));
  }

  private static Plate shape(String name, String... sets) {
    return ShapeFile.read(Path.of("shapes", name + ".yaml"), Sets.of(sets), HubCatalogue.here());
  }

  private static Plate plate(Contour outline) {
    return new Wheel().outline(outline).plate();
  }

  @Test
  void aWholeDiscHasNothingToHoldAllRound() {
    List<RimHold> all = along(plate(Contour.circle(Point.ORIGIN, 150)));
    assertEquals(1, all.size());
    assertEquals(Hold.THICK, all.get(0).hold());
    assertEquals(all.get(0).from(), all.get(0).to());
    assertEquals(2 * Math.PI * 150, all.get(0).length(), 3);
  }

  /** A flat bar is held along both sides, and not at its ends. */
  @Test
  void aBarIsHeldAlongItsSides() {
    List<RimHold> all = along(plate(Contour.rectangle(new Box(-150, -15, 150, 15))));
    List<RimHold> held = all.stream().filter(rim -> rim.hold() == Hold.HELD).toList();
    assertEquals(2, held.size());
    held.forEach(rim -> assertEquals(300, rim.length(), 5));
  }

  /** Three windows between three spokes: as many holds, as many spokes without one. */
  @Test
  void aRimIsHeldBetweenItsSpokesOnly() {
    List<RimHold> all = along(shape("dunlin"));
    assertEquals(6, all.size());
    for (int i = 0; i < 6; i++) {
      assertEquals(i % 2 == 0 ? Hold.HELD : Hold.THICK, all.get(i).hold());
    }
    // Dunlin's spokes stand at 10, 2 and 6 o'clock; its holds are as long as they are alike.
    assertEquals(all.get(0).length(), all.get(2).length(), 4);
    assertEquals(all.get(0).length(), all.get(4).length(), 4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "bittern", "dunlin", "avocet"})
  void stretchesFollowEachOtherAndHoldsAreLongEnoughForFourFingers(String name) {
    Plate plate = shape(name);
    List<RimHold> all = along(plate);
    for (int i = 0; i < all.size(); i++) {
      RimHold here = all.get(i);
      assertEquals(here.to(), all.get((i + 1) % all.size()).from(), 1e-12, name);
      if (here.hold() == Hold.HELD) {
        assertTrue(here.length() + 25 >= 95, name + ": " + here);
        // The edge in the middle of a hold has a grip window behind it, a rim's width away.
        double turned = Math.IEEEremainder(here.from() - here.to(), 2 * Math.PI);
        double middle = here.to() + (turned < 0 ? turned + 2 * Math.PI : turned) / 2;
        Point edge = new ArcLengthIndex(plate.outline()).outermost(middle).orElseThrow();
        double near =
            plate.windows().stream()
                .filter(window -> window.use() == WindowUse.GRIP)
                .mapToDouble(window -> window.contour().distance(edge))
                .min()
                .orElseThrow();
        assertTrue(near < 50, name + ": " + here);
      }
    }
  }

  /** Heron's spokes stand at 9 and 3, dunlin's do not. */
  @Test
  void aHandAtASpokeHoldsNothing() {
    for (double direction : new double[] {0, Math.PI}) {
      assertTrue(along(shape("heron")).stream().noneMatch(rim -> rim.holds(direction)));
      assertTrue(along(shape("dunlin")).stream().anyMatch(rim -> rim.holds(direction)));
    }
    List<RimHold> top = along(shape("heron"));
    assertTrue(top.stream().anyMatch(rim -> rim.holds(Math.PI / 2)));
  }

  /** The review's limits are the measure: what they do not allow is no hold. */
  @Test
  void limitsOfTheShapeFileCountHereToo() {
    for (String limit :
        List.of(
            "limits.finger-length=600", "limits.grip-girth-most=30", "limits.finger-depth=200")) {
      List<RimHold> all = along(shape("dunlin", limit));
      assertEquals(1, all.size(), limit);
      assertTrue(all.get(0).hold() != Hold.HELD, limit);
    }
  }

  @Test
  void windowsForSwitchesAreNoHold() {
    Plate plate = shape("dunlin", "windows[0].use=open");
    List<RimHold> all = along(plate);
    assertEquals(1, all.size());
    assertEquals(Hold.NO_WINDOW, all.get(0).hold());
  }
}

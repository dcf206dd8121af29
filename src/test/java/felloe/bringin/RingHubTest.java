package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import felloe.out.ShapeText;
import felloe.plate.HubPattern;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A ring of six holes that was measured on a photo: circles of 70 mm and of 2.75 in, which are
 * 69.85, cannot be told apart on one (both are kept in the table of hubs).
 */
class RingHubTest {

  private static String text(double pitch) {
    List<Contour> contours = new ArrayList<>(List.of(Contour.circle(Point.ORIGIN, 140)));
    for (int i = 0; i < 6; i++) {
      Point at = Point.polar(pitch / 2, Math.toRadians(30 + 60 * i));
      contours.add(Contour.circle(at, 2.7));
    }
    List<Chain> chains = new ArrayList<>();
    for (Contour contour : contours) {
      List<Stroke> strokes = new ArrayList<>();
      for (Segment segment : contour.segments()) {
        strokes.add(new Stroke.Exact(segment));
      }
      chains.add(new Chain(strokes, DrawnAs.NOTHING));
    }
    Drawn drawn = new Drawn(chains, List.of(), List.of(), new Unsure(0.15, 0.2));
    Joining joined = Joining.of(drawn, BringIn.GAP, "wheel.jpg", Brought.ASKED);
    PlateOutline plate = PlateOutline.of(joined, drawn, BringIn.PHOTO, "wheel.jpg");
    List<HubPattern> hubs =
        new HubCatalogue(Path.of(".")).all().stream().map(HubSpec::pattern).toList();
    ShapeText.Wish wish =
        new ShapeText.Wish("dotterel", "wheel.jpg", BringIn.PHOTO, OptionalDouble.of(9));
    return ShapeText.of(plate, wish, hubs, 0);
  }

  @Test
  void theNearerHubIsTakenAndTheOtherNamed() {
    String metric = text(69.97);
    assertTrue(metric.contains("the hubs 6x70-m5, 6x69.85-10-32: which one is yours?"), metric);
    assertTrue(metric.contains("hub: 6x70-m5"), metric);
    String inches = text(69.88);
    assertTrue(inches.contains("the hubs 6x69.85-10-32, 6x70-m5: which one is yours?"), inches);
    assertTrue(inches.contains("hub: 6x69.85-10-32"), inches);
  }

  @Test
  void aHubThatAloneMatchesIsAskedFor() {
    String one = text(74.05);
    assertTrue(one.contains("those of the hub 6x74-m5: is it yours?"), one);
  }
}

package felloe.drilling;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.hub.HubCatalogue;
import felloe.hub.HubFit;
import felloe.plate.BoltCircle;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Stock;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plates with holes, and their plans. */
final class DrillPlates {

  private DrillPlates() {}

  static Hole hole(String label, HoleRole role, double x, double y, double diameter) {
    return new Hole(label, role, new Point(x, y), diameter, Place.BUILT_IN);
  }

  /** Bolt holes H1, H2 ... on a circle, the first straight up. */
  static List<Hole> ring(int count, double circle, double diameter) {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point at = Point.polar(circle / 2, Math.PI / 2 + 2 * Math.PI * i / count);
      holes.add(new Hole("H" + (i + 1), HoleRole.BOLT, at, diameter, Place.BUILT_IN));
    }
    return holes;
  }

  static Material material(String name, MaterialKind kind) {
    return new Material(name, name, kind, 1.5, "test");
  }

  /** A disc of 2 m, 5 mm thick, with holes. */
  static Plate plate(List<Hole> holes, Material material) {
    return new Plate(
        "dunlin",
        "Dunlin",
        "1f2e3d4c",
        Contour.circle(Point.ORIGIN, 1000),
        List.of(),
        holes,
        List.<BoltCircle>of(),
        Optional.empty(),
        new Stock(material, 5, Optional.empty(), Face.FRONT, Place.BUILT_IN),
        new Making(6, 2, 0),
        List.of(),
        List.of());
  }

  static DrillingPlan plan(List<Hole> holes, Material material) {
    return DrillingPlan.of(plate(holes, material), Optional.empty());
  }

  static DrillingPlan plan(List<Hole> holes, Material material, String hub) {
    Plate plate = plate(holes, material);
    return DrillingPlan.of(
        plate, Optional.of(HubFit.of(plate, HubCatalogue.here().spec(hub, Place.BUILT_IN))));
  }

  /** The plan of a demo shape with the hub that it names, some values of it set. */
  static DrillingPlan demo(String name, String... sets) {
    Plate plate =
        ShapeFile.read(Path.of("shapes", name + ".yaml"), Sets.of(sets), HubCatalogue.here());
    return DrillingPlan.of(
        plate,
        plate.hub().map(hub -> HubFit.of(plate, HubCatalogue.here().spec(hub, Place.BUILT_IN))));
  }
}

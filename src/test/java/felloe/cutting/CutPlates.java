package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.Region;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Stock;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import felloe.shape.Materials;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plain plates for the tests of this room. */
final class CutPlates {

  static final Material CARBON = Materials.builtIn().find("carbon-laminate").orElseThrow();
  static final Material PLYWOOD = material("birch-plywood", MaterialKind.WOOD);
  static final Material ALUMINIUM = material("aluminium-6082-t6", MaterialKind.METAL);

  private CutPlates() {}

  static Material material(String name, MaterialKind kind) {
    return new Material(name, name, kind, 1.5, "for the test");
  }

  static Plate of(Contour outline, Contour... windows) {
    return of(PLYWOOD, 6, outline, List.of(), windows);
  }

  static Plate of(
      Material material, double thickness, Contour outline, List<Hole> holes, Contour... windows) {
    List<Window> openings = new ArrayList<>();
    for (Contour window : windows) {
      String label = "W" + (openings.size() + 1);
      openings.add(
          new Window(label, WindowUse.OPEN, window, Place.of("ruff.yaml", openings.size() + 9, 3)));
    }
    return new Plate(
        "ruff",
        "Ruff",
        "0badcafe",
        outline,
        openings,
        holes,
        List.of(),
        Optional.empty(),
        new Stock(material, thickness, Optional.empty(), Face.FRONT, Place.of("ruff.yaml", 2, 1)),
        new Making(6, 2, 0),
        List.of(),
        List.of());
  }

  static double area(List<LeftOver> leftOvers) {
    return areaOf(leftOvers.stream().map(LeftOver::region).toList());
  }

  static double areaOf(List<Region> regions) {
    return regions.stream().mapToDouble(region -> region.properties().area()).sum();
  }
}

package felloe.layup;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.FibreKind;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.LayupWish;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Prices;
import felloe.plate.Requested;
import felloe.plate.Stock;
import felloe.plate.Window;
import java.util.List;
import java.util.Optional;

/** Plates and wishes for the tests of this room. */
final class LayupPlates {

  static final Place PLACE = Place.of("ruff.yaml", 7, 3);
  static final MaterialBook BOOK = MaterialBook.builtIn();

  private LayupPlates() {}

  static Plate plate(Contour outline, double thickness, Contour... holes) {
    List<Hole> round =
        List.of(holes).stream()
            .map(
                hole ->
                    new Hole("B", HoleRole.BORE, hole.box().centre(), hole.box().width(), PLACE))
            .toList();
    return new Plate(
        "ruff",
        "Ruff",
        "0badcafe",
        outline,
        List.<Window>of(),
        round,
        List.of(),
        Optional.empty(),
        new Stock(
            new Material(
                "carbon-laminate",
                "carbon-laminate",
                MaterialKind.LAMINATE,
                1.44,
                "for the test",
                Optional.of(FibreKind.CARBON),
                true),
            thickness,
            Optional.empty(),
            Face.FRONT,
            PLACE),
        new Making(4, 2, 0),
        List.of(),
        List.of());
  }

  static Plate disc(double diameter, double thickness) {
    return plate(Contour.circle(Point.ORIGIN, diameter / 2), thickness);
  }

  static Material material(String name, MaterialKind kind, double density) {
    return new Material(name, name, kind, density, "for the test");
  }

  static Optional<Material> materials(String name) {
    return switch (name) {
      case "carbon-epoxy-sheet" -> Optional.of(material(name, MaterialKind.LAMINATE, 1.5));
      case "glass-epoxy-sheet" -> Optional.of(material(name, MaterialKind.LAMINATE, 1.85));
      case "birch-plywood" -> Optional.of(material(name, MaterialKind.WOOD, 0.68));
      case "aluminium-7075-t6" -> Optional.of(material(name, MaterialKind.METAL, 2.81));
      default ->
          name.startsWith("aluminium")
              ? Optional.of(material(name, MaterialKind.METAL, 2.7))
              : Optional.empty();
    };
  }

  static LayupPlan plan(Plate plate, LayupWish wish) {
    return LayupPlan.of(plate, wish, BOOK, LayupPlates::materials);
  }

  static Wish wish() {
    return new Wish(LayupWish.NONE);
  }

  /** A wish put together piece by piece. */
  record Wish(LayupWish value) {
    Wish plies(int plies) {
      return new Wish(
          with(
              Optional.of(new Requested<>(plies, PLACE)),
              Optional.empty(),
              value.fraction(),
              value.panel()));
    }

    Wish angles(Double... angles) {
      return new Wish(
          with(
              Optional.empty(),
              Optional.of(new Requested<>(List.of(angles), PLACE)),
              value.fraction(),
              value.panel()));
    }

    Wish fraction(double fraction) {
      return new Wish(
          with(
              value.plies(),
              value.angles(),
              Optional.of(new Requested<>(fraction, PLACE)),
              Optional.empty()));
    }

    Wish panel(double thickness, int plies) {
      LayupWish.Panel panel = new LayupWish.Panel(thickness, plies);
      return new Wish(
          with(
              value.plies(),
              value.angles(),
              Optional.empty(),
              Optional.of(new Requested<>(panel, PLACE))));
    }

    private LayupWish with(
        Optional<Requested<Integer>> plies,
        Optional<Requested<List<Double>>> angles,
        Optional<Requested<Double>> fraction,
        Optional<Requested<LayupWish.Panel>> panel) {
      return new LayupWish(
          value.cloth(),
          value.process(),
          value.resin(),
          plies,
          angles,
          fraction,
          panel,
          value.temperature(),
          value.rollWidth(),
          value.margin(),
          value.pieces(),
          value.strips(),
          value.scale(),
          value.prices());
    }

    Wish named(String cloth, String process, String resin) {
      LayupWish names =
          new LayupWish(
              wished(cloth),
              wished(process),
              wished(resin),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Prices.NONE);
      return new Wish(names.over(value));
    }

    Wish shop(Double temperature, Double rollWidth, Double margin, Integer strips, Double scale) {
      LayupWish figures =
          new LayupWish(
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              wished(temperature),
              wished(rollWidth),
              wished(margin),
              Optional.empty(),
              wished(strips),
              wished(scale),
              Prices.NONE);
      return new Wish(figures.over(value));
    }

    Wish pieces(LayupWish.Pieces pieces) {
      LayupWish figures =
          new LayupWish(
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              wished(pieces),
              Optional.empty(),
              Optional.empty(),
              Prices.NONE);
      return new Wish(figures.over(value));
    }

    Wish prices(Prices prices) {
      LayupWish figures =
          new LayupWish(
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              prices);
      return new Wish(figures.over(value));
    }

    private static <T> Optional<Requested<T>> wished(T value) {
      return Optional.ofNullable(value).map(v -> new Requested<>(v, PLACE));
    }
  }
}

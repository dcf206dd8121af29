package felloe.laminate;

import felloe.geometry.Numbers;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Reads plies. What the group {@code ply} says holds for every ply that does not say it itself; it
 * is read once, so that what is wrong with it is told once.
 */
final class PlyReader {

  // Softer than any foam, and far stiffer than diamond: beyond, the unit is wrong.
  private static final double SOFTEST = 1;
  private static final double STIFFEST = 2e6;

  private final Figures shared;

  private PlyReader(Figures shared) {
    this.shared = shared;
  }

  /** A reader that knows what the file's group {@code ply} says. */
  static PlyReader of(Fields file) {
    Fields group = file.group("ply");
    Figures shared = new Figures(group);
    shared.checkRatio(group);
    group.done();
    return new PlyReader(shared);
  }

  /** A ply; empty when something about it is wrong. */
  Optional<Ply> ply(Fields f) {
    Figures own = new Figures(f);
    boolean ownElastic = f.has("E1") || f.has("E2") || f.has("nu12");
    own.fillFrom(shared);
    own.reportMissing(f);
    if (ownElastic) {
      own.checkRatio(f);
    }
    return f.done() && own.whole() ? Optional.of(own.ply()) : Optional.empty();
  }

  /** What a group says of a ply; what it does not say is missing. */
  private static final class Figures {

    private static final String[] KEYS = {"E1", "E2", "nu12", "G12", "thickness", "angle"};

    private final Map<String, Double> figures = new TreeMap<>();
    private Optional<PlyStrength> strength;
    private Optional<StrainLimits> strain;
    private Optional<PlyExpansion> expansion;

    Figures(Fields f) {
      put(f, "E1", modulus(f, "E1"));
      put(f, "E2", modulus(f, "E2"));
      put(f, "nu12", f.number("nu12").between(-10, 10).optional());
      put(f, "G12", modulus(f, "G12"));
      put(f, "thickness", f.length("thickness").atLeast(0.001).atMost(100).optional());
      put(f, "angle", f.angle("angle").optional());
      strength = f.mapping("strength").optional().flatMap(Figures::strength);
      strain = f.mapping("strain").optional().flatMap(Figures::strain);
      expansion = f.mapping("expansion").optional().flatMap(Figures::expansion);
    }

    /** A figure that is wrong stays known as NaN, so that it is not told to be missing as well. */
    private void put(Fields f, String key, OptionalDouble value) {
      if (f.has(key)) {
        figures.put(key, value.orElse(Double.NaN));
      }
    }

    void fillFrom(Figures shared) {
      shared.figures.forEach(figures::putIfAbsent);
      strength = strength.or(() -> shared.strength);
      strain = strain.or(() -> shared.strain);
      expansion = expansion.or(() -> shared.expansion);
    }

    void reportMissing(Fields f) {
      for (String key : KEYS) {
        if (!figures.containsKey(key)) {
          Entry entry = f.entry(key);
          switch (key) {
            case "thickness" -> entry.length().required();
            case "angle" -> entry.angle().required();
            case "nu12" -> entry.number().required();
            default -> entry.stress().required();
          }
          figures.put(key, Double.NaN);
        }
      }
    }

    /** Reports a Poisson's ratio by which the sheet would give energy away when strained. */
    void checkRatio(Fields f) {
      double greatest = PlyMaterial.greatestNu12(figure("E1"), figure("E2"));
      if (Math.abs(figure("nu12")) >= greatest) {
        f.problem(
            "nu12",
            "must be less than "
                + Numbers.fixed(greatest, 3)
                + " here (sqrt(E1/E2); beyond, the ply would do work by itself)",
            "check E1, E2 and nu12; nu12 goes with a pull along the fibres");
        figures.put("nu12", Double.NaN);
      }
    }

    private double figure(String key) {
      return figures.getOrDefault(key, Double.NaN);
    }

    boolean whole() {
      double sum = 0;
      for (String key : KEYS) {
        sum += figure(key);
      }
      return !Double.isNaN(sum);
    }

    Ply ply() {
      PlyMaterial material =
          new PlyMaterial(
              figure("E1"),
              figure("E2"),
              figure("nu12"),
              figure("G12"),
              strength,
              strain,
              expansion);
      return new Ply(material, figure("thickness"), figure("angle"));
    }

    private static OptionalDouble modulus(Fields f, String key) {
      return f.stress(key)
          .atLeast(SOFTEST, "softer than any foam", "check the unit: 60 GPa, say")
          .atMost(STIFFEST, "stiffer than any fibre", "check the unit")
          .optional();
    }

    private static Optional<PlyStrength> strength(Fields f) {
      double xt = strength(f, "Xt");
      double xc = strength(f, "Xc");
      double yt = strength(f, "Yt");
      double yc = strength(f, "Yc");
      double s = strength(f, "S");
      return f.build(() -> new PlyStrength(xt, xc, yt, yc, s));
    }

    private static double strength(Fields f, String key) {
      return f.stress(key).atLeast(0.001).atMost(1e5).required();
    }

    private static Optional<StrainLimits> strain(Fields f) {
      double e1t = limit(f, "e1t");
      double e1c = limit(f, "e1c");
      double e2t = limit(f, "e2t");
      double e2c = limit(f, "e2c");
      double g12 = limit(f, "g12");
      return f.build(() -> new StrainLimits(e1t, e1c, e2t, e2c, g12));
    }

    private static double limit(Fields f, String key) {
      return f.number(key)
          .positive()
          .atMost(1, "a strain of 1 is 100 %", "write 1.2 % as 0.012")
          .required();
    }

    private static Optional<PlyExpansion> expansion(Fields f) {
      double along1 = f.number("along1").between(-0.001, 0.001).required();
      double along2 = f.number("along2").between(-0.001, 0.001).required();
      return f.build(() -> new PlyExpansion(along1, along2));
    }
  }
}

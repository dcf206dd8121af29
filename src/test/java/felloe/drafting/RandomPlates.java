package felloe.drafting;

import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Plates of all families by chance, from shape files made up of them: outlines of every family,
 * windows of every family, derived ones too, bolt circles, bores, rows of holes, slots.
 */
final class RandomPlates {

  private static final String STOCK =
      "stock:\n  material: birch-plywood\n  thickness: %\n"
          + "making: {cutter: 4, rough: 2, grip_scale: 0}\n";

  private final Random random;
  private double half;

  private RandomPlates(long seed) {
    this.random = new Random(seed);
  }

  /** The plate of a seed; what the reader refuses is drawn anew from the same source. */
  static Plate of(long seed) {
    RandomPlates plates = new RandomPlates(seed);
    while (true) {
      String text = plates.shape(seed);
      try {
        return Studies.plate(
            new ShapeSource.OfText("plover" + seed + ".yaml", text, Sets.of()), Path.of(""));
      } catch (BadInput refused) {
        // Features clash; the next draw is as good.
        continue;
      }
    }
  }

  private String shape(long seed) {
    half = between(60, 190);
    List<String> lines = new ArrayList<>();
    lines.add("felloe: 1\ntitle: Plover " + seed + "\noutline:");
    int family = random.nextInt(4);
    lines.add(outline(family));
    String windows = windows(family);
    if (!windows.isEmpty()) {
      lines.add("windows:\n" + windows.stripTrailing());
    }
    lines.add(rings().stripTrailing());
    String holes = holes();
    if (!holes.isEmpty()) {
      lines.add("holes:\n" + holes.stripTrailing());
    }
    lines.add(STOCK.replace("%", one("3", "5.6", "6", "9", "12.7")));
    return String.join("\n", lines.stream().filter(line -> !line.isBlank()).toList());
  }

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private String one(String... words) {
    return words[random.nextInt(words.length)];
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** A length as a maker writes it: whole, halves, tenths or hundredths. */
  private String mm(double length) {
    int decimals = random.nextInt(4) == 0 ? 2 : random.nextInt(2);
    return Numbers.brief(length, decimals);
  }

  private String at(double x, double y) {
    return "[" + mm(x) + ", " + mm(y) + "]";
  }

  private String outline(int family) {
    return switch (family) {
      case 0 -> round();
      case 1 -> fourSided();
      case 2 -> points();
      default -> path();
    };
  }

  private String round() {
    String text = "  round:\n    diameter: " + mm(2 * half);
    for (String side : List.of("bottom", "top")) {
      if (chance(0.3)) {
        text +=
            "\n    "
                + side
                + ": {distance: "
                + mm(half * between(0.75, 0.95))
                + ", radius: "
                + mm(half * between(0.05, 0.25))
                + "}";
      }
    }
    return text;
  }

  private String fourSided() {
    double height = half * between(0.9, 1.8);
    String text =
        "  four_sided: {width: "
            + mm(2 * half)
            + ", height: "
            + mm(height)
            + ", radius: "
            + mm(half * between(0.1, 0.4));
    if (chance(0.4)) {
      text += ", rise: {top: " + mm(between(1, 9)) + ", left: 4, right: 4}";
    }
    if (chance(0.3)) {
      text += ", centre: " + at(between(-9, 9), between(-20, 20));
    }
    return text + "}";
  }

  private String points() {
    double a = half * between(0.3, 0.5);
    double h = half * between(0.5, 0.8);
    return "  points:\n    half: true\n    corners:\n      - [0, "
        + mm(h)
        + "]\n      - {at: "
        + at(a, h)
        + ", radius: 6}\n      - {at: "
        + at(half, h * between(0.7, 1.2))
        + ", radius: "
        + mm(between(8, 20))
        + (chance(0.5) ? ", rise: 4" : "")
        + "}\n      - {at: "
        + at(half * between(0.85, 1), -h)
        + ", radius: "
        + mm(between(8, 30))
        + "}\n      - [0, "
        + mm(-h * between(1, 1.1))
        + "]";
  }

  private String path() {
    String w = mm(half);
    String h = mm(half * between(0.5, 0.9));
    String c = mm(half * between(0.5, 0.8));
    return "  path: M 0,-"
        + h
        + " C "
        + c
        + ",-"
        + h
        + " "
        + w
        + ",-"
        + c
        + " "
        + w
        + ",0 C "
        + w
        + ","
        + c
        + " "
        + c
        + ","
        + h
        + " 0,"
        + h
        + " C -"
        + c
        + ","
        + h
        + " -"
        + w
        + ","
        + c
        + " -"
        + w
        + ",0 C -"
        + w
        + ",-"
        + c
        + " -"
        + c
        + ",-"
        + h
        + " 0,-"
        + h
        + " Z";
  }

  private String windows(int family) {
    if (family < 2 && chance(0.5)) {
      return derived();
    }
    StringBuilder text = new StringBuilder();
    int kinds = random.nextInt(4);
    for (int i = 0; i < kinds; i++) {
      // One large window beside the hub, or up to three small ones above each other.
      double size = half * (kinds == 1 ? between(0.2, 0.5) : between(0.08, 0.25));
      double y = half * (kinds == 1 ? between(-0.1, 0.1) : 0.35 * (i - 1) + between(0, 0.05));
      boolean middle = chance(0.15);
      text.append("  - {").append(window(size));
      text.append(", at: ").append(at(middle ? 0 : half * between(0.5, 0.7), y));
      text.append(chance(0.2) ? ", turn: " + mm(between(-40, 40)) : "");
      text.append(!middle && chance(0.6) ? ", mirror: true" : "").append("}\n");
    }
    return text.toString();
  }

  private String window(double size) {
    String s = mm(size);
    return switch (random.nextInt(6)) {
      case 0 -> "circle: {diameter: " + s + "}";
      case 1 -> "slot: {length: " + s + ", width: " + mm(size * between(0.2, 0.6)) + "}";
      case 2 -> "round: {diameter: " + s + ", top: {distance: " + mm(size * 0.4) + ", radius: 2}}";
      case 3 -> "points: {corners: [[0, " + s + "], [-" + mm(0.4 * size) + ", 0], [5, -3]]}";
      case 4 ->
          "four_sided: {width: " + s + ", height: " + mm(size * 1.3) + ", radius: 4, rise: 2}";
      default ->
          "rectangle: {width: "
              + s
              + ", height: "
              + mm(size * between(0.5, 1.8))
              + ", radius: "
              + one("0", "2", "3.5")
              + "}";
    };
  }

  private String derived() {
    StringBuilder spokes = new StringBuilder();
    int count = 2 + random.nextInt(4);
    double first = chance(0.5) ? 0 : between(0, 12.0 / count);
    for (int i = 0; i < count; i++) {
      String clock = Numbers.brief((first + 12.0 * i / count) % 12, 2);
      spokes
          .append("        - {clock: ")
          .append(clock)
          .append(", hub_width: ")
          .append(mm(half * 0.3))
          .append(", rim_width: ")
          .append(mm(half * (chance(0.3) ? 0.3 : 0.2)))
          .append("}\n");
    }
    return "  - derived:\n      rim_width: "
        + mm(half * between(0.15, 0.3))
        + "\n      hub_disc: "
        + mm(half * between(0.6, 0.9))
        + "\n      radius: "
        + one("3", "8", "10")
        + "\n      spokes:\n"
        + spokes;
  }

  private String rings() {
    double pitch = half * between(0.3, 0.55);
    StringBuilder text = new StringBuilder();
    if (chance(0.8)) {
      text.append("bolt_circles:\n  - {count: ").append(2 + random.nextInt(7));
      text.append(", pcd: ").append(mm(pitch)).append(", diameter: ").append(mm(between(3, 7)));
      text.append(", first: ").append(one("0", "30", "90", "17.5", "45")).append("}\n");
    }
    if (chance(0.6)) {
      text.append("bore: ").append(mm(pitch * between(0.3, 0.6))).append('\n');
    }
    return text.toString();
  }

  private String holes() {
    StringBuilder text = new StringBuilder();
    if (chance(0.4)) {
      text.append("  - {edge: {inset: 9, from: 1, to: 2.5, count: ").append(2 + random.nextInt(3));
      text.append("}, diameter: 4.3, role: grip, mirror: true}\n");
    }
    int single = random.nextInt(4);
    for (int i = 0; i < single; i++) {
      text.append("  - {at: ").append(at(half * between(-0.8, 0.8), half * between(-0.8, 0.8)));
      text.append(", diameter: ").append(mm(between(3, 9)));
      text.append(chance(0.2) ? ", slot: {length: 14, turn: " + mm(between(0, 90)) + "}" : "");
      text.append(chance(0.3) ? ", mirror: true" : "").append("}\n");
    }
    return text.toString();
  }
}

package felloe.drawing;

import felloe.geometry.Numbers;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Papers that a template can be printed on, upright. Sizes in millimetres. */
public enum Paper {
  /** 841 x 1189 mm. */
  A0("A0", 841, 1189, Basis.ISO),
  /** 594 x 841 mm. */
  A1("A1", 594, 841, Basis.ISO),
  /** 420 x 594 mm. */
  A2("A2", 420, 594, Basis.ISO),
  /** 297 x 420 mm. */
  A3("A3", 297, 420, Basis.ISO),
  /** 210 x 297 mm. */
  A4("A4", 210, 297, Basis.ISO),
  /** 148 x 210 mm. */
  A5("A5", 148, 210, Basis.ISO),
  /** 8.5 x 11 in, ASME size A. */
  LETTER("Letter", 8.5 * Basis.INCH, 11 * Basis.INCH, Basis.ASME),
  /** 8.5 x 14 in. */
  LEGAL("Legal", 8.5 * Basis.INCH, 14 * Basis.INCH, "common office size in inches"),
  /** 11 x 17 in, ASME size B. */
  TABLOID("Tabloid", 11 * Basis.INCH, 17 * Basis.INCH, Basis.ASME);

  private static final class Basis {
    static final double INCH = 25.4;
    static final String ISO = "ISO 216";
    static final String ASME = "ASME Y14.1";
  }

  private final String title;
  private final double width;
  private final double height;
  private final String basis;

  Paper(String title, double width, double height, String basis) {
    this.title = title;
    this.width = width;
    this.height = height;
    this.basis = basis;
  }

  /** Its name as printed, such as {@code Letter}. */
  public String title() {
    return title;
  }

  /** The shorter side, mm. */
  public double width() {
    return width;
  }

  /** The longer side, mm. */
  public double height() {
    return height;
  }

  /** The standard that the size comes from. */
  public String basis() {
    return basis;
  }

  /** Its size in words, such as {@code 210 x 297 mm}. */
  public String size() {
    return Numbers.brief(width, 1) + " x " + Numbers.brief(height, 1) + " mm";
  }

  /** The next larger one that printers and copy shops have; none above A0 and Tabloid. */
  public Optional<Paper> larger() {
    return switch (this) {
      case A0, TABLOID -> Optional.empty();
      case LETTER, LEGAL -> Optional.of(TABLOID);
      default -> Optional.of(values()[ordinal() - 1]);
    };
  }

  /** The paper with a name in whatever case, if there is one. */
  public static Optional<Paper> find(String name) {
    String wanted = name.strip().toUpperCase(Locale.ROOT);
    return Arrays.stream(values()).filter(paper -> paper.name().equals(wanted)).findFirst();
  }

  /** All names, to offer when one is misspelt. */
  public static List<String> names() {
    return Arrays.stream(values()).map(Paper::title).toList();
  }
}

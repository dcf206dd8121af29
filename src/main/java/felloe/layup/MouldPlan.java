package felloe.layup;

import felloe.geometry.Box;
import felloe.geometry.Tolerances;
import felloe.plate.Weights;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the blank is laid up on.
 *
 * @param plates number of mould plates
 * @param width of a mould plate, mm
 * @param height of a mould plate, mm
 * @param area of all mould faces that take release agent, mm²
 * @param coats of release agent on a new plate
 * @param minutesBetween minutes between coats
 * @param pressure kPa
 * @param weight that gives it on the blank, kg; empty when a bag or a press gives it
 * @param grid distance of the tape lines for placing plies, mm
 */
public record MouldPlan(
    int plates,
    double width,
    double height,
    double area,
    int coats,
    double minutesBetween,
    double pressure,
    OptionalDouble weight,
    double grid) {

  /** What a mould plate is wider than the blank on each side, mm: common practice. */
  static final double EDGE = 50;

  /** Coats of wax on a plate that was never used: common practice. */
  static final int COATS = 5;

  /** Minutes that a coat wants before the next: common practice. */
  static final double BETWEEN = 15;

  /** More than this is never piled up as weights, kPa. */
  static final double MOST_BY_WEIGHT = 20;

  private static final double STEP = 10;

  /** Tape lines to place plies by, mm apart: common practice. */
  static final double GRID = 50;

  static MouldPlan of(BlankPlan blank, Process process) {
    Box box = blank.box();
    double width = STEP * Tolerances.up((box.width() + 2 * EDGE) / STEP);
    double height = STEP * Tolerances.up((box.height() + 2 * EDGE) / STEP);
    double newtons = process.pressure() * 1000 * blank.area() / 1e6;
    return new MouldPlan(
        process.plates(),
        width,
        height,
        process.plates() * width * height,
        COATS,
        BETWEEN,
        process.pressure(),
        process.pressure() <= MOST_BY_WEIGHT
            ? OptionalDouble.of(newtons / Weights.GRAVITY)
            : OptionalDouble.empty(),
        GRID);
  }

  /** The weight in whole kilograms, never less than is wanted; empty like {@link #weight}. */
  public OptionalInt kilograms() {
    return weight.isPresent()
        ? OptionalInt.of((int) Math.ceil(weight.getAsDouble()))
        : OptionalInt.empty();
  }

  /** What a layer of a bag covers: one mould plate, mm². */
  public double cover() {
    return width * height;
  }

  /** Sealant tape once round a mould plate, mm, in whole decimetres, never less. */
  public double sealantTape() {
    return 100 * Math.ceil(2 * (width + height) / 100);
  }
}

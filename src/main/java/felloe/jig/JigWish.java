package felloe.jig;

import felloe.plate.Requested;
import java.util.List;
import java.util.Optional;

/**
 * How template and jig are asked for; what is left out is for the program to choose.
 *
 * @param templateHeight height of the flat template, mm
 * @param height height of the jig, and so of its guides, mm
 * @param bushes whether drills run in steel bushes
 * @param all whether all holes that a drill makes are guided, not only those of the hub
 * @param pins labels of the two holes that pins locate the jig by; empty for a spigot in the bore
 * @param gauge what the printed gauge measured; empty when it was not read
 */
public record JigWish(
    Optional<Requested<Double>> templateHeight,
    Optional<Requested<Double>> height,
    boolean bushes,
    boolean all,
    Optional<Requested<List<String>>> pins,
    Optional<Requested<GaugeReading>> gauge) {

  /** Usual height of a template, mm; common practice: a trimming cutter's bearing runs along it. */
  public static final double TEMPLATE = 4;

  /** Usual height of a jig, mm; common practice: two to three drill diameters guide well. */
  public static final double HEIGHT = 12;

  public static final double MOST_TEMPLATE = 25;
  public static final double LEAST_HEIGHT = 4;
  public static final double MOST_HEIGHT = 60;

  /** Nothing particular is asked for. */
  public static final JigWish USUAL =
      new JigWish(
          Optional.empty(), Optional.empty(), false, false, Optional.empty(), Optional.empty());
}

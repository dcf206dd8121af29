package felloe.drilling;

import felloe.plate.MaterialKind;
import java.util.List;
import java.util.Optional;

/**
 * How holes are made in a material.
 *
 * @param title in words
 * @param materials names of materials that it is for
 * @param kind other materials of this kind take it too, if it stands first for the kind
 * @param drill the drill for a hole that is made in one go, in words
 * @param openingDrill the drill that opens a pilot hole, in words
 * @param surfaceSpeed of drills, m/min
 * @param feed of drills, mm a turn
 * @param piloted whether a pilot hole is drilled first
 * @param stepAbove holes larger than this are drilled in one more step, mm
 * @param largestDrill larger holes are not made with a drill, mm
 * @param opener name of the tool for larger openings
 * @param openerTitle that tool in words
 * @param openerSpeed its surface speed, m/min
 * @param basis where the figures come from
 * @param mark how centres are marked
 * @param spot how a drill gets a seat, where it wants one
 * @param through what to mind while drilling
 * @param trim how an opening is brought to its line
 * @param deburr how edges are broken by hand
 * @param before what to see to before the first hole
 * @param cautions how not to get hurt
 */
public record DrillMaterial(
    String title,
    List<String> materials,
    MaterialKind kind,
    String drill,
    String openingDrill,
    double surfaceSpeed,
    double feed,
    boolean piloted,
    double stepAbove,
    double largestDrill,
    String opener,
    String openerTitle,
    double openerSpeed,
    String basis,
    String mark,
    Optional<String> spot,
    String through,
    String trim,
    String deburr,
    List<String> before,
    List<String> cautions) {

  public DrillMaterial {
    materials = List.copyOf(materials);
    before = List.copyOf(before);
    cautions = List.copyOf(cautions);
  }
}

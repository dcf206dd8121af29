package felloe.joints;

import felloe.hub.HubCatalogue;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.util.Optional;

/** Plates with joints, from shape files that a maker could write. */
final class Shapes {

  static final String START =
      """
      felloe: 1
      outline:
        round: {diameter: 280}
      bolt-circles:
        - {hub: 6x70-m5, diameter: 5.5}
      bore: 30
      holes:
        - {line: {from: [125, 20], to: [125, -20], count: 2}, diameter: 4.3, role: grip, mirror: true}
        - {at: [0, 110], diameter: 6.4, label: Z}
      stock: {material: carbon-laminate, thickness: 5}
      making: {grip-scale: 12}
      """;

  private Shapes() {}

  /** A plate with so many lines more; {@code sets} override. */
  static Plate plate(String more, String... sets) {
    return ShapeFile.parse("redshank.yaml", START + more, Sets.of(sets), HubCatalogue.here());
  }

  /** The plan for the plate's own hub. */
  static JointPlan plan(String more, String... sets) {
    Plate plate = plate(more, sets);
    return JointPlan.of(
        plate, plate.hub().map(name -> HubCatalogue.here().spec(name, Place.BUILT_IN)));
  }

  /** The plan of a joint of the hub alone, written as {@code {holes: hub, ...}}. */
  static PlannedJoint hub(String keys, String... sets) {
    return plan("joints:\n  - {holes: hub" + keys + "}\n", sets).joints().get(0);
  }

  /** The same of the grip screws. */
  static PlannedJoint grip(String keys, String... sets) {
    return plan("joints:\n  - {holes: grip" + keys + "}\n", sets).joints().get(0);
  }

  static Optional<PlannedJoint> named(JointPlan plan, String name) {
    return plan.joints().stream().filter(j -> j.name().equals(name)).findFirst();
  }
}

package felloe.report;

import felloe.document.Phrase;
import felloe.joints.PlannedJoint;
import felloe.plate.Body;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the card says of what sits in windows and holes. */
final class CardBodies {

  private CardBodies() {}

  static String fitting(Plate plate) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (Body body : plate.bodies()) {
      alike.computeIfAbsent(body.name(), name -> new ArrayList<>()).add(body.opening());
    }
    String which =
        alike.entrySet().stream()
            .map(one -> one.getKey() + " in " + PlannedJoint.inShort(one.getValue()))
            .collect(Collectors.joining("; "));
    boolean nuts = plate.bodies().stream().anyMatch(body -> body.nut().isPresent());
    return Phrase.of(
        "Put in {}.{} Lead and tie the wires so that no hand and nothing that turns can catch them;"
            + " turn the wheel from lock to lock and look.",
        which,
        nuts ? " Tighten their nuts by hand and a little more, as their maker says." : "");
  }
}

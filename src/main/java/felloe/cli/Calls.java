package felloe.cli;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.service.ShapeSource;
import java.util.List;
import picocli.CommandLine.ParseResult;

/** What several commands do with a call. */
final class Calls {

  private Calls() {}

  /** The shapes of a call that needs one at least. */
  static List<ShapeSource> someShapes(ParseResult call) {
    List<ShapeSource> shapes = Options.shapes(call);
    if (shapes.isEmpty()) {
      throw wrong("SHAPE", "must name at least one shape file", "write heron.yaml, say");
    }
    return shapes;
  }

  /** A call that is wrong. */
  static BadInput wrong(String what, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(what), "", "", wanted, cure));
  }
}

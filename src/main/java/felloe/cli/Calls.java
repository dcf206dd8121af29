package felloe.cli;

import felloe.document.Phrase;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Verdict;
import felloe.service.ShapeSource;
import felloe.service.Study;
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

  /**
   * Says which plates fail a check though files were written for them.
   *
   * @param what was written, such as {@code Its kit}
   * @return the exit code
   */
  static int verdicts(Screen screen, List<Study> answers, String what) {
    int code = Exit.WELL;
    for (Study answer : answers) {
      if (answer.verdict() == Verdict.FAIL) {
        code = Exit.FAILS;
        screen.say(
            answer.plate().name()
                + " FAILS "
                + Phrase.count(answer.count(Verdict.FAIL), "check")
                + ". "
                + what
                + " is written, so that you see it on paper; do not cut from it. 'felloe check'"
                + " tells more.");
      }
    }
    return code;
  }
}

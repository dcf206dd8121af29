package felloe.kit;

import felloe.load.DesignSpace;
import felloe.load.FigureRange;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads what is to vary. */
final class SearchOrder {

  /** Values of each figure in the first round, unless the call says otherwise. */
  private static final int STEPS = 4;

  private static final int MOST_STEPS = 40;
  private static final int MOST_SPANS = 6;

  private SearchOrder() {}

  /**
   * The designs to try.
   *
   * @throws felloe.plate.BadInput with everything that is wrong with the request
   */
  static DesignSpace read(SearchRequest request) {
    Problems problems = new Problems();
    List<FigureRange> spans = new ArrayList<>();
    Set<String> paths = new HashSet<>();
    for (String text : request.vary()) {
      FigureRange span = span(text);
      if (span == null) {
        problem(
            problems,
            "--vary",
            text,
            "must be PATH=FROM-TO, with FROM below TO, in mm or degrees",
            "write stock.thickness=3-6, say");
      } else if (!paths.add(span.path())) {
        problem(problems, "--vary", text, "varies the same figure again", "give it once");
      } else {
        spans.add(span);
      }
    }
    if (request.vary().isEmpty() || request.vary().size() > MOST_SPANS) {
      problem(
          problems,
          "--vary",
          "",
          "must be given from once to " + MOST_SPANS + " times with --least-mass",
          "write --vary stock.thickness=3-6, say");
    }
    int steps = steps(request, problems);
    problems.throwIfAny();
    if (Math.pow(steps, spans.size()) > DesignSpace.MOST) {
      problem(
          problems,
          "--steps",
          Integer.toString(steps),
          "would be more than " + DesignSpace.MOST + " designs",
          "take fewer steps, or vary less");
    }
    problems.throwIfAny();
    return new DesignSpace(spans, steps);
  }

  private static FigureRange span(String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      return null;
    }
    String[] ends = text.substring(equals + 1).split("-", -1);
    if (ends.length != 2) {
      return null;
    }
    OptionalDouble from = Printing.millimetres(ends[0]);
    OptionalDouble to = Printing.millimetres(ends[1]);
    boolean read = from.isPresent() && to.isPresent() && from.getAsDouble() < to.getAsDouble();
    String path = text.substring(0, equals).strip();
    return read ? new FigureRange(path, from.getAsDouble(), to.getAsDouble()) : null;
  }

  private static int steps(SearchRequest request, Problems problems) {
    if (request.steps().isEmpty()) {
      return STEPS;
    }
    String text = request.steps().get();
    int steps = text.matches("[0-9]{1,2}") ? Integer.parseInt(text) : 0;
    if (steps < 2 || steps > MOST_STEPS) {
      problem(
          problems,
          "--steps",
          text,
          "must be a whole number from 2 to " + MOST_STEPS,
          "leave it out for " + STEPS);
    }
    return steps;
  }

  private static void problem(
      Problems problems, String option, String value, String wanted, String cure) {
    problems.add(new Problem(Place.ofOption(option, ""), "", value, wanted, cure));
  }
}

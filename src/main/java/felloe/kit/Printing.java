package felloe.kit;

import felloe.drawing.Paper;
import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.template.BarReading;
import felloe.template.MarkOut;
import felloe.template.MarkOut.InkEdge;
import felloe.template.MarkOut.Method;
import felloe.template.TemplateOptions;
import felloe.yaml.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the words of a template request. */
final class Printing {

  private static final Map<String, Method> METHODS = new LinkedHashMap<>();
  private static final Map<String, InkEdge> INKS = new LinkedHashMap<>();
  private static final Map<String, Face> FACES = new LinkedHashMap<>();

  static {
    METHODS.put("stuck-on", Method.STUCK_ON);
    METHODS.put("traced", Method.TRACED);
    METHODS.put("pricked", Method.PRICKED);
    INKS.put("plate-side", InkEdge.PLATE_SIDE);
    INKS.put("waste-side", InkEdge.WASTE_SIDE);
    FACES.put("front", Face.FRONT);
    FACES.put("back", Face.BACK);
  }

  private final List<Problem> problems = new ArrayList<>();
  private final TemplateRequest request;

  private Printing(TemplateRequest request) {
    this.request = request;
  }

  /**
   * The options that a request means.
   *
   * @throws BadInput with everything that is wrong with its words
   */
  static TemplateOptions of(TemplateRequest request) {
    return new Printing(request).options();
  }

  private TemplateOptions options() {
    Paper paper = paper();
    double margin =
        length("--margin", request.margin(), 0, TemplateOptions.LARGEST_MARGIN)
            .orElse(TemplateOptions.MARGIN);
    double overlap =
        length(
                "--overlap",
                request.overlap(),
                TemplateOptions.LEAST_OVERLAP,
                TemplateOptions.LARGEST_OVERLAP)
            .orElse(TemplateOptions.OVERLAP);
    MarkOut markOut = markOut();
    Optional<Face> face = word("--face", request.face(), FACES);
    Optional<BarReading> bars = bars();
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    Place barsPlace = Place.ofOption("--bars", "");
    return new TemplateOptions(
        paper, margin, overlap, markOut, face, request.turn(), bars, barsPlace);
  }

  private Paper paper() {
    if (request.paper().isEmpty()) {
      return Paper.A4;
    }
    String name = request.paper().get();
    Optional<Paper> paper = Paper.find(name);
    if (paper.isEmpty()) {
      problem(
          "--paper",
          name,
          "is not a known paper",
          near(name, Paper.names()) + "known: " + String.join(", ", Paper.names()));
    }
    return paper.orElse(Paper.A4);
  }

  private MarkOut markOut() {
    Method method = word("--method", request.method(), METHODS).orElse(Method.STUCK_ON);
    OptionalDouble pen = length("--pen", request.pen(), 0.1, MarkOut.WIDEST_PEN);
    Optional<InkEdge> ink = word("--ink", request.ink(), INKS);
    if (method == Method.TRACED) {
      if (request.pen().isEmpty()) {
        problem(
            "--method",
            "traced",
            "needs the width of the pen's line",
            "draw a line, measure it, and give it as --pen 0.7");
      }
      return MarkOut.traced(pen.orElse(0.5), ink.orElse(InkEdge.PLATE_SIDE));
    }
    boolean read = request.method().isEmpty() || METHODS.containsKey(request.method().get());
    if (read && request.pen().isPresent()) {
      problem("--pen", request.pen().get(), "only counts for --method traced", "add that");
    }
    if (read && request.ink().isPresent()) {
      problem("--ink", request.ink().get(), "only counts for --method traced", "add that");
    }
    return method == Method.PRICKED ? MarkOut.PRICKED : MarkOut.STUCK_ON;
  }

  private Optional<BarReading> bars() {
    if (request.bars().isEmpty()) {
      return Optional.empty();
    }
    String text = request.bars().get();
    String plain = text.strip().replace('\u00d7', 'x').replace('X', 'x');
    int by = plain.indexOf('x');
    OptionalDouble across = by < 0 ? OptionalDouble.empty() : millimetres(plain.substring(0, by));
    OptionalDouble up = by < 0 ? OptionalDouble.empty() : millimetres(plain.substring(by + 1));
    if (across.isEmpty() || up.isEmpty()) {
      problem(
          "--bars",
          text,
          "must be two lengths in mm with an x between",
          "measure the bar that runs across and the one that runs up, and write 99.6x100.2");
      return Optional.empty();
    }
    return Optional.of(new BarReading(across.getAsDouble(), up.getAsDouble()));
  }

  private <T> Optional<T> word(String option, Optional<String> given, Map<String, T> words) {
    if (given.isEmpty() || words.containsKey(given.get())) {
      return given.map(words::get);
    }
    List<String> known = List.copyOf(words.keySet());
    String allowed = String.join(" or ", known);
    problem(option, given.get(), "must be " + allowed, near(given.get(), known).replace("? ", "?"));
    return Optional.empty();
  }

  private OptionalDouble length(String option, Optional<String> given, double least, double most) {
    if (given.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble value = millimetres(given.get());
    String range = Numbers.brief(least, 2) + " to " + Numbers.brief(most, 2) + " mm";
    if (value.isEmpty()) {
      problem(option, given.get(), "must be a length such as 10, 10 mm or 0.4 in", "from " + range);
      return value;
    }
    if (value.getAsDouble() < least || value.getAsDouble() > most) {
      problem(option, given.get(), "must be from " + range, "");
      return OptionalDouble.empty();
    }
    return value;
  }

  /** A plain number of mm, or one with mm or in behind it; empty for anything else. */
  static OptionalDouble millimetres(String text) {
    String figure = text.strip();
    double unit = 1;
    if (figure.endsWith("mm")) {
      figure = figure.substring(0, figure.length() - 2).strip();
    } else if (figure.endsWith("in")) {
      figure = figure.substring(0, figure.length() - 2).strip();
      unit = 25.4;
    }
    OptionalDouble plain = plain(figure);
    return plain.isPresent() ? OptionalDouble.of(plain.getAsDouble() * unit) : plain;
  }

  /** A plain decimal number; empty for anything else. */
  static OptionalDouble plain(String text) {
    String figure = text.strip();
    // Java's own reader takes NaN, exponents, hexadecimal figures and a trailing f.
    boolean signed = figure.startsWith("-") || figure.startsWith("+");
    String digits = signed ? figure.substring(1) : figure;
    boolean plain =
        !digits.isEmpty()
            && digits.length() <= 12
            && digits.chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'))
            && digits.indexOf('.') == digits.lastIndexOf('.')
            && !digits.equals(".");
    return plain ? OptionalDouble.of(Double.parseDouble(figure)) : OptionalDouble.empty();
  }

  private static String near(String word, List<String> known) {
    return Nearest.to(word, known).map(near -> "did you mean '" + near + "'? ").orElse("");
  }

  private void problem(String option, String value, String wanted, String cure) {
    problems.add(new Problem(Place.ofOption(option, ""), "", value, wanted, cure));
  }
}

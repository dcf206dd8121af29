package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.plate.BadInput;
import felloe.report.NewWheelReport;
import felloe.service.NewShape;
import felloe.service.NewWheel;
import felloe.service.WheelWish;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** The questions that lead to a wheel, and the page that waits while it is made. */
final class Questions implements AutoCloseable {

  /** An answer that leads to the calliper. */
  private static final String MEASURE = "measure";

  private static final Map<String, String> OUTLINES =
      Map.of(
          "round", "Round, three spokes",
          "four-sided", "Four-sided, a window for each hand",
          "points", "Open at the top, with room for a display and switches",
          "path", "Curved, a window for each hand");

  private final Bench bench;
  private final Making making;

  /**
   * @param faults is told of faults of the program
   */
  Questions(Bench bench, Consumer<Throwable> faults) {
    this.bench = bench;
    this.making = new Making(bench, faults);
  }

  /** Which call leads where; empty where there is nothing. */
  Optional<Answer> answer(Call call) {
    int steps = call.way().size();
    if (steps == 2) {
      return Optional.of(call.changes() ? asked(call) : Answer.html(page(usual(call), Map.of())));
    }
    Optional<Making.Job> job =
        call.step(2).matches("\\d{1,9}")
            ? making.job(Integer.parseInt(call.step(2)))
            : Optional.empty();
    if (steps == 4 && call.step(3).equals("state")) {
      return job.map(one -> Answer.json(200, one.reply()));
    }
    return steps == 3 ? job.map(one -> Answer.html(waiting(call.step(2), one))) : Optional.empty();
  }

  private static Map<String, String> usual(Call call) {
    Map<String, String> usual = new LinkedHashMap<>();
    usual.put("name", "my-wheel.yaml");
    usual.put("outline", "round");
    usual.put("hub", call.word("hub").isEmpty() ? "6x70-m5" : call.word("hub"));
    usual.put("stock", "carbon-laminate");
    usual.put("width", "300");
    usual.put("hand", "medium");
    usual.put("legs", "plenty");
    usual.put("use", "usual");
    usual.put("holes", "by_hand");
    return usual;
  }

  private List<NewWheel.Choice> hubs() {
    return NewWheel.hubs(bench.folder(), bench.hubs());
  }

  /** Answers that are well said begin a wheel; the others are asked again. */
  private Answer asked(Call call) {
    Map<String, String> said = new LinkedHashMap<>();
    usual(call).keySet().forEach(key -> said.put(key, call.word(key).strip()));
    if (said.get("hub").equals(MEASURE)) {
      return Answer.moved("/hub");
    }
    Map<String, String> wrong = new LinkedHashMap<>();
    try {
      bench.free(said.get("name"));
    } catch (BadInput taken) {
      wrong.put("name", taken.problems().get(0).wanted() + ": " + taken.problems().get(0).cure());
    }
    one(said, "outline", NewShape.families(), wrong);
    one(said, "hub", hubs().stream().map(NewWheel.Choice::name).toList(), wrong);
    one(said, "stock", NewWheel.materials().stream().map(m -> m.name()).toList(), wrong);
    Optional<Double> width = call.figure("width");
    if (width.filter(w -> w >= WheelWish.NARROWEST && w <= WheelWish.WIDEST).isEmpty()) {
      wrong.put("width", "must be a number from 260 to 360");
    }
    one(said, "hand", names(WheelWish.Hand.values()), wrong);
    one(said, "legs", names(WheelWish.Legs.values()), wrong);
    one(said, "use", names(WheelWish.Use.values()), wrong);
    one(said, "holes", names(WheelWish.Holes.values()), wrong);
    if (!wrong.isEmpty()) {
      Answer again = Answer.html(page(said, wrong));
      return new Answer(422, again.type(), again.body(), again.headers());
    }
    Optional<Integer> number =
        making.begin(
            new WheelWish(
                said.get("name"),
                said.get("outline"),
                said.get("hub"),
                said.get("stock"),
                width.orElseThrow(),
                WheelWish.Hand.valueOf(upper(said.get("hand"))),
                WheelWish.Legs.valueOf(upper(said.get("legs"))),
                WheelWish.Use.valueOf(upper(said.get("use"))),
                WheelWish.Holes.valueOf(upper(said.get("holes")))));
    return number
        .map(one -> Answer.moved("/start/questions/" + one))
        .orElseGet(
            () -> Answer.refused(503, "Too many wheels are being made: wait until one is done."));
  }

  private static void one(
      Map<String, String> said, String key, List<String> of, Map<String, String> wrong) {
    if (!of.contains(said.get(key))) {
      wrong.put(key, "is none of those that are asked for: choose one");
    }
  }

  private static String upper(String word) {
    return word.toUpperCase(Locale.ROOT);
  }

  private static List<String> names(Enum<?>[] values) {
    return List.of(values).stream().map(one -> one.name().toLowerCase(Locale.ROOT)).toList();
  }

  private String page(Map<String, String> said, Map<String, String> wrong) {
    Asking asking = new Asking(said, wrong);
    asking.text(
        "name", "What is its file to be called?", "Letters, digits, - and _; ends in .yaml.");
    asking.pictures("outline", "Which outline?", NewShape.families(), OUTLINES);
    Map<String, String> hubs = new LinkedHashMap<>();
    hubs().forEach(hub -> hubs.put(hub.name(), hub.name() + ": " + hub.words()));
    hubs.put(MEASURE, "I do not know yet: measure it");
    asking.list(
        "hub",
        "Which hub does it go on?",
        "Measure yours first: screws that do not meet their holes cost a plate. Hub files of this"
            + " folder stand here too.",
        hubs);
    Map<String, String> stocks = new LinkedHashMap<>();
    NewWheel.materials().forEach(one -> stocks.put(one.name(), one.title()));
    asking.list(
        "stock",
        "What is it cut from?",
        "The thinnest that is sold or laid up and does is taken. Plywood and acrylic are for"
            + " mock-ups and are not asked for here.",
        stocks);
    asking.figure(
        "width",
        "How wide over all, mm?",
        "260 to 360; hand wheels of small vehicles are some 250 to 380 mm (common practice).");
    Map<String, String> hands = new LinkedHashMap<>();
    for (WheelWish.Hand hand : WheelWish.Hand.values()) {
      hands.put(hand.name().toLowerCase(Locale.ROOT), NewWheelReport.hand(hand));
    }
    asking.choice(
        "hand",
        "How broad is the driver's hand?",
        "It sets openings and grips. Half of British women are below 75 mm, 95 of 100 British men"
            + " below 95 mm, a glove adds 25 mm (City University of Hong Kong tables).",
        hands);
    asking.choice(
        "legs",
        "Is there room for the legs below it?",
        "With little, a round wheel gets a flat bottom, and others end higher.",
        ordered("plenty", "Plenty", "little", "Little"));
    asking.choice(
        "use",
        "How hard is it used?",
        "Never softer than what small aeroplanes' hand wheels are held to (14 CFR 23.397).",
        ordered(
            "usual",
            "As usual: up to 890 N with both hands",
            "hard",
            "Hard: both hands pull and push with 1334 N (14 CFR 25.397)"));
    asking.choice(
        "holes",
        "How do the hub's holes get their places?",
        "Holes that are marked by hand are drilled wider, so that screws meet them.",
        ordered("by_hand", "Marked through the paper", "by_machine", "By a router or the like"));
    return Parts.text("questions.html").replace("{{questions}}", asking.html());
  }

  private static Map<String, String> ordered(String a, String x, String b, String y) {
    Map<String, String> all = new LinkedHashMap<>();
    all.put(a, x);
    all.put(b, y);
    return all;
  }

  private static String waiting(String number, Making.Job job) {
    StringBuilder body = new StringBuilder();
    if (!job.done()) {
      body.append("<div id=\"making\" data-state=\"/start/questions/").append(number);
      body.append("/state\"><p>A wheel is drawn, reviewed and reckoned in every thickness. That")
          .append(" takes from some seconds to a minute.</p>\n<p class=\"verdict\">Now: <strong")
          .append(" id=\"stage\" role=\"status\">")
          .append(escaped(String.join(" ", job.words())))
          .append("</strong> <span aria-hidden=\"true\" id=\"seconds\">")
          .append(job.seconds())
          .append(" s</span></p>\n<noscript><p><a href=\"\">Look again</a></p></noscript></div>\n");
      return Parts.text("making.html")
          .replace("{{head}}", "It is being made")
          .replace("{{body}}", body);
    }
    body.append("<div class=\"verdict ").append(job.made() ? "tone-well" : "tone-fail");
    body.append("\">\n");
    job.words().forEach(line -> body.append("<p>").append(escaped(line)).append("</p>\n"));
    body.append("</div>\n");
    if (job.made()) {
      body.append("<p><a class=\"button\" id=\"open\" href=\"/shape/")
          .append(escaped(job.wish().name()))
          .append("\">Open it on the board</a></p>\n<p class=\"small\">It is not saved yet: look")
          .append(" at it, change what you like, then save it.</p>\n");
    }
    job.nearest().ifPresent(other -> body.append(offered(other)));
    body.append("<p><a href=\"/start/questions\">Ask me again</a></p>\n");
    return Parts.text("making.html")
        .replace("{{head}}", job.made() ? "A wheel that passes" : "No such wheel passes")
        .replace("{{body}}", body);
  }

  /** What might do instead, as a form that asks for it. */
  private static String offered(WheelWish wish) {
    Map<String, String> said = new LinkedHashMap<>();
    said.put("name", wish.name());
    said.put("outline", wish.family());
    said.put("hub", wish.hub());
    said.put("stock", wish.material());
    said.put("width", felloe.geometry.Numbers.brief(wish.width(), 2));
    said.put("hand", wish.hand().name().toLowerCase(Locale.ROOT));
    said.put("legs", wish.legs().name().toLowerCase(Locale.ROOT));
    said.put("use", wish.use().name().toLowerCase(Locale.ROOT));
    said.put("holes", wish.holes().name().toLowerCase(Locale.ROOT));
    StringBuilder form = new StringBuilder("<form method=\"post\" action=\"/start/questions\">");
    said.forEach(
        (key, value) ->
            form.append("<input type=\"hidden\" name=\"")
                .append(key)
                .append("\" value=\"")
                .append(escaped(value))
                .append("\">"));
    form.append("<p><button type=\"submit\" id=\"nearest\">Make it of ");
    form.append(escaped(wish.material())).append("</button></p></form>\n");
    return form.toString();
  }

  @Override
  public void close() {
    making.close();
  }
}

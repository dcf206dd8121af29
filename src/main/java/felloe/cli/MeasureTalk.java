package felloe.cli;

import felloe.plate.BadInput;
import felloe.report.MeasureReport;
import felloe.service.HubSurvey;
import felloe.service.MeasuredHub;
import felloe.service.MeasuredHub.NextReading;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Asks for readings one by one, draws which holes to measure next, and tells what they say so far.
 * It ends at {@code q} and at the end of the input, and then gives the whole answer.
 */
final class MeasureTalk {

  private static final Pattern REPLY =
      Pattern.compile("(?:(\\d+)\\s+(\\d+)\\s+)?(?:([oic])\\s*)?(\\S.*)");
  private static final int ENOUGH = 2;

  private final BufferedReader in;
  private final Screen screen;
  private final Path folder;
  private final List<String> readings = new ArrayList<>();
  private final Set<String> skipped = new LinkedHashSet<>();
  private String head = "";
  private boolean ended;

  MeasureTalk(BufferedReader in, Screen screen, Path folder) {
    this.in = in;
    this.screen = screen;
    this.folder = folder;
  }

  /** Talks; empty when it ended before there was anything to tell. */
  Optional<MeasuredHub> talk() {
    screen.say("Number the holes counter-clockwise, one after the other, as you look at them.");
    screen.say("A blank line skips a reading, q ends. Lengths are mm.");
    if (!start()) {
      return Optional.empty();
    }
    MeasuredHub answer = survey();
    while (!ended) {
      Optional<NextReading> next =
          answer.next().stream().filter(one -> !skipped.contains(one.words())).findFirst();
      int count = answer.count();
      next.ifPresent(one -> show(count, one));
      soFar(answer);
      String reply = ask(question(next));
      if (ended) {
        break;
      }
      if (reply.isBlank()) {
        if (next.isEmpty()) {
          break;
        }
        skipped.add(next.get().words());
      } else {
        answer = taken(reply.strip(), next).orElse(answer);
      }
    }
    return Optional.of(answer);
  }

  /** The readings as a measured file. */
  String text() {
    return head
        + "readings:"
        + (readings.isEmpty() ? " []" : "")
        + "\n"
        + String.join("", readings);
  }

  private boolean start() {
    while (!ended) {
      String on = ask("What do the jaws touch: holes, screws or threads? [holes] ").strip();
      String count = ended ? "" : ask("How many? ").strip();
      if (ended) {
        return false;
      }
      head = "holes: " + plain(count) + "\non: " + (on.isEmpty() ? "holes" : plain(on)) + "\n";
      try {
        survey();
        return true;
      } catch (BadInput bad) {
        tell(bad);
      }
    }
    return false;
  }

  /** A word that cannot break the file that it is put into. */
  private static String plain(String word) {
    return word.matches("-?[A-Za-z0-9.]+( in| mm| cm)?") ? word : "'" + word.replace("'", "") + "'";
  }

  private static String question(Optional<NextReading> next) {
    String any = "another pair as in 2 5 o 75.4";
    if (next.isEmpty()) {
      return "Any other reading, " + any + ": ";
    }
    NextReading one = next.get();
    return one.diameter()
        ? "Diameter of a hole, such as " + one.from() + ": "
        : one.from()
            + " to "
            + one.to()
            + ", over outside (or i 64.5 inside, c 70 centres; "
            + any
            + "): ";
  }

  private MeasuredHub survey() {
    return HubSurvey.soFar("readings", text(), folder);
  }

  private Optional<MeasuredHub> taken(String reply, Optional<NextReading> next) {
    Matcher match = REPLY.matcher(reply);
    if (!match.matches() || (match.group(1) == null && next.isEmpty())) {
      screen.say("That is no reading.");
      return Optional.empty();
    }
    String value = plain(match.group(4).strip());
    boolean pair = match.group(1) != null;
    String from = pair ? match.group(1) : next.get().from();
    String to = pair ? match.group(2) : next.get().to();
    String line;
    if (from.equals(to)) {
      line = " - {hole: " + from + ", over: diameter, reads: " + value + "}\n";
    } else {
      String over =
          match.group(3) == null || match.group(3).equals("o")
              ? "outside"
              : match.group(3).equals("i") ? "inside" : "centres";
      line = " - {from: " + from + ", to: " + to + ", over: " + over + ", reads: " + value + "}\n";
    }
    List<String> before = List.copyOf(readings);
    String same = line.substring(0, line.indexOf("reads:"));
    // The same reading taken again takes the place of the first.
    readings.removeIf(old -> old.startsWith(same));
    readings.add(line);
    try {
      return Optional.of(survey());
    } catch (BadInput bad) {
      readings.clear();
      readings.addAll(before);
      tell(bad);
      return Optional.empty();
    }
  }

  private void tell(BadInput bad) {
    bad.problems()
        .forEach(
            p ->
                screen.say(
                    "Not taken: "
                        + (p.value().isEmpty() ? "" : "'" + p.value() + "' ")
                        + p.wanted()
                        + (p.cure().isEmpty() ? "" : "; " + p.cure())));
  }

  private void soFar(MeasuredHub answer) {
    MeasureReport.soFar(answer)
        .ifPresent(
            words -> screen.say(words + (answer.spare() >= ENOUGH ? " That may do; q ends." : "")));
  }

  private void show(int count, NextReading one) {
    screen.say("");
    new RingSketch(count, Integer.parseInt(one.from()), Integer.parseInt(one.to()))
        .lines()
        .forEach(screen::say);
  }

  /** A line that was typed; the end of the input ends the talk. */
  private String ask(String question) {
    screen.err().print(question);
    screen.err().flush();
    try {
      String line = in.readLine();
      if (line == null || line.strip().equals("q")) {
        ended = true;
        return "";
      }
      return line;
    } catch (IOException gone) {
      ended = true;
      return "";
    }
  }
}

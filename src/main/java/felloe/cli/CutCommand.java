package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.CutAnswer;
import felloe.kit.CutRequest;
import felloe.kit.Kit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Files for machines that cut. */
final class CutCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "cut",
            "Writes files that a router, laser or waterjet can run, or rough lines for a jigsaw."
                + " Paths leave the finish line after the cutter or beam has taken its width, and"
                + " are checked against the plate before they are written. Nothing is written"
                + " while the plate fails a check.");
    Options.shapes(spec, true);
    spec.addOption(
        Options.text("--process", "PROCESS", "router, laser, waterjet or jigsaw. Must be given."));
    spec.addOption(Options.out("Folder for the files. Usually templates-out."));
    spec.addOption(Options.format("text or json"));
    Options.group(spec, "What the cut takes", 1, width());
    Options.group(spec, "Router: depths and entries", 2, depths());
    Options.group(spec, "Router: holding and drilling", 3, holding());
    Options.group(spec, "Speeds and feeds", 4, feeds());
    Options.group(spec, "Sheet", 5, sheet());
    Options.group(spec, "Jigsaw", 6, jigsaw());
    Options.examples(
        spec,
        "  felloe cut heron.yaml --process router",
        "  felloe cut dunlin.yaml --process waterjet --kerf 0.9",
        "  felloe cut heron.yaml bittern.yaml --process router --nest --sheet 700x400 \\",
        "      --set stock.thickness=5 --keep-out 0,180,30,40 --strips 6x15x80",
        "  felloe cut avocet.yaml --process jigsaw");
    return spec;
  }

  private static OptionSpec[] width() {
    return new OptionSpec[] {
      Options.text("--cutter", "MM", "Diameter of the router's cutter. Usually the shape file's."),
      Options.text("--kerf", "MM", "Width that the laser or the jet takes. Usually 0.2 or 1."),
      Options.flag(
          "--no-compensation",
          "Write the finish lines, for a shop that moves the path itself. No G-code then."),
      Options.text(
          "--direction", "WAY", "climb (usual) or conventional: how the cutter meets the edge."),
      Options.text("--thickness", "MM", "What the stock really measures. Usually the file's."),
      Options.flag(
          "--owner-consents",
          "The laser's owner agrees to cut this laminate. Never PVC, whoever agrees.")
    };
  }

  private static OptionSpec[] depths() {
    return new OptionSpec[] {
      Options.text(
          "--flute-length", "MM", "Length of the cutter's edges. Say it when the stock is thick."),
      Options.text("--flutes", "COUNT", "Cutting edges. Usually 1, which keeps the feed low."),
      Options.text("--step-down", "MM", "Depth of a pass. Usually from the table of feeds."),
      Options.text("--breakthrough", "MM", "How far below the stock it cuts. Usually 0.3."),
      Options.text("--bed", "MM", "How far below the stock anything may go. Usually 3."),
      Options.text("--ramp", "DEG", "Steepest way down, degrees. Usually from the table."),
      Options.text(
          "--lead", "MM", "Radius of the arcs onto the path and off it; for beams as well."),
      Options.text("--clearance", "MM", "Height of travel above the stock. Usually 10."),
      Options.text("--approach", "MM", "Height where the way down slows. Usually 2.")
    };
  }

  private static OptionSpec[] holding() {
    return new OptionSpec[] {
      Options.text("--tabs", "COUNT", "Bridges round the outline, or none. Usually 2 to 4."),
      Options.text("--tab-width", "MM", "Width of a bridge's top. Usually 5."),
      Options.text("--tab-height", "MM", "Height of a bridge. Usually 1, at most a third."),
      Options.text(
          "--drills", "MM,MM", "Drills at hand, such as 5,4.3, or none. Usually any size."),
      Options.text("--largest-drill", "MM", "Wider holes are bored or sawn. Usually 8; jigsaw 13."),
      Options.text(
          "--dialect",
          "NAME",
          "How the controller wants its words: plain-rs274 (usual), numbered-lines,"
              + " no-drill-cycles, or a file of your own."),
      Options.flag("--coolant", "Switch coolant or air on, where the dialect knows how.")
    };
  }

  private static OptionSpec[] feeds() {
    return new OptionSpec[] {
      Options.text("--speed", "RPM", "Spindle speed, turns a minute."),
      Options.text("--feed", "MM/MIN", "Feed along the path."),
      Options.text("--ramp-feed", "MM/MIN", "Feed on the way down. Usually half the feed."),
      Options.text("--drill-surface-speed", "M/MIN", "Surface speed of drills."),
      Options.text("--drill-feed", "MM", "Feed of drills, mm a turn."),
      Options.text("--highest-speed", "RPM", "The spindle's highest speed. Usually 24000."),
      Options.text(
          "--travel", "MM/MIN", "How fast the machine travels, for the time. Usually 3000.")
    };
  }

  private static OptionSpec[] sheet() {
    return new OptionSpec[] {
      Options.flag("--nest", "Place all shapes on one sheet, and cut them in one go."),
      Options.text("--copies", "COUNT", "How many of each shape. Usually 1."),
      Options.text("--sheet", "WxH", "Size of the sheet. Usually the shape file's."),
      Options.text("--sheet-margin", "MM", "Edge of the sheet that no cut touches. Usually 5."),
      Options.text("--spacing", "MM", "Room between parts beyond the cutter. Usually 2."),
      several(
          "--keep-out",
          "X,Y,W,H",
          "A clamp: a box from the sheet's lower left corner. May be given more than once."),
      Options.text(
          "--grain", "HOW", "held (usual): 0 or 180 degrees only; free: any eighth of a turn."),
      several(
          "--strips",
          "NxWxL",
          "Test strips to cut along: how many, width, length along the grain. May be given more"
              + " than once.")
    };
  }

  private static OptionSpec[] jigsaw() {
    return new OptionSpec[] {
      Options.text("--blade", "MM", "Width of the blade from teeth to back. Usually 5."),
      Options.text("--turn", "MM", "Least radius that the blade follows. Usually 15.")
    };
  }

  private static OptionSpec several(String name, String label, String description) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .type(List.class)
        .auxiliaryTypes(String.class)
        .arity("1")
        .description(description)
        .build();
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String format = Options.chosenFormat(call, "text", "json");
    CutAnswer answer = kit.cut(Calls.someShapes(call), request(call), Options.outFolder(call));
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      new CutText(screen).show(answer);
    }
    return answer.held() ? Exit.FAILS : Exit.WELL;
  }

  /** The options of this command that were given, with their values as they were written. */
  private static CutRequest request(ParseResult call) {
    Map<String, List<String>> given = new LinkedHashMap<>();
    for (OptionSpec option : call.matchedOptions()) {
      given.put(
          option.longestName(), option.arity().max() == 0 ? List.of() : option.stringValues());
    }
    return new CutRequest(given);
  }
}

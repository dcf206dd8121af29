package felloe.cli;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.service.LayupPlanning;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Problems;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * Options that several commands share, and how they are read. All values are taken as text, so that
 * what is wrong with one is said in the same words wherever it was written.
 */
final class Options {

  private static final String SET = "--set";
  private static final String OUT = "--out";
  static final Path USUAL_OUT = Path.of("templates-out");

  private Options() {}

  /** A command with a heading line and what it does. */
  static CommandSpec command(String name, String... description) {
    CommandSpec spec = CommandSpec.create().name(name);
    spec.parser().collectErrors(true);
    spec.usageMessage()
        .synopsisHeading("Usage: ")
        .description(description)
        .descriptionHeading("%n")
        .parameterListHeading("%n")
        .optionListHeading("%nOptions%n")
        .abbreviateSynopsis(true)
        .sortOptions(false)
        .commandListHeading("")
        .width(96);
    spec.addOption(
        OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .order(1000)
            .description("Show this help.")
            .build());
    return spec;
  }

  /** Examples at the end of a command's help. */
  static void examples(CommandSpec spec, String... lines) {
    spec.usageMessage().footerHeading("%nExamples%n").footer(lines);
  }

  /** One shape file, or at least one. */
  static void shapes(CommandSpec spec, boolean several) {
    PositionalParamSpec.Builder shape =
        PositionalParamSpec.builder()
            .paramLabel("SHAPE")
            .description(several ? "Shape files, each with a name of its own." : "The shape file.");
    spec.addPositional(
        several
            ? shape
                .index("0..*")
                .arity("0..*")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .build()
            : shape.index("0").arity("1").required(true).type(String.class).build());
    spec.addOption(sets("outline.round.diameter=280 or windows[0].label=L"));
  }

  /** Values to take instead of a file's. */
  static OptionSpec sets(String examples) {
    return OptionSpec.builder(SET)
        .paramLabel("PATH=VALUE")
        .type(List.class)
        .auxiliaryTypes(String.class)
        .arity("1")
        .description(
            "Another value than the file's, such as " + examples + ". May be given more than once.")
        .build();
  }

  /** The values that were given with {@link #sets}. */
  static List<String> chosenSets(ParseResult call) {
    return call.matchedOptionValue(SET, List.<String>of());
  }

  /** The hub to compare with. */
  static final Opt<String> HUB =
      Opt.one(
          "--hub",
          "HUB",
          Read::text,
          "Compare with this hub instead of the shape file's own: a name from 'felloe hub list',"
              + " or a hub file.");

  /** Materials of the maker's own. */
  static final Opt<Path> MATERIALS =
      Opt.one(
          "--materials",
          "FILE",
          Read::path,
          "Your own materials and prices, beside those that are known.");

  /** The folder that files go to. */
  static Opt<Path> folder(String help) {
    return Opt.one(OUT, "DIR", Read::path, help);
  }

  /** Adds options to a command, in order. */
  static void add(CommandSpec spec, Opt<?>... options) {
    for (Opt<?> option : options) {
      spec.addOption(option.spec());
    }
  }

  /** Options under a heading of their own. */
  static void group(CommandSpec spec, String heading, int order, Opt<?>... options) {
    ArgGroupSpec.Builder group =
        ArgGroupSpec.builder()
            .heading("%n" + heading + "%n")
            .exclusive(false)
            .multiplicity("0..1")
            .validate(false)
            .order(order);
    for (Opt<?> option : options) {
      group.addArg(option.spec());
    }
    spec.addArgGroup(group.build());
  }

  /** Options that count for nothing here are not passed over in silence. */
  static void refuse(ParseResult call, String wanted, String cure, Opt<?>... options) {
    for (Opt<?> option : options) {
      if (option.given(call)) {
        throw Calls.wrong(option.name(), wanted, cure);
      }
    }
  }

  /** The shapes of a call. */
  static List<ShapeSource> shapes(ParseResult call) {
    List<String> sets = call.matchedOptionValue(SET, List.<String>of());
    List<ShapeSource> shapes = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String name : call.matchedPositionalValue(0, List.<String>of())) {
      try {
        shapes.add(ShapeSource.file(path(name), sets));
      } catch (BadInput odd) {
        problems.addAll(odd.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return shapes;
  }

  /** Tells what is wrong with the files of a call whose options are wrong as well. */
  static void readable(ParseResult call, Path folder, Problems problems) {
    try {
      LayupPlanning.book(MATERIALS.in(call), folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    Object given = call.matchedPositionalValue(0, (Object) null);
    List<?> names =
        given instanceof List<?> several ? several : given == null ? List.of() : List.of(given);
    for (Object one : names) {
      String name = one.toString();
      try {
        Studies.of(ShapeSource.file(path(name), chosenSets(call)), folder);
      } catch (BadInput bad) {
        problems.add(bad);
      }
    }
  }

  /** The one shape of a call. */
  static ShapeSource shape(ParseResult call) {
    List<String> sets = call.matchedOptionValue(SET, List.<String>of());
    return ShapeSource.file(path(call.matchedPositionalValue(0, "")), sets);
  }

  /** A path that was given. */
  static Path path(String name) {
    try {
      if (name.isEmpty()) {
        throw Calls.wrong("''", "cannot be the name of a file", "check the name");
      }
      return Path.of(name);
    } catch (InvalidPathException odd) {
      throw new BadInput(noFile(name));
    }
  }

  private static Problem noFile(String name) {
    return new Problem(
        Place.ofFile(name), "", "", "cannot be the name of a file", "check the name");
  }
}

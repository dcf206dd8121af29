package felloe.kit;

import felloe.drawing.Paper;
import felloe.laminate.StripsFile;
import felloe.laminate.TestedStrips;
import felloe.layup.MaterialBook;
import felloe.load.Gauge;
import felloe.load.ThicknessCandidates;
import felloe.plate.BadInput;
import felloe.plate.LoadWish;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.yaml.Entry;
import felloe.yaml.Nearest;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A request for loads, read.
 *
 * @param hold how the hub is to hold the plate
 * @param cases names of the cases that are wanted
 * @param listed thicknesses to try, mm; empty for the usual
 * @param within the thinnest and thickest to try, mm; empty for the usual
 * @param book the materials
 * @param tested broken strips
 * @param paper of the pages
 */
record LoadOrder(
    Optional<Requested<LoadWish.Hold>> hold,
    List<String> cases,
    List<Double> listed,
    Optional<double[]> within,
    MaterialBook book,
    Optional<TestedStrips> tested,
    Paper paper) {

  static final Place CASE = Place.ofOption("--case", "");

  private static final double THICKEST = 100;
  private static final int MOST = 20;

  /**
   * Reads the words of a request.
   *
   * @param folder where names of files start from
   * @throws BadInput with everything that is wrong with the request or its files
   */
  static LoadOrder of(LoadRequest request, Path folder) {
    return new Reader(folder).order(request);
  }

  /** The thicknesses to try, the plate's own among them, thinnest first. */
  List<Gauge> gauges(ThicknessCandidates range) {
    List<Gauge> all = new ArrayList<>();
    if (!listed.isEmpty()) {
      Gauge now = range.now();
      all.add(now);
      for (double t : listed) {
        Gauge other = range.of(t);
        if (all.stream().noneMatch(g -> Math.abs(g.thickness() - other.thickness()) < 1e-9)) {
          all.add(other);
        }
      }
      all.sort((a, b) -> Double.compare(a.thickness(), b.thickness()));
      return all;
    }
    if (within.isEmpty()) {
      return range.usual();
    }
    double[] ends = within.get();
    return range.within(ends[0], ends[1], MOST);
  }

  private static final class Reader {
    private final Path folder;
    private final Problems problems = new Problems();

    Reader(Path folder) {
      this.folder = folder;
    }

    LoadOrder order(LoadRequest request) {
      Optional<Requested<LoadWish.Hold>> hold = hold(request);
      List<Double> listed = new ArrayList<>();
      Optional<double[]> within = thicknesses(request, listed);
      MaterialBook book = MaterialBook.builtIn();
      if (request.materials().isPresent()) {
        try {
          book = book.with(folder.resolve(request.materials().get()));
        } catch (InvalidPathException odd) {
          problem("--materials", request.materials().get(), "is no name of a file", "check it");
        } catch (BadInput bad) {
          problems.add(bad);
        }
      }
      Optional<TestedStrips> tested = Optional.empty();
      if (request.tested().isPresent()) {
        try {
          tested =
              Optional.of(StripsFile.read(YamlTree.read(folder.resolve(request.tested().get()))));
        } catch (InvalidPathException odd) {
          problem("--tested", request.tested().get(), "is no name of a file", "check it");
        } catch (BadInput bad) {
          problems.add(bad);
        }
      }
      Paper paper = paper(request);
      problems.throwIfAny();
      return new LoadOrder(hold, request.cases(), listed, within, book, tested, paper);
    }

    private Paper paper(LoadRequest request) {
      Optional<Paper> paper = request.paper().flatMap(Paper::find);
      if (request.paper().isPresent() && paper.isEmpty()) {
        List<String> known = Paper.names();
        String name = request.paper().get();
        problem(
            "--paper",
            name,
            "is not a known paper",
            Nearest.to(name, known).map(near -> "did you mean '" + near + "'? ").orElse("")
                + "known: "
                + String.join(", ", known));
      }
      return paper.orElse(Paper.A4);
    }

    private Optional<Requested<LoadWish.Hold>> hold(LoadRequest request) {
      if (request.support().isEmpty()) {
        return Optional.empty();
      }
      for (LoadWish.Hold hold : LoadWish.Hold.values()) {
        if (Entry.nameOf(hold).equals(request.support().get())) {
          return Optional.of(new Requested<>(hold, Place.ofOption("--support", "")));
        }
      }
      problem("--support", request.support().get(), "must be clamped or bolts", "");
      return Optional.empty();
    }

    /** Fills the list; or gives the two ends of a range. */
    private Optional<double[]> thicknesses(LoadRequest request, List<Double> listed) {
      if (request.thicknesses().isEmpty()) {
        return Optional.empty();
      }
      String text = request.thicknesses().get();
      boolean range = text.matches("[^,-]+-[^,-]+");
      List<Double> read = new ArrayList<>();
      for (String part : text.split(range ? "-" : ",", -1)) {
        OptionalDouble mm = Printing.millimetres(part);
        if (mm.isEmpty() || !(mm.getAsDouble() > 0.1) || mm.getAsDouble() > THICKEST) {
          read.clear();
          break;
        }
        read.add(mm.getAsDouble());
      }
      boolean grows = !range || read.size() == 2 && read.get(0) < read.get(1);
      if (read.isEmpty() || read.size() > MOST || !grows) {
        problem(
            "--thicknesses",
            text,
            "must be up to " + MOST + " thicknesses from 0.1 to 100 mm, or the ends of a range",
            "write 4,5,6 or 3-8");
        return Optional.empty();
      }
      if (range) {
        return Optional.of(new double[] {read.get(0), read.get(1)});
      }
      listed.addAll(read);
      return Optional.empty();
    }

    private void problem(String option, String value, String wanted, String cure) {
      problems.add(new Problem(Place.ofOption(option, ""), "", value, wanted, cure));
    }
  }
}

package felloe.kit;

import felloe.drawing.Paper;
import felloe.geometry.Numbers;
import felloe.layup.MaterialBook;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.LayupWish.Panel;
import felloe.plate.LayupWish.Pieces;
import felloe.plate.Place;
import felloe.plate.Prices;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.yaml.Nearest;
import felloe.yaml.Problems;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a lay-up request means.
 *
 * @param wish what the options ask for
 * @param book the materials, the maker's own file among them
 * @param paper of the pages
 */
record LayupOrder(LayupWish wish, MaterialBook book, Paper paper) {

  private static final String PLIES = "--plies";

  /**
   * Reads the words of a request.
   *
   * @param folder where the name of a file of materials starts from
   * @throws BadInput with everything that is wrong with the request or the file
   */
  static LayupOrder of(LayupRequest request, Path folder) {
    return new Reader(request, folder).order();
  }

  private static final class Reader {
    private final LayupRequest request;
    private final Path folder;
    private final Problems problems = new Problems();

    Reader(LayupRequest request, Path folder) {
      this.request = request;
      this.folder = folder;
    }

    LayupOrder order() {
      boolean list = request.value(PLIES).filter(text -> text.contains(",")).isPresent();
      LayupWish wish =
          new LayupWish(
              name("--cloth"),
              name("--process"),
              name("--resin"),
              list ? Optional.empty() : whole(PLIES, 1, LayupWish.MOST_PLIES),
              list ? angles() : Optional.empty(),
              number("--fraction", LayupWish.LEAST_FRACTION, LayupWish.MOST_FRACTION),
              panel(),
              number("--temperature", 5, 45),
              length("--roll-width", 50, 5000),
              length("--margin", 0, 300),
              pieces(),
              whole("--strips", 0, 30),
              number("--scale", 0.01, 10),
              Prices.NONE);
      Paper paper = paper();
      MaterialBook book = book();
      problems.throwIfAny();
      return new LayupOrder(wish, book, paper);
    }

    private MaterialBook book() {
      MaterialBook book = MaterialBook.builtIn();
      Optional<String> file = request.value("--materials");
      if (file.isEmpty()) {
        return book;
      }
      try {
        return book.with(folder.resolve(file.get()));
      } catch (InvalidPathException odd) {
        problem("--materials", file.get(), "is no name of a file", "check the name");
      } catch (BadInput bad) {
        problems.add(bad);
      }
      return book;
    }

    private <T> Requested<T> wished(String option, T value) {
      return new Requested<>(value, Place.ofOption(option, ""));
    }

    private Optional<Requested<String>> name(String option) {
      return request.value(option).map(text -> wished(option, text));
    }

    private Optional<Requested<Double>> number(String option, double least, double most) {
      return figure(option, least, most, "", request.value(option).map(Printing::plain));
    }

    private Optional<Requested<Double>> length(String option, double least, double most) {
      return figure(option, least, most, " mm", request.value(option).map(Printing::millimetres));
    }

    private Optional<Requested<Double>> figure(
        String option, double least, double most, String unit, Optional<OptionalDouble> value) {
      if (value.isEmpty()) {
        return Optional.empty();
      }
      OptionalDouble figure = value.get();
      if (figure.isEmpty() || figure.getAsDouble() < least || figure.getAsDouble() > most) {
        problem(
            option,
            request.value(option).orElse(""),
            "must be from " + Numbers.brief(least, 3) + " to " + Numbers.brief(most, 3) + unit,
            "");
        return Optional.empty();
      }
      return Optional.of(wished(option, figure.getAsDouble()));
    }

    private Optional<Requested<Integer>> whole(String option, int least, int most) {
      Optional<String> text = request.value(option);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      int number = text.get().matches("[0-9]{1,4}") ? Integer.parseInt(text.get()) : most + 1;
      if (number < least || number > most) {
        String more = option.equals(PLIES) ? ", or directions such as 0,45,45,0" : "";
        problem(
            option, text.get(), "must be a whole number from " + least + " to " + most + more, "");
        return Optional.empty();
      }
      return Optional.of(wished(option, number));
    }

    private Optional<Requested<List<Double>>> angles() {
      String text = request.value(PLIES).orElseThrow();
      List<Double> angles = new ArrayList<>();
      for (String part : text.split(",", -1)) {
        OptionalDouble angle = Printing.plain(part);
        if (angle.isEmpty() || Math.abs(angle.getAsDouble()) > 90) {
          problem(
              PLIES,
              text,
              "must be a number of plies, or directions from -90 to 90 degrees with commas between",
              "write 0,45,45,0");
          return Optional.empty();
        }
        angles.add(angle.getAsDouble());
      }
      if (angles.size() > LayupWish.MOST_PLIES) {
        problem(PLIES, "", "must be at most " + LayupWish.MOST_PLIES + " plies", "");
        return Optional.empty();
      }
      return Optional.of(wished(PLIES, List.copyOf(angles)));
    }

    /** A thickness and a number of plies with an x between. */
    private Optional<Requested<Panel>> panel() {
      String option = "--panel";
      Optional<String> text = request.value(option);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      String[] parts = text.get().strip().replace('\u00d7', 'x').split("x", -1);
      OptionalDouble thickness =
          parts.length == 2 ? Printing.millimetres(parts[0]) : OptionalDouble.empty();
      boolean plies = parts.length == 2 && parts[1].strip().matches("[0-9]{1,3}");
      int count = plies ? Integer.parseInt(parts[1].strip()) : 0;
      if (thickness.isEmpty()
          || thickness.getAsDouble() <= 0
          || thickness.getAsDouble() > 100
          || count < 1
          || count > LayupWish.MOST_PLIES) {
        problem(
            option,
            text.get(),
            "must be the thickness and the plies of a panel that you made, with an x between",
            "write 5.5x20");
        return Optional.empty();
      }
      return Optional.of(wished(option, new Panel(thickness.getAsDouble(), count)));
    }

    private Optional<Requested<Pieces>> pieces() {
      String option = "--pieces";
      Optional<String> text = request.value(option);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      for (Pieces pieces : Pieces.values()) {
        if (felloe.yaml.Entry.nameOf(pieces).equals(text.get())) {
          return Optional.of(wished(option, pieces));
        }
      }
      problem(option, text.get(), "must be rectangle or outline", "");
      return Optional.empty();
    }

    private Paper paper() {
      Optional<String> name = request.value("--paper");
      Optional<Paper> paper = name.flatMap(Paper::find);
      if (name.isPresent() && paper.isEmpty()) {
        List<String> known = Paper.names();
        problem(
            "--paper",
            name.get(),
            "is not a known paper",
            Nearest.to(name.get(), known).map(near -> "did you mean '" + near + "'? ").orElse("")
                + "known: "
                + String.join(", ", known));
      }
      return paper.orElse(Paper.A4);
    }

    private void problem(String option, String value, String wanted, String cure) {
      problems.add(new Problem(Place.ofOption(option, ""), "", value, wanted, cure));
    }
  }
}

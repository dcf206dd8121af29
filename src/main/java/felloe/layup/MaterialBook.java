package felloe.layup;

import felloe.plate.BadInput;
import felloe.plate.Prices;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.yaml.BuiltIn;
import felloe.yaml.Nearest;
import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * All materials of a plan by name: those that the program knows and those in a file of the maker's
 * own, which may stand in for them.
 *
 * @param fibres fibres
 * @param cloths cloths
 * @param resins resin systems
 * @param processes ways of wetting out and pressing
 * @param sheets sheet that can be bought
 * @param prices what things cost, as far as the maker's file says
 */
public record MaterialBook(
    Map<String, Fibre> fibres,
    Map<String, Cloth> cloths,
    Map<String, ResinSystem> resins,
    Map<String, Process> processes,
    Map<String, SheetStock> sheets,
    Prices prices) {

  private static final String FOLDER = "/felloe/layup/";
  private static final List<String> FILES =
      List.of("fibres.yaml", "cloths.yaml", "resins.yaml", "processes.yaml", "sheets.yaml");

  /** Copies the maps, in the order of names. */
  public MaterialBook {
    fibres = Collections.unmodifiableMap(new TreeMap<>(fibres));
    cloths = Collections.unmodifiableMap(new TreeMap<>(cloths));
    resins = Collections.unmodifiableMap(new TreeMap<>(resins));
    processes = Collections.unmodifiableMap(new TreeMap<>(processes));
    sheets = Collections.unmodifiableMap(new TreeMap<>(sheets));
  }

  /** A book being filled. */
  static final class Builder {
    private final Map<String, Fibre> fibres = new TreeMap<>();
    private final Map<String, Cloth> cloths = new TreeMap<>();
    private final Map<String, ResinSystem> resins = new TreeMap<>();
    private final Map<String, Process> processes = new TreeMap<>();
    private final Map<String, SheetStock> sheets = new TreeMap<>();
    private Prices prices = Prices.NONE;

    Map<String, Fibre> fibres() {
      return fibres;
    }

    Map<String, Cloth> cloths() {
      return cloths;
    }

    Map<String, ResinSystem> resins() {
      return resins;
    }

    Map<String, Process> processes() {
      return processes;
    }

    Map<String, SheetStock> sheets() {
      return sheets;
    }

    Prices prices() {
      return prices;
    }

    void prices(Prices all) {
      prices = all;
    }

    MaterialBook build() {
      return new MaterialBook(fibres, cloths, resins, processes, sheets, prices);
    }
  }

  /**
   * The materials that the program knows.
   *
   * @throws BadInput when its data is damaged
   */
  public static MaterialBook builtIn() {
    return Standard.BOOK;
  }

  /** Read once, when first asked for. */
  private static final class Standard {
    static final MaterialBook BOOK = read();

    private static MaterialBook read() {
      Builder builder = new Builder();
      for (String file : FILES) {
        MaterialReader.read(BuiltIn.tree(FOLDER + file), builder);
      }
      return builder.build();
    }
  }

  /**
   * These materials and those of a file, which stand in for those of the same name.
   *
   * @throws BadInput with everything that is wrong with the file
   */
  public MaterialBook with(Path file) {
    return with(YamlTree.read(file));
  }

  /**
   * These materials and those of a file's text.
   *
   * @param name the file's name, for messages
   * @throws BadInput with everything that is wrong with it
   */
  public MaterialBook with(String name, String text) {
    return with(YamlTree.parse(name, text));
  }

  private MaterialBook with(YamlTree tree) {
    Builder builder = new Builder();
    builder.fibres().putAll(fibres);
    builder.cloths().putAll(cloths);
    builder.resins().putAll(resins);
    builder.processes().putAll(processes);
    builder.sheets().putAll(sheets);
    builder.prices(prices);
    MaterialReader.read(tree, builder);
    return builder.build();
  }

  /**
   * What a name stands for.
   *
   * @param what such as {@code cloth}, for the message
   * @throws BadInput at the place of the wish when there is none, offering the nearest name
   */
  static <T> T find(Map<String, T> all, Requested<String> name, String what) {
    T found = all.get(name.value());
    if (found == null) {
      List<String> known = List.copyOf(all.keySet());
      String near =
          Nearest.to(name.value(), known).map(n -> "did you mean '" + n + "'? ").orElse("");
      throw new BadInput(
          new Problem(
              name.place(),
              what,
              name.value(),
              "is no " + what + " that is known",
              near
                  + "known: "
                  + String.join(", ", known)
                  + "; others stand in a file of materials of your own"));
    }
    return found;
  }
}

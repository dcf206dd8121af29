package felloe.bringin;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Layers whose names say what is on them: those of the program's own drawings. */
final class Layers {

  static final String OUTLINE = "OUTLINE";
  static final String WINDOWS = "WINDOWS";
  static final String GRIP_HOLES = "GRIP_HOLES";

  /** What is a part of the plate. */
  private static final Set<String> PART =
      Set.of(OUTLINE, WINDOWS, GRIP_HOLES, "BOLT_HOLES", "BORE", "HOLES");

  /** What stands beside an outline and is no edge. */
  private static final Set<String> ASIDE =
      Set.of("CENTRES", "ENGRAVING", "WASTE_HOLES", "LEFT_OVERS", "SHEET");

  private Layers() {}

  /** The layer that a group's name means; empty for any other name. */
  static String named(String group) {
    String layer = group.toUpperCase(Locale.ROOT).replace('-', '_');
    return PART.contains(layer) || ASIDE.contains(layer) ? layer : "";
  }

  /** Chains that may be edges: without what stands aside where one layer is the outline. */
  static List<Chain> edges(List<Chain> chains) {
    return chains.stream().noneMatch(chain -> chain.layer().equals(OUTLINE))
        ? chains
        : chains.stream().filter(chain -> !ASIDE.contains(chain.layer())).toList();
  }
}

package felloe.kit;

import felloe.document.WordBlock;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a plate does under load, in words for pages. */
final class LoadBlocks {

  private static final double MOST = 99;

  private final LoadAnswer answer;

  LoadBlocks(LoadAnswer answer) {
    this.answer = answer;
  }

  /** A margin as text; beyond 99 more is of no use to tell. */
  static String margin(double margin) {
    return margin > MOST ? "over 99" : Numbers.fixed(margin, 2).replace('-', '\u2212');
  }

  /** The plate, what holds it, the cases and the screws. */
  List<WordBlock> cases() {
    List<WordBlock> blocks = new ArrayList<>();
    blocks.add(WordBlock.words("AN ESTIMATE", answer.cautions()));
    List<String> lines = new ArrayList<>();
    lines.add(
        Sentence.begin(answer.plate().stock().material().title())
            + ", "
            + answer.plyCount().map(n -> n + (n == 1 ? " ply, " : " plies, ")).orElse("")
            + Numbers.brief(answer.thickness(), 2)
            + " mm. It is "
            + answer.held()
            + ".");
    answer.assumptions().forEach(a -> lines.add("Taken: " + a + "."));
    blocks.add(WordBlock.words("Plate and hub", lines));
    blocks.add(table());
    if (!answer.screwRows().isEmpty()) {
      blocks.add(screws());
    }
    return blocks;
  }

  private WordBlock table() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("case", "", "hands mm", "most mm", "worst at", "margin", ""));
    List<String> lines = new ArrayList<>();
    Map<String, List<String>> warned = new LinkedHashMap<>();
    for (LoadAnswer.Row row : answer.rows()) {
      rows.add(
          List.of(
              row.name(),
              row.title(),
              Numbers.fixed(row.atLoad(), 2),
              Numbers.fixed(row.peak(), 2),
              at(row.at()) + " " + row.face(),
              margin(row.margin()),
              row.fall() ? "told only" : row.met() ? "" : "NOT AS WANTED"));
      lines.add(
          row.name()
              + ": "
              + row.forces()
              + ", times "
              + Numbers.brief(row.factor(), 2)
              + " for the margin.");
      row.warnings()
          .forEach(w -> warned.computeIfAbsent(w, k -> new ArrayList<>()).add(row.name()));
    }
    warned.forEach(
        (words, names) -> lines.add("Note on " + String.join(", ", names) + ": " + words + "."));
    lines.add(
        "Forces: x to the right, y up, z toward the driver. Margin: how much more the load times"
            + " its factor may grow; wanted: "
            + Numbers.brief(answer.wantedMargin(), 2)
            + answer
                .wantedDeflection()
                .map(d -> ", and no more than " + Numbers.brief(d, 2) + " mm at the hands")
                .orElse("")
            + ".");
    answer.leftOut().forEach(left -> lines.add("Left out: " + left + "."));
    answer.cure().ifPresent(cure -> lines.add("NOT AS WANTED: " + cure + "."));
    return new WordBlock("Load cases", "llrrlrl", rows, lines);
  }

  private static String at(Point p) {
    return ("(" + Numbers.fixed(p.x(), 1) + ", " + Numbers.fixed(p.y(), 1) + ")")
        .replace('-', '\u2212');
  }

  private WordBlock screws() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("screw", "tension N", "in", "shear N", "in", "clamp over tension", "bearing MPa"));
    for (LoadAnswer.ScrewRow s : answer.screwRows()) {
      rows.add(
          List.of(
              s.label(),
              Numbers.fixed(s.tension(), 0),
              s.tensionCase(),
              Numbers.fixed(s.shear(), 0),
              s.shearCase(),
              s.clampRatio().map(LoadBlocks::margin).orElse("-"),
              s.bearing().map(b -> Numbers.fixed(b, 0)).orElse("-")));
    }
    return new WordBlock(
        "Hub screws, the most in any case",
        "lrlrlrr",
        rows,
        List.of("Clamp over tension should stay well above 1, or the joint opens."));
  }

  /** The thicknesses that were tried. */
  WordBlock thicknesses() {
    boolean plies = answer.plyCount().isPresent();
    boolean cost = answer.tried().stream().anyMatch(t -> t.cost().isPresent());
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>();
    if (plies) {
      head.add("plies");
    }
    head.addAll(List.of("mm", "mass g"));
    if (cost) {
      head.add(("cost " + answer.currency()).strip());
    }
    head.addAll(List.of("margin", "in", "hands mm", "in", ""));
    rows.add(head);
    for (LoadAnswer.Tried t : answer.tried()) {
      List<String> row = new ArrayList<>();
      if (plies) {
        row.add(t.plies().map(n -> Integer.toString(n)).orElse(""));
      }
      row.add(Numbers.fixed(t.thickness(), 2));
      row.add(Numbers.fixed(t.mass(), 0));
      if (cost) {
        row.add(t.cost().isPresent() ? Numbers.fixed(t.cost().getAsDouble(), 2) : "?");
      }
      row.add(margin(t.margin()));
      row.add(t.marginCase());
      row.add(Numbers.fixed(t.deflection(), 2));
      row.add(t.deflectionCase());
      row.add((t.met() ? "does" : "does not") + (t.own() ? ", as in the shape file" : ""));
      rows.add(row);
    }
    String least =
        answer
            .least()
            .map(
                t ->
                    "The least of these that does all that is wanted: "
                        + t.plies().map(n -> n + (n == 1 ? " ply, " : " plies, ")).orElse("")
                        + Numbers.brief(t.thickness(), 2)
                        + " mm.")
            .orElse("None of these does all that is wanted.");
    String sides = (plies ? "r" : "") + "rr" + (cost ? "r" : "") + "rlrll";
    return new WordBlock("What other thicknesses do", sides, rows, List.of(least));
  }

  /** What all of it rests on. */
  List<WordBlock> after() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("figure", "value", "where it comes from"));
    answer.figures().forEach(f -> rows.add(List.of(f.get(0), f.get(1), f.get(2))));
    List<String> lines = new ArrayList<>();
    answer
        .plan()
        .cases()
        .forEach(
            one -> lines.add(one.field().load().name() + ": " + one.field().load().basis() + "."));
    answer.notes().forEach(note -> lines.add("Note: " + note + "."));
    lines.add(
        answer.triangles()
            + " triangles, "
            + answer.unknowns()
            + " unknowns. From the coarser mesh before, deflections changed by at most "
            + Numbers.fixed(100 * answer.deflectionChange(), 1)
            + " % and highest uses by "
            + Numbers.fixed(100 * answer.useChange(), 1)
            + " %"
            + (answer.settled() ? "." : ": they have NOT settled; trust deflections more."));
    return List.of(new WordBlock("What this rests on", "lrl", rows, lines));
  }
}

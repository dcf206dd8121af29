package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Column;
import felloe.document.Block.Depth;
import felloe.document.Block.Folded;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.joints.JointCheck;
import felloe.joints.JointJudgement;
import felloe.joints.JudgedScrew;
import felloe.plate.HoleRole;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The screws of hub and grips, told alike wherever they are told. */
public final class JointReport {

  private JointReport() {}

  /** Why the screws will not do, and what to do; empty when they do. */
  public static Optional<String> cure(JointJudgement judgement) {
    if (judgement.met()) {
      return Optional.empty();
    }
    JudgedScrew worst = judgement.worst().orElseThrow();
    return Optional.of(
        Phrase.of(
            "screw {} fails by {}: take larger washers, more or larger screws, or a wider circle",
            worst.hole().label(),
            worst.worst().orElseThrow().what().title()));
  }

  /** Each hub screw, and of the grip screws the tightest; none when no screw is planned. */
  public static List<Block> judged(JointJudgement judgement) {
    if (judgement.screws().isEmpty()) {
      return List.of();
    }
    List<List<Cell>> rows = new ArrayList<>();
    judgement.screws().stream()
        .filter(s -> s.joint().role() == HoleRole.BOLT)
        .forEach(s -> rows.add(row(s)));
    judgement.screws().stream()
        .filter(s -> s.joint().role() == HoleRole.GRIP && s.worst().isPresent())
        .min(Comparator.comparingDouble(s -> s.worst().orElseThrow().ratio()))
        .ifPresent(s -> rows.add(row(s)));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Screws, the most in any case at limit load"));
    blocks.add(
        Table.of(
            List.of(
                Column.words("screw"),
                Column.figures("tension", "N"),
                Column.wrapped("in"),
                Column.figures("shear", "N"),
                Column.wrapped("in"),
                Column.words("tightest"),
                Column.figures("ratio", ""),
                Column.words("")),
            rows));
    blocks.add(
        new Paragraph(
            "Ratio is what stands over what acts, with all factors: 1 is enough. Of grip screws the"
                + " tightest is told."));
    blocks.add(new Folded(Depth.ALL, List.of(checks(judgement))));
    return blocks;
  }

  private static List<Cell> row(JudgedScrew screw) {
    Optional<JointCheck> worst = screw.worst();
    return List.of(
        Cell.of(screw.hole().label()),
        Quantity.fixed(screw.tension(), 0, "N"),
        Cell.of(screw.tensionCause()),
        Quantity.fixed(screw.shear(), 0, "N"),
        Cell.of(screw.shearCause()),
        Cell.of(worst.map(c -> c.what().title()).orElse("")),
        worst.map(c -> Cell.of(LoadReport.margin(c.ratio()))).orElse(Cell.NONE),
        verdict(screw.verdict()));
  }

  private static Cell verdict(Verdict verdict) {
    return switch (verdict) {
      case PASS -> new Cell.Verdict(Tone.WELL, "");
      case CAUTION -> new Cell.Verdict(Tone.CAUTION, "caution");
      case FAIL -> new Cell.Verdict(Tone.FAIL, "NOT AS WANTED");
    };
  }

  /** Every way to give way, of the tightest screw of each joint. */
  private static Table checks(JointJudgement judgement) {
    List<List<Cell>> rows = new ArrayList<>();
    for (JointCheck.What what : JointCheck.What.values()) {
      judgement.screws().stream()
          .filter(s -> s.check(what).isPresent())
          .min(Comparator.comparingDouble(s -> s.check(what).orElseThrow().ratio()))
          .ifPresent(s -> rows.add(row(s, s.check(what).orElseThrow())));
    }
    return Table.of(
        List.of(
            Column.words("way to give way"),
            Column.words("screw"),
            Column.figures("acts", ""),
            Column.figures("stands", ""),
            Column.figures("ratio", ""),
            Column.wrapped("case"),
            Column.wrapped("basis")),
        rows);
  }

  private static List<Cell> row(JudgedScrew screw, JointCheck check) {
    int decimals = check.unit().equals("N") ? 0 : 1;
    return List.of(
        Cell.of(check.what().title()),
        Cell.of(screw.hole().label()),
        Quantity.fixed(check.demand(), decimals, check.unit()),
        Quantity.fixed(check.capacity(), decimals, check.unit()),
        Cell.of(LoadReport.margin(check.ratio())),
        Cell.of(check.cause()),
        Cell.of(check.basis()));
  }
}

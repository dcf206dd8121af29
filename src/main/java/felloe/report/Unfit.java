package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Report;
import felloe.plate.Verdict;
import felloe.service.Study;
import java.util.ArrayList;
import java.util.List;

/** What every answer about a plate begins with while the plate fails its review. */
public final class Unfit {

  private Unfit() {}

  /** The same report, with that first where the plate fails. */
  public static Report warned(Study study, Report report) {
    if (!study.fails()) {
      return report;
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Callout(
            Tone.FAIL,
            List.of(
                Phrase.of(
                    "DO NOT MAKE IT YET: the plate fails its review, by {}; felloe check tells"
                        + " which.",
                    Phrase.count(study.count(Verdict.FAIL), "finding")))));
    blocks.addAll(report.blocks());
    return new Report(report.title(), report.foot(), blocks);
  }
}

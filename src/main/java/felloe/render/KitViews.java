package felloe.render;

import felloe.out.FindingsJson;
import felloe.out.ShapeJson;
import felloe.plate.Finding;
import felloe.report.KitReport;
import felloe.service.KitOutcome;
import felloe.service.ShowOutcome;
import felloe.service.TemplateOutcome;
import felloe.template.PageSaving;
import felloe.template.PageSet;
import java.util.List;
import java.util.Optional;

/** Figures, templates and kits as JSON. */
final class KitViews {

  private KitViews() {}

  static List<View<?>> all() {
    return List.of(
        View.as(ShowOutcome.class, one -> ShapeJson.of(one.plate())),
        View.of(
            TemplateOutcome.class,
            (one, to) ->
                to.addAll(one.study().plate())
                    .add("verdict", one.study().verdict())
                    .add("template", one.tiled())
                    .add("savings", one.savings())),
        View.of(
            PageSet.class,
            (set, to) ->
                to.add("paper", set.paper())
                    .add("pages", set.pages().size())
                    .add("rows", set.grid().rows())
                    .add("columns", set.grid().columns())
                    .add("bar", set.bar())
                    .add(
                        "seam_distance",
                        Optional.of(set.seamDistance()).filter(mm -> Double.isFinite(mm)))
                    .add("cut_holes", set.cutHoles())),
        View.of(
            PageSaving.class,
            (saving, to) ->
                to.add("change", saving.change())
                    .add("paper", saving.options().paper().title())
                    .add("margin", saving.options().margin())
                    .add("pages", saving.pages())),
        View.of(
            KitOutcome.class,
            (outcome, to) -> to.addAll(outcome.templates()).add("lacks", KitReport.lacks(outcome))),
        View.of(
            KitRecord.class,
            (one, to) ->
                to.add("felloe", one.version())
                    .add("shape", ShapeJson.of(one.kit().study().plate().withoutFolders()))
                    .add(
                        "review",
                        FindingsJson.of(
                            one.kit().study().findings().stream()
                                .map(Finding::withoutFolders)
                                .toList()))
                    .add("hub_fit", one.kit().study().fit())
                    .add("template", one.kit().templates().tiled())
                    .add("lacks", KitReport.lacks(one.kit()))
                    .add("cautions", one.kit().study().cautions())));
  }
}

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
        View.of(TemplateOutcome.class)
            .with(one -> one.study().plate())
            .with("verdict", one -> one.study().verdict())
            .with("template", TemplateOutcome::tiled)
            .with("savings", TemplateOutcome::savings),
        View.of(PageSet.class)
            .with("paper", PageSet::paper)
            .with("pages", set -> set.pages().size())
            .with("rows", set -> set.grid().rows())
            .with("columns", set -> set.grid().columns())
            .with("bar", PageSet::bar)
            .with(
                "seam_distance",
                set -> Optional.of(set.seamDistance()).filter(mm -> Double.isFinite(mm)))
            .with("cut_holes", PageSet::cutHoles),
        View.of(PageSaving.class)
            .with("change", PageSaving::change)
            .with("paper", saving -> saving.options().paper().title())
            .with("margin", saving -> saving.options().margin())
            .with("pages", PageSaving::pages),
        View.of(KitOutcome.class).with(KitOutcome::templates).with("lacks", KitReport::lacks),
        View.of(KitRecord.class)
            .with("felloe", KitRecord::version)
            .with("shape", one -> ShapeJson.of(one.kit().study().plate().withoutFolders()))
            .with(
                "review",
                one ->
                    FindingsJson.of(
                        one.kit().study().findings().stream()
                            .map(Finding::withoutFolders)
                            .toList()))
            .with("hub_fit", one -> one.kit().study().fit())
            .with("template", one -> one.kit().templates().tiled())
            .with("lacks", one -> KitReport.lacks(one.kit()))
            .with("cautions", one -> one.kit().study().cautions()));
  }
}

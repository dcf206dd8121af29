package felloe.board;

import felloe.report.CardCalls;
import felloe.service.Study;
import felloe.template.TemplateOptions;
import java.util.function.Function;

/**
 * What the command line knows and the board does not: how things are called there.
 *
 * @param calls what the job card of a plate tells to type
 * @param options how templates are printed where nothing is asked for
 */
public record BoardTalk(Function<Study, CardCalls> calls, TemplateOptions options) {}

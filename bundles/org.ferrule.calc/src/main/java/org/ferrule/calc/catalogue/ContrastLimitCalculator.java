/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.FLOOR;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.thresholds.renal.ContrastLimit;
import org.ferrule.thresholds.renal.ContrastLimits;
import org.ferrule.thresholds.renal.RenalFigure;

/** Limits of contrast medium side by side. */
final class ContrastLimitCalculator extends WordedCalculator {
    private final RenalParameters asked = new RenalParameters(this, Occurrence.OPTIONAL);
    private final Parameter<BigDecimal> egfr = parameter("egfr", RenalParameters.kind(RenalFigure.EGFR),
            Occurrence.OPTIONAL, Limits.NONE);
    private final Parameter<BigDecimal> iodine = parameter("iodine", RenalParameters.kind(RenalFigure.IODINE),
            Occurrence.OPTIONAL, Limits.NONE);
    private final Parameter<BigDecimal> given = parameter("given", Kinds.quantity(ContrastLimit.VOLUME, "120 mL"),
            Occurrence.OPTIONAL, Limits.NONE);

    ContrastLimitCalculator() {
        super("contrast-limit");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Map<RenalFigure, BigDecimal> figures = asked.figures(arguments);
        arguments.find(egfr).ifPresent(rate -> figures.put(RenalFigure.EGFR, rate));
        arguments.find(iodine).ifPresent(grams -> figures.put(RenalFigure.IODINE, grams));
        Optional<BigDecimal> volume = arguments.find(given);
        ContrastLimit main = ContrastLimits.CIGARROA;
        Calculation answer = answer("limit", millilitres(main.limitMl(figures).orElseThrow()), "mL")
                .with(Detail.of("capped", main.isCapped(figures)));
        if (figures.containsKey(RenalFigure.CLEARANCE)) {
            answer = answer.with(Detail.of("clearanceMlPerMin", millilitres(figures.get(RenalFigure.CLEARANCE))));
        }
        return answer.with(Detail.groups("limits",
                ContrastLimits.published().stream().map(limit -> describe(limit, figures, volume)).toList()));
    }

    private List<Detail> describe(ContrastLimit limit, Map<RenalFigure, BigDecimal> figures,
            Optional<BigDecimal> volume) {
        List<Detail> details = new ArrayList<>();
        details.add(Detail.of("limit", say("limit." + limit.id())));
        limit.limitMl(figures).ifPresentOrElse(ml -> details.addAll(beside(limit, ml, figures, volume)),
                () -> details.add(Detail.of("needs", limit.missing(figures).stream()
                        .map(figure -> say("needs." + figure.name())).collect(Collectors.joining(", ")))));
        details.add(Detail.of("source", limit.source().citation()));
        details.add(Detail.of("mark", limit.source().mark().words()));
        return details;
    }

    private static List<Detail> beside(ContrastLimit limit, BigDecimal limitMl, Map<RenalFigure, BigDecimal> figures,
            Optional<BigDecimal> volume) {
        List<Detail> details = new ArrayList<>();
        details.add(Detail.of("limitMl", millilitres(limitMl)));
        volume.ifPresent(ml -> {
            details.add(Detail.of("leftMl", millilitres(limitMl.subtract(ml))));
            details.add(Detail.of("reached", limit.isReachedBy(ml, figures).orElseThrow()));
        });
        return details;
    }

    private static BigDecimal millilitres(BigDecimal volume) {
        return Rounded.digits(volume.doubleValue(), FLOOR);
    }
}

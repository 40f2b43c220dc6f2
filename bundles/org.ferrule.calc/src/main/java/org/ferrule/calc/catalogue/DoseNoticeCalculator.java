/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.thresholds.dose.DoseLevel;
import org.ferrule.thresholds.dose.DoseQuantity;
import org.ferrule.thresholds.dose.DoseRule;
import org.ferrule.thresholds.dose.DoseRules;

/** Which published levels a dose has reached, and which come next. */
final class DoseNoticeCalculator extends WordedCalculator {
    private final Map<DoseQuantity, Parameter<BigDecimal>> asked = new EnumMap<>(DoseQuantity.class);

    DoseNoticeCalculator() {
        super("dose-notice");
        ask("kerma", DoseQuantity.AIR_KERMA, "4.2 Gy, 4200 mGy");
        ask("skin-dose", DoseQuantity.SKIN_DOSE, "2.5 Gy, 2500 mGy");
        ask("kerma-area", DoseQuantity.KERMA_AREA, "320 Gy.cm2");
        ask("fluoroscopy", DoseQuantity.FLUOROSCOPY, "45 min");
    }

    private void ask(String name, DoseQuantity quantity, String hint) {
        asked.put(quantity, parameter(name, Kinds.quantity(quantity.scale(), hint), Occurrence.OPTIONAL,
                Limits.NONE));
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Map<DoseQuantity, BigDecimal> dose = new EnumMap<>(DoseQuantity.class);
        asked.forEach((quantity, parameter) -> arguments.find(parameter).ifPresent(v -> dose.put(quantity, v)));
        if (dose.isEmpty()) {
            throw arguments.refuse(asked.get(DoseQuantity.AIR_KERMA), "is missing: give at least one of the doses");
        }
        List<List<Detail>> reached = DoseRules.published().stream()
                .flatMap(rule -> rule.reached(dose).stream().map(notice -> reached(rule, notice))).toList();
        return answer("reached", BigDecimal.valueOf(reached.size()), "1").with(Detail.groups("reached", reached),
                Detail.groups("next", DoseRules.published().stream().flatMap(rule -> next(rule, dose)).toList()));
    }

    private List<Detail> reached(DoseRule rule, DoseRule.Notice notice) {
        List<Detail> details = new ArrayList<>(describe(rule, notice.level(), notice.level().threshold().value()));
        details.add(Detail.of("times", BigDecimal.valueOf(notice.times())));
        return sourced(details, rule);
    }

    private Stream<List<Detail>> next(DoseRule rule, Map<DoseQuantity, BigDecimal> dose) {
        return dose.keySet().stream().map(quantity -> rule.next(quantity, dose)).flatMap(Optional::stream)
                .map(notice -> {
                    BigDecimal left = notice.left().orElseThrow();
                    List<Detail> details = new ArrayList<>(
                            describe(rule, notice.level(), notice.dose().add(left)));
                    details.add(Detail.of("left", number(left, FLOOR)));
                    return sourced(details, rule);
                });
    }

    private List<Detail> describe(DoseRule rule, DoseLevel level, BigDecimal value) {
        return List.of(Detail.of("level", say("level." + rule.id() + "." + level.id())),
                Detail.of("of", asked.get(level.quantity()).name()),
                Detail.of(level.threshold().included() ? "from" : "beyond", number(value, HALF_EVEN)),
                Detail.of("unit", level.quantity().scale().unit()));
    }

    private static List<Detail> sourced(List<Detail> details, DoseRule rule) {
        details.add(Detail.of("source", rule.source().citation()));
        details.add(Detail.of("mark", rule.source().mark().words()));
        return details;
    }

    private static BigDecimal number(BigDecimal value, RoundingMode rounding) {
        return Rounded.digits(value.doubleValue(), rounding);
    }
}

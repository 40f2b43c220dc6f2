/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.input.ValueKind;
import org.ferrule.thresholds.renal.CreatinineClearance;
import org.ferrule.thresholds.renal.RenalFigure;
import org.ferrule.thresholds.renal.Sex;

/** What calculators ask to know the creatinine clearance. */
final class RenalParameters {
    private static final String MALE = "m";
    private static final String FEMALE = "f";

    private final Parameter<BigDecimal> weight;
    private final Parameter<BigDecimal> creatinine;
    private final Parameter<Integer> age;
    private final Parameter<String> sex;

    /** Asks for them; whether age and sex may be left out is for the calculator to say. */
    RenalParameters(WordedCalculator asks, Occurrence ofAgeAndSex) {
        weight = asks.parameter("weight", kind(RenalFigure.WEIGHT), Occurrence.REQUIRED, Limits.NONE);
        creatinine = asks.parameter("creatinine", kind(RenalFigure.CREATININE), Occurrence.REQUIRED, Limits.NONE);
        age = age(asks, ofAgeAndSex);
        sex = asks.parameter("sex", Kinds.oneOf(MALE, FEMALE), ofAgeAndSex, Limits.NONE);
    }

    /** Asks for an age in completed years. */
    static Parameter<Integer> age(WordedCalculator asks, Occurrence occurrence) {
        return asks.parameter("age", Kinds.COUNT, occurrence, Limits.fromTo(
                String.valueOf(CreatinineClearance.YOUNGEST), String.valueOf(CreatinineClearance.OLDEST)));
    }

    /** Returns how a figure is typed. */
    static ValueKind<BigDecimal> kind(RenalFigure figure) {
        return Kinds.quantity(figure.scale(), switch (figure) {
            case WEIGHT -> "80 kg, 176 lb";
            case CREATININE -> "1.5 mg/dL, 133 umol/L";
            case CLEARANCE, EGFR -> "45 mL/min";
            case IODINE -> "350 mg/mL";
        });
    }

    /** Returns the clearance, if age and sex are given. */
    Optional<CreatinineClearance> clearance(Arguments arguments) {
        if (arguments.has(age) != arguments.has(sex)) {
            throw arguments.refuse(arguments.has(age) ? sex : age, "is missing: age and sex go together");
        }
        return arguments.find(age).map(years -> new CreatinineClearance(years, arguments.get(weight),
                arguments.get(creatinine), arguments.get(sex).equals(FEMALE) ? Sex.FEMALE : Sex.MALE));
    }

    /** Returns what is known of the patient. */
    Map<RenalFigure, BigDecimal> figures(Arguments arguments) {
        Map<RenalFigure, BigDecimal> figures = new EnumMap<>(RenalFigure.class);
        figures.put(RenalFigure.WEIGHT, arguments.get(weight));
        figures.put(RenalFigure.CREATININE, arguments.get(creatinine));
        clearance(arguments).ifPresent(clearance -> figures.put(RenalFigure.CLEARANCE, clearance.mlPerMin()));
        return figures;
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.CalculationText;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.DetailValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits of contrast and dose beside each other, each with its source; scores without a chance. */
class LimitsSideBySideTest {
    private static final String OF_75 = "weight: 80 kg | creatinine: 1.5 mg/dL | age: 75 | sex: m";

    /** Ratios of 3.7 and 2 give 178 and 96 mL: Laskey et al. 2007, from memory; Gurm et al. 2011. */
    @Test
    void limitsOfContrastStandSideBySide() {
        Calculation answer = Given.answer("contrast-limit", OF_75 + " | egfr: 45 mL/min | iodine: 350 mg/mL");
        assertEquals(List.of("266.666", "96.2962", "144.444", "178.148", "192.592", "296.111", "80.1", "107.55",
                "141.428"), groups(answer, "limits").map(limit -> text(limit, "limitMl")).toList());
        assertTrue(groups(answer, "limits").noneMatch(limit -> text(limit, "source").isBlank()));
    }

    @Test
    void aLimitSaysWhatItNeeds() {
        Calculation answer = Given.answer("contrast-limit", "weight: 80 kg | creatinine: 1.5 mg/dL");
        assertEquals(List.of("-", "age and sex", "age and sex", "age and sex", "age and sex", "age and sex",
                "filtration rate", "filtration rate", "filtration rate, iodine"),
                groups(answer, "limits").map(limit -> text(limit, "needs")).toList());
        assertEquals(Optional.empty(), answer.detail("clearanceMlPerMin"));
    }

    @Test
    void tellsWhatIsLeftOfEachLimit() {
        Calculation answer = Given.answer("contrast-limit", OF_75 + " | given: 150 mL");
        assertEquals(List.of("no", "yes", "yes", "no", "no", "no"),
                groups(answer, "limits").map(limit -> text(limit, "reached")).limit(6).toList());
        assertEquals(List.of("116.666", "-53.7038", "-5.55556", "28.1481"),
                groups(answer, "limits").map(limit -> text(limit, "leftMl")).limit(4).toList());
    }

    /** First at 3 Gy, then every 1 Gy; substantial at 5 Gy: Stecker et al. 2009, from memory. */
    @Test
    void tellsWhatADoseHasReachedAndWhatComesNext() {
        Calculation answer = Given.answer("dose-notice", "kerma: 4200 mGy | fluoroscopy: 29 min");
        assertEquals(List.of("tell the operator 2", "stop and think: go on, or another day 1"),
                groups(answer, "reached").map(level -> text(level, "level") + " " + text(level, "times")).toList());
        assertEquals(List.of("kerma 5 left 0.8", "fluoroscopy 30 left 1", "kerma - left 0.8", "kerma 5 left 0.8",
                "fluoroscopy 60 left 31"),
                groups(answer, "next").map(level -> text(level, "of") + " "
                        + text(level, "from") + " left " + text(level, "left")).toList());
        assertEquals("5", text(groups(answer, "next").skip(2).findFirst().orElseThrow(), "beyond"));
    }

    /** At 20 mm the paper counts a point, pages that quote it do not. */
    @Test
    void tellsWhereSourcesDisagree() {
        String validity = Given.answer("occlusion-score", "length: 20 mm").basis().validity();
        assertTrue(validity.contains("20 mm") && validity.contains("disagree"), validity);
        assertTrue(Given.answer("dose-notice", "kerma: 5 Gy").basis().validity().contains("disagree"));
    }

    @Test
    void whatIsNotSaidIsNamed() {
        Calculation answer = Given.answer("occlusion-score", "length: 25 mm | bend: 10 deg");
        assertEquals(Optional.of(Detail.texts("", List.of("blunt-stump", "calcification", "failed-before")).value()),
                answer.detail("notSaid"));
        assertEquals(BigDecimal.valueOf(4), answer.value().orElseThrow(), "the most that there may be");
        Calculation all = Given.answer("calcium-score", "arc: 200 deg | thickness: 0.4 mm | length: 6 mm");
        assertEquals(Optional.empty(), all.detail("notSaid"));
        assertEquals(Optional.empty(), all.interval());
    }

    @Test
    void namesTheTraitsOfALesion() {
        Calculation answer = Given.answer("lesion-class",
                "length: 25 mm | bend: 50 deg | trait: ostial | trait: ostial");
        assertEquals(Optional.of(new DetailValue.Text("C")), answer.detail("class"));
        assertEquals(Optional.of(Detail.texts("", List.of("angulated", "ostial")).value()), answer.detail("typeB"));
        assertEquals(Optional.of(Detail.texts("", List.of("diffuse")).value()), answer.detail("typeC"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "contrast-points;age: 80 | contrast: 300 mL | egfr: 15 mL/min", "occlusion-score;",
        "calcium-score;arc: 270 deg", "lesion-class;length: 30 mm | bend: 100 deg",
        "contrast-limit;weight: 80 kg | creatinine: 1.5 mg/dL | given: 400 mL", "dose-notice;kerma: 12 Gy" })
    void noScoreAndNoLimitTellsAChance(String asked) {
        Calculation answer = Given.answer(asked.split(";")[0], asked.substring(asked.indexOf(';') + 1));
        CalculationText.write(answer).stream().filter(line -> !line.startsWith("Validity"))
                .forEach(line -> assertFalse(line.contains("%") || line.contains("risk of"), line));
        assertTrue(answer.basis().caution().contains("Not a medical device"));
    }

    private static Stream<DetailValue.Group> groups(Calculation answer, String name) {
        return ((DetailValue.Items) answer.detail(name).orElseThrow()).values().stream()
                .map(DetailValue.Group.class::cast);
    }

    /** A value of a group as text, or a dash. */
    private static String text(DetailValue.Group group, String name) {
        DetailValue value = group.values().stream().filter(detail -> detail.name().equals(name)).map(Detail::value)
                .findFirst().orElse(new DetailValue.Text("-"));
        if (value instanceof DetailValue.Number number) {
            return number.value().toPlainString();
        }
        return value instanceof DetailValue.Flag flag ? flag.value() ? "yes" : "no"
                : ((DetailValue.Text) value).value();
    }
}

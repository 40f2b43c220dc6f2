/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.thresholds.dose.DoseQuantity;
import org.ferrule.thresholds.dose.DoseRule;
import org.ferrule.thresholds.dose.DoseRules;
import org.ferrule.thresholds.lesion.CalciumScore;
import org.ferrule.thresholds.lesion.LesionClass;
import org.ferrule.thresholds.lesion.LesionTrait;
import org.ferrule.thresholds.lesion.OcclusionScore;
import org.ferrule.thresholds.renal.ContrastLimit;
import org.ferrule.thresholds.renal.ContrastLimits;
import org.ferrule.thresholds.renal.CreatinineClearance;
import org.ferrule.thresholds.renal.MehranScore;
import org.ferrule.thresholds.renal.MehranScore.Trait;
import org.ferrule.thresholds.renal.RenalFigure;
import org.ferrule.thresholds.renal.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against {@code shared/thresholds.csv}, each row with its source. */
class ThresholdTableTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/thresholds.csv", numLinesToSkip = 1, emptyValue = "")
    void agreesWithItsSource(String id, String what, String given, String expected, String source, String mark) {
        String name = what.substring(what.indexOf(' ') + 1);
        List<String> parts = Arrays.stream(given.split("\\|")).map(String::strip).toList();
        switch (what.split(" ")[0]) {
            case "clearance" -> assertNear(expected, clearance(parts));
            case "limit" -> assertNear(expected, limit(name).limitMl(figures(parts)).orElseThrow());
            case "mehran" -> assertEquals(expected, mehran(parts));
            case "dose" -> assertEquals(expected == null ? "" : expected, reached(name, parts));
            case "occlusion" -> assertEquals(expected, ends(occlusion(words(parts)).points()));
            case "calcium" -> assertEquals(expected, ends(calcium(words(parts)).points()));
            default -> assertEquals(LesionClass.valueOf(expected), lesionClass(parts));
        }
        assertTrue(!source.isBlank() && !mark.isBlank(), id);
    }

    /** Rounded down, so it may lie up to one unit of the table's last digit below. */
    private static void assertNear(String expected, BigDecimal actual) {
        BigDecimal table = new BigDecimal(expected);
        assertTrue(table.subtract(actual).abs().compareTo(table.ulp()) <= 0, table + ", but was " + actual);
    }

    private static BigDecimal clearance(List<String> parts) {
        String[] who = parts.get(0).split(" ");
        return new CreatinineClearance(Integer.parseInt(who[0]), RenalFigure.WEIGHT.scale().read(parts.get(1)),
                RenalFigure.CREATININE.scale().read(parts.get(2)), who[1].equals("f") ? Sex.FEMALE : Sex.MALE)
                .mlPerMin();
    }

    private static ContrastLimit limit(String id) {
        return ContrastLimits.published().stream().filter(limit -> limit.id().equals(id)).findFirst().orElseThrow();
    }

    private static Map<RenalFigure, BigDecimal> figures(List<String> parts) {
        Map<RenalFigure, BigDecimal> figures = new EnumMap<>(RenalFigure.class);
        parts.stream().map(part -> part.split(" ", 2)).forEach(part -> {
            RenalFigure figure = RenalFigure.valueOf(part[0].toUpperCase(Locale.ROOT));
            figures.put(figure, figure.scale().read(part[1]));
        });
        return figures;
    }

    private static String mehran(List<String> parts) {
        Map<Trait, Boolean> known = new EnumMap<>(Trait.class);
        List<String> there = parts.size() < 4 ? List.of() : List.of(parts.get(3).split(" "));
        Arrays.stream(Trait.values()).forEach(
                trait -> known.put(trait, there.contains(trait.name().toLowerCase(Locale.ROOT).replace('_', '-'))));
        Points points = MehranScore.points(Integer.parseInt(parts.get(0)), figures(List.of(parts.get(1))),
                new BigDecimal(parts.get(2)), known);
        assertEquals(points.least(), points.most());
        return points.least() + " " + MehranScore.Band.of(points.least());
    }

    private static String reached(String name, List<String> parts) {
        Map<DoseQuantity, BigDecimal> dose = new EnumMap<>(DoseQuantity.class);
        parts.stream().map(part -> part.split(" ", 2)).forEach(part -> {
            DoseQuantity quantity = DoseQuantity.valueOf(part[0]);
            dose.put(quantity, quantity.scale().read(part[1]));
        });
        DoseRule rule = DoseRules.published().stream().filter(r -> r.id().equals(name)).findFirst().orElseThrow();
        return rule.reached(dose).stream().map(notice -> notice.level().id() + " " + notice.times())
                .collect(Collectors.joining("; "));
    }

    private static Map<String, String> words(List<String> parts) {
        return parts.stream().map(part -> part.split(" ")).collect(Collectors.toMap(part -> part[0], part -> part[1]));
    }

    private static OcclusionScore occlusion(Map<String, String> words) {
        return new OcclusionScore(flag(words, "blunt"), flag(words, "calcium"), number(words, "bend"),
                number(words, "length"), flag(words, "failed"));
    }

    private static CalciumScore calcium(Map<String, String> words) {
        return new CalciumScore(number(words, "arc"), number(words, "thickness"), number(words, "length"));
    }

    private static LesionClass lesionClass(List<String> parts) {
        Set<LesionTrait> traits = EnumSet.noneOf(LesionTrait.class);
        LesionTrait.ofLength(new BigDecimal(parts.get(0).split(" ")[1])).ifPresent(traits::add);
        LesionTrait.ofBend(new BigDecimal(parts.get(1).split(" ")[1])).ifPresent(traits::add);
        parts.stream().skip(2).map(LesionTrait::valueOf).forEach(traits::add);
        return LesionClass.of(traits);
    }

    private static Optional<Boolean> flag(Map<String, String> words, String name) {
        return Optional.ofNullable(words.get(name)).map("yes"::equals);
    }

    private static Optional<BigDecimal> number(Map<String, String> words, String name) {
        return Optional.ofNullable(words.get(name)).map(BigDecimal::new);
    }

    private static String ends(Points points) {
        return points.least() + ".." + points.most();
    }
}

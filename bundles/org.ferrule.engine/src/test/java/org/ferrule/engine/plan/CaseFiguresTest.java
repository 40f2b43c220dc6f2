/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

import org.ferrule.model.LesionTrait;
import org.ferrule.thresholds.lesion.LesionClass;
import org.ferrule.thresholds.renal.ContrastLimits;
import org.ferrule.thresholds.renal.RenalFigure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CaseFiguresTest {

    private static CaseFigures figures(String keys) {
        return new CaseFigures(PlanDocuments.file(keys));
    }

    /** Cockcroft and Gault, Nephron 1976;16:31, from memory; computed: 75 years, 80 kg, 1.5 mg/dL give 48.15 mL/min. */
    @ParameterizedTest
    @CsvSource({ "80 kg, 1.5 mg/dL", "80 kg, 132.6 umol/L" })
    void readsBothUnitsOfCreatinine(String weight, String creatinine) {
        CaseFigures figures = figures("'patient':{'age':75,'weight':'" + weight + "','creatinine':'" + creatinine
                + "','sex':'male'}");
        assertEquals(48.15, figures.clearance().orElseThrow().mlPerMin().doubleValue(), 0.005);
    }

    /** Cigarroa et al., Am J Med 1989;86:649-652: 80 kg and 1.5 mg/dL allow 266.7 mL. */
    @Test
    void limitsContrastAsPublished() {
        CaseFigures figures = figures("'patient':{'weight':'80 kg','creatinine':'1.5 mg/dL'}");
        assertEquals(266.7, ContrastLimits.CIGARROA.limitMl(figures.renal()).orElseThrow().doubleValue(), 0.05);
        assertEquals(Set.of(RenalFigure.WEIGHT, RenalFigure.CREATININE), figures.renal().keySet());
    }

    @ParameterizedTest
    @CsvSource({ "'weight':'8 kg'", "'weight':'80'", "'creatinine':'133 mg/dL'" })
    void knowsNothingOfWhatIsImplausible(String keys) {
        assertTrue(figures("'patient':{" + keys.replace('"', '\'') + "}").renal().isEmpty());
    }

    /** Morino et al., JACC Cardiovasc Interv 2011;4:213-221: a point for each of five traits. */
    @Test
    void countsThePointsOfAnOcclusion() {
        CaseFigures figures = figures("'lesion':{'length':'24 mm'},'measures':{'bluntStump':true,"
                + "'calcification':false,'bendDegrees':50}");
        assertEquals(3, figures.occlusion().points().least());
        assertEquals(List.of("failed-before"), figures.occlusion().points().unknown());
    }

    /** Fujino et al., EuroIntervention 2018: more than 180 degrees 2, thicker than 0.5 mm 1, longer than 5 mm 1. */
    @Test
    void countsThePointsOfCalcium() {
        CaseFigures figures = figures("'measures':{'calciumDegrees':270,'calciumThickness':'0.7 mm',"
                + "'calciumLength':'5 mm'}");
        assertEquals(3, figures.calcium().points().least());
        assertEquals(new BigDecimal("0.7"), figures.calcium().thicknessMm().orElseThrow());
    }

    /** The task force of 1988: more than 20 mm, or occluded for more than three months, is type C. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            'lesion':{'length':'9 mm'}                                         | A
            'lesion':{'length':'12 mm'}                                        | B1
            'lesion':{'length':'12 mm'},'measures':{'bendDegrees':60}          | B2
            'lesion':{'length':'21 mm'}                                        | C
            'measures':{'occlusionMonths':2}                                   | B1
            'measures':{'occlusionMonths':14}                                  | C
            'measures':{'traits':['degenerated graft']}                        | C
            'measures':{'calcification':true,'traits':['ostial']}              | B2
            """)
    void classesALesionAsPublished(String keys, LesionClass expected) {
        assertEquals(expected, LesionClass.of(figures(keys).traits()));
    }

    @ParameterizedTest
    @EnumSource
    void knowsEveryTraitThatADocumentCanName(LesionTrait trait) {
        assertEquals(1, figures("'measures':{'traits':['" + trait.getLiteral() + "']}").traits().size());
    }
}

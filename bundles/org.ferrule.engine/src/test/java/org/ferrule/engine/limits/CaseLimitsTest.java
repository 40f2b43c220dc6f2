/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

import org.ferrule.chart.words.Phrases;
import org.ferrule.engine.limits.CaseLimit.Kind;
import org.ferrule.engine.plan.CaseAssembler;
import org.ferrule.engine.plan.PlanDocuments;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.model.CaseDocument;
import org.ferrule.thresholds.dose.DoseQuantity;
import org.ferrule.thresholds.dose.DoseRules;
import org.ferrule.thresholds.lesion.LesionTrait;
import org.ferrule.thresholds.lesion.OcclusionScore;
import org.ferrule.thresholds.renal.ContrastLimits;
import org.ferrule.thresholds.renal.RenalFigure;
import org.junit.jupiter.api.Test;

class CaseLimitsTest {
    private static final String PATIENT = ",'patient':{'age':75,'weight':'80 kg','creatinine':'1.5 mg/dL','sex':'male'}";
    private static final String MEASURES = ",'measures':{'bluntStump':true,'calcification':false,'bendDegrees':50,"
            + "'calciumDegrees':270}";

    private static CaseDocument file(String more) {
        return PlanDocuments.file(PlanDocuments.CASE + more);
    }

    private static Plan plan(CaseDocument file) {
        return new CaseAssembler(List.of(new PassageCheck())).assemble(file,
                PlanDocuments.catalogue(PlanDocuments.DEVICES), PlanDocuments.rules(),
                PlanDocuments.techniques(PlanDocuments.TECHNIQUES), PlanDocuments.shelf(PlanDocuments.SHELF),
                LocalDate.of(2026, 5, 5)).plan();
    }

    private static List<String> lines(String more, Kind kind) {
        CaseDocument file = file(more);
        return CaseLimits.of(file, plan(file)).stream().filter(limit -> limit.kind() == kind).map(CaseLimit::line)
                .toList();
    }

    /** Cigarroa et al., Am J Med 1989;86:649-652: 80 kg and 1.5 mg/dL allow 266.7 mL; Cockcroft and Gault: 48.15. */
    @Test
    void eachContrastLimitStandsThereWithItsSourceTheLowestFirst() {
        List<String> lines = lines(PATIENT, Kind.CONTRAST);
        assertTrue(lines.get(0).startsWith("Creatinine clearance 48 mL/min"), lines::toString);
        assertTrue(lines.get(1).startsWith("96 mL: 2 x creatinine clearance \u2013 Gurm et al."), lines::toString);
        assertTrue(lines.stream().anyMatch(line -> line
                .startsWith("266 mL: 5 mL x kg / creatinine, at most 300 mL \u2013 Cigarroa et al., Am J Med 1989")),
                lines::toString);
        assertEquals("3 published limits need what is not stated: filtration rate, iodine in the contrast medium",
                lines.get(lines.size() - 1));
    }

    @Test
    void withoutFiguresOnlyWhatIsMissingIsTold() {
        assertEquals(1, lines("", Kind.CONTRAST).size());
        assertTrue(lines("", Kind.CONTRAST).get(0).contains("age and sex"), lines("", Kind.CONTRAST)::toString);
        assertEquals(List.of(), lines(",'patient':{}", Kind.LESION).stream().filter(l -> l.contains("J-CTO")).toList());
    }

    @Test
    void whatIsReachedSaysSoAndWhatStepsWillReachTells() {
        String spent = PATIENT + ",'spent':{'contrastMl':96.5,'doseMgy':3000}";
        assertTrue(lines(spent, Kind.CONTRAST).get(1).contains("\u2013 reached \u2013"),
                lines(spent, Kind.CONTRAST)::toString);
        assertTrue(lines(spent, Kind.DOSE).get(0).startsWith("From 3 Gy of air kerma, and every 1 Gy more: tell the "
                + "operator \u2013 reached"), lines(spent, Kind.DOSE)::toString);
        String soon = PATIENT + ",'spent':{'contrastMl':90}";
        assertTrue(lines(soon, Kind.CONTRAST).get(1).contains("reached with step "),
                lines(soon, Kind.CONTRAST)::toString);
    }

    /** Morino et al. 2011: a point each; Fujino et al. 2018: more than 180 degrees 2 points. */
    @Test
    void scoresNameWhatIsNotStatedAndAreNoChances() {
        List<String> lines = lines(MEASURES, Kind.LESION);
        assertTrue(lines.get(0).startsWith("J-CTO score 2 to 3 of 5, difficult to very difficult; an order, not a "
                + "chance; not stated: earlier failed attempt \u2013 Morino"), lines::toString);
        assertTrue(lines.get(1).startsWith("Calcium score 2 to 4 of 4"), lines::toString);
        assertTrue(lines.get(2).startsWith("Class B2 (1988): "), lines::toString);
        lines.forEach(line -> assertFalse(line.contains("%"), line));
    }

    @Test
    void inBriefTheSpanOfTheLimitsStandsThere() {
        CaseDocument file = file(PATIENT + MEASURES);
        List<String> brief = CaseLimits.brief(file, plan(file));
        assertTrue(brief.stream().anyMatch(line -> line.startsWith("Contrast limits, on which the sources disagree: "
                + "from 96 mL (2 x creatinine clearance; Gurm et al.")), brief::toString);
        assertTrue(brief.stream().anyMatch(line -> line.startsWith("Next level of air kerma 3 Gy")), brief::toString);
        assertTrue(brief.stream().anyMatch(line -> line.startsWith("J-CTO score")), brief::toString);
    }

    @Test
    void everythingHasWords() {
        Phrases phrases = Phrases.beside(CaseLimits.class, "limits");
        ContrastLimits.published().forEach(limit -> phrases.get("limit." + limit.id()));
        Arrays.stream(RenalFigure.values()).forEach(figure -> phrases.get("figure." + figure));
        Arrays.stream(LesionTrait.values()).forEach(trait -> phrases.get("trait." + trait));
        Arrays.stream(OcclusionScore.Grade.values()).forEach(grade -> phrases.get("grade." + grade));
        DoseRules.published().forEach(rule -> rule.levels().stream()
                .filter(level -> level.quantity() == DoseQuantity.AIR_KERMA)
                .forEach(level -> phrases.get("dose." + rule.id() + "." + level.id())));
    }
}

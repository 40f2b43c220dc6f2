/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.model.CaseDocument;
import org.ferrule.model.LesionMeasures;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.PatientFigures;
import org.ferrule.quantity.Dimension;
import org.ferrule.thresholds.lesion.CalciumScore;
import org.ferrule.thresholds.lesion.LesionTrait;
import org.ferrule.thresholds.lesion.OcclusionScore;
import org.ferrule.thresholds.renal.CreatinineClearance;
import org.ferrule.thresholds.renal.RenalFigure;
import org.ferrule.thresholds.renal.Sex;

/**
 * What published scores and limits ask, as a case states it. What is not stated, cannot be read or is not plausible is
 * not known; validation tells of the last two.
 */
public final class CaseFigures {
    private static final BigDecimal MONTHS = BigDecimal.valueOf(3);
    private static final BigDecimal STRAIGHT = BigDecimal.valueOf(180);
    private static final BigDecimal CIRCLE = BigDecimal.valueOf(360);

    private final LesionMeasures measures;
    private final PatientFigures patient;
    private final Optional<BigDecimal> lengthMm;

    /** The figures of that case as it stands now. */
    public CaseFigures(CaseDocument file) {
        ModelFactory factory = ModelFactory.eINSTANCE;
        measures = file.getMeasures() == null ? factory.createLesionMeasures() : file.getMeasures();
        patient = file.getPatient() == null ? factory.createPatientFigures() : file.getPatient();
        lengthMm = Optional.ofNullable(file.getLesion()).flatMap(lesion -> mm(lesion.getLength()));
    }

    /** The score of an occlusion. */
    public OcclusionScore occlusion() {
        return new OcclusionScore(said(measures.isSetBluntStump(), measures.isBluntStump()), calcification(), bend(),
                lengthMm, said(measures.isSetFailedBefore(), measures.isFailedBefore()));
    }

    /** The score of calcium. */
    public CalciumScore calcium() {
        return new CalciumScore(within(measures.getCalciumDegrees(), CIRCLE), mm(measures.getCalciumThickness()),
                mm(measures.getCalciumLength()));
    }

    /** What a lesion's class is made of, as far as it is stated. */
    public Set<LesionTrait> traits() {
        Set<LesionTrait> traits = EnumSet.noneOf(LesionTrait.class);
        measures.getTraits().forEach(trait -> traits.add(LesionTrait.valueOf(trait.name())));
        lengthMm.flatMap(LesionTrait::ofLength).ifPresent(traits::add);
        bend().flatMap(LesionTrait::ofBend).ifPresent(traits::add);
        calcification().filter(Boolean::booleanValue).ifPresent(c -> traits.add(LesionTrait.CALCIFIED));
        occlusion(traits);
        return traits;
    }

    private void occlusion(Set<LesionTrait> traits) {
        BigDecimal months = measures.getOcclusionMonths();
        if (months != null && months.compareTo(MONTHS) != 0) {
            traits.add(months.compareTo(MONTHS) < 0 ? LesionTrait.RECENT_OCCLUSION : LesionTrait.OLD_OCCLUSION);
        }
    }

    /** What limits of contrast medium need, with the clearance where the rest is stated, in the units of the scales. */
    public Map<RenalFigure, BigDecimal> renal() {
        Map<RenalFigure, BigDecimal> figures = new EnumMap<>(RenalFigure.class);
        read(RenalFigure.WEIGHT, patient.getWeight()).ifPresent(kg -> figures.put(RenalFigure.WEIGHT, kg));
        read(RenalFigure.CREATININE, patient.getCreatinine())
                .ifPresent(level -> figures.put(RenalFigure.CREATININE, level));
        clearance().ifPresent(c -> figures.put(RenalFigure.CLEARANCE, c.mlPerMin()));
        return figures;
    }

    /** The clearance, where all that it needs is stated. */
    public Optional<CreatinineClearance> clearance() {
        Optional<BigDecimal> weight = read(RenalFigure.WEIGHT, patient.getWeight());
        Optional<BigDecimal> creatinine = read(RenalFigure.CREATININE, patient.getCreatinine());
        if (weight.isEmpty() || creatinine.isEmpty() || patient.getAge() == null || !patient.isSetSex()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new CreatinineClearance(patient.getAge(), weight.get(), creatinine.get(),
                    patient.getSex() == org.ferrule.model.Sex.FEMALE ? Sex.FEMALE : Sex.MALE));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Optional<BigDecimal> read(RenalFigure figure, String text) {
        try {
            return Optional.ofNullable(text).map(figure.scale()::read);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Optional<Boolean> calcification() {
        return said(measures.isSetCalcification(), measures.isCalcification());
    }

    private Optional<BigDecimal> bend() {
        return within(measures.getBendDegrees(), STRAIGHT);
    }

    private static Optional<BigDecimal> within(BigDecimal degrees, BigDecimal most) {
        return Optional.ofNullable(degrees).filter(d -> d.signum() >= 0 && d.compareTo(most) <= 0);
    }

    private static Optional<Boolean> said(boolean isSaid, boolean value) {
        return isSaid ? Optional.of(value) : Optional.empty();
    }

    private static Optional<BigDecimal> mm(Dimension printed) {
        return Optional.ofNullable(printed).filter(Dimension::readable)
                .map(d -> BigDecimal.valueOf(d.label().mm()));
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.PatientFigures;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;
import org.ferrule.thresholds.Scale;
import org.ferrule.thresholds.renal.CreatinineClearance;
import org.ferrule.thresholds.renal.RenalFigure;

/** The figures of a patient can be read and are plausible: a number in the wrong unit is likelier than such a patient. */
final class PatientCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof PatientFigures patient) {
            check(patient, Literals.PATIENT_FIGURES__WEIGHT, RenalFigure.WEIGHT.scale(), examination);
            check(patient, Literals.PATIENT_FIGURES__CREATININE, RenalFigure.CREATININE.scale(), examination);
            checkAge(patient, examination);
        }
    }

    private static void check(PatientFigures patient, EAttribute feature, Scale scale, Examination examination) {
        String text = (String) patient.eGet(feature);
        if (text != null) {
            try {
                scale.read(text);
            } catch (IllegalArgumentException e) {
                examination.add(ProblemCode.IMPLAUSIBLE_PATIENT, patient, feature, text, e.getMessage());
            }
        }
    }

    private static void checkAge(PatientFigures patient, Examination examination) {
        Integer age = patient.getAge();
        if (age != null && (age < CreatinineClearance.YOUNGEST || age > CreatinineClearance.OLDEST)) {
            examination.add(ProblemCode.IMPLAUSIBLE_PATIENT, patient, Literals.PATIENT_FIGURES__AGE, age.toString(),
                    "limits of contrast medium are for " + CreatinineClearance.YOUNGEST + " to "
                            + CreatinineClearance.OLDEST + " years");
        }
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Features;

/** Dates are ISO 8601, in the extended form: 2026-03-01, and where a part may do also 2026-03 or 2026. */
final class DateCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        Features.annotated(object.eClass(), "text").forEach((feature, form) -> {
            if (object.eGet(feature) instanceof String text) {
                check(object, feature, text, form.equals("date"), examination);
            }
        });
    }

    private static void check(EObject object, EStructuralFeature feature, String text, boolean whole,
            Examination examination) {
        boolean valid = parses(text, LocalDate::parse)
                || !whole && (parses(text, YearMonth::parse) || text.length() == 4 && parses(text, Year::parse));
        if (!valid) {
            examination.add(ProblemCode.BAD_DATE, object, feature, text,
                    whole ? "year-month-day, such as 2026-03-01" : "year-month-day, year-month or year");
        }
    }

    private static boolean parses(String text, Consumer<String> parser) {
        try {
            parser.accept(text);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }
}

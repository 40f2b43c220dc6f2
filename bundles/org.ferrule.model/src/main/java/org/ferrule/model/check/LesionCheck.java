/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.FitChart;
import org.ferrule.model.Lesion;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.VesselPath;
import org.ferrule.quantity.Length;

/** The lesion of a chart or of a case lies on its vessel path, if the lengths of all of its segments are known. */
final class LesionCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof FitChart chart) {
            check(chart.getPath(), chart.getLesion(), examination);
        }
        if (object instanceof CaseDocument file) {
            check(file.getPath(), file.getLesion(), examination);
        }
    }

    private static void check(VesselPath vessel, Lesion lesion, Examination examination) {
        if (vessel != null && lesion != null) {
            Optional<Length> path = sum(vessel.getSegments().stream()
                    .map(segment -> Lengths.of(segment.getLength())).toList());
            Optional<Length> end = sum(List.of(Lengths.of(lesion.getAt()), Lengths.of(lesion.getLength())));
            if (path.isPresent() && end.isPresent() && end.get().compareTo(path.get()) > 0) {
                examination.add(ProblemCode.LESION_BEYOND_PATH, lesion, Literals.LESION__AT, Lengths.mm(end.get()),
                        Lengths.mm(path.get()));
            }
        }
    }

    private static Optional<Length> sum(List<Optional<Length>> lengths) {
        return lengths.stream().reduce(Optional.of(Length.ZERO), (a, b) -> a.flatMap(x -> b.map(x::plus)));
    }
}

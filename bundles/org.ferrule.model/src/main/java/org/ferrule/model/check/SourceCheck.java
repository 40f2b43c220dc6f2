/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.BenchResult;
import org.ferrule.model.Device;
import org.ferrule.model.Features;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.model.RuleSet;
import org.ferrule.model.Sourced;

/** Devices with figures, bench results and rules say where they come from. Told once for each. */
final class SourceCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        boolean missing = object instanceof Device device && hasFigureWithoutSource(examination.resolved(device))
                || object instanceof Sourced sourced && isOnItsOwn(sourced) && sourced.getSource() == null;
        if (missing) {
            examination.add(ProblemCode.MISSING_SOURCE, object, null);
        }
    }

    private static boolean isOnItsOwn(Sourced object) {
        return object instanceof BenchResult || object.eContainer() instanceof RuleSet;
    }

    private static boolean hasFigureWithoutSource(ResolvedDevice resolved) {
        List<EObject> parts = new ArrayList<>(List.of(resolved.device()));
        EcoreUtil.getAllContents(resolved.device(), true).forEachRemaining(part -> parts.add((EObject) part));
        return parts.stream().anyMatch(part -> figures(part).anyMatch(f -> resolved.source(part, f).isEmpty()));
    }

    private static Stream<EStructuralFeature> figures(EObject part) {
        return part.eClass().getEAllStructuralFeatures().stream()
                .filter(feature -> part.eIsSet(feature) && Features.isFigure(feature));
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.fix;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import org.ferrule.model.ElementPath;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.DimensionRepair;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.problem.ProblemMarkers;

/** Offers what the dimension at a marker could mean instead. */
public class DimensionFixes implements IMarkerResolutionGenerator2 {

    /** A dimension that a marker is about. */
    record Place(EObject object, EStructuralFeature feature) {

        static Optional<Place> of(EObject document, IMarker marker) {
            return ElementPath.resolve(document, marker.getAttribute(ProblemMarkers.PATH, ""))
                    .map(object -> new Place(object, object.eClass().getEStructuralFeature(
                            marker.getAttribute(ProblemMarkers.FEATURE, ""))))
                    .filter(place -> place.feature != null);
        }

        private List<DimensionRepair> repairs() {
            return object.eGet(feature) instanceof Dimension dimension
                    ? DimensionRepair.of(dimension.text(), Features.figureKind(feature)) : List.of();
        }
    }

    @Override
    public boolean hasResolutions(IMarker marker) {
        return !repairs(marker).isEmpty();
    }

    @Override
    public IMarkerResolution[] getResolutions(IMarker marker) {
        return repairs(marker).stream().map(DimensionFix::new).toArray(IMarkerResolution[]::new);
    }

    private static List<DimensionRepair> repairs(IMarker marker) {
        try {
            return marker.exists() && marker.getResource() instanceof IFile file && file.exists()
                    ? Services.get(DocumentRecords.class).of(file).document()
                            .flatMap(document -> Place.of(document, marker)).map(Place::repairs).orElse(List.of())
                    : List.of();
        } catch (CoreException e) {
            ILog.of(DimensionFixes.class).log(e.getStatus());
            return List.of();
        }
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.next;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Balloon;
import org.ferrule.model.ComplianceRow;
import org.ferrule.model.Device;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.FigureKind;
import org.ferrule.ui.look.ModelLabels;

/**
 * A figure that the former size states for itself, and that may hold for the next size or not.
 *
 * @param object what states it
 * @param feature the figure, or a table of figures
 * @param where the figure in words
 * @param text what is stated
 */
record Keepsake(EObject object, EStructuralFeature feature, String where, String text) {

    /** These change from size to size: an old one in a new sheet would be believed. */
    private static final Set<FigureKind> OF_THE_SIZE = Set.of(FigureKind.OUTER_DIAMETER, FigureKind.INNER_DIAMETER);

    static List<Keepsake> of(Device device, List<SizeField> asked) {
        List<Keepsake> found = new ArrayList<>();
        collect(device, device, asked, found);
        Iterator<EObject> parts = device.eAllContents();
        parts.forEachRemaining(part -> collect(device, part, asked, found));
        return found;
    }

    private static void collect(Device device, EObject object, List<SizeField> asked, List<Keepsake> found) {
        if (object instanceof Balloon balloon && !balloon.getCompliance().isEmpty()) {
            found.add(new Keepsake(object, Literals.BALLOON__COMPLIANCE, "Compliance table",
                    balloon.getCompliance().size() + " rows"));
        }
        for (EStructuralFeature feature : Features.inDocumentOrder(object.eClass())) {
            boolean isAsked = asked.stream().anyMatch(field -> field.feature() == feature
                    && field.holder(device).filter(object::equals).isPresent());
            if (feature instanceof EAttribute && Features.isFigure(feature) && object.eIsSet(feature) && !isAsked
                    && !(object instanceof ComplianceRow)) {
                found.add(new Keepsake(object, feature, where(device, object, feature),
                        String.valueOf(object.eGet(feature))));
            }
        }
    }

    private static String where(Device device, EObject object, EStructuralFeature feature) {
        EStructuralFeature name = object.eClass().getEStructuralFeature("name");
        Object own = name == null || object == device ? null : object.eGet(name);
        String part = object == device ? "" : ModelLabels.type(object.eClass()) + (own == null ? "" : " " + own) + ": ";
        return part + ModelLabels.feature(feature);
    }

    /** Tells whether it is likely to hold for the next size too: where something is, not how thick it is. */
    boolean usuallyHolds() {
        Optional<FigureKind> kind = Features.figureKind(feature);
        return feature.getEType() == Literals.DIMENSION && kind.filter(k -> !OF_THE_SIZE.contains(k)).isPresent();
    }
}

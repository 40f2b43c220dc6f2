/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Bend;
import org.ferrule.model.BendPlace;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.VesselSegment;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * A bend has a radius, and its vessel a diameter that such a bend can have: no more than twice the radius, or the inner
 * side of the vessel would lie beyond the centre of the bend. The lumen of a device has no other diameter than its own.
 */
final class BendCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Bend bend) {
            checkMoreThanZero(bend, Literals.BEND__RADIUS, examination);
            checkMoreThanZero(bend, Literals.BEND__VESSEL_DIAMETER, examination);
            checkPlace(bend, examination);
        }
        if (object instanceof VesselSegment segment) {
            checkWidth(segment, Literals.VESSEL_SEGMENT__DIAMETER, segment.getBendRadius(), examination);
        }
    }

    private static void checkPlace(Bend bend, Examination examination) {
        if (bend.getWhere() == BendPlace.VESSEL) {
            checkWidth(bend, Literals.BEND__VESSEL_DIAMETER, bend.getRadius(), examination);
        } else if (bend.getVesselDiameter() != null) {
            examination.add(ProblemCode.CONDITIONS_EXCLUDE, bend, Literals.BEND__VESSEL_DIAMETER,
                    Literals.BEND__VESSEL_DIAMETER.getName(), BendPlace.LUMEN.getLiteral());
        }
    }

    private static void checkMoreThanZero(Bend bend, EAttribute feature, Examination examination) {
        Dimension printed = (Dimension) bend.eGet(feature);
        if (Lengths.of(printed).filter(Length.ZERO::equals).isPresent()) {
            examination.add(ProblemCode.NOT_MORE_THAN_ZERO, bend, feature, printed.text());
        }
    }

    private static void checkWidth(EObject bent, EAttribute feature, Dimension radius, Examination examination) {
        Dimension vessel = (Dimension) bent.eGet(feature);
        Optional<Length> most = Lengths.of(radius).map(r -> r.times(2));
        if (Lengths.of(vessel).filter(width -> most.isPresent() && width.compareTo(most.get()) > 0).isPresent()) {
            examination.add(ProblemCode.VESSEL_WIDER_THAN_BEND, bent, feature, vessel.text(), radius.text());
        }
    }
}

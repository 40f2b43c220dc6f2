/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Role;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** A role asks for devices or for equipment, and never for both. */
final class RoleCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Role role) {
            boolean device = !role.getKinds().isEmpty() || !role.getDevices().isEmpty();
            if (device && role.getEquipment() != null) {
                examination.add(ProblemCode.DEVICE_AND_EQUIPMENT, role, Literals.ROLE__EQUIPMENT);
            } else if (!device && role.getEquipment() == null) {
                examination.add(ProblemCode.ROLE_WITHOUT_DEVICE, role, Literals.ROLE__KINDS);
            }
            BigDecimal from = role.getToVesselFrom();
            BigDecimal to = role.getToVesselTo();
            if (from != null && to != null && from.compareTo(to) > 0) {
                examination.add(ProblemCode.BAND_OUT_OF_ORDER, role, Literals.ROLE__TO_VESSEL_TO,
                        from.toPlainString(), to.toPlainString());
            }
        }
    }
}

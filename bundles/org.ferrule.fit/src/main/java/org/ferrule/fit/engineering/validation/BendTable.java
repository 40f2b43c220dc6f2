/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.Optional;

import org.ferrule.geometry.RigidInBend;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Rigid segments in bends. */
final class BendTable implements TableCheck {

    @Override
    public Optional<CheckResult> check(CheckRow row) {
        Length device = mm(row, "deviceMm");
        Length computed = switch (row.get("asked")) {
            case "longest" -> RigidInBend.longest(mm(row, "lumenMm"), device, mm(row, "radiusMm"));
            case "lumen" -> RigidInBend.lumenNeeded(device, mm(row, "lengthMm"), mm(row, "radiusMm"));
            default -> RigidInBend.leastRadius(mm(row, "lumenMm"), device, mm(row, "lengthMm")).orElseThrow();
        };
        String subject = row.get("asked") + ": device " + row.get("deviceMm") + " mm, lumen " + row.get("lumenMm")
                + " mm, radius " + row.get("radiusMm") + " mm, length " + row.get("lengthMm") + " mm";
        return Optional.of(CheckResult.of(row, subject.replaceAll(", \\w+  mm", ""),
                Comparison.toLastDigit(row.get("expectedMm"), computed.mm())));
    }

    private static Length mm(CheckRow row, String column) {
        return Length.of(row.get(column), LengthUnit.MILLIMETRE);
    }
}

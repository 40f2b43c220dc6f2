/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;

import org.ferrule.model.Balloon;
import org.ferrule.model.ComplianceRow;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.quantity.Pressure;

/** Pressures rise in a compliance table, diameters do not fall, and the burst pressure is no less than the nominal. */
final class BalloonCheck implements DeviceCheck {

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        Balloon balloon = resolved.device().getBalloon();
        if (balloon != null) {
            checkBurst(resolved, balloon, examination);
            List<ComplianceRow> rows = balloon.getCompliance();
            for (int i = 1; i < rows.size(); i++) {
                checkRow(resolved, rows.get(i - 1), rows.get(i), examination);
            }
        }
    }

    private static void checkBurst(ResolvedDevice resolved, Balloon balloon, Examination examination) {
        Pressure burst = balloon.getRatedBurstPressure();
        Pressure nominal = balloon.getNominalPressure();
        if (isMore(nominal, burst)) {
            examination.add(ProblemCode.BURST_BELOW_NOMINAL,
                    resolved.statedBy(balloon, Literals.BALLOON__RATED_BURST_PRESSURE),
                    Literals.BALLOON__RATED_BURST_PRESSURE, burst.text(), nominal.text());
        }
    }

    private static void checkRow(ResolvedDevice resolved, ComplianceRow before, ComplianceRow row,
            Examination examination) {
        if (isReadable(before.getPressure()) && isReadable(row.getPressure())
                && !isMore(row.getPressure(), before.getPressure())) {
            examination.add(ProblemCode.COMPLIANCE_NOT_RISING, resolved.original(row),
                    Literals.COMPLIANCE_ROW__PRESSURE, row.getPressure().text(), before.getPressure().text());
        }
        if (Lengths.isMore(before.getDiameter(), row.getDiameter())) {
            examination.add(ProblemCode.COMPLIANCE_NOT_RISING, resolved.original(row),
                    Literals.COMPLIANCE_ROW__DIAMETER, row.getDiameter().text(), before.getDiameter().text());
        }
    }

    private static boolean isMore(Pressure a, Pressure b) {
        return isReadable(a) && isReadable(b) && a.pascals().compareTo(b.pascals()) > 0;
    }

    private static boolean isReadable(Pressure pressure) {
        return pressure != null && pressure.readable();
    }
}

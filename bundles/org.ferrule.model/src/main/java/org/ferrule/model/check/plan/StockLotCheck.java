/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.time.DateTimeException;
import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.StockLot;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** A lot has not expired, and a serial number is that of one unit. */
final class StockLotCheck implements Check {

    private final LocalDate today;

    StockLotCheck(LocalDate today) {
        this.today = today;
    }

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof StockLot lot) {
            if (lot.getSerial() != null && lot.getQuantity() > 1) {
                examination.add(ProblemCode.SERIAL_OF_SEVERAL, lot, Literals.STOCK_LOT__QUANTITY,
                        String.valueOf(lot.getQuantity()));
            }
            if (lot.getExpiry() != null && isOver(lot.getExpiry())) {
                examination.add(ProblemCode.EXPIRED, lot, Literals.STOCK_LOT__EXPIRY, lot.getExpiry());
            }
        }
    }

    /** What is no date is told elsewhere. */
    private boolean isOver(String expiry) {
        try {
            return LocalDate.parse(expiry).isBefore(today);
        } catch (DateTimeException e) {
            return false;
        }
    }
}

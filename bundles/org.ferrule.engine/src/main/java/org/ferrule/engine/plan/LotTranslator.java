/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.StockLot;
import org.ferrule.shelf.stock.Lot;

/** Copies lots. One that cannot be read is not counted: nobody knows whether it has expired. */
final class LotTranslator {
    private final PlanProblems problems;

    LotTranslator(PlanProblems problems) {
        this.problems = problems;
    }

    Optional<Lot> translate(StockLot lot) {
        try {
            Optional<LocalDate> expiry = Optional.ofNullable(lot.getExpiry()).map(LocalDate::parse);
            return Optional.of(new Lot(text(lot.getLot()), expiry, lot.getQuantity(), text(lot.getLocation()),
                    Optional.ofNullable(lot.getSerial())));
        } catch (DateTimeException e) {
            problems.add(lot, Literals.STOCK_LOT__EXPIRY,
                    "\"" + lot.getExpiry() + "\" is no date; the lot is not counted");
        } catch (IllegalArgumentException e) {
            problems.add(lot, Literals.STOCK_LOT__QUANTITY, e.getMessage() + "; the lot is not counted");
        }
        return Optional.empty();
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}

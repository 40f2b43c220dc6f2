/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ModelProblem.Part;
import org.ferrule.model.check.ProblemCode;
import org.ferrule.shelf.code.CodeException;
import org.ferrule.shelf.code.CodeReader;

/**
 * An item is a device or a piece of equipment; its device identifier is one that no other item has, and its check digit
 * is right; its lots are told apart, and each has one expiry.
 */
final class StockItemCheck implements Check {

    private final LocalDate today;

    StockItemCheck(LocalDate today) {
        this.today = today;
    }

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof ShelfDocument shelf) {
            checkCodes(shelf.getItems(), examination);
        }
        if (object instanceof StockItem item) {
            if (item.getDevice() != null && item.getEquipment() != null) {
                examination.add(ProblemCode.DEVICE_AND_EQUIPMENT, item, Literals.STOCK_ITEM__EQUIPMENT);
            } else if (item.getDevice() == null && item.getEquipment() == null) {
                examination.add(ProblemCode.ITEM_WITHOUT_DEVICE, item, null);
            }
            checkLots(item.getLots(), examination);
        }
    }

    private void checkCodes(List<StockItem> items, Examination examination) {
        Set<String> codes = new HashSet<>();
        for (StockItem item : items) {
            String code = item.getCode();
            Optional<String> read = code == null ? Optional.empty() : read(item, code, examination);
            if (read.isPresent() && !codes.add(read.get())) {
                examination.add(ProblemCode.DUPLICATE_CODE, item, Literals.STOCK_ITEM__CODE, code);
            }
        }
    }

    private Optional<String> read(StockItem item, String code, Examination examination) {
        try {
            return CodeReader.read(code, today).di().or(() -> Optional.of(code));
        } catch (CodeException e) {
            int place = Math.min(Math.max(0, e.position()), code.length());
            examination.addIn(ProblemCode.BAD_CODE, item, Literals.STOCK_ITEM__CODE, new Part(place, place), code,
                    e.expected());
            return Optional.empty();
        }
    }

    private static void checkLots(List<StockLot> lots, Examination examination) {
        Set<List<String>> places = new HashSet<>();
        Map<String, String> expiries = new HashMap<>();
        for (StockLot lot : lots) {
            if (!places.add(List.of(text(lot.getLot()), text(lot.getSerial()), text(lot.getLocation())))) {
                examination.add(ProblemCode.DUPLICATE_LOT, lot, null);
            }
            String before = lot.getLot() == null ? null
                    : expiries.putIfAbsent(lot.getLot(), text(lot.getExpiry()));
            if (before != null && !before.equals(text(lot.getExpiry()))) {
                examination.add(ProblemCode.LOT_WITH_TWO_DATES, lot, Literals.STOCK_LOT__EXPIRY, lot.getLot(),
                        before.isEmpty() ? "never" : before,
                        lot.getExpiry() == null ? "never" : lot.getExpiry());
            }
        }
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}

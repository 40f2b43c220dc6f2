/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.look.ModelLabels;

/** The columns of a shelf that can be edited. */
enum ShelfColumn {

    NAME(Literals.STOCK_ITEM__NAME, 46),
    LOT(Literals.STOCK_LOT__LOT, 10),
    EXPIRY(Literals.STOCK_LOT__EXPIRY, 11),
    QUANTITY(Literals.STOCK_LOT__QUANTITY, 10),
    PLACE(Literals.STOCK_LOT__LOCATION, 18),
    PAR(Literals.STOCK_ITEM__PAR_LEVEL, 10),
    DEVICE(Literals.STOCK_ITEM__DEVICE, 20),
    CODE(Literals.STOCK_ITEM__CODE, 16),
    SERIAL(Literals.STOCK_LOT__SERIAL, 10),
    PRICE(Literals.STOCK_ITEM__PRICE, 8),
    EQUIPMENT(Literals.STOCK_ITEM__EQUIPMENT, 14);

    private final EAttribute feature;
    private final int characters;

    ShelfColumn(EAttribute feature, int characters) {
        this.feature = feature;
        this.characters = characters;
    }

    /** Returns the column of a feature, if there is one. */
    static Optional<ShelfColumn> of(EStructuralFeature feature) {
        return Stream.of(values()).filter(column -> column.feature == feature).findFirst();
    }

    EAttribute feature() {
        return feature;
    }

    int characters() {
        return characters;
    }

    String title() {
        return ModelLabels.feature(feature);
    }

    String explanation() {
        return ModelLabels.description(feature);
    }

    /** Returns what states it; null in a row without a lot. */
    EObject owner(LotRow row) {
        return feature.getEContainingClass() == Literals.STOCK_LOT ? row.lot() : row.item();
    }

    /** Returns what stands in a row. */
    String text(LotRow row) {
        EObject owner = owner(row);
        if (owner == null || owner.eGet(feature) == null) {
            return "";
        }
        boolean stated = owner.eIsSet(feature) || feature == Literals.STOCK_LOT__QUANTITY;
        return stated ? EcoreUtil.convertToString(feature.getEAttributeType(), owner.eGet(feature)) : "";
    }
}

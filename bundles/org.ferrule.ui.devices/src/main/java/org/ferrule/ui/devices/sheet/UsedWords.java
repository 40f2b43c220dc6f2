/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.List;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage.Literals;

/** The words that may be proposed for a column: those of an enumeration, and those in use. */
public final class UsedWords {

    /** More than these are no help. */
    private static final int MOST = 200;

    private UsedWords() {
    }

    /** Returns the words in their order; none if any text may stand there. */
    public static List<String> of(SheetColumn column, List<SheetRow> rows) {
        EAttribute feature = column.attribute().orElseThrow();
        if (feature.getEAttributeType() instanceof EEnum words) {
            return words.getELiterals().stream().map(EEnumLiteral::getInstance).map(Enumerator::getLiteral).toList();
        }
        boolean repeated = feature == Literals.DEVICE_PARTS__MAKER
                || Features.annotation(feature, "refers").isPresent();
        return repeated
                ? rows.stream().map(column::text).filter(text -> !text.isEmpty()).distinct().sorted().limit(MOST)
                        .toList()
                : List.of();
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.table.RowColumn;
import org.ferrule.ui.look.ModelLabels;

/** What stands in the cells of a list of parts: what is stated, as it was typed. */
public final class CellWords {

    private static final int FIGURE_CHARACTERS = 14;
    private static final int NAME_CHARACTERS = 18;
    private static final int SOURCE_CHARACTERS = 34;
    private static final int TITLE_CHARACTERS = 30;
    private static final int SHORT_CHARACTERS = 10;

    private CellWords() {
    }

    /** Returns the column of an attribute; what is inherited stands back. */
    static RowColumn<Shown> column(EAttribute attribute) {
        if (attribute == Literals.SOURCED__SOURCE) {
            return source();
        }
        String title = ModelLabels.feature(attribute);
        return RowColumn
                .<Shown>of(title, Math.max(characters(attribute), title.length() + 2),
                        row -> of(row.complete(), attribute))
                .explained(ModelLabels.description(attribute))
                .mutedWhen(row -> row.own().filter(own -> own.eIsSet(attribute)).isEmpty());
    }

    private static int characters(EAttribute attribute) {
        if (attribute == Literals.SOURCE__TITLE) {
            return TITLE_CHARACTERS;
        }
        if (attribute == Literals.SOURCE__ID || attribute == Literals.SOURCE__REVISION) {
            return SHORT_CHARACTERS;
        }
        return Features.isFigure(attribute) ? FIGURE_CHARACTERS : NAME_CHARACTERS;
    }

    /** The column of sources tells their titles; that of what holds a part stands back. */
    private static RowColumn<Shown> source() {
        EAttribute attribute = Literals.SOURCED__SOURCE;
        return RowColumn.<Shown>of(ModelLabels.feature(attribute), SOURCE_CHARACTERS, SourceWords::of)
                .explained("The source and its page; slanted where the source of what holds this speaks for it")
                .mutedWhen(row -> row.own().filter(own -> own.eIsSet(attribute)).isEmpty());
    }

    /** Returns what an object states for a feature; empty if nothing. */
    public static String of(EObject object, EStructuralFeature feature) {
        return object.eIsSet(feature) ? word(object.eGet(feature)) : "";
    }

    private static String word(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(CellWords::word).collect(Collectors.joining(", "));
        }
        return value instanceof Enumerator word ? word.getLiteral() : String.valueOf(value);
    }
}

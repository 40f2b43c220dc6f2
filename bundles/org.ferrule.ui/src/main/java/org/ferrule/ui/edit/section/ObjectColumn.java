/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.section;

import java.util.Optional;
import java.util.function.UnaryOperator;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Offset;

/**
 * A column of a table of objects.
 *
 * @param heading what stands above it
 * @param feature whose value it shows
 * @param width in pixels, at least
 * @param words what is shown for the text of a value, such as the name for an id
 */
public record ObjectColumn(String heading, EAttribute feature, int width, UnaryOperator<String> words) {

    /** Creates a column that shows what is typed. */
    public ObjectColumn(String heading, EAttribute feature, int width) {
        this(heading, feature, width, UnaryOperator.identity());
    }

    /** Returns what stands in the column for an object: as typed, empty for what is not stated. */
    String text(EObject object) {
        return words.apply(typed(object));
    }

    private String typed(EObject object) {
        Object value = object.eIsSet(feature) ? object.eGet(feature) : null;
        if (value instanceof Dimension dimension) {
            return dimension.text();
        }
        if (value instanceof Offset offset) {
            return offset.text();
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "";
        }
        return value instanceof Enumerator word ? word.getLiteral()
                : Optional.ofNullable(value).map(Object::toString).orElse("");
    }
}

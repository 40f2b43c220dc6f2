/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.ferrule.model.Features;
import org.ferrule.model.ModelPackage;

/** Chooses the field for an attribute by what the Ecore says of it. */
final class FieldChoice {

    private FieldChoice() {
    }

    /** Adds the field; nothing for the page, which stands with the source. */
    static Optional<Field> fieldFor(FieldForm form, EAttribute attribute) {
        if (attribute == ModelPackage.Literals.SOURCED__PAGE) {
            return Optional.empty();
        }
        return Optional.of(attribute.isMany() ? form.choices(attribute) : single(form, attribute));
    }

    private static Field single(FieldForm form, EAttribute attribute) {
        EDataType type = attribute.getEAttributeType();
        if (type instanceof EEnum) {
            return form.choice(attribute);
        }
        if (type.getInstanceClass() == boolean.class) {
            return form.flag(attribute);
        }
        return Features.isFigure(attribute) ? form.dimension(attribute) : words(form, attribute);
    }

    private static Field words(FieldForm form, EAttribute attribute) {
        if (attribute == ModelPackage.Literals.SOURCED__SOURCE) {
            return form.source();
        }
        return attribute == ModelPackage.Literals.SOURCED__NOTE ? form.longText(attribute) : form.text(attribute);
    }
}

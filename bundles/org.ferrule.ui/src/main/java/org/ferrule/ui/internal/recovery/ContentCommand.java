/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.model.Document;

/** Makes a document say what another one says, by one command that can be undone. The document itself stays. */
public final class ContentCommand {

    private final EditingDomain domain;
    private final Document document;

    /** Creates what makes commands for a document in an editing domain. */
    public ContentCommand(EditingDomain domain, Document document) {
        this.domain = domain;
        this.document = document;
    }

    /** Returns the command; one that cannot be executed if both say the same. */
    public Command taking(Document wanted, String label) {
        CompoundCommand command = new CompoundCommand(label);
        for (EStructuralFeature feature : document.eClass().getEAllStructuralFeatures()) {
            if (feature.isChangeable() && !feature.isDerived() && !same(feature, wanted)) {
                command.append(SetCommand.create(domain, document, feature, value(feature, wanted)));
            }
        }
        return command;
    }

    private boolean same(EStructuralFeature feature, Document wanted) {
        return document.eIsSet(feature) == wanted.eIsSet(feature)
                && new EcoreUtil.EqualityHelper().equals(objects(document, feature), objects(wanted, feature))
                && (feature instanceof EReference || value(feature, document).equals(value(feature, wanted)));
    }

    private static List<EObject> objects(Document holder, EStructuralFeature feature) {
        List<EObject> objects = new ArrayList<>();
        Object value = feature instanceof EReference ? holder.eGet(feature) : null;
        Collection<?> values = value instanceof Collection<?> many ? many : value == null ? List.of() : List.of(value);
        values.forEach(one -> objects.add((EObject) one));
        return objects;
    }

    private static Object value(EStructuralFeature feature, Document from) {
        if (!from.eIsSet(feature)) {
            return SetCommand.UNSET_VALUE;
        }
        Object value = from.eGet(feature);
        if (feature instanceof EReference) {
            return feature.isMany() ? EcoreUtil.copyAll(objects(from, feature)) : EcoreUtil.copy((EObject) value);
        }
        return value instanceof Collection<?> many ? new ArrayList<>(many) : value;
    }
}

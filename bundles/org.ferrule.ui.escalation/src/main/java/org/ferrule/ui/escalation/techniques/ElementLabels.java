/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.techniques;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.edit.ModelItemProviderAdapterFactory;
import org.ferrule.ui.edit.contents.Group;
import org.ferrule.ui.look.Icons;
import org.ferrule.ui.look.ModelLabels;

/** What the elements of a document, and their groups, are called in its tree. */
public final class ElementLabels extends LabelProvider {

    private final ModelItemProviderAdapterFactory adapters;

    /** Creates labels that go by the model's own. */
    public ElementLabels(ModelItemProviderAdapterFactory adapters) {
        this.adapters = adapters;
    }

    @Override
    public String getText(Object element) {
        if (element instanceof Group group) {
            return ModelLabels.feature(group.reference()) + " (" + group.members().size() + ")";
        }
        if (element instanceof PlannedTry planned && planned.eContainer() != null) {
            return "Try " + (planned.eContainer().eContents().stream().filter(PlannedTry.class::isInstance).toList()
                    .indexOf(planned) + 1);
        }
        return element instanceof Document ? "General" : ModelLabels.object(adapters, (EObject) element);
    }

    @Override
    public Image getImage(Object element) {
        if (element instanceof Group group) {
            return root(group.holder()).image();
        }
        return element instanceof Document document ? Icons.of(DocumentKind.of(document)).image() : Icons.LINE.image();
    }

    private static Icons root(EObject holder) {
        EObject root = EcoreUtil.getRootContainer(holder);
        return root instanceof Document document ? Icons.of(DocumentKind.of(document)) : Icons.LINE;
    }
}

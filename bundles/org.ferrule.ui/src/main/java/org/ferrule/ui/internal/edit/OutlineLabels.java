/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;
import org.ferrule.model.Device;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.edit.ModelItemProviderAdapterFactory;
import org.ferrule.ui.edit.contents.Group;
import org.ferrule.ui.look.Icons;
import org.ferrule.ui.look.ModelLabels;

/** What a document and its parts are called in an outline. */
public final class OutlineLabels extends LabelProvider {

    private final ModelItemProviderAdapterFactory adapters;

    /** Creates labels that go by the model's own. */
    public OutlineLabels(ModelItemProviderAdapterFactory adapters) {
        this.adapters = adapters;
    }

    @Override
    public String getText(Object element) {
        if (element instanceof Group group) {
            return ModelLabels.feature(group.reference()) + " (" + group.members().size() + ")";
        }
        if (element instanceof Document document && document.getTitle() != null) {
            return document.getTitle();
        }
        return element instanceof Device device && device.getName() != null ? device.getName()
                : ModelLabels.object(adapters, (EObject) element);
    }

    @Override
    public Image getImage(Object element) {
        if (element instanceof Document document) {
            return Icons.of(DocumentKind.of(document)).image();
        }
        return element instanceof Device device && device.isSetKind() ? Icons.of(device.getKind()).image()
                : Icons.LINE.image();
    }
}

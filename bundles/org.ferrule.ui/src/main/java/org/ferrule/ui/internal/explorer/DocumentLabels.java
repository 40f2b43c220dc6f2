/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.explorer;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.navigator.ICommonContentExtensionSite;
import org.eclipse.ui.navigator.ICommonLabelProvider;
import org.eclipse.ui.IMemento;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.edit.ModelItemProviderAdapterFactory;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.look.Icons;
import org.ferrule.ui.look.ModelLabels;

/** Names and icons of documents and of what is inside them. */
public class DocumentLabels extends LabelProvider implements ICommonLabelProvider, IStyledLabelProvider {

    private final ModelItemProviderAdapterFactory adapters = new ModelItemProviderAdapterFactory();

    @Override
    public void init(ICommonContentExtensionSite config) {
        // needs nothing of the explorer
    }

    @Override
    public Image getImage(Object element) {
        if (element instanceof IFile file) {
            return DocumentFiles.kind(file.getName()).map(kind -> Icons.of(kind).image()).orElse(null);
        }
        if (element instanceof DocumentNode node) {
            return node.object() instanceof DeviceLine ? Icons.LINE.image() : Icons.of(kind(node)).image();
        }
        return null;
    }

    /** A device may leave its kind to its line. */
    private static DeviceKind kind(DocumentNode node) {
        DeviceParts parts = (DeviceParts) node.object();
        if (parts.isSetKind() || !(parts instanceof Device device)) {
            return parts.getKind();
        }
        return ((DeviceLibrary) parts.eContainer()).getLines().stream()
                .filter(line -> line.getId() != null && line.getId().equals(device.getLine())).findFirst()
                .map(DeviceLine::getKind).orElse(parts.getKind());
    }

    @Override
    public String getText(Object element) {
        return element instanceof DocumentNode ? getStyledText(element).getString()
                : element instanceof IFile file ? file.getName() : null;
    }

    @Override
    public StyledString getStyledText(Object element) {
        if (!(element instanceof DocumentNode node)) {
            return element instanceof IFile file ? styled(file) : new StyledString();
        }
        StyledString text = new StyledString(name(node));
        if (node.object() instanceof DeviceParts parts && parts.getSize() != null
                && !text.getString().contains(parts.getSize())) {
            text.append("  " + parts.getSize(), StyledString.QUALIFIER_STYLER);
        }
        return text;
    }

    private String name(DocumentNode node) {
        DeviceParts parts = (DeviceParts) node.object();
        return parts.getName() != null ? parts.getName()
                : parts.getId() != null ? parts.getId() : ModelLabels.object(adapters, parts);
    }

    private static StyledString styled(IFile file) {
        String base = DocumentFiles.baseName(file);
        StyledString text = new StyledString(base);
        return text.append(file.getName().substring(base.length()), StyledString.QUALIFIER_STYLER);
    }

    @Override
    public String getDescription(Object element) {
        return element instanceof DocumentNode node ? node.file().getFullPath() + "  \u2013  " + getText(element)
                : null;
    }

    @Override
    public void dispose() {
        adapters.dispose();
        super.dispose();
    }

    @Override
    public void restoreState(IMemento memento) {
        // has no state
    }

    @Override
    public void saveState(IMemento memento) {
        // has no state
    }
}

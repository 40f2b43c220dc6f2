/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import org.eclipse.ui.PartInitException;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.devices.part.PartLayout;
import org.ferrule.ui.edit.DocumentEditor;

/** Edits a library of devices. */
public class DeviceLibraryEditor extends DocumentEditor {

    /** The id of the editor. */
    public static final String ID = "org.ferrule.ui.devices.editor";

    @Override
    protected void addDocumentPages() throws PartInitException {
        addPage(new DevicePartsPage(this, "Devices", Literals.DEVICE_LIBRARY__DEVICES));
        addPage(new DevicePartsPage(this, "Lines", Literals.DEVICE_LIBRARY__LINES));
        addPage(new PartsPage(this, "Bench results", PartLayout.BENCH));
        addPage(new SourcesPage(this));
    }
}

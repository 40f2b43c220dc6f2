/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.fix;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.DimensionRepair;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.internal.fix.DimensionFixes.Place;

/** Opens the document, repairs a dimension by a command that can be undone, and shows its field. Saves nothing. */
final class DimensionFix implements IMarkerResolution2 {

    private final DimensionRepair repair;

    DimensionFix(DimensionRepair repair) {
        this.repair = repair;
    }

    @Override
    public String getLabel() {
        return RepairWords.label(repair);
    }

    @Override
    public String getDescription() {
        return RepairWords.reason(repair);
    }

    @Override
    public Image getImage() {
        return null;
    }

    @Override
    public void run(IMarker marker) {
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        try {
            IEditorPart part = IDE.openEditor(page, (IFile) marker.getResource());
            if (part instanceof DocumentEditor editor && editor.session().editable()) {
                editor.session().document().flatMap(document -> Place.of(document, marker))
                        .ifPresent(place -> repair(editor, place));
            }
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
        }
    }

    private void repair(DocumentEditor editor, Place place) {
        editor.session().set(place.object(), place.feature(), Dimension.lenient(repair.text()));
        editor.reveal(place.object(), place.feature());
    }
}

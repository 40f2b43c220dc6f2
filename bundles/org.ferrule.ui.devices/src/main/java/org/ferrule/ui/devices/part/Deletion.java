/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.look.ModelLabels;

/** Asks before something is deleted that others name; all else can be undone, and is not asked. */
public final class Deletion {

    private Deletion() {
    }

    /** Tells whether the objects may be deleted. */
    public static boolean isConfirmed(List<EObject> objects, Shell shell) {
        long naming = objects.stream().flatMap(object -> Keys.naming(object).stream())
                .filter(other -> !objects.contains(other)).distinct().count();
        return naming == 0 || MessageDialog.openConfirm(shell, "Delete", question(objects, naming));
    }

    private static String question(List<EObject> objects, long naming) {
        String what = objects.size() == 1
                ? "This " + ModelLabels.type(objects.get(0).eClass()).toLowerCase(Locale.ENGLISH) + " is"
                : "Some of these are";
        String others = naming == 1 ? "1 other entry of this document, which would then name"
                : naming + " other entries of this document, which would then name";
        return what + " named by " + others + " something that is not there. Delete all the same?";
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.jface.preference.PreferenceManager;
import org.eclipse.ui.PlatformUI;

/** Removes preference pages of the platform that a user of this workbench has no use for. */
final class Pruning {

    private static final Set<String> KEPT_AT_TOP = Set.of("org.eclipse.ui.preferencePages.Workbench");
    private static final Set<String> KEPT_BELOW = Set.of("org.eclipse.ui.preferencePages.Views",
            "org.eclipse.ui.preferencePages.ColorsAndFonts", "org.eclipse.ui.preferencePages.Keys",
            "org.eclipse.ui.preferencePages.FileStates");
    private static final String OURS = "org.ferrule.";

    void prune() {
        PreferenceManager manager = PlatformUI.getWorkbench().getPreferenceManager();
        Stream.of(manager.getRootSubNodes()).filter(node -> !isKept(node, KEPT_AT_TOP)).forEach(manager::remove);
        Stream.of(manager.getRootSubNodes()).filter(node -> !node.getId().startsWith(OURS))
                .forEach(Pruning::pruneBelow);
    }

    private static void pruneBelow(IPreferenceNode parent) {
        for (IPreferenceNode node : parent.getSubNodes()) {
            if (isKept(node, KEPT_BELOW)) {
                pruneBelow(node);
            } else {
                parent.remove(node);
            }
        }
    }

    private static boolean isKept(IPreferenceNode node, Set<String> kept) {
        return node.getId().startsWith(OURS) || kept.contains(node.getId());
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.document.DocumentSessions;

/** Tells records and sessions which documents have changed on disk, whoever has changed them. */
public final class DiskFollower implements IResourceChangeListener {

    private final DocumentRecords records;
    private final DocumentSessions sessions;

    /** Creates a follower that tells these. */
    public DiskFollower(DocumentRecords records, DocumentSessions sessions) {
        this.records = records;
        this.sessions = sessions;
    }

    @Override
    public void resourceChanged(IResourceChangeEvent event) {
        if (event.getType() != IResourceChangeEvent.POST_CHANGE) {
            return;
        }
        List<IFile> changed = changed(event.getDelta());
        changed.forEach(records::changed);
        if (!changed.isEmpty() && PlatformUI.isWorkbenchRunning()) {
            PlatformUI.getWorkbench().getDisplay().asyncExec(() -> changed.forEach(sessions::fileChanged));
        }
    }

    private static List<IFile> changed(IResourceDelta delta) {
        List<IFile> changed = new ArrayList<>();
        try {
            delta.accept(part -> {
                if (DocumentFiles.isDocument(part.getResource()) && isContentChange(part)) {
                    changed.add((IFile) part.getResource());
                }
                return true;
            });
        } catch (CoreException e) {
            ILog.of(DiskFollower.class).log(e.getStatus());
        }
        return changed;
    }

    static boolean isContentChange(IResourceDelta delta) {
        return delta.getKind() != IResourceDelta.CHANGED
                || (delta.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) != 0;
    }
}

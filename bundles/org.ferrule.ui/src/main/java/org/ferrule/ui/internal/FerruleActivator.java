/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Platform;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.document.DocumentSessions;
import org.ferrule.ui.internal.build.DiskFollower;
import org.ferrule.ui.internal.build.LiveChecks;
import org.ferrule.ui.internal.build.ProblemUpdate;
import org.ferrule.ui.internal.document.SessionSnapshots;
import org.ferrule.ui.internal.recovery.JournalKeeper;
import org.ferrule.ui.internal.recovery.UnsavedJournal;
import org.ferrule.ui.preferences.UnitPreferences;
import org.ferrule.ui.problem.ProblemBoard;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Makes what the workbench has one of, offers it as services, and connects the parts. */
public class FerruleActivator implements BundleActivator {

    /** The folder in the workspace's metadata that keeps what is not saved yet. */
    private static final String UNSAVED = "unsaved";

    private DiskFollower follower;

    @Override
    public void start(BundleContext context) {
        DocumentRecords records = new DocumentRecords();
        DocumentSessions sessions = new DocumentSessions();
        ProblemBoard board = new ProblemBoard();
        ProblemUpdate update = new ProblemUpdate(records, board);
        context.registerService(DocumentRecords.class, records, null);
        context.registerService(DocumentSessions.class, sessions, null);
        context.registerService(ProblemBoard.class, board, null);
        context.registerService(ProblemUpdate.class, update, null);
        context.registerService(UnitPreferences.class, new UnitPreferences(), null);
        SessionSnapshots snapshots = new SessionSnapshots();
        snapshots.connect(sessions);
        LiveChecks checks = new LiveChecks(records, sessions, board, update);
        checks.connect(snapshots);
        context.registerService(LiveChecks.class, checks, null);
        UnsavedJournal journal = new UnsavedJournal(
                Platform.getStateLocation(context.getBundle()).append(UNSAVED).toPath());
        context.registerService(UnsavedJournal.class, journal, null);
        snapshots.addListener(new JournalKeeper(journal));
        follower = new DiskFollower(records, sessions);
        ResourcesPlugin.getWorkspace().addResourceChangeListener(follower);
    }

    @Override
    public void stop(BundleContext context) {
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(follower);
    }
}

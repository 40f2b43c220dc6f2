/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.swt.widgets.Display;

/** Gathers the changes of a document and hands them over once, when the command that made them has ended. */
final class ChangeCollector extends EContentAdapter {

    private final Display display;
    private final Consumer<DocumentChange> receiver;
    private final List<Notification> gathered = new ArrayList<>();

    ChangeCollector(Display display, Consumer<DocumentChange> receiver) {
        this.display = display;
        this.receiver = receiver;
    }

    @Override
    public void notifyChanged(Notification notification) {
        super.notifyChanged(notification);
        if (notification.isTouch() || notification.getEventType() == Notification.REMOVING_ADAPTER) {
            return;
        }
        if (gathered.isEmpty()) {
            display.asyncExec(this::deliver);
        }
        gathered.add(notification);
    }

    /** Hands over what is gathered; nothing if somebody has done so already. */
    void deliver() {
        if (!gathered.isEmpty()) {
            DocumentChange change = new DocumentChange(false, gathered);
            gathered.clear();
            receiver.accept(change);
        }
    }

    /** Forgets what is gathered, because the document was replaced. */
    void forget() {
        gathered.clear();
    }
}

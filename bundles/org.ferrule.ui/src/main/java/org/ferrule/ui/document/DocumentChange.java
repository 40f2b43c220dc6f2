/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What has changed in a document since the listeners were told last: usually the work of one command.
 *
 * @param reloaded whether the document was replaced by another one; then objects of the former one are of no use
 * @param notifications the changes one by one; empty when reloaded
 */
public record DocumentChange(boolean reloaded, List<Notification> notifications) {

    /** Copies the list. */
    public DocumentChange {
        notifications = List.copyOf(notifications);
    }

    /** Returns what has changed, and what was put somewhere; each perhaps several times. */
    public Stream<EObject> objects() {
        return notifications.stream()
                .flatMap(notification -> Stream.concat(Stream.of(notification.getNotifier()),
                        many(notification.getNewValue())))
                .filter(EObject.class::isInstance).map(EObject.class::cast);
    }

    private static Stream<?> many(Object value) {
        return value instanceof Collection<?> values ? values.stream() : Stream.ofNullable(value);
    }

    /** Tells whether the object or something inside of it has changed. */
    public boolean concerns(EObject object) {
        return reloaded || notifications.stream().map(Notification::getNotifier)
                .anyMatch(notifier -> notifier instanceof EObject changed && EcoreUtil.isAncestor(object, changed));
    }
}

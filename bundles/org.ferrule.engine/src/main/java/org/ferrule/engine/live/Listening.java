/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.live;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EContentAdapter;

/** Follows whole documents; touches and the comings and goings of listeners are not passed on. */
final class Listening {
    private final Map<EObject, Follower> followers = new HashMap<>();

    void follow(EObject document, Consumer<Notification> consumer) {
        Follower follower = new Follower(consumer);
        Follower former = followers.put(document, follower);
        if (former != null) {
            document.eAdapters().remove(former);
        }
        document.eAdapters().add(follower);
    }

    void forgetAllBut(EObject document) {
        followers.forEach((followed, follower) -> {
            if (followed != document) {
                followed.eAdapters().remove(follower);
            }
        });
        followers.keySet().removeIf(followed -> followed != document);
    }

    void forgetAll() {
        forgetAllBut(null);
    }

    private static final class Follower extends EContentAdapter {
        private final Consumer<Notification> consumer;

        Follower(Consumer<Notification> consumer) {
            this.consumer = consumer;
        }

        @Override
        public void notifyChanged(Notification notification) {
            super.notifyChanged(notification);
            if (!notification.isTouch() && notification.getNotifier() instanceof EObject) {
                consumer.accept(notification);
            }
        }
    }
}

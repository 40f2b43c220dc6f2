/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.ui.devices.DeviceLibraryEditor;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.edit.DocumentEditor;

/** The library in the editor that was active last, and its changes. */
final class ActiveLibrary implements AutoCloseable {

    private final IWorkbenchPage page;
    private final Consumer<Optional<DocumentEditor>> followed;
    private final Runnable changed;
    private final Runnable saved;
    private final Parts parts = new Parts();
    private final Changes changes = new Changes();
    private DocumentEditor editor;

    /**
     * Creates it; nothing is followed before the start.
     *
     * @param followed hears of another editor, or of none
     * @param changed is run when the library has changed
     * @param saved is run when it was saved
     */
    ActiveLibrary(IWorkbenchPage page, Consumer<Optional<DocumentEditor>> followed, Runnable changed, Runnable saved) {
        this.page = page;
        this.followed = followed;
        this.changed = changed;
        this.saved = saved;
    }

    void start() {
        page.addPartListener(parts);
        follow(page.getActiveEditor());
    }

    Optional<DocumentEditor> editor() {
        return Optional.ofNullable(editor);
    }

    Optional<DeviceLibrary> library() {
        return editor().filter(shown -> shown.session() != null).flatMap(shown -> shown.session().document())
                .map(DeviceLibrary.class::cast);
    }

    private void follow(IWorkbenchPart part) {
        leave();
        editor = part instanceof DeviceLibraryEditor library && library.session() != null ? library : null;
        if (editor != null) {
            changes.dirty = editor.session().dirty();
            editor.session().addListener(changes);
        }
        followed.accept(editor());
    }

    private void leave() {
        if (editor != null && editor.session() != null) {
            editor.session().removeListener(changes);
        }
    }

    @Override
    public void close() {
        page.removePartListener(parts);
        leave();
    }

    private final class Parts implements IPartListener2 {

        @Override
        public void partActivated(IWorkbenchPartReference reference) {
            IWorkbenchPart part = reference.getPart(false);
            if (part instanceof DeviceLibraryEditor && part != editor) {
                follow(part);
            }
        }

        @Override
        public void partClosed(IWorkbenchPartReference reference) {
            if (reference.getPart(false) == editor && editor != null) {
                follow(null);
            }
        }
    }

    private final class Changes implements SessionListener {

        private boolean dirty;

        @Override
        public void stateChanged() {
            boolean was = dirty;
            dirty = editor.session().dirty();
            if (was && !dirty) {
                saved.run();
            }
        }

        @Override
        public void documentChanged(DocumentChange change) {
            changed.run();
        }
    }
}

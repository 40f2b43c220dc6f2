/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.viewers.ILabelProvider;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.forms.editor.FormEditor;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.part.FileEditorInput;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.ferrule.model.ElementPath;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.DocumentSessions;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.internal.edit.BrokenPage;
import org.ferrule.ui.internal.edit.CancelledOpening;
import org.ferrule.ui.internal.edit.DiskQuestion;
import org.ferrule.ui.internal.edit.DocumentOutline;
import org.ferrule.ui.internal.edit.DocumentProperties;
import org.ferrule.ui.internal.edit.EditorToolkit;
import org.ferrule.ui.internal.edit.OutlineLabels;
import org.ferrule.ui.internal.edit.SaveAs;
import org.ferrule.ui.internal.edit.SessionSaveable;
import org.ferrule.ui.problem.ProblemMarkers;

/**
 * An editor of a document: pages over the document's session, which all editors of the file share. A subclass adds its
 * pages; opening, saving, undo, what other programs do to the file, and the page for a broken file come from here. Its
 * extension in {@code plugin.xml} names {@link DocumentActionContributor} as contributor class.
 */
public abstract class DocumentEditor extends FormEditor implements RevealTarget, IGotoMarker, ISaveablesSource {

    private final DocumentSessions sessions = Services.get(DocumentSessions.class);
    private final Follower follower = new Follower();
    private final EditorSelection selection = new EditorSelection();
    private final PageReveal places = new PageReveal(this, pages);
    private DocumentSession session;
    private SessionSaveable saveable;
    private DiskQuestion diskQuestion;

    /** Adds the pages for a document that could be read. */
    protected abstract void addDocumentPages() throws PartInitException;

    /** Returns the session of the document. */
    public final DocumentSession session() {
        return session;
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        super.init(site, input);
        if (!(input instanceof IFileEditorInput file)) {
            throw new PartInitException(input.getName() + " is not a file of the workspace");
        }
        try {
            open(file.getFile());
        } catch (PartInitException e) {
            if (e.getStatus().matches(IStatus.CANCEL)) {
                CancelledOpening.clear(site, input);
            }
            throw e;
        }
        site.setSelectionProvider(selection);
        diskQuestion = new DiskQuestion(this);
    }

    private void open(IFile file) throws PartInitException {
        try {
            session = sessions.find(file).isPresent() ? sessions.acquire(file)
                    : sessions.acquire(PatientReading.read(file));
        } catch (CoreException e) {
            throw new PartInitException(e.getStatus());
        }
        saveable = new SessionSaveable(session, this);
        follower.reset();
        session.addListener(follower);
        setPartName(file.getName());
    }

    private void leave() {
        session.removeListener(follower);
        sessions.release(session);
        session = null;
    }

    @Override
    public void dispose() {
        if (session != null) {
            diskQuestion.dispose();
            super.dispose();
            leave();
        }
    }

    @Override
    protected final void addPages() {
        try {
            if (session.broken()) {
                addPage(new BrokenPage(this));
            } else {
                addDocumentPages();
            }
        } catch (PartInitException e) {
            ILog.of(DocumentEditor.class).log(e.getStatus());
        }
    }

    @Override
    protected FormToolkit createToolkit(Display display) {
        return new EditorToolkit(display);
    }

    @Override
    protected void createPages() {
        selection.install(getContainer());
        super.createPages();
        hideTabOfSinglePage();
    }

    private void hideTabOfSinglePage() {
        if (getPageCount() == 1 && getContainer() instanceof CTabFolder folder) {
            folder.setTabHeight(0);
        }
    }

    private void rebuildPages() {
        while (getPageCount() > 0) {
            removePage(0);
        }
        addPages();
        if (getPageCount() > 0) {
            setActivePage(0);
        }
    }

    @Override
    public boolean isDirty() {
        return session != null && session.dirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        saveable.saveAndShowFailure(monitor, getSite().getShell());
    }

    @Override
    public boolean isSaveAsAllowed() {
        return session != null && !session.broken();
    }

    @Override
    public void doSaveAs() {
        new SaveAs(session, getSite().getShell()).ask().ifPresent(this::moveTo);
    }

    /** Goes on with the copy; the former file is as it was when it was saved last. */
    private void moveTo(IFile copy) {
        try {
            leave();
            selection.select(null);
            setInput(new FileEditorInput(copy));
            open(copy);
            rebuildPages();
            firePropertyChange(PROP_INPUT);
            firePropertyChange(PROP_DIRTY);
        } catch (PartInitException e) {
            ILog.of(DocumentEditor.class).log(e.getStatus());
        }
    }

    @Override
    public Saveable[] getSaveables() {
        return session == null ? new Saveable[0] : new Saveable[] { saveable };
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return getSaveables();
    }

    @Override
    public void gotoMarker(IMarker marker) {
        String path = marker.getAttribute(ProblemMarkers.PATH, "");
        session.document().flatMap(document -> ElementPath.resolve(document, path)).ifPresent(
                object -> places.revealNearest(object, marker.getAttribute(ProblemMarkers.FEATURE, "")));
    }

    /** Shows the object at a path, see {@link ElementPath}. */
    public final boolean reveal(String path) {
        Optional<EObject> object = session.document().flatMap(document -> ElementPath.resolve(document, path));
        return object.isPresent() && reveal(object.get(), null);
    }

    @Override
    public final boolean reveal(EObject object, EStructuralFeature feature) {
        return places.reveal(object, feature);
    }

    /** Returns what the editor is about just now. */
    public final EditorSelection selection() {
        return selection;
    }

    /** Returns what the parts of the document are called in the outline. */
    protected ILabelProvider outlineLabels() {
        return new OutlineLabels(session.adapters());
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (adapter == IGotoMarker.class || adapter == RevealTarget.class) {
            return adapter.cast(this);
        }
        if (adapter == IContentOutlinePage.class && session != null) {
            return adapter.cast(new DocumentOutline(this, this::outlineLabels));
        }
        return adapter == IPropertySheetPage.class && session != null
                ? adapter.cast(new DocumentProperties(this)) : super.getAdapter(adapter);
    }

    private final class Follower implements SessionListener {

        private boolean broken;
        private boolean dirty;

        /** Starts from the state that the pages are made for. */
        void reset() {
            broken = session.broken();
            dirty = session.dirty();
        }

        @Override
        public void documentChanged(DocumentChange change) {
            boolean now = session.broken();
            if (change.reloaded() && (now || broken != now)) {
                rebuildPages();
            }
            broken = now;
            dropWhatIsGone();
        }

        /** What was selected may have been removed, or belong to the document that was there before. */
        private void dropWhatIsGone() {
            selection.object().filter(object -> session.document()
                    .filter(document -> EcoreUtil.isAncestor(document, object)).isEmpty())
                    .ifPresent(object -> selection.select(null));
        }

        @Override
        public void stateChanged() {
            if (dirty != session.dirty()) {
                dirty = session.dirty();
                editorDirtyStateChanged();
            }
            diskQuestion.askWhenSeen();
        }
    }
}

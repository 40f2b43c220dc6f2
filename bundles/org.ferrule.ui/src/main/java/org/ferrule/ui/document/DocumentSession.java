/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.swt.widgets.Display;
import org.ferrule.io.json.DocumentProblem;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.io.json.ReadResult;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Document;
import org.ferrule.model.edit.ModelItemProviderAdapterFactory;

/**
 * A document that is being edited: one for each file, shared by all of its editors, so that they show the same state and
 * undo the same commands. Every change is a command. To be used on the display's thread only.
 */
public final class DocumentSession {

    private final JsonDocuments documents = new JsonDocuments();
    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private final BasicCommandStack commands = new BasicCommandStack();
    private final ModelItemProviderAdapterFactory adapters = new ModelItemProviderAdapterFactory();
    private final EditingDomain domain = new AdapterFactoryEditingDomain(adapters, commands);
    private final Set<Object> drafts = new HashSet<>();
    private final ChangeCollector collector;
    private final Resource resource;
    private final FileOnDisk disk;

    private ReadResult read;
    private ContentWriter writer;
    private boolean saved;

    /** Opens a file that was read. */
    DocumentSession(FileReading reading, Display display) {
        IFile file = reading.file();
        this.disk = new FileOnDisk(file);
        this.collector = new ChangeCollector(display, this::changed);
        this.resource = new ResourceImpl(URI.createPlatformResourceURI(file.getFullPath().toString(), true));
        domain.getResourceSet().getResources().add(resource);
        load(reading);
        commands.addCommandStackListener(event -> fire(SessionListener::stateChanged));
    }

    private void load(FileReading reading) {
        disk.know(reading.content());
        ReadResult result = reading.result();
        resource.eAdapters().remove(collector);
        collector.forget();
        resource.getContents().clear();
        commands.flush();
        commands.saveIsDone();
        drafts.clear();
        result.document().ifPresent(resource.getContents()::add);
        resource.eAdapters().add(collector);
        read = result;
        writer = reading.writer();
        saved = false;
    }

    /** Returns the file. */
    public IFile file() {
        return disk.file();
    }

    /** Returns the document, which commands may change; nothing if the file is broken. */
    public Optional<Document> document() {
        return read.document();
    }

    /** Returns the SHA-256, in hexadecimal digits, of the file as it was read or saved last. */
    public String base() {
        return disk.sha256();
    }

    /** Tells whether the file is no document that could be opened. It is never written then. */
    public boolean broken() {
        return read.broken();
    }

    /** Tells whether the document is of a newer version of the program. It is never written then. */
    public boolean readOnly() {
        return read.readOnly();
    }

    /** Tells whether the document may be changed. What has frozen it can be undone all the same, until it is saved. */
    public boolean editable() {
        return writable() && frozen().isEmpty();
    }

    /** Tells whether the document may be saved. */
    public boolean writable() {
        return !broken() && !readOnly();
    }

    /** Returns why the document is a record that is not changed any more, in a few words; nothing while it is none. */
    public Optional<String> frozen() {
        return document().filter(CaseDocument.class::isInstance).map(file -> ((CaseDocument) file).getClosing())
                .map(closing -> "Closed on " + closing.getClosed()
                        + (dirty() ? ": a record once saved; undo opens it" : ": a record, not edited any more"));
    }

    /** Tells whether saving will also put the keys of the document in order, because it was written by hand. */
    public boolean willBeReordered() {
        return writable() && !saved && !read.canonical();
    }

    /** Returns what was wrong with the form of the file when it was read; what it says is checked by others. */
    public List<DocumentProblem> problemsOfFile() {
        return read.problems();
    }

    /** Returns the editing domain, for making commands. */
    public EditingDomain domain() {
        return domain;
    }

    /** Returns the factory of the item providers, for labels and images. */
    public ModelItemProviderAdapterFactory adapters() {
        return adapters;
    }

    /**
     * Executes a command, so that it can be undone.
     *
     * @throws IllegalStateException if the document may not be changed
     */
    public void execute(Command command) {
        requireEditable();
        // it can be told only while the document is as it was read
        read.canonical(this::snapshot);
        commands.execute(command);
    }

    /**
     * Gives a feature a value by a command that is named after it; the same value again is no change.
     *
     * @param value the value, or null to leave the feature unstated
     */
    public void set(EObject object, EStructuralFeature feature, Object value) {
        new ValueChange(this, object, feature).to(value);
    }

    /** Returns the command that would be undone next, or null. */
    public Command nextUndo() {
        return commands.canUndo() ? commands.getUndoCommand() : null;
    }

    /** Returns the command that would be redone next, or null. */
    public Command nextRedo() {
        return commands.canRedo() ? commands.getRedoCommand() : null;
    }

    /** Undoes the last command. */
    public void undo() {
        commands.undo();
    }

    /** Redoes what was undone last. */
    public void redo() {
        commands.redo();
    }

    /** Tells whether there is something to save, in the document or still in a field. */
    public boolean dirty() {
        return commands.isSaveNeeded() || !drafts.isEmpty();
    }

    /**
     * Notes that a field holds a text that could become part of the document, or no longer does.
     *
     * @param owner the field
     */
    public void draft(Object owner, boolean pending) {
        if (pending ? drafts.add(owner) : drafts.remove(owner)) {
            fire(SessionListener::stateChanged);
        }
    }

    /** Returns the bytes that saving would write. */
    public byte[] toBytes() {
        return documents.write(document().orElseThrow());
    }

    /** As {@link #toBytes()}, but quicker, since it writes anew only what has changed since it was asked before. */
    public byte[] snapshot() {
        collector.deliver();
        return writer.write(document().orElseThrow());
    }

    /**
     * Saves the document; local history keeps the former one.
     *
     * @throws SaveConflictException if another program has changed the file; nothing is written then
     * @throws CoreException if the file cannot be written; it is as it was, and the document is still dirty
     */
    public void save(IProgressMonitor monitor) throws CoreException {
        write(false, monitor);
    }

    /** Saves the document over whatever another program has written; local history keeps that. */
    public void saveOver(IProgressMonitor monitor) throws CoreException {
        write(true, monitor);
    }

    private void write(boolean over, IProgressMonitor monitor) throws CoreException {
        if (!writable()) {
            throw new CoreException(Status.error(file().getFullPath() + " cannot be saved: it is "
                    + (broken() ? "broken" : "of a newer version of the program")));
        }
        commitDrafts();
        disk.save(toBytes(), over, monitor);
        saved = true;
        if (frozen().isPresent()) {
            commands.flush();
        }
        commands.saveIsDone();
        fire(SessionListener::stateChanged);
    }

    /** Makes what is still in fields, as far as it can be read, part of the document. */
    public void commitDrafts() {
        fire(SessionListener::aboutToSave);
        collector.deliver();
    }

    /**
     * Gives up all changes and reads the file again.
     *
     * @throws CoreException if the file cannot be read; the document is as it was then
     */
    public void revert() throws CoreException {
        load(FileReading.of(file()));
        changed(new DocumentChange(true, List.of()));
        fire(SessionListener::stateChanged);
    }

    /** Tells whether another program has changed or deleted the file while the document was dirty. */
    public boolean conflict() {
        return disk.conflict();
    }

    /** Looks at the file on disk: a clean document follows it, a dirty one has a conflict. */
    void fileChanged() throws CoreException {
        if (disk.isAsKnown()) {
            return;
        }
        if (disk.exists() && !dirty()) {
            revert();
        } else {
            disk.conflict(dirty());
            fire(SessionListener::stateChanged);
        }
    }

    /** Keeps the document and lets the next save replace what the other program has written. */
    public void keepMine() throws CoreException {
        disk.accept();
        fire(SessionListener::stateChanged);
    }

    /** Tells the listeners that the problems of the document were found anew. */
    public void problemsFound() {
        fire(SessionListener::problemsChanged);
    }

    /** Adds a listener. */
    public void addListener(SessionListener listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    private void changed(DocumentChange change) {
        writer.changed(change);
        fire(listener -> listener.documentChanged(change));
    }

    private void fire(Consumer<SessionListener> event) {
        listeners.forEach(event);
    }

    private void requireEditable() {
        if (!editable()) {
            throw new IllegalStateException(file().getFullPath() + " must not be changed");
        }
    }

    void dispose() {
        resource.eAdapters().remove(collector);
        collector.forget();
        listeners.clear();
        adapters.dispose();
    }
}

/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.live;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.engine.catalogue.Change;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.HeldDocuments;

/** The documents that a case refers to, as their own editors show them. On the display's thread only. */
public final class CaseDocuments implements AutoCloseable {

    private final Map<String, LibraryReader> readers = new HashMap<>();
    private final HeldDocuments held;
    private final IFile from;

    /**
     * Creates documents.
     *
     * @param changed hears what has changed in one of them
     */
    CaseDocuments(IFile from, Consumer<DocumentChange> changed) {
        this.from = from;
        this.held = new HeldDocuments(from, change -> {
            follow(change);
            changed.accept(change);
        });
    }

    private void follow(DocumentChange change) {
        if (change.reloaded()) {
            readers.clear();
            return;
        }
        for (Notification notification : change.notifications()) {
            readers.values().stream().filter(reader -> isOf(reader, notification))
                    .forEach(reader -> reader.changed(Change.of(notification)));
        }
    }

    private static boolean isOf(LibraryReader reader, Notification notification) {
        return notification.getNotifier() instanceof EObject changed
                && EcoreUtil.isAncestor(reader.library(), changed);
    }

    /** Returns the library at a path, if it is there. */
    public Optional<DeviceLibrary> library(String path) {
        return held.find(path, DeviceLibrary.class);
    }

    /** Returns the session of the document at a path, if there is one. */
    public Optional<DocumentSession> session(String path) {
        return Optional.ofNullable(path).flatMap(p -> DocumentFiles.resolve(from, p)).filter(IFile::exists)
                .flatMap(held::session);
    }

    /** Returns the techniques of a case, if they are there. */
    public Optional<TechniqueLibrary> techniques(CaseDocument file) {
        return find(file.getTechniques(), TechniqueLibrary.class);
    }

    /** Returns the shelf of a case, if it is there. */
    public Optional<ShelfDocument> shelf(CaseDocument file) {
        return find(file.getShelf(), ShelfDocument.class);
    }

    /** Returns the rule set of a case, if it is there. */
    Optional<RuleSet> rules(CaseDocument file) {
        return find(file.getRules(), RuleSet.class);
    }

    private <D extends Document> Optional<D> find(String path, Class<D> type) {
        return Optional.ofNullable(path).flatMap(p -> held.find(p, type));
    }

    /** Returns the libraries that are there; the others are told of. */
    public List<LibraryReader> libraries(CaseDocument file, List<String> problems) {
        List<LibraryReader> all = new ArrayList<>();
        for (String path : file.getLibraries()) {
            Optional<LibraryReader> reader = library(path).map(library -> reader(path, library));
            reader.ifPresentOrElse(all::add,
                    () -> problems.add("The library \"" + path + "\" cannot be opened."));
        }
        return all;
    }

    private LibraryReader reader(String path, DeviceLibrary library) {
        return readers.compute(path, (p, known) -> known != null && known.library() == library ? known
                : new LibraryReader(p, library));
    }

    /** Tells whether a case refers to a file that came or went since it was looked for. */
    boolean cameOrWent(CaseDocument file, IFile changed) {
        Function<String, Optional<IFile>> resolved = path -> DocumentFiles.resolve(from, path);
        return Stream.concat(file.getLibraries().stream(),
                Stream.of(file.getRules(), file.getTechniques(), file.getShelf()).filter(path -> path != null))
                .anyMatch(path -> resolved.apply(path).filter(changed::equals).isPresent())
                && held.cameOrWent(changed);
    }

    @Override
    public void close() {
        held.close();
    }
}

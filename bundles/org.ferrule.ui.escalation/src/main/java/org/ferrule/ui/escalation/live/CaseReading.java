/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.EAttribute;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;

/** A case with what it refers to, as files and editors say now; for any thread. */
public final class CaseReading {

    /**
     * A document that is named but cannot be opened, or not named although it is needed.
     *
     * @param feature of the case that should name it
     * @param message for people
     */
    public record Missing(EAttribute feature, String message) {
    }

    private final List<Missing> missing = new ArrayList<>();
    private final DocumentRecords records;
    private final IFile file;
    private final CaseDocument document;
    private final Optional<OpenCase> open;

    /**
     * Reads.
     *
     * @throws CoreException if a file that is there cannot be read
     */
    public CaseReading(DocumentRecords records, IFile file, CaseDocument document) throws CoreException {
        this.records = records;
        this.file = file;
        this.document = document;
        Optional<TechniqueLibrary> techniques = one(Literals.CASE_DOCUMENT__TECHNIQUES, TechniqueLibrary.class);
        Optional<RuleSet> rules = one(Literals.CASE_DOCUMENT__RULES, RuleSet.class);
        Optional<ShelfDocument> shelf = one(Literals.CASE_DOCUMENT__SHELF, ShelfDocument.class);
        List<LibraryReader> libraries = libraries();
        open = techniques.isPresent() && rules.isPresent()
                ? Optional.of(new OpenCase(document, libraries, rules.get(), techniques.get(), shelf))
                : Optional.empty();
    }

    private List<LibraryReader> libraries() throws CoreException {
        List<LibraryReader> readers = new ArrayList<>();
        for (String path : document.getLibraries()) {
            find(path, DeviceLibrary.class).ifPresentOrElse(
                    library -> readers.add(new LibraryReader(path, library)),
                    () -> missing.add(new Missing(Literals.CASE_DOCUMENT__LIBRARIES, unopened(path))));
        }
        return readers;
    }

    private <D extends Document> Optional<D> one(EAttribute feature, Class<D> type) throws CoreException {
        String path = (String) document.eGet(feature);
        Optional<D> found = path == null ? Optional.empty() : find(path, type);
        if (found.isEmpty()) {
            missing.add(new Missing(feature, path == null ? unnamed(feature) : unopened(path)));
        }
        return found;
    }

    private static String unnamed(EAttribute feature) {
        if (feature == Literals.CASE_DOCUMENT__SHELF) {
            return "The case names no shelf, so that nothing is known of what is at hand";
        }
        String what = feature == Literals.CASE_DOCUMENT__RULES ? "rule set" : "technique library";
        return "The case names no " + what + ", so that it cannot be planned";
    }

    private static String unopened(String path) {
        return "\"" + path + "\" is not there, or cannot be opened";
    }

    private <D extends Document> Optional<D> find(String path, Class<D> type) throws CoreException {
        Optional<IFile> found = DocumentFiles.resolve(file, path).filter(IFile::exists);
        return found.isEmpty() ? Optional.empty()
                : records.of(found.get()).document().filter(type::isInstance).map(type::cast);
    }

    /** Returns the case; nothing without techniques or rules. */
    public Optional<OpenCase> open() {
        return open;
    }

    /** Returns what could not be opened. */
    public List<Missing> missing() {
        return List.copyOf(missing);
    }
}

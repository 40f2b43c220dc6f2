/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.check.Severity;

/** What came of reading a document: the document, unless it is broken, and everything that was found on the way. */
public final class ReadResult {

    private final Document document;
    private final Positions positions;
    private final List<DocumentProblem> problems;
    private Predicate<byte[]> comparison;
    private boolean canonical;

    /**
     * Creates a result.
     *
     * @param comparison tells whether bytes are those that were read; asked once at most
     */
    ReadResult(Document document, Positions positions, List<DocumentProblem> problems, Predicate<byte[]> comparison) {
        this.document = document;
        this.positions = positions;
        this.problems = List.copyOf(problems);
        this.comparison = comparison;
    }

    /** Returns the document; nothing if it is broken. */
    public Optional<Document> document() {
        return Optional.ofNullable(document);
    }

    /**
     * Returns the document.
     *
     * @throws BrokenDocumentException with its problems if it is broken
     */
    public Document requireDocument() throws BrokenDocumentException {
        if (broken()) {
            throw new BrokenDocumentException(problems);
        }
        return document;
    }

    /**
     * Tells whether there is no document: the text is not JSON, or contradicts the format. Such a file must not be
     * overwritten by the program.
     */
    public boolean broken() {
        return document == null;
    }

    /** Tells whether the document is of a newer version than this program knows, so that it must not be changed. */
    public boolean readOnly() {
        return document != null && document.getVersion() > DocumentKind.VERSION;
    }

    /**
     * Tells whether writing the document unchanged gives the same bytes; false for one that will be put in order. To be
     * asked first before the document is changed.
     */
    public boolean canonical() {
        return canonical(() -> DocumentWriter.write(document));
    }

    /**
     * As {@link #canonical()}, for those who write the document anyway.
     *
     * @param written writes the document as it was read; asked the first time, unless the document is broken
     */
    public synchronized boolean canonical(Supplier<byte[]> written) {
        if (comparison != null) {
            canonical = document != null && comparison.test(written.get());
            comparison = null;
        }
        return canonical;
    }

    /** Returns where everything stands in the text; of a document that was read unchecked nothing has a place. */
    public Positions positions() {
        return positions;
    }

    /** Returns the problems in the order of the text, those of the content included. */
    public List<DocumentProblem> problems() {
        return problems;
    }

    /** Tells whether a problem is an error; the document may be there nevertheless. */
    public boolean hasErrors() {
        return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }
}

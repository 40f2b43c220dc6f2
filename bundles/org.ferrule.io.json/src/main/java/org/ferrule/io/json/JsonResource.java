/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.ferrule.model.Document;
import org.ferrule.model.check.Severity;

/**
 * A document as an EMF resource, so that editing domains can load and save it. A broken document cannot be loaded, and
 * neither a broken one nor one of a newer version can be saved over. Saving writes to the stream that it is given;
 * whoever opens the stream answers for replacing the file safely. {@link JsonResourceFactory#register} sees to it for
 * files outside a workspace.
 */
public final class JsonResource extends ResourceImpl {

    private final JsonDocuments documents = new JsonDocuments();
    private ReadResult result;

    /** Creates the resource for a file. */
    public JsonResource(URI uri) {
        super(uri);
    }

    /** Returns what came of the last load; nothing before it, or for a new document. */
    public Optional<ReadResult> result() {
        return Optional.ofNullable(result);
    }

    /** Returns the document; nothing if there is none. */
    public Optional<Document> document() {
        return getContents().stream().filter(Document.class::isInstance).map(Document.class::cast).findFirst();
    }

    @Override
    protected void doLoad(InputStream stream, Map<?, ?> options) throws IOException {
        result = documents.read(stream, String.valueOf(getURI().lastSegment()));
        result.problems().forEach(this::addDiagnostic);
        getContents().add(result.requireDocument());
    }

    /** Makes sure that there is something to write before the stream is opened, which may empty the file. */
    @Override
    public void save(Map<?, ?> options) throws IOException {
        bytes();
        super.save(options);
    }

    @Override
    protected void doSave(OutputStream stream, Map<?, ?> options) throws IOException {
        stream.write(bytes());
    }

    private byte[] bytes() throws IOException {
        if (result != null && (result.broken() || result.readOnly())) {
            throw new IOException(getURI() + (result.broken() ? " is broken" : " is of a newer version")
                    + " and is not overwritten");
        }
        return documents.write(onlyDocument());
    }

    private Document onlyDocument() throws IOException {
        if (getContents().size() == 1 && getContents().get(0) instanceof Document document) {
            return document;
        }
        throw new IOException(getURI() + " must hold exactly one document, not " + getContents());
    }

    private void addDiagnostic(DocumentProblem problem) {
        (problem.severity() == Severity.ERROR ? getErrors() : getWarnings()).add(new Place(problem, getURI()));
    }

    /** A problem in the words of EMF. */
    private record Place(DocumentProblem problem, URI uri) implements Diagnostic {
        @Override
        public String getMessage() {
            return problem.text();
        }

        @Override
        public String getLocation() {
            return uri.toString();
        }

        @Override
        public int getLine() {
            return problem.line();
        }

        @Override
        public int getColumn() {
            return problem.column();
        }
    }
}

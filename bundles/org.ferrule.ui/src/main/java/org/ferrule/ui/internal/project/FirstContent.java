/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.time.LocalDate;
import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.FileReferences;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.internal.build.References;
import org.osgi.framework.FrameworkUtil;

/**
 * What a new document holds: its title and date; it refers to the documents beside it that it needs; a rule set starts as
 * a copy of the demo's, whose figures name their sources, because no rule set is without figures.
 */
final class FirstContent {

    private static final String RULES = "/demo/house.rules.json";

    private final JsonDocuments documents = new JsonDocuments();
    private final IFile file;
    private final DocumentKind kind;

    FirstContent(IFile file, DocumentKind kind) {
        this.file = file;
        this.kind = kind;
    }

    byte[] bytes() throws CoreException {
        Document document = kind == DocumentKind.RULES ? demoRules() : kind.create();
        document.setTitle(title());
        document.setRevision("1");
        document.setDate(LocalDate.now().toString());
        refer(document);
        addRequired(document);
        return documents.write(document);
    }

    private String title() {
        String words = DocumentFiles.baseName(file).replace('-', ' ').replace('_', ' ').trim();
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** To all that could be meant where several may stand, else to the first. */
    private void refer(Document document) throws CoreException {
        List<IFile> all = References.documents(file.getProject());
        FileReferences.features(document.eClass()).forEach((feature, suffix) -> {
            List<String> paths = all.stream().filter(other -> other.getName().endsWith(suffix))
                    .map(other -> DocumentFiles.reference(file, other)).toList();
            if (feature.isMany()) {
                document.eSet(feature, paths);
            } else {
                paths.stream().findFirst().ifPresent(path -> document.eSet(feature, path));
            }
        });
    }

    private static void addRequired(Document document) {
        document.eClass().getEAllReferences().stream().filter(part -> part.isRequired() && !part.isMany())
                .filter(part -> !document.eIsSet(part))
                .forEach(part -> document.eSet(part, EcoreUtil.create(part.getEReferenceType())));
    }

    private Document demoRules() throws CoreException {
        URL url = FrameworkUtil.getBundle(FirstContent.class).getEntry(RULES);
        if (url == null) {
            throw new CoreException(Status.error("The demo's rule set is missing"));
        }
        try (InputStream stream = url.openStream()) {
            return documents.read(stream, RULES).requireDocument();
        } catch (IOException e) {
            throw new CoreException(Status.error("The demo's rule set cannot be read", e));
        }
    }
}

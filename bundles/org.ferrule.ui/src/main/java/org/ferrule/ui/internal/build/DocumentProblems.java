/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.io.json.DocumentProblem;
import org.ferrule.io.json.TextRegion;
import org.ferrule.model.Document;
import org.ferrule.model.ElementPaths;
import org.ferrule.model.FileReferences;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.document.DocumentRecord;
import org.ferrule.ui.look.ElementWords;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemRequest;
import org.ferrule.ui.problem.ProblemSource;

/** The problems that reading a document finds, and references to files that are not there. */
public class DocumentProblems implements ProblemSource {

    private static final TextRegion BEGINNING = new TextRegion(1, 1, 0, 0);

    @Override
    public List<FoundProblem> find(ProblemRequest request, IProgressMonitor monitor) throws CoreException {
        List<FoundProblem> found = new ArrayList<>();
        ElementPaths paths = new ElementPaths();
        request.record().problems().forEach(problem -> found.add(found(problem, paths)));
        found.addAll(missingFiles(request));
        return found;
    }

    private static FoundProblem found(DocumentProblem problem, ElementPaths paths) {
        return new FoundProblem(problem.severity(), problem.code(), problem.text(), problem.suggestion(),
                problem.region(), problem.subject().map(paths::of).orElse(""),
                problem.feature().map(EStructuralFeature::getName).orElse(""),
                problem.subject().map(ElementWords::of).orElse(""));
    }

    private static List<FoundProblem> missingFiles(ProblemRequest request) throws CoreException {
        List<FoundProblem> found = new ArrayList<>();
        Document document = request.record().document().orElse(null);
        for (String reference : document == null ? List.<String>of() : FileReferences.of(document)) {
            if (request.referenced(reference).isEmpty()) {
                found.add(missing(request.record(), document, reference));
            }
        }
        return found;
    }

    private static FoundProblem missing(DocumentRecord record, Document document, String reference) {
        Optional<EAttribute> feature = FileReferences.features(document.eClass()).entrySet().stream()
                .filter(entry -> reference.endsWith(entry.getValue())).map(Map.Entry::getKey).findFirst();
        TextRegion region = feature.flatMap(f -> record.region("", f)).orElse(BEGINNING);
        return new FoundProblem(Severity.ERROR, "MISSING_FILE", "There is no file " + reference, "", region, "",
                feature.map(EAttribute::getName).orElse(""), "");
    }
}

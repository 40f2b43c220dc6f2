/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.problem;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.engine.plan.PlanProblem;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ElementPath;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.escalation.live.CaseReading;
import org.ferrule.ui.look.ElementWords;
import org.ferrule.ui.problem.FoundProblem;
import org.ferrule.ui.problem.ProblemRequest;
import org.ferrule.ui.problem.ProblemSource;

/** Finds what keeps a case, or a part of it, from being planned. */
public final class CaseProblems implements ProblemSource {

    @Override
    public List<FoundProblem> find(ProblemRequest request, IProgressMonitor monitor) throws CoreException {
        Optional<Document> document = request.record().document();
        return document.isPresent() && document.get() instanceof CaseDocument file ? problems(request, file)
                : List.of();
    }

    private static List<FoundProblem> problems(ProblemRequest request, CaseDocument file) throws CoreException {
        List<FoundProblem> found = new ArrayList<>();
        CaseReading reading = new CaseReading(request.records(), request.record().file(), file);
        reading.missing().stream().filter(missing -> !isToldElsewhere(file, missing))
                .forEach(missing -> found.add(FoundProblem.at(request.record(), file, missing.feature(),
                        missing.feature() == Literals.CASE_DOCUMENT__SHELF ? Severity.WARNING : Severity.ERROR,
                        "case.document",
                        missing.message())));
        reading.open().ifPresent(open -> assembled(request, file, open, found));
        return found;
    }

    /** That a document must be named is told where all that is missing is told. */
    private static boolean isToldElsewhere(CaseDocument file, CaseReading.Missing missing) {
        return missing.feature().isRequired() && !file.eIsSet(missing.feature());
    }

    private static void assembled(ProblemRequest request, CaseDocument file, OpenCase open,
            List<FoundProblem> found) {
        try {
            open.assemble(Extensions.ofPlatform().checks(), LocalDate.now()).problems()
                    .forEach(problem -> found.add(problem(request, file, open, problem)));
        } catch (RuleSetException e) {
            found.add(FoundProblem.at(request.record(), file, Literals.CASE_DOCUMENT__RULES, Severity.ERROR,
                    "case.rules", e.getMessage()));
        }
    }

    /** What is wrong in another document is told where the case names that. */
    private static FoundProblem problem(ProblemRequest request, CaseDocument file, OpenCase open,
            PlanProblem problem) {
        if (problem.document() != DocumentKind.CASE) {
            EStructuralFeature feature = problem.document() == DocumentKind.SHELF ? Literals.CASE_DOCUMENT__SHELF
                    : Literals.CASE_DOCUMENT__TECHNIQUES;
            return FoundProblem.at(request.record(), file, feature, Severity.WARNING, "case.plan",
                    file.eGet(feature) + place(open, problem) + ": " + problem.message());
        }
        EObject object = ElementPath.resolve(file, problem.path()).orElse(file);
        EStructuralFeature feature = problem.feature().isEmpty() ? null
                : object.eClass().getEStructuralFeature(problem.feature());
        return FoundProblem.at(request.record(), object, feature, Severity.WARNING, "case.plan", problem.message());
    }

    /** Where in another document it is, in words. */
    private static String place(OpenCase open, PlanProblem problem) {
        Optional<? extends Document> other = problem.document() == DocumentKind.SHELF ? open.shelf()
                : Optional.of(open.techniques());
        return other.flatMap(document -> ElementPath.resolve(document, problem.path())).map(ElementWords::of)
                .filter(words -> !words.isEmpty()).map(words -> ", " + words).orElse("");
    }
}
